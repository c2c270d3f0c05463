package org.thalweg.wind;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Place;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Frame;
import org.thalweg.geometry.Point2;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;
import org.thalweg.units.Angle;

/**
 * How hard the wind lifts every place of a roof.
 *
 * @param zones       which zone a place lies in
 * @param planes      how hard in each zone, in the roof's order; nothing for a plane of which nothing is known
 * @param source      where the pressures come from
 * @param preliminary whether they were worked out here: then an engineer decides
 * @param findings    what a crew should know of them
 */
public record Uplift(
        WindZones zones,
        List<Optional<ZonePressures>> planes,
        Source source,
        boolean preliminary,
        List<Finding> findings) {

    /** The table of coefficients ends here. */
    private static final Angle STEEPEST = Angle.degrees(45);

    public Uplift {
        planes = List.copyOf(planes);
        findings = List.copyOf(findings);
    }

    /** The pressures an engineer names, the same on every plane. */
    public static Uplift given(Roof roof, WindZones zones, ZonePressures pressures) {
        return new Uplift(
                zones,
                Collections.nCopies(roof.planes().size(), Optional.of(pressures)),
                Source.REQUEST,
                false,
                List.of());
    }

    /**
     * Pressures by the published tables. A plane steeper than they go, and a single slope, for which other figures hold, has
     * none and a finding.
     */
    public static Uplift lowRise(Roof roof, WindZones zones, LowRiseWind wind) {
        List<Optional<ZonePressures>> planes = new ArrayList<>(roof.planes().size());
        List<Finding> findings = new ArrayList<>();
        BitSet single = single(roof);
        for (int plane = 0; plane < roof.planes().size(); plane++) {
            Plane own = roof.planes().get(plane);
            Optional<ZonePressures> pressures = single.get(plane) ? Optional.empty() : wind.on(own.slope());
            planes.add(pressures);
            if (pressures.isEmpty()) {
                findings.add(outside(own, single.get(plane)));
            }
        }
        firstOf(planes)
                .ifPresent(plane -> findings.add(0, preliminary(roof.planes().get(plane))));
        return new Uplift(zones, planes, LowRiseWind.SOURCE, true, findings);
    }

    /** The planes that end in a level top that meets no other. */
    private static BitSet single(Roof roof) {
        BitSet single = new BitSet(roof.planes().size());
        for (Edge edge : roof.edges()) {
            if (edge.kind() == EdgeKind.HIGH_EAVE) {
                edge.sides().forEach(side -> single.set(side.plane()));
            }
        }
        return single;
    }

    private static Optional<Integer> firstOf(List<Optional<ZonePressures>> planes) {
        for (int plane = 0; plane < planes.size(); plane++) {
            if (planes.get(plane).isPresent()) {
                return Optional.of(plane);
            }
        }
        return Optional.empty();
    }

    private static Finding preliminary(Plane plane) {
        return Finding.of(
                FindingCode.WIND_PRELIMINARY,
                place(plane),
                "How hard the wind lifts this plane, and every other that has pressures, was worked out from published tables for"
                        + " low buildings. An engineer decides: give the engineer's pressures when they are known.",
                LowRiseWind.SOURCE);
    }

    private static Finding outside(Plane plane, boolean single) {
        return single
                ? Finding.of(
                        FindingCode.WIND_OUTSIDE_TABLE,
                        place(plane),
                        "{place} is a single slope; the published table for gables and hips does not hold for it. Its clips"
                                + " stand as without wind. Give the pressures an engineer names.",
                        LowRiseWind.SOURCE)
                : Finding.of(
                        FindingCode.WIND_OUTSIDE_TABLE,
                        place(plane),
                        "{place} rises {actual}; the published table ends at {limit}. Its clips stand as without wind. Give the"
                                + " pressures an engineer names.",
                        plane.slope(),
                        STEEPEST,
                        LowRiseWind.SOURCE);
    }

    private static Place place(Plane plane) {
        return new Place(Place.Kind.PLANE, plane.id(), plane.at());
    }

    /**
     * How hard along a straight line: all of it, in order; nothing on a plane of which nothing is known.
     *
     * @param plane index in the roof's planes
     * @param frame a frame of that plane, its own or the one its panels are placed in
     * @param from  where the line starts; in that frame, metres
     * @param to    where it ends, apart from {@code from}
     */
    public List<UpliftStretch> along(int plane, Frame frame, Point2 from, Point2 to) {
        return planes.get(plane)
                .map(pressures -> zones.along(plane, frame, from, to).stream()
                        .map(part -> new UpliftStretch(part.from(), part.to(), part.zone(), pressures.in(part.zone())))
                        .toList())
                .orElse(List.of());
    }
}
