package org.thalweg.fastening;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.finding.Finding;
import org.thalweg.geometry.Region;
import org.thalweg.panel.PlanePanels;
import org.thalweg.roof.Plane;

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
        return new FastenerRows(rows, findings);
    }

    /** How many fasteners there are of a kind. */
    public int count(FastenerKind kind) {
        return rows.stream()
                .filter(row -> row.kind() == kind)
                .mapToInt(FastenerRow::count)
                .sum();
    }
}
