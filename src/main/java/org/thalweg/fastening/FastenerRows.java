package org.thalweg.fastening;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Place;
import org.thalweg.geometry.Region;
import org.thalweg.panel.PlanePanels;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Plane;
import org.thalweg.units.Length;

/**
 * Every row of fasteners of a laid roof.
 *
 * <p>Always true: the fasteners of a row stand evenly, never further apart than its kind may; every one stands on the plane
 * and on the metal it holds, one through a panel stands clear of the panel's ribs, and none stands in the water way of a
 * valley.
 *
 * <p>Known limits: where two edges of a kind run on straight each has a row of its own. A row that an obstacle breaks is
 * several, each even by itself, and a part of it too short for its edge distance has none.
 *
 * @param rows     plane by plane in the order of the layout: panel by panel, then along the edges, then the edges of pans
 * @param findings what a crew should know of them
 */
public record FastenerRows(List<FastenerRow> rows, List<Finding> findings) {

    public FastenerRows {
        rows = List.copyOf(rows);
        findings = List.copyOf(findings);
    }

    public static FastenerRows of(FasteningCase asked) {
        List<FastenerRow> rows = new ArrayList<>();
        List<Finding> findings = new ArrayList<>(0);
        RowLine line = new RowLine(asked.roof().tolerance());
        for (PlanePanels laid : asked.panels().planes()) {
            Plane plane = asked.roof().planes().get(laid.plane());
            Region deck = laid.frame().from(plane.frame(), plane.shape());
            WaterWays water = new WaterWays(
                    deck, asked.roof().edges(), asked.treatments(), asked.roof().tolerance());
            new PlaneRows(asked, laid, deck, water, line, rows, findings).add();
            new PanEdgeRows(asked, laid, deck, water, line, rows, findings).add();
        }
        addUnlapped(asked, findings);
        return new FastenerRows(rows, findings);
    }

    /** Screws of such a lap stand their inset above the line; panels from below must run past it by more. */
    private static void addUnlapped(FasteningCase asked, List<Finding> findings) {
        Length reach = asked.rules().of(FastenerKind.END_LAP).inset();
        for (int i = 0; i < asked.roof().edges().size(); i++) {
            Edge edge = asked.roof().edges().get(i);
            Length setback = asked.treatments().get(i).setback();
            if (edge.kind() == EdgeKind.FLUSH && -setback.metres() <= reach.metres()) {
                findings.add(Finding.of(
                        FindingCode.FLUSH_NOT_LAPPED,
                        new Place(Place.Kind.EDGE, edge.id(), edge.at()),
                        "At edge {place} the roof runs on in one plane, and the panels of both sides end there with a set-back of"
                                + " {actual}: those from below do not reach under the screws counted there. Give the edge a set-back"
                                + " below {limit}, so that they lap, or measure the two planes as one.",
                        setback,
                        Length.metres(-reach.metres()),
                        asked.rules().of(FastenerKind.END_LAP).source()));
            }
        }
    }

    /** How many fasteners there are of each kind that has any, in the order their first rows stand in. */
    public Map<FastenerKind, Integer> counts() {
        int[] counts = new int[FastenerKind.values().length];
        Map<FastenerKind, Integer> found = new LinkedHashMap<>();
        for (FastenerRow row : rows) {
            if (counts[row.kind().ordinal()] == 0) {
                found.put(row.kind(), 0);
            }
            counts[row.kind().ordinal()] += row.count();
        }
        found.replaceAll((kind, none) -> counts[kind.ordinal()]);
        return found;
    }

    /** How many fasteners there are of a kind. */
    public int count(FastenerKind kind) {
        return counts().getOrDefault(kind, 0);
    }
}
