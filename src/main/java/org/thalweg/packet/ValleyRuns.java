package org.thalweg.packet;

import java.util.HashMap;
import java.util.Map;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Vector3;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Roof;

/**
 * Valleys that go on in one line, as one does that a third plane meets half-way. What widens down a valley widens down the
 * whole line.
 */
final class ValleyRuns {

    /** Lines that turn by less than a degree go on. */
    private static final double IN_LINE = Math.cos(Math.toRadians(1));

    private final Map<Point3, Edge> byHead = new HashMap<>();

    ValleyRuns(Roof roof) {
        for (Edge edge : roof.edges()) {
            if (edge.kind() == EdgeKind.VALLEY) {
                byHead.put(head(edge), edge);
            }
        }
    }

    /** How much valley lies below a valley's foot in line with it. Metres. */
    double below(Edge valley) {
        double below = 0;
        Edge above = valley;
        Edge next = byHead.get(foot(above));
        while (next != null && inLine(next, above)) {
            below += next.length().metres();
            above = next;
            next = byHead.get(foot(above));
        }
        return below;
    }

    private static boolean inLine(Edge lower, Edge upper) {
        return direction(lower).dot(direction(upper)) > IN_LINE;
    }

    private static Vector3 direction(Edge edge) {
        return head(edge).minus(foot(edge)).unit();
    }

    private static Point3 foot(Edge edge) {
        return edge.from().z() <= edge.to().z() ? edge.from() : edge.to();
    }

    private static Point3 head(Edge edge) {
        return edge.from().z() <= edge.to().z() ? edge.to() : edge.from();
    }
}
