package org.thalweg.fastening;

import java.util.List;
import java.util.Optional;
import org.thalweg.fastening.FasteningRules.RowRule;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Place;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Side;
import org.thalweg.geometry.Tolerance;
import org.thalweg.panel.Cut;
import org.thalweg.panel.Panel;
import org.thalweg.panel.PlanePanels;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.Plane;
import org.thalweg.units.Length;

/**
 * The rows along the edges of one plane. Where panels are pierced every cut of every panel has a row of its own, between its
 * ribs; where a strip or a cleat runs on, every side of the finished plane has one.
 *
 * <p>A row ends where its metal does, less the edge distance. At an obtuse corner it ends where it would meet the row of the
 * next side, and at a corner that turns back into the metal it ends square. Metal that runs past the plane holds nothing
 * there: fasteners stand on the plane as well as on the metal.
 */
final class PlaneRows {

    /** Sides that turn by less than a degree run on straight, and within a degree of square they are square. */
    private static final double STRAIGHT = Math.sin(Math.toRadians(1));

    private final FasteningCase asked;
    private final PlanePanels laid;
    private final Plane plane;
    private final Region deck;
    private final WaterWays water;

    /** How far panels run past each edge, metres. */
    private final double[] pastLine;

    /** Whether they run past any of this plane. Where a corner of it is turned by that, metal lies outside in odd places. */
    private final boolean overhangs;

    private final RowLine line;
    private final List<FastenerRow> rows;
    private final List<Finding> findings;
    private final Tolerance tolerance;

    /** From what ends a row to its first fastener, metres. */
    private final double apart;

    /** Where along its line a row may begin and end, with the distances kept that its side's corners ask for. */
    private double begin;

    private double finish;

    /**
     * One side of the metal, moved to where it lies on the plane.
     *
     * @param metal what it is a side of
     * @param ring  the ring of that which has it
     * @param side  its number there
     * @param panel what is pierced, if a panel is
     */
    private record Metal(Region metal, Ring ring, int side, Optional<Panel> panel, double acrossBy, double upBy) {

        double across(int corner) {
            return ring.across(corner) + acrossBy;
        }

        double up(int corner) {
            return ring.up(corner) + upBy;
        }

        int tag() {
            return ring.tag(side);
        }

        int before() {
            return side == 0 ? ring.size() - 1 : side - 1;
        }
    }

    PlaneRows(
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
        this.pastLine = pastLine(asked.treatments());
        this.overhangs = overhangs(deck.outer()) || deck.openings().stream().anyMatch(this::overhangs);
        this.apart = asked.rules().edgeDistance().metres();
    }

    void add() {
        for (Panel panel : laid.panels()) {
            addSides(
                    panel.finished(),
                    Optional.of(panel),
                    panel.place().across(),
                    panel.place().up());
        }
        for (Region finished : laid.finished()) {
            addSides(finished, Optional.empty(), 0, 0);
        }
    }

    private void addSides(Region metal, Optional<Panel> panel, double acrossBy, double upBy) {
        addSides(metal, metal.outer(), panel, acrossBy, upBy);
        for (Ring opening : metal.openings()) {
            addSides(metal, opening, panel, acrossBy, upBy);
        }
    }

    private void addSides(Region metal, Ring ring, Optional<Panel> panel, double acrossBy, double upBy) {
        for (int side = 0; side < ring.size(); side++) {
            if (ring.tag(side) != Side.RIB) {
                Optional<FastenerKind> kind = kind(ring, side);
                if (kind.isPresent() && kind.get().throughPanel() == panel.isPresent()) {
                    add(kind.get(), new Metal(metal, ring, side, panel, acrossBy, upBy));
                }
            }
        }
    }

    private Optional<FastenerKind> kind(Ring ring, int side) {
        Cut.End end = end(ring, side);
        int edge = ring.tag(side);
        if (edge < 0) {
            return edge == Side.LAP && end == Cut.End.LOWER ? Optional.of(FastenerKind.END_LAP) : Optional.empty();
        }
        return FastenerKind.at(
                asked.roof().edges().get(edge).kind(), end, asked.holds().get(edge));
    }

