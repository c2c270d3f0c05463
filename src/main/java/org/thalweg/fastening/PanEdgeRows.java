package org.thalweg.fastening;

import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Tolerance;
import org.thalweg.panel.PlanePanels;
import org.thalweg.roof.Plane;
import org.thalweg.units.Length;
import org.thalweg.valley.OffsetLine;
import org.thalweg.valley.ValleyLayout;
import org.thalweg.valley.ValleySide;

/**
 * The rows that hold the pans of valleys on one plane, along their outer edges. They stand where a valley looked at alone has
 * them, as far as that is on the plane and out of the water: of the pan's own, and of other valleys' the plane runs down to.
 */
final class PanEdgeRows {

    private final FasteningCase asked;
    private final PlanePanels laid;
    private final Plane plane;
    private final Region deck;
    private final WaterWays water;
    private final RowLine line;
    private final List<FastenerRow> rows;
    private final List<Finding> findings;
    private final Tolerance tolerance;

    PanEdgeRows(
            FasteningCase asked,
            PlanePanels laid,
            Region deck,
            WaterWays water,
            RowLine line,
            List<FastenerRow> rows,
            List<Finding> findings) {
        this.asked = asked;
        this.laid = laid;
        this.plane = asked.roof().planes().get(laid.plane());
        this.deck = deck;
        this.water = water;
        this.line = line;
        this.rows = rows;
        this.findings = findings;
        this.tolerance = asked.roof().tolerance();
    }

    void add() {
        for (ValleyLayout valley : asked.valleys()) {
            for (ValleySide side : valley.sides()) {
                if (side.seen().plane() == laid.plane()) {
                    side.panScrewLine().ifPresent(screws -> add(valley, side, screws));
                }
            }
        }
    }

    private void add(ValleyLayout valley, ValleySide side, OffsetLine screws) {
        Point2 lower = turned(screws.from());
        Point2 upper = turned(screws.to());
        line.lay(lower.across(), lower.up(), upper.across(), upper.up(), 0);
        line.whole(0, screws.length().metres());
        line.inside(deck, 0, 0);
        Point2 foot = turned(side.seen().foot());
        double off = Math.abs(line.off(foot.across(), foot.up()));
        if (off < side.heldBack().metres() - tolerance.hair()) {
            inTheWater(valley, side, off);
        }
        water.takeOutOf(line);
        Stretches left = line.left();
        if (left.count() == 0) {
            return;
        }
        double from = left.from(left.longest());
        double to = left.to(left.longest());
        left.shorten(asked.rules().edgeDistance().metres());
        if (left.count() == 0) {
            tooShort(valley, to - from);
            add(valley, from, to, EvenRow.middle(Length.metres(to - from)));
        }
        for (int i = 0; i < left.count(); i++) {
            add(valley, left.from(i), left.to(i), row(left.to(i) - left.from(i)));
        }
    }

    private EvenRow row(double free) {
        FasteningRules rules = asked.rules();
        return EvenRow.between(
                Length.metres(free), rules.of(FastenerKind.PAN_EDGE).maxSpacing(), rules.edgeDistance(), tolerance);
    }

    private void add(ValleyLayout valley, double from, double to, EvenRow row) {
        boolean rightward = line.rightward();
        rows.add(new FastenerRow(
                FastenerKind.PAN_EDGE,
                laid.plane(),
                Optional.empty(),
                valley.edge().index(),
                line.at(rightward ? from : to),
                line.at(rightward ? to : from),
                row));
    }

    private void tooShort(ValleyLayout valley, double length) {
        findings.add(Finding.of(
                FindingCode.ROW_TOO_SHORT,
                valley.edge().place(),
                "The edge of the pan of valley {place} has {actual} to fasten it along, too little to stand {limit} from its"
                        + " ends. One fastener is put in its middle.",
                Length.metres(length),
                asked.rules().edgeDistance(),
                asked.rules().distances()));
    }

    private void inTheWater(ValleyLayout valley, ValleySide side, double off) {
        findings.add(Finding.of(
                FindingCode.FASTENER_IN_WATER_WAY,
                valley.edge().place(),
                "The edge of the pan of valley {place} would be fastened {actual} from its low, where water runs: the panels"
                        + " stop {limit} from it. Those fasteners are left out. Take a wider coil, or hold the panels back"
                        + " less.",
                Length.metres(off),
                side.heldBack(),
                Source.GEOMETRY));
    }

    private Point2 turned(Point2 place) {
        return laid.frame().from(plane.frame(), place);
    }
}
