package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.api.wire.EditableRoof;
import org.thalweg.api.wire.MarkedLength;
import org.thalweg.api.wire.PlanePoint;
import org.thalweg.api.wire.ReadRoof;
import org.thalweg.api.wire.ReadRoof.EdgeAnswer;
import org.thalweg.api.wire.ReadRoof.EdgeSideAnswer;
import org.thalweg.api.wire.ReadRoof.FrameAnswer;
import org.thalweg.api.wire.ReadRoof.OpeningAnswer;
import org.thalweg.api.wire.ReadRoof.PlaneAnswer;
import org.thalweg.api.wire.RiseAndRun;
import org.thalweg.api.wire.RoofAnswer;
import org.thalweg.api.wire.RoofForm;
import org.thalweg.api.wire.RoofRequest;
import org.thalweg.api.wire.WorldPoint;
import org.thalweg.geometry.Frame;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Vector3;
import org.thalweg.roof.Edge;
import org.thalweg.roof.Edge.EdgeSide;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Pitch;
import org.thalweg.units.Tape;
import org.thalweg.units.Units;

/** Writes a roof in the caller's units. Every figure is rounded here, once. */
final class RoofWriter {

    /** Directions have 9 decimals, so that a point 100 m along one is right to a ten-thousandth of a millimetre. */
    private static final double DIRECTION_PLACES = 1e9;

    private final Units units;

    RoofWriter(Units units) {
        this.units = units;
    }

    /** The answer to a request to read a roof. */
    RoofAnswer answer(Roof roof, RoofSurvey survey, RoofRequest request, String engine, String digest) {
        return new RoofAnswer(
                engine,
                digest,
                request.units(),
                used(survey, request),
                write(roof, editable(survey, request.roof())),
                FindingWriter.findings(roof.findings(), units),
                Cautions.ALL);
    }

    private Optional<EditableRoof> editable(RoofSurvey survey, RoofForm posted) {
        return posted.plan() == null && posted.footprint() == null
                ? Optional.empty()
                : Optional.of(EditableWriter.write(survey, units.length()));
    }

    private RoofAnswer.Used used(RoofSurvey survey, RoofRequest request) {
        List<String> defaults = new ArrayList<>();
        if (request.tolerance() == null) {
            defaults.add("#/tolerance");
        }
        if (request.minimumSlope() == null) {
            defaults.add("#/minimumSlope");
        }
        FootprintReader.defaults(request.roof().footprint(), defaults);
        Pitch least = survey.leastSlope();
        return new RoofAnswer.Used(
                length(survey.tolerance().metres()), new RiseAndRun(least.rise(), least.run()), defaults);
    }

    /** Planes and edges, in the roof's order. */
    ReadRoof write(Roof roof) {
        return write(roof, Optional.empty());
    }

    private ReadRoof write(Roof roof, Optional<EditableRoof> editable) {
        List<PlaneAnswer> planes = new ArrayList<>(roof.planes().size());
        for (Plane plane : roof.planes()) {
            planes.add(write(plane));
        }
        List<EdgeAnswer> edges = new ArrayList<>(roof.edges().size());
        for (Edge edge : roof.edges()) {
            edges.add(write(edge, roof.planes()));
        }
        return new ReadRoof(planes, edges, editable);
    }

    private PlaneAnswer write(Plane plane) {
        List<OpeningAnswer> openings = new ArrayList<>(plane.shape().openings().size());
        for (Ring opening : plane.shape().openings()) {
            openings.add(new OpeningAnswer(ring(opening)));
        }
        return new PlaneAnswer(
                plane.id(),
                new RiseAndRun(Pitch.ofSlope(plane.slope()).roundedPer12(), 12),
                plane.slope().roundedDegrees(),
                plane.level(),
                units.area().round(plane.area()),
                units.area().round(plane.planArea()),
                write(plane.frame()),
                ring(plane.shape().outer()),
                openings,
                units.length().round(plane.off()));
    }

    FrameAnswer write(Frame frame) {
        return new FrameAnswer(point(frame.origin(), units), direction(frame.across()), direction(frame.up()));
    }

    private EdgeAnswer write(Edge edge, List<Plane> planes) {
        List<String> ids = new ArrayList<>(edge.sides().size());
        List<EdgeSideAnswer> sides = new ArrayList<>(edge.sides().size());
        for (EdgeSide side : edge.sides()) {
            String id = planes.get(side.plane()).id();
            ids.add(id);
            sides.add(new EdgeSideAnswer(id, side.mitre().roundedDegrees()));
        }
        return new EdgeAnswer(
                edge.id(),
                edge.kind(),
                edge.at().called(),
                ids,
                point(edge.from(), units),
                point(edge.to(), units),
                marked(edge.length(), units),
                edge.slope().roundedDegrees(),
                edge.bend().roundedDegrees(),
                sides);
    }

    /** A length a crew will mark. */
    static MarkedLength marked(Length length, Units units) {
        LengthUnit unit = units.length();
        return new MarkedLength(unit.round(length), Tape.mark(length, unit));
    }

    private List<PlanePoint> ring(Ring ring) {
        List<PlanePoint> corners = new ArrayList<>(ring.size());
        for (int i = 0; i < ring.size(); i++) {
            corners.add(new PlanePoint(length(ring.across(i)), length(ring.up(i))));
        }
        return corners;
    }

    static WorldPoint point(Point3 point, Units units) {
        LengthUnit unit = units.length();
        return new WorldPoint(
                unit.round(Length.metres(point.x())),
                unit.round(Length.metres(point.y())),
                unit.round(Length.metres(point.z())));
    }

    private double length(double metres) {
        return units.length().round(Length.metres(metres));
    }

    private static WorldPoint direction(Vector3 direction) {
        return new WorldPoint(direction(direction.x()), direction(direction.y()), direction(direction.z()));
    }

    /** Adding 0 makes -0.0 a plain 0. */
    private static double direction(double part) {
        return Math.rint(part * DIRECTION_PLACES) / DIRECTION_PLACES + 0.0;
    }
}