    /** Which end of the metal a side is; metal lies to its left. */
    private Cut.End end(Ring ring, int side) {
        int next = ring.next(side);
        if (tolerance.same(ring.across(side), ring.across(next))) {
            return ring.up(next) > ring.up(side) ? Cut.End.RIGHT : Cut.End.LEFT;
        }
        return ring.across(next) > ring.across(side) ? Cut.End.LOWER : Cut.End.UPPER;
    }

    private void add(FastenerKind kind, Metal own) {
        int next = own.ring.next(own.side);
        double inset = inset(kind, own.tag());
        double length = line.lay(own.across(own.side), own.up(own.side), own.across(next), own.up(next), inset);
        if (length <= tolerance.metres()) {
            return;
        }
        line.whole(start(own, inset), end(own, length, inset));
        line.inside(own.metal, own.acrossBy, own.upBy);
        if (overhangs) {
            line.inside(deck, 0, 0);
        }
        water.takeOutOf(line);
        own.panel.ifPresent(panel -> betweenRibs(panel.place().across()));
        Stretches left = line.left();
        if (left.count() == 0) {
            noRoom(own, length);
            return;
        }
        int longest = left.longest();
        double from = left.from(longest);
        double to = left.to(longest);
        keepApart(own, inset);
        if (overhangs) {
            keepOnDeck(own.tag(), inset);
        }
        if (left.count() == 0) {
            tooShort(own, to - from);
            add(kind, own, from, to, EvenRow.middle(Length.metres(to - from)));
        }
        for (int i = 0; i < left.count(); i++) {
            add(kind, own, left.from(i), left.to(i), row(kind, left.to(i) - left.from(i)));
        }
    }

    private void betweenRibs(double leftRib) {
        double clearance = asked.rules().ribClearance().metres();
        line.between(leftRib + clearance, leftRib + asked.spec().cover().metres() - clearance);
    }

    private EvenRow row(FastenerKind kind, double free) {
        FasteningRules rules = asked.rules();
        return EvenRow.between(Length.metres(free), rules.of(kind).maxSpacing(), rules.edgeDistance(), tolerance);
    }

    private void add(FastenerKind kind, Metal own, double from, double to, EvenRow row) {
        boolean rightward = line.rightward();
        rows.add(new FastenerRow(
                kind,
                laid.plane(),
                own.panel,
                own.tag(),
                line.at(rightward ? from : to),
                line.at(rightward ? to : from),
                row));
    }

    /** From the side to the line. */
    private double inset(FastenerKind kind, int edge) {
        RowRule rule = asked.rules().of(kind);
        double inset = rule.inset().metres();
        if (edge < 0) {
            return Math.min(inset, asked.spec().endLap().metres() / 2);
        }
        return Math.max(inset, kind == FastenerKind.CLOSURE ? hipClosure(edge, inset) : 0) + pastLine[edge];
    }

    /** Closures of a hip stand where its cap ends, and their screws as far inside them as those of others. */
    private double hipClosure(int edge, double inset) {
        boolean hip = asked.roof().edges().get(edge).kind() == EdgeKind.HIP;
        return hip && asked.hipClosure().isPresent()
                ? asked.hipClosure().get().metres()
                        - asked.treatments().get(edge).setback().metres()
                        - inset
                : 0;
    }

    private static double[] pastLine(List<EdgeTreatment> treatments) {
        double[] past = new double[treatments.size()];
        for (int i = 0; i < past.length; i++) {
            EdgeTreatment treatment = treatments.get(i);
            double nearest = Math.min(
                    treatment.setback().metres(), treatment.setbackAtTop().metres());
            past[i] = Math.max(0, -nearest);
        }
        return past;
    }

    private boolean overhangs(Ring ring) {
        for (int side = 0; side < ring.size(); side++) {
            int tag = ring.tag(side);
            if (tag >= 0 && pastLine[tag] > 0) {
                return true;
            }
        }
        return false;
    }

    /** Where the line may start at the earliest, from the foot of its side's first corner; a rib may end it further out. */
    private double start(Metal own, double inset) {
        int before = own.before();
        double away = -line.along(own.across(before), own.up(before));
        if (own.ring.tag(before) == Side.RIB) {
            begin = Double.NEGATIVE_INFINITY;
            return Math.min(0, -away);
        }
        begin = shortOf(away, line.off(own.across(before), own.up(before)) + inset, inset);
        return 0;
    }

