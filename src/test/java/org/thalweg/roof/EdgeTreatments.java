package org.thalweg.roof;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How panels end at every edge of a roof, as a test says it: by the edge's kind, or for a single edge.
 */
public final class EdgeTreatments {

    /** Every panel ends on the roof line. */
    public static final EdgeTreatments PLAIN = new EdgeTreatments(Map.of(), Map.of());

    private final Map<EdgeKind, EdgeTreatment> byKind;
    private final Map<Integer, EdgeTreatment> byEdge;

    /**
     * @param byKind what each kind gets; kinds not named end on the line
     * @param byEdge what single edges get instead, by index in {@link Roof#edges}
     */
    public EdgeTreatments(Map<EdgeKind, EdgeTreatment> byKind, Map<Integer, EdgeTreatment> byEdge) {
        this.byKind = byKind.isEmpty() ? Map.of() : new EnumMap<>(byKind);
        this.byEdge = Map.copyOf(byEdge);
    }

    /** One treatment an edge, in the order of {@link Roof#edges}. */
    public List<EdgeTreatment> of(Roof roof) {
        EdgeTreatment[] all = new EdgeTreatment[roof.edges().size()];
        for (int i = 0; i < all.length; i++) {
            EdgeTreatment ofKind = byKind.getOrDefault(roof.edges().get(i).kind(), EdgeTreatment.PLAIN);
            all[i] = byEdge.getOrDefault(i, ofKind);
        }
        return List.of(all);
    }
}
