package org.thalweg.fastening;

import java.util.List;
import java.util.Optional;
import org.thalweg.panel.PanelLayout;
import org.thalweg.panel.PanelSpec;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.PanelHold;
import org.thalweg.roof.Roof;
import org.thalweg.units.Length;
import org.thalweg.valley.ValleyLayout;

/**
 * A laid roof that is to be fastened.
 *
 * @param roof       as read
 * @param spec       the panel
 * @param panels     as laid
 * @param treatments how panels end at each edge, in the roof's order
 * @param holds      how their lower ends are held there, in the roof's order
 * @param valleys    whose pans are fastened
 * @param rules      how far apart everything stands
 * @param fixed      where each panel is fixed
 * @param wind       what clips are spaced for; nothing where the table of rules says how far apart they stand
 * @param hipClosure how far from a hip the outer side of its closure stands; else the row of closures lies where others do
 */
public record FasteningCase(
        Roof roof,
        PanelSpec spec,
        PanelLayout panels,
        List<EdgeTreatment> treatments,
        List<PanelHold> holds,
        List<ValleyLayout> valleys,
        FasteningRules rules,
        FixedPoint fixed,
        Optional<WindClips> wind,
        Optional<Length> hipClosure) {

    /** A roof whose clips stand as far apart as the table of rules has it. */
    public FasteningCase(
            Roof roof,
            PanelSpec spec,
            PanelLayout panels,
            List<EdgeTreatment> treatments,
            List<PanelHold> holds,
            List<ValleyLayout> valleys,
            FasteningRules rules,
            FixedPoint fixed) {
        this(roof, spec, panels, treatments, holds, valleys, rules, fixed, Optional.empty(), Optional.empty());
    }

    public FasteningCase {
        treatments = List.copyOf(treatments);
        holds = List.copyOf(holds);
        valleys = List.copyOf(valleys);
        if (treatments.size() != roof.edges().size()
                || holds.size() != roof.edges().size()) {
            throw new IllegalArgumentException("treatments (%d) and holds (%d) must be as many as edges (%d)"
                    .formatted(treatments.size(), holds.size(), roof.edges().size()));
        }
    }

    /** The same with clips spaced for the wind. */
    public FasteningCase with(WindClips clips) {
        return new FasteningCase(
                roof, spec, panels, treatments, holds, valleys, rules, fixed, Optional.of(clips), hipClosure);
    }

    /** The same with closures whose outer side stands this far from their hip. */
    public FasteningCase withHipClosure(Length off) {
        return new FasteningCase(roof, spec, panels, treatments, holds, valleys, rules, fixed, wind, Optional.of(off));
    }
}