    /** Where it may end at the latest. */
    private double end(Metal own, double length, double inset) {
        int next = own.ring.next(own.side);
        int after = own.ring.next(next);
        double away = line.along(own.across(after), own.up(after)) - length;
        if (own.ring.tag(next) == Side.RIB) {
            finish = Double.POSITIVE_INFINITY;
            return Math.max(length, length + away);
        }
        finish = length - shortOf(away, line.off(own.across(after), own.up(after)) + inset, inset);
        return length;
    }

    /**
     * How far short of a corner the row ends: where the next side runs on straight or turns back into the metal, by the edge
     * distance; at an obtuse corner where two rows with one inset would meet [geometry: inset · cot β/2]. At a square or sharper one
     * the distance from the next side tells.
     *
     * @param away how far the next side runs on
     * @param in   how far it turns in
     */
    private double shortOf(double away, double in, double inset) {
        double length = Math.sqrt(away * away + in * in);
        if (in < 0 || (in < STRAIGHT * length && away > 0)) {
            return apart;
        }
        return away > STRAIGHT * length ? inset * in / (length + away) : Double.NEGATIVE_INFINITY;
    }

    /** Takes the edge distance from everything the row ends on. */
    private void keepApart(Metal own, double inset) {
        line.left().keep(begin, finish);
        keepApart(own.metal.outer(), own.acrossBy, own.upBy, inset);
        for (Ring opening : own.metal.openings()) {
            keepApart(opening, own.acrossBy, own.upBy, inset);
        }
    }

    private void keepOnDeck(int own, double inset) {
        keepOnDeck(deck.outer(), own, inset);
        for (Ring opening : deck.openings()) {
            keepOnDeck(opening, own, inset);
        }
    }

    private void keepApart(Ring ring, double acrossBy, double upBy, double inset) {
        for (int side = 0; side < ring.size(); side++) {
            if (ring.tag(side) != Side.RIB) {
                keepApart(ring, side, acrossBy, upBy, inset);
            }
        }
    }

    /** Metal that stops short of the plane's edge keeps fasteners off it; where it runs past it does not. */
    private void keepOnDeck(Ring ring, int own, double inset) {
        for (int side = 0; side < ring.size(); side++) {
            int tag = ring.tag(side);
            if (tag >= 0 && tag != own && pastLine[tag] > 0) {
                keepApart(ring, side, 0, 0, inset);
            }
        }
    }

    private void keepApart(Ring ring, int side, double acrossBy, double upBy, double inset) {
        int next = ring.next(side);
        double fromAcross = ring.across(side) + acrossBy;
        double fromUp = ring.up(side) + upBy;
        double toAcross = ring.across(next) + acrossBy;
        double toUp = ring.up(next) + upBy;
        double behind = tolerance.hair() - inset;
        if (line.off(fromAcross, fromUp) > behind || line.off(toAcross, toUp) > behind) {
            line.clearOf(fromAcross, fromUp, toAcross, toUp, apart);
        }
    }

    private void tooShort(Metal own, double length) {
        findings.add(Finding.of(
                FindingCode.ROW_TOO_SHORT,
                place(own),
                (own.panel.isPresent()
                                ? "The row of fasteners of {place} at " + where(own.tag())
                                : "A row of fasteners at edge {place}")
                        + " has {actual} of line, too little to stand {limit} from what ends it on either side. One fastener is put"
                        + " in its middle; hold the piece by sealant or a rivet besides.",
                Length.metres(length),
                asked.rules().edgeDistance(),
                asked.rules().distances()));
    }

    private void noRoom(Metal own, double length) {
        findings.add(Finding.of(
                FindingCode.ROW_TOO_SHORT,
                place(own),
                "At " + where(own.tag())
                        + " {place} has an end of {actual} with no room for a fastener that stands on it and {limit} off"
                        + " the ribs. Hold it by sealant or a rivet.",
                Length.metres(length),
                asked.rules().ribClearance(),
                asked.rules().distances()));
    }

    private String where(int edge) {
        return edge < 0
                ? "its end lap"
                : "edge " + asked.roof().edges().get(edge).id();
    }

    private Place place(Metal own) {
        if (own.panel.isPresent()) {
            return new Place(Place.Kind.PANEL, own.panel.get().mark(), plane.at());
        }
        Edge edge = asked.roof().edges().get(own.tag());
        return new Place(Place.Kind.EDGE, edge.id(), edge.at());
    }
}
