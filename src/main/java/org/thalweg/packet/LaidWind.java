package org.thalweg.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.fastening.WindClips;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.panel.PanelLayout;
import org.thalweg.panel.PlanePanels;
import org.thalweg.roof.Roof;
import org.thalweg.units.Count;
import org.thalweg.units.Length;
import org.thalweg.wind.Uplift;
import org.thalweg.wind.WindZone;
import org.thalweg.wind.WindZones;
import org.thalweg.wind.ZonePressures;
import org.thalweg.wind.ZoneWidth;

/**
 * The wind on one roof, and what clips are to do against it.
 *
 * @param width  how the width of the strips follows from the roof; nothing where it was given
 * @param clips  how far apart they may stand, where
 * @param planes what that comes to on each plane, in the roof's order; nothing where nothing is known of the wind
 */
public record LaidWind(Optional<ZoneWidth> width, WindClips clips, List<Optional<ZoneSpacings>> planes) {

    /** Clips are not placed closer together: as close as a caller may space them. */
    public static final Length CLOSEST = Length.millimetres(10);

    /** Most edges looked at for the zones of all seams together: half a second. */
    public static final int MOST_STEPS = 20_000_000;

    private static final Origin WIND = Origin.REQUEST.at("wind");

    /**
     * The greatest spacing of clips in each zone of a plane.
     *
     * @param field  away from edges
     * @param edge   along edges
     * @param corner at corners
     */
    public record ZoneSpacings(Length field, Length edge, Length corner) {
        private Length least() {
            Length outer = edge.compareTo(corner) <= 0 ? edge : corner;
            return field.compareTo(outer) <= 0 ? field : outer;
        }
    }

    public LaidWind {
        planes = List.copyOf(planes);
    }

    /**
     * @param panels as laid, of this cover
     * @throws Refused when the zones are too much work, or clips would stand closer than they are placed
     */
    static LaidWind of(Roof roof, WindTerms terms, PanelLayout panels, Length cover) {
        Optional<ZoneWidth> byRule = terms.zones().width().isPresent()
                ? Optional.empty()
                : terms.zones().height().map(height -> ZoneWidth.of(roof, height));
        Length width =
                terms.zones().width().or(() -> byRule.map(ZoneWidth::width)).orElseThrow();
        WindZones zones = WindZones.of(roof, width);
        checkSteps(zones, panels);
        Uplift uplift = terms.pressures().on(roof, zones);
        WindClips each = new WindClips(uplift, terms.clip(), terms.mostInField(), terms.mostElsewhere());
        WindClips clips = terms.noWider().map(each::atMost).orElse(each);
        List<Optional<ZoneSpacings>> planes = new ArrayList<>(roof.planes().size());
        for (Optional<ZonePressures> pressures : uplift.planes()) {
            planes.add(pressures.map(on -> spacings(clips, on, cover)));
        }
        checkSpacing(planes);
        return new LaidWind(byRule, clips, planes);
    }

    /** A plane has about as many seams as panels. */
    private static void checkSteps(WindZones zones, PanelLayout panels) {
        double steps = 0;
        for (PlanePanels plane : panels.planes()) {
            steps += (double) plane.panels().size() * zones.steps(plane.plane());
        }
        if (steps > MOST_STEPS) {
            throw new Refused(Refusal.of(
                    RefusalCode.WIND_TOO_LARGE,
                    Origin.REQUEST.at("roof"),
                    "Finding the wind zones of every seam takes {actual} steps; at most {limit} are done. Lay the roof in"
                            + " parts.",
                    new Count((long) steps),
                    new Count(MOST_STEPS)));
        }
    }

    private static ZoneSpacings spacings(WindClips clips, ZonePressures on, Length cover) {
        return new ZoneSpacings(
                clips.spacing(WindZone.FIELD, on.field(), cover),
                clips.spacing(WindZone.EDGE, on.edge(), cover),
                clips.spacing(WindZone.CORNER, on.corner(), cover));
    }

    private static void checkSpacing(List<Optional<ZoneSpacings>> planes) {
        Optional<Length> least = planes.stream()
                .flatMap(Optional::stream)
                .map(ZoneSpacings::least)
                .min(Length::compareTo);
        if (least.isPresent() && least.get().compareTo(CLOSEST) < 0) {
            throw new Refused(Refusal.of(
                    RefusalCode.CLIPS_TOO_CLOSE,
                    WIND,
                    "One clip holds so little against this wind that clips would stand {actual} apart; they are placed no"
                            + " closer than {limit}. Check the units of the load and the pressures: they follow the length"
                            + " unit.",
                    least.get(),
                    CLOSEST));
        }
    }
}
