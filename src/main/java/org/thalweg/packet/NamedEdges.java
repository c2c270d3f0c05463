package org.thalweg.packet;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Roof;

/** Finds the edges a caller names. */
final class NamedEdges {

    private NamedEdges() {}

    /** Indices in the roof's edges, ascending; none when no edge has the name or lies between the points. */
    static List<Integer> of(Roof roof, EdgeName name) {
        List<Integer> found = new ArrayList<>(1);
        for (int i = 0; i < roof.edges().size(); i++) {
            if (named(name, roof.edges().get(i), roof)) {
                found.add(i);
            }
        }
        return found;
    }

    /** Why a name at this place of the request can't be used. */
    static Refusal none(Origin at) {
        return Refusal.of(
                RefusalCode.NO_SUCH_EDGE,
                at,
                "No edge of the roof has this name or lies between these points. Ask /v1/roofs which edges it has.");
    }

    private static boolean named(EdgeName name, Edge edge, Roof roof) {
        if (name instanceof EdgeName.ById byId) {
            return byId.id().equals(edge.id());
        }
        if (name instanceof EdgeName.OnlyValley) {
            return edge.kind() == EdgeKind.VALLEY;
        }
        EdgeName.Between line = (EdgeName.Between) name;
        return onLine(edge.from(), line, roof) && onLine(edge.to(), line, roof);
    }

    /** Between the two points a way through this one is no longer than the straight one, but for the tolerance. */
    private static boolean onLine(Point3 point, EdgeName.Between line, Roof roof) {
        double off =
                point.minus(line.from()).cross(line.to().minus(line.from())).length()
                        / line.to().distance(line.from());
        double along = point.minus(line.from()).dot(line.to().minus(line.from()))
                / line.to().distance(line.from());
        double tolerance = roof.tolerance().metres();
        return off <= tolerance && along >= -tolerance && along <= line.to().distance(line.from()) + tolerance;
    }
}
