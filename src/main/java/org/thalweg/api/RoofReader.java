package org.thalweg.api;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.Nearest;
import org.thalweg.api.wire.RoofForm;
import org.thalweg.api.wire.RoofForm.NamedEdgeForm;
import org.thalweg.api.wire.RoofForm.OpeningForm;
import org.thalweg.api.wire.RoofForm.PlaneForm;
import org.thalweg.api.wire.RoofRequest;
import org.thalweg.api.wire.WireLength;
import org.thalweg.api.wire.WirePitch;
import org.thalweg.api.wire.WirePoint;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.finding.Source;
import org.thalweg.footprint.RoofedFootprint;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Tolerance;
import org.thalweg.reference.Rules;
import org.thalweg.reference.Sourced;
import org.thalweg.roof.NamedEdge;
import org.thalweg.roof.PlaneOutline;
import org.thalweg.roof.PlaneOutline.OpeningOutline;
import org.thalweg.roof.RaisedPlan;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/** Reads the wire's roof into a survey: units in, pointers kept, names looked up. */
final class RoofReader {

    /** What building codes let standing-seam panels be laid on. */
    private static final Sourced<Pitch> LEAST_SLOPE = Rules.leastSlopeStandingSeam();

    private static final Point3 NOWHERE = new Point3(0, 0, 0);

    private static final Origin ROOF = Origin.REQUEST.at("roof");

    private final TapeReader tape;
    private final Map<String, Point3> points = new LinkedHashMap<>();
    private final List<Refusal> refusals = new ArrayList<>();

    private RoofReader(TapeReader tape) {
        this.tape = tape;
    }

    static RoofSurvey read(RoofRequest request) {
        Origin slopeAt = Origin.REQUEST.at("minimumSlope");
        return read(
                request.roof(),
                request.tolerance(),
                request.minimumSlope(),
                slopeAt,
                new TapeReader(request.units().length()));
    }

    /**
     * Reads the roof of any request.
     *
     * @param slopeAt where in the request the least slope stands
     * @param tape    has read the rest of the request; done when this returns
     */
    static RoofSurvey read(
            RoofForm roof,
            @Nullable WireLength tolerance,
            @Nullable WirePitch minimumSlope,
            Origin slopeAt,
            TapeReader tape) {
        Measured measured = measured(tolerance, minimumSlope, slopeAt, tape);
        if (roof.plan() != null) {
            return RaisedPlan.of(PlanReader.read(roof.plan(), measured, tape));
        }
        if (roof.footprint() != null) {
            RoofSurvey found = RoofedFootprint.of(FootprintReader.read(roof.footprint(), measured, tape));
            new RoofReader(tape).counted(found.planes(), FootprintReader.FOOTPRINT);
            return found;
        }
        RoofReader reader = new RoofReader(tape);
        List<PlaneOutline> planes = reader.planes(roof);
        List<NamedEdge> named = reader.namedEdges(roof);
        if (!reader.refusals.isEmpty()) {
            throw new Refused(reader.refusals);
        }
        return new RoofSurvey(planes, named, measured.tolerance(), measured.leastSlope(), measured.leastSlopeSource());
    }

    /**
     * How well a roof was measured and how flat it may be.
     *
     * @param tolerance        corners this close are one
     * @param leastSlope       flattest slope the panel system allows
     * @param leastSlopeSource where that comes from
     */
    record Measured(Tolerance tolerance, Pitch leastSlope, Source leastSlopeSource) {}

    static Measured measured(
            @Nullable WireLength tolerance, @Nullable WirePitch minimumSlope, Origin slopeAt, TapeReader tape) {
        Length close = tape.length(
                tolerance, Length.metres(Tolerance.DEFAULT.metres()), Origin.REQUEST.at("tolerance"), Limits.TOLERANCE);
        // What can't be read has been noted; the usual tolerance stands in until the reading is done.
        return new Measured(
                close.metres() > 0 ? new Tolerance(close.metres()) : Tolerance.DEFAULT,
                tape.pitch(minimumSlope, LEAST_SLOPE.value(), slopeAt),
                minimumSlope == null ? LEAST_SLOPE.source() : Source.REQUEST);
    }

