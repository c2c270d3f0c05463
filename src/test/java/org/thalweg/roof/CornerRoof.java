package org.thalweg.roof;

import java.util.List;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Tolerance;
import org.thalweg.geometry.Vector3;
import org.thalweg.units.Pitch;

/**
 * Two planes over a corner in plan, with a hip or a valley between them, built from nothing but where the two planes are
 * level with each other.
 *
 * <pre>
 *        B
 *       /      P           O, A and B at one height; OA the eave (of a valley: the ridge) of plane 1, OB of plane 2;
 *      /    .              P where both planes have risen (of a valley: fallen) alike,
 *     /  .                 a given level run off OA
 *    O ----------- A
 * </pre>
 */
final class CornerRoof {

    final Roof roof;
    final Edge edge;
    private final double run1;
    private final double cornerRadians;

    /**
     * @param tan1      rise over run of plane 1
     * @param tan2      rise over run of plane 2
     * @param cornerDeg angle AOB in plan
     * @param run1      level run from OA to P, metres
     * @param valley    whether the planes fall from the corner's sides to the line, or rise to it
     */
    CornerRoof(double tan1, double tan2, double cornerDeg, double run1, boolean valley) {
        this.run1 = run1;
        cornerRadians = Math.toRadians(cornerDeg);
        double cos = Math.cos(cornerRadians);
        double sin = Math.sin(cornerRadians);
        // On plane 1 z = tan1 · y, on plane 2 z = tan2 · (x sin − y cos): alike along (tan1 + tan2 cos, tan2 sin).
        double stretch = run1 / (tan2 * sin);
        Point3 p = new Point3(stretch * (tan1 + tan2 * cos), run1, (valley ? -1 : 1) * tan1 * run1);
        double side = 1.5 * Math.hypot(p.x(), p.y());
        Point3 o = new Point3(0, 0, 0);
        Point3 a = new Point3(side, 0, 0);
        Point3 b = new Point3(side * cos, side * sin, 0);
        roof = Roofs.read(new RoofSurvey(
                List.of(plane("one", o, a, p), plane("two", o, p, b)),
                List.of(),
                Tolerance.DEFAULT,
                new Pitch(0, 12),
                Source.COMMON_PRACTICE));
        edge = roof.edges().stream().filter(Edge::shared).findFirst().orElseThrow();
    }

    private static PlaneOutline plane(String id, Point3... corners) {
        return new PlaneOutline(id, List.of(corners), List.of(), Origin.REQUEST, Origin.REQUEST);
    }

    private Plane plane(int number) {
        return roof.planes().get(number - 1);
    }

    double pitchDeg(int plane) {
        return plane(plane).slope().inDegrees();
    }

    /** Angle in the plane from its level line to the hip or valley. */
    double mitreDeg(int plane) {
        return edge.sides().get(plane - 1).mitre().inDegrees();
    }

    double slopeDeg() {
        return edge.slope().inDegrees();
    }

    double bendDeg() {
        return edge.bend().inDegrees();
    }

    double length() {
        return edge.length().metres();
    }

    /** Length over level run of plane 1. */
    double lengthPerRun() {
        return length() / run1;
    }

    /** Level length over level run of plane 1. */
    double levelLengthPerRun() {
        return levelLength() / run1;
    }

    double levelLength() {
        return Math.hypot(run().x(), run().y());
    }

    double rise() {
        return Math.abs(run().z());
    }

    /** Level run of plane 2, from its eave to P. */
    double run2() {
        return levelLength() * Math.sin(cornerRadians - Math.toRadians(planDeg(1)));
    }

    /** Angle in plan from a plane's eave to the hip or valley. */
    double planDeg(int plane) {
        double fromFirst = Math.toDegrees(Math.atan2(run().y(), run().x()));
        return plane == 1 ? fromFirst : Math.toDegrees(cornerRadians) - fromFirst;
    }

    /** Length of the plane along its fall line, from the eave to P. */
    double common(int plane) {
        return plane(plane).shape().outer().mostUp();
    }

    /** True length over level run along the fall line. */
    double slopeFactor(int plane) {
        return 1 / plane(plane).slope().cos();
    }

    /** How much a panel of this cover gets longer than its neighbour. */
    double step(int plane, double cover) {
        return cover * edge.sides().get(plane - 1).mitre().tan();
    }

    /** Angle in a section square to the hip or valley, from level to the plane. */
    double backingDeg(int plane) {
        Vector3 line = run().unit();
        Vector3 inPlane = plane(plane).frame().outward().cross(line);
        Vector3 level = new Vector3(-line.y(), line.x(), 0).unit();
        return Math.toDegrees(Math.atan2(inPlane.cross(level).length(), Math.abs(inPlane.dot(level))));
    }

    /** From O to P. */
    private Vector3 run() {
        Point3 o = new Point3(0, 0, 0);
        return edge.from().distance(o) < edge.to().distance(o)
                ? edge.to().minus(edge.from())
                : edge.from().minus(edge.to());
    }
}
