package org.thalweg.wind;

import java.util.List;
import java.util.function.UnaryOperator;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.PlaneOutline;
import org.thalweg.roof.Roof;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Pitch;

/** Roofs of several planes, in metres. */
final class Houses {

    private Houses() {}

    private static Point3 p(double x, double y, double z) {
        return new Point3(x, y, z);
    }

    static PlaneOutline plane(String id, Point3... corners) {
        return new PlaneOutline(id, List.of(corners), List.of(), Origin.REQUEST, Origin.REQUEST);
    }

    static Roof read(List<PlaneOutline> planes) {
        return Roofs.read(
                new RoofSurvey(planes, List.of(), Tolerance.DEFAULT, new Pitch(0.25, 12), Source.COMMON_PRACTICE));
    }

    static List<PlaneOutline> moved(List<PlaneOutline> planes, UnaryOperator<Point3> to) {
        return planes.stream()
                .map(plane -> plane(plane.id(), plane.outline().stream().map(to).toArray(Point3[]::new)))
                .toList();
    }

    /** 12 by 8, the ridge along the middle of the longer way, rising {@code tan}: south and north. */
    static List<PlaneOutline> gable(double tan) {
        double top = 4 * tan;
        return List.of(
                plane("south", p(0, 0, 0), p(12, 0, 0), p(12, 4, top), p(0, 4, top)),
                plane("north", p(12, 8, 0), p(0, 8, 0), p(0, 4, top), p(12, 4, top)));
    }

    /** The same with the south side in two, one over the other. */
    static List<PlaneOutline> gableInTwo(double tan) {
        double top = 4 * tan;
        return List.of(
                plane("lower", p(0, 0, 0), p(12, 0, 0), p(12, 3.5, 3.5 * tan), p(0, 3.5, 3.5 * tan)),
                plane("upper", p(0, 3.5, 3.5 * tan), p(12, 3.5, 3.5 * tan), p(12, 4, top), p(0, 4, top)),
                plane("north", p(12, 8, 0), p(0, 8, 0), p(0, 4, top), p(12, 4, top)));
    }

    /** 12 by 8 with a hip from every corner: south, north, west, east. */
    static List<PlaneOutline> hip(double tan) {
        double top = 4 * tan;
        return List.of(
                plane("south", p(0, 0, 0), p(12, 0, 0), p(8, 4, top), p(4, 4, top)),
                plane("north", p(12, 8, 0), p(0, 8, 0), p(4, 4, top), p(8, 4, top)),
                plane("west", p(0, 8, 0), p(0, 0, 0), p(4, 4, top)),
                plane("east", p(12, 0, 0), p(12, 8, 0), p(8, 4, top)));
    }

    /** The hip roof with a gabled wing 4 wide that comes 4 out of its long side; six planes. */
    static List<PlaneOutline> hipWithWing(double tan) {
        double top = 4 * tan;
        double wing = 2 * tan;
        return List.of(
                plane(
                        "south",
                        p(0, 0, 0),
                        p(4, 0, 0),
                        p(6, 2, wing),
                        p(8, 0, 0),
                        p(12, 0, 0),
                        p(8, 4, top),
                        p(4, 4, top)),
                plane("north", p(12, 8, 0), p(0, 8, 0), p(4, 4, top), p(8, 4, top)),
                plane("west", p(0, 8, 0), p(0, 0, 0), p(4, 4, top)),
                plane("east", p(12, 0, 0), p(12, 8, 0), p(8, 4, top)),
                plane("wing west", p(4, 0, 0), p(4, -4, 0), p(6, -4, wing), p(6, 2, wing)),
                plane("wing east", p(8, -4, 0), p(8, 0, 0), p(6, 2, wing), p(6, -4, wing)));
    }
}