    private List<PlaneOutline> planes(RoofForm roof) {
        if (roof.cityjson() != null) {
            Origin at = ROOF.at("cityjson");
            return counted(CityJsonReader.read(roof.cityjson(), Optional.ofNullable(roof.building()), at), at);
        }
        countCorners(orNone(roof.planes()));
        readPoints(orNone(roof.points()));
        tape.done();
        List<PlaneOutline> planes = new ArrayList<>();
        for (PlaneForm plane : orNone(roof.planes())) {
            planes.add(plane(plane, ROOF.at("planes").at(planes.size())));
        }
        return planes;
    }

    private void readPoints(Map<String, WirePoint> given) {
        Origin at = ROOF.at("points");
        given.forEach((name, point) -> points.put(name, point(point, at.at(name))));
    }

    private Point3 point(WirePoint given, Origin at) {
        return new Point3(coordinate(given.x(), at, 0), coordinate(given.y(), at, 1), coordinate(given.z(), at, 2));
    }

    private double coordinate(WireLength given, Origin at, int index) {
        return tape.length(given, at.at(index), Limits.COORDINATE).metres();
    }

    private PlaneOutline plane(PlaneForm given, Origin at) {
        List<OpeningOutline> openings = new ArrayList<>();
        for (OpeningForm opening : orNone(given.openings())) {
            Origin outlineAt = at.at("openings").at(openings.size()).at("outline");
            openings.add(new OpeningOutline(opening.id(), corners(opening.outline(), outlineAt), outlineAt));
        }
        Origin outlineAt = at.at("outline");
        return new PlaneOutline(given.id(), corners(given.outline(), outlineAt), openings, at, outlineAt);
    }

    private List<Point3> corners(List<String> names, Origin at) {
        List<Point3> corners = new ArrayList<>(names.size());
        for (int i = 0; i < names.size(); i++) {
            corners.add(corner(names.get(i), at, i));
        }
        return corners;
    }

    /** The point called {@code name}; a name that is not there is noted and stands at 0. */
    private Point3 corner(String name, Origin list, int index) {
        Point3 point = points.get(name);
        if (point != null) {
            return point;
        }
        refusals.add(Refusal.of(
                RefusalCode.UNKNOWN_POINT,
                list.at(index),
                "No point is called %s.%s".formatted(Echo.of(name), hint(name))));
        return NOWHERE;
    }

    /** What may be meant; not looked for once there are more refusals than are told. */
    private String hint(String name) {
        return refusals.size() < Limits.ERRORS ? Nearest.hint(name, points.keySet()) : "";
    }

    private List<NamedEdge> namedEdges(RoofForm roof) {
        List<NamedEdge> named = new ArrayList<>();
        for (NamedEdgeForm edge : orNone(roof.edges())) {
            Origin at = ROOF.at("edges").at(named.size());
            List<Point3> ends = corners(edge.between(), at.at("between"));
            named.add(new NamedEdge(ends.get(0), ends.get(1), edge.kind().kind(), at));
        }
        return named;
    }

    /** What is too much for one request is refused before anything is made of it. */
    private void countCorners(List<PlaneForm> planes) {
        int corners = 0;
        for (PlaneForm plane : planes) {
            corners += plane.outline().size();
            for (OpeningForm opening : orNone(plane.openings())) {
                corners += opening.outline().size();
            }
        }
        countCorners(corners, ROOF.at("planes"));
    }

    private void countCorners(int corners, Origin at) {
        if (corners > Limits.CORNERS) {
            tape.tooMany(at, "corners in all", corners, Limits.CORNERS);
        }
    }

    /** A document of another standard, or walls, have no list of planes that could be counted before they are read. */
    private List<PlaneOutline> counted(List<PlaneOutline> planes, Origin at) {
        if (planes.size() > Limits.PLANES) {
            tape.tooMany(at, "planes", planes.size(), Limits.PLANES);
        }
        countCorners(planes.stream().mapToInt(RoofReader::corners).sum(), at);
        tape.done();
        return planes;
    }

    private static int corners(PlaneOutline plane) {
        int corners = plane.outline().size();
        for (OpeningOutline opening : plane.openings()) {
            corners += opening.outline().size();
        }
        return corners;
    }

    private static <T> List<T> orNone(@Nullable List<T> list) {
        return list == null ? List.of() : list;
    }

    private static <T> Map<String, T> orNone(@Nullable Map<String, T> map) {
        return map == null ? Map.of() : map;
    }
}
