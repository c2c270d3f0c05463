package org.thalweg.roof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.PlanGrid;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Vector3;

/**
 * Gives lines the kind their caller says they have: every piece that lies between the two points of a named edge,
 * within the tolerance. Of two names for one line the later one counts.
 */
final class NamedLines {

    private final Corners corners;
    private final Pieces pieces;
    private final Lines lines;
    private final Carriers carriers;

    /** The last named edge each corner was found to lie on. */
    private final int[] lyingOn;

    NamedLines(Corners corners, Pieces pieces, Lines lines, Carriers carriers) {
        this.corners = corners;
        this.pieces = pieces;
        this.lines = lines;
        this.carriers = carriers;
        lyingOn = new int[corners.count];
        Arrays.fill(lyingOn, -1);
    }

    /** @throws Refused with every name that names no line */
    void apply(List<NamedEdge> named, PlanGrid grid) {
        List<Refusal> refusals = new ArrayList<>();
        int[] found = new int[corners.count];
        for (int n = 0; n < named.size(); n++) {
            if (!apply(n, named.get(n), grid, found)) {
                refusals.add(Refusal.of(
                        RefusalCode.NO_SUCH_EDGE,
                        named.get(n).at(),
                        "No edge of the roof lies between these two points. Name two corners with a straight edge "
                                + "between them."));
            }
        }
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
    }

    private boolean apply(int number, NamedEdge edge, PlanGrid grid, int[] found) {
        int on = cornersOn(number, edge, grid, found);
        boolean any = false;
        for (int i = 0; i < on; i++) {
            for (int p = carriers.first(found[i]); p >= 0; p = carriers.next(p)) {
                if (lyingOn[pieces.to[p]] == number) {
                    lines.kind[lines.line[p]] = edge.kind();
                    any = true;
                }
            }
        }
        return any;
    }

    /** Fills {@code found} with the corners on the straight line between the points of a name; returns how many. */
    private int cornersOn(int number, NamedEdge edge, PlanGrid grid, int[] found) {
        Point3 datum = corners.datum();
        Vector3 from = edge.from().minus(datum);
        Vector3 run = edge.to().minus(edge.from());
        int near = grid.along(from.x(), from.y(), from.x() + run.x(), from.y() + run.y(), corners.reach, found);
        int on = 0;
        for (int i = 0; i < near; i++) {
            Vector3 step =
                    new Vector3(corners.x[found[i]], corners.y[found[i]], corners.z[found[i]]).plus(from.times(-1));
            double length = Math.max(run.dot(run), Double.MIN_NORMAL);
            double at = Math.max(0, Math.min(1, step.dot(run) / length));
            if (step.plus(run.times(-at)).length() <= corners.reach) {
                lyingOn[found[i]] = number;
                found[on++] = found[i];
            }
        }
        return on;
    }
}
