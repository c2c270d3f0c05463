package org.thalweg.packet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.thalweg.finding.Refusal;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.Roof;
import org.thalweg.units.Length;
import org.thalweg.valley.PanSpec;

/** How panels end at every edge of one roof: as asked for a single edge, or else for its kind. */
final class PanelEnds {

    private final Roof roof;
    private final Map<EdgeKind, PanelEnd> byKind;
    private final Map<Integer, PanelEnd> byEdge = new HashMap<>();

    /** Only looked at when valleys widen. */
    private @Nullable ValleyRuns runs;

    /** @param refusals gets one for every name that names no edge */
    PanelEnds(
            Roof roof,
            Map<EdgeKind, PanelEnd> byKind,
            List<LayoutCase.EdgeException> exceptions,
            List<Refusal> refusals) {
        this.roof = roof;
        this.byKind = byKind;
        for (LayoutCase.EdgeException exception : exceptions) {
            List<Integer> named = NamedEdges.of(roof, exception.edge());
            named.forEach(edge -> byEdge.put(edge, exception.end()));
            if (named.isEmpty()) {
                refusals.add(NamedEdges.none(exception.at()));
            }
        }
    }

    PanelEnd of(int edge) {
        PanelEnd ofKind = byKind.getOrDefault(roof.edges().get(edge).kind(), PanelEnd.NONE);
        return byEdge.getOrDefault(edge, ofKind);
    }

    /**
     * The pan of a valley. Where its hold-back is not its own, what widens has narrowed already by as much as there is valley
     * below it in one line.
     */
    PanSpec pan(int edge, ValleyTerms terms) {
        PanSpec pan = terms.pan(of(edge));
        if (pan.widening().rise() == 0
                || (byEdge.containsKey(edge) && of(edge).setback().isPresent())) {
            return pan;
        }
        if (runs == null) {
            runs = new ValleyRuns(roof);
        }
        double below = runs.below(roof.edges().get(edge));
        return below == 0 ? pan : pan.heldBack(pan.heldBackAtTop(Length.metres(below)));
    }

    /** One treatment an edge, in the order of the roof's edges; at valleys the pan says what was not asked for. */
    List<EdgeTreatment> treatments(ValleyTerms terms) {
        List<EdgeTreatment> all = new ArrayList<>(roof.edges().size());
        for (int i = 0; i < roof.edges().size(); i++) {
            Edge edge = roof.edges().get(i);
            boolean valley = edge.kind() == EdgeKind.VALLEY;
            all.add(valley ? terms.treatment(of(i), pan(i, terms), edge.length()) : of(i).treatment());
        }
        return all;
    }
}
