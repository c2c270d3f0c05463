package org.thalweg.fastening;

import java.util.List;
import org.thalweg.panel.PanelLayout;
import org.thalweg.panel.PanelSpec;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.PanelHold;
import org.thalweg.roof.Roof;
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
 */
public record FasteningCase(
        Roof roof,
        PanelSpec spec,
        PanelLayout panels,
        List<EdgeTreatment> treatments,
        List<PanelHold> holds,
        List<ValleyLayout> valleys,
        FasteningRules rules,
        FixedPoint fixed) {

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
}
