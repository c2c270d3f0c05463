package org.thalweg.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Tolerance;
import org.thalweg.panel.Panel;
import org.thalweg.panel.PanelLayout;
import org.thalweg.panel.PlanePanels;
import org.thalweg.stock.CoilPlan;
import org.thalweg.stock.CoilRun;
import org.thalweg.stock.Grid;
import org.thalweg.stock.MitredPanel;
import org.thalweg.units.Length;

/**
 * The panels of a layout out of one run of coil, two mitred ends out of one cut where they match.
 *
 * <p>A panel lies on the coil with its upper end to the right, seen from its weather side: its right rib along the lower edge.
 * One that is as wide as the cover and has one straight cut at either end keeps its mitres; any other, ripped or notched, is a
 * blank cut square.
 *
 * @param offer the coil, and how panels may lie on it
 * @param plan  the shortest run, and the one in the order of laying
 */
public record CoilCut(SheetStock.CoilOffer offer, CoilPlan plan) {

    static CoilCut of(PanelLayout layout, Length cover, SheetStock.CoilOffer offer, Tolerance tolerance) {
        List<MitredPanel> panels = new ArrayList<>();
        for (PlanePanels plane : layout.planes()) {
            for (Panel panel : plane.panels()) {
                panels.add(onCoil(panel, cover, tolerance));
            }
        }
        return new CoilCut(offer, CoilPlan.of(panels, offer.turning()));
    }

    /** The run that is ordered. */
    public CoilRun run() {
        return offer.keepOrder() ? plan.inOrder() : plan.best();
    }

    private static MitredPanel onCoil(Panel panel, Length cover, Tolerance tolerance) {
        Ring ring = panel.cut().outer();
        double[] lowest = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] highest = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        boolean straight = panel.cut().openings().isEmpty();
        for (int corner = 0; corner < ring.size(); corner++) {
            boolean left = tolerance.same(ring.across(corner), 0);
            straight = straight && (left || tolerance.same(ring.across(corner), cover.metres()));
            int rib = left ? 0 : 1;
            lowest[rib] = Math.min(lowest[rib], ring.up(corner));
            highest[rib] = Math.max(highest[rib], ring.up(corner));
        }
        if (straight && lowest[0] <= highest[0] && lowest[1] <= highest[1]) {
            long bottom = steps(lowest[1]);
            long top = steps(highest[1]);
            long left = steps(lowest[0]) - bottom;
            long right = steps(highest[0]) - top;
            long lower = top - bottom;
            if (lower + right - left + lower > 0) {
                return new MitredPanel(panel.mark(), lower, left, right);
            }
        }
        double length = Math.max(highest[0], highest[1]) - Math.min(lowest[0], lowest[1]);
        return new MitredPanel(panel.mark(), Math.max(1, Grid.atLeast(Length.metres(length))), 0, 0);
    }

    private static long steps(double up) {
        return Grid.nearest(Length.metres(up));
    }
}
