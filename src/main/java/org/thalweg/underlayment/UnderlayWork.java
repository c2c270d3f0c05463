package org.thalweg.underlayment;

import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;
import org.thalweg.units.Count;

/** How many sheets an underlayment may take, known before any is laid. */
public final class UnderlayWork {

    /** Most sheets of underlayment and ice barrier together, about: runs and rolls are counted as if none were shared. */
    public static final int MOST_SHEETS = 100_000;

    private UnderlayWork() {}

    /**
     * Refuses a roof that takes more sheets than are laid in one request.
     *
     * @param at where in the request the roof stands
     */
    public static void check(Roof roof, UnderlayCase asked, Origin at) {
        Roll roll = asked.roll();
        double sheets = 0;
        for (Plane plane : roof.planes()) {
            Ring outer = plane.shape().outer();
            sheets += sheets(plane.shape(), roll, outer.mostUp(), outer.mostAcross());
        }
        if (asked.ice().isPresent()) {
            IceSpec ice = asked.ice().get();
            for (Edge edge : roof.edges()) {
                sheets += sheets(roof, edge, ice);
            }
        }
        if (sheets > MOST_SHEETS) {
            throw new Refused(Refusal.of(
                    RefusalCode.TOO_MANY_SHEETS,
                    at,
                    "The roof takes about {actual} sheets of underlayment; at most {limit} are laid in one request. Check the"
                            + " units and the roll, or lay the roof in parts.",
                    new Count(Math.round(sheets)),
                    new Count(MOST_SHEETS)));
        }
    }

    private static double sheets(Roof roof, Edge edge, IceSpec ice) {
        Roll roll = ice.roll();
        boolean eave = edge.kind() == EdgeKind.EAVE || edge.kind() == EdgeKind.ANGLED_EAVE;
        if (!eave) {
            boolean strip = edge.kind() == EdgeKind.VALLEY && ice.valley().metres() > 0;
            return strip
                    ? courses(roll, ice.valley().metres())
                            * rolls(roll, edge.length().metres())
                    : 0;
        }
        Plane plane = roof.planes().get(edge.sides().get(0).plane());
        Ring outer = plane.shape().outer();
        double size = Math.hypot(outer.mostUp(), outer.mostAcross());
        return sheets(
                plane.shape(),
                roll,
                Math.min(size, ice.width(plane.slope(), edge.slope()).metres()),
                size);
    }

    /** Every two crossings of a course with a side may make a run, every run takes a sheet for each roll's length. */
    private static double sheets(Region shape, Roll roll, double height, double length) {
        double courses = courses(roll, height);
        double sides = shape.outer().size()
                + shape.openings().stream().mapToInt(Ring::size).sum();
        double crossings = sides;
        crossings += risen(shape.outer(), roll, height);
        for (Ring opening : shape.openings()) {
            crossings += risen(opening, roll, height);
        }
        return crossings / 2 + courses * rolls(roll, length);
    }

    private static double risen(Ring ring, Roll roll, double height) {
        double risen = 0;
        for (int i = 0; i < ring.size(); i++) {
            double across = ring.across(ring.next(i)) - ring.across(i);
            double up = ring.up(ring.next(i)) - ring.up(i);
            risen += Math.min(height, Math.hypot(across, up)) / roll.exposure();
        }
        return risen;
    }

    private static double courses(Roll roll, double height) {
        return 1 + height / roll.exposure();
    }

    private static double rolls(Roll roll, double length) {
        return 1 + length / (roll.length().metres() - roll.endLap().metres());
    }
}
