package org.thalweg.trim;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Vector3;
import org.thalweg.trim.Meeting.How;
import org.thalweg.units.Length;

/**
 * Trims bent and cut, set up in the world: the oracle of mitres. It knows a trim by its seat, its section and its cuts, and
 * nothing of how the cuts were found.
 */
final class CutEnds {

    private CutEnds() {}

    /**
     * One side of a trim's bend at one end.
     *
     * @param beyond  whether it is the side beyond the bend
     * @param meeting what it meets
     * @param lines   where its mould lines were cut, from the bend outward; world, metres
     */
    record Arm(Trim trim, boolean atStart, boolean beyond, Meeting meeting, List<Point3> lines) {

        boolean mitred() {
            return meeting.how() == How.MITRED;
        }
    }

    /** Every side of every end. */
    static List<Arm> arms(Trim trim) {
        List<Arm> arms = new ArrayList<>(4);
        for (boolean atStart : new boolean[] {true, false}) {
            TrimEnd end = atStart ? trim.start() : trim.finish();
            int legs = legsBefore(trim);
            List<Point3> before = new ArrayList<>();
            List<Point3> after = new ArrayList<>();
            for (LegCut cut : end.cuts()) {
                List<Point3> side = cut.leg() < legs ? before : after;
                if (side.isEmpty()) {
                    side.add(place(trim, atStart, cut.leg(), cut.inner()));
                }
                side.add(place(trim, atStart, cut.leg() + 1, cut.outer()));
            }
            Collections.reverse(before);
            arms.add(new Arm(trim, atStart, false, end.first(), before));
            arms.add(new Arm(trim, atStart, true, end.last(), after));
        }
        return arms;
    }

    /** The legs before the bend at the edge: the last of them lies along the first plane. */
    private static int legsBefore(Trim trim) {
        for (int leg = trim.section().size() - 2; leg > 0; leg--) {
            double dx = trim.section().get(leg).across()
                    - trim.section().get(leg - 1).across();
            double dy =
                    trim.section().get(leg).up() - trim.section().get(leg - 1).up();
            if (dx > 0 && Math.abs(dy) < 1e-9) {
                return leg;
            }
        }
        throw new AssertionError("no leg along the plane: " + trim.section());
    }

    private static Point3 place(Trim trim, boolean atStart, int line, Length reach) {
        Length fromStart = atStart
                ? Length.metres(-reach.metres())
                : Length.metres(trim.seat().length().metres() + reach.metres());
        return trim.seat().inWorld(trim.section().get(line), fromStart);
    }

    /** The side that meets this one, of the trims of the same roof. */
    static Optional<Arm> met(Arm own, List<Trim> trims) {
        return trims.stream()
                .filter(trim -> trim.index() == own.meeting.edge())
                .flatMap(trim -> arms(trim).stream())
                .filter(arm -> arm.mitred() && arm.meeting.edge() == own.trim.index())
                .filter(arm -> corner(arm).distance(corner(own)) < 1e-9)
                .filter(arm -> onTwoPlanes(own) || own.beyond == arm.beyond)
                .min(Comparator.comparingDouble(arm -> off(own).cross(off(arm)).length()));
    }

    private static Point3 corner(Arm arm) {
        return arm.atStart ? arm.trim.seat().start() : arm.trim.seat().finish();
    }

    /** Whether what its legs lie on are both roof planes: then the other side is the one that lies most nearly in the same. */
    private static boolean onTwoPlanes(Arm arm) {
        return Family.of(arm.trim.edge().kind()).orElseThrow().onTwoPlanes();
    }

    private static Vector3 off(Arm arm) {
        return arm.beyond ? arm.trim.seat().upBeyond() : arm.trim.seat().up();
    }

    /** How far apart the two ends are at worst, line by line; both have as many. */
    static double gap(Arm one, Arm other) {
        double worst = 0;
        for (int i = 0; i < one.lines.size(); i++) {
            worst = Math.max(worst, one.lines.get(i).distance(other.lines.get(i)));
        }
        return worst;
    }

    /** How far the cut across the leg next to the bend is at worst from lying in line with that of the other. */
    static double outOfLine(Arm one, Arm other) {
        Point3 from = one.lines.get(0);
        Vector3 along = one.lines.get(1).minus(from).unit();
        double worst = 0;
        for (Point3 point : other.lines.subList(0, 2)) {
            worst = Math.max(worst, point.minus(from).cross(along).length());
        }
        return worst;
    }

    /** Whether the two lie in faces that meet in a line one can tell, or in one face exactly. */
    static boolean facesMeet(Arm one, Arm other) {
        double sine = off(one).cross(off(other)).length();
        return sine < 1e-12 || sine > Math.sin(Math.toRadians(1));
    }
}
