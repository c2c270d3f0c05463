package org.thalweg.api;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Nearest;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.LayoutRequest.PanelForm;
import org.thalweg.api.wire.WireLength;
import org.thalweg.finding.Origin;
import org.thalweg.panel.PanelSpec;
import org.thalweg.reference.Gauges;
import org.thalweg.reference.Metal;
import org.thalweg.reference.Metals;
import org.thalweg.takeoff.PanelSheet;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/** Reads the wire's panel: units in, defaults filled in. */
final class PanelReader {

    static final Origin PANEL = Origin.REQUEST.at("panel");

    private final PanelForm panel;
    private final TapeReader tape;
    private final PanelDefaults defaults;

    PanelReader(PanelForm panel, LengthUnit unit, TapeReader tape) {
        this.panel = panel;
        this.tape = tape;
        this.defaults = PanelDefaults.of(unit);
    }

    /** What can be done with the panel. */
    PanelSpec spec() {
        Length longest = length(panel.longest(), defaults.longest(), "longest", Limits.LONGEST);
        Length increment =
                length(panel.orderIncrement(), defaults.orderIncrement(), "orderIncrement", Limits.ORDER_INCREMENT);
        Length endLap = length(panel.endLap(), defaults.endLap(longest), "endLap", Limits.END_LAP);
        Length stagger = length(panel.stagger(), defaults.stagger(longest), "stagger", Limits.STAGGER);
        boolean lappable = PanelSpec.canLap(longest, endLap, stagger, increment);
        if (!lappable) {
            noteTooShortToLap(longest, endLap.metres() + stagger.metres() / 2 + 2 * increment.metres());
        }
        Length cover = tape.length(panel.cover(), PANEL.at("cover"), Limits.COVER);
        return new PanelSpec(
                // What can't be read has been noted; a metre stands in until the reading is done.
                cover.metres() > 0 ? cover : Length.metres(1),
                lappable ? longest : Length.metres(Limits.LONGEST.most()),
                length(panel.shortest(), defaults.shortest(), "shortest", Limits.SHORTEST),
                increment,
                length(panel.narrowestRip(), defaults.narrowestRip(), "narrowestRip", Limits.NARROWEST_RIP),
                endLap,
                stagger);
    }

    private void noteTooShortToLap(Length longest, double needed) {
        tape.notePassed(
                PANEL.at("longest"),
                longest,
                Length.metres(needed),
                "The longest blank is %s; it must be more than %s, which the end lap, half the stagger and two order increments"
                        + " take.");
    }

    private Length length(@Nullable WireLength given, Length absent, String member, Limit limit) {
        return tape.length(given, absent, PANEL.at(member), limit);
    }

    /** What it is formed from. */
    PanelSheet sheet(PanelSpec spec) {
        Optional<Length> seamHeight = Optional.ofNullable(panel.seamHeight())
                .map(given -> tape.length(given, PANEL.at("seamHeight"), Limits.SEAM_HEIGHT));
        Length girth = length(panel.girth(), PanelDefaults.girth(spec.cover()), "girth", Limits.GIRTH);
        Length thickness = length(panel.thickness(), PanelDefaults.THICKNESS, "thickness", Limits.THICKNESS);
        Metal metal = metal(panel.metal());
        return new PanelSheet(metal, thickness, girth, seamHeight, Gauges.massPerArea(metal, thickness));
    }

    private Metal metal(@Nullable String given) {
        String key = given == null ? PanelDefaults.METAL : given;
        Optional<Metal> metal = Metals.of(key);
        if (metal.isEmpty()) {
            List<String> known = Metals.all().stream().map(Metal::key).toList();
            tape.note(() -> Fault.of(
                    ReadingCode.UNKNOWN_VALUE,
                    PANEL.at("metal").pointer(),
                    "%s is no metal known here.%s Known: %s."
                            .formatted(Echo.of(key), Nearest.hint(key, known), String.join(", ", known))));
        }
        return metal.orElseGet(() -> Metals.all().get(0));
    }
}
