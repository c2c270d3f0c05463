package org.thalweg.valley;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Angle;
import org.thalweg.valley.OffsetLine.Ends;
import org.thalweg.valley.PanBlank.Fold;
import org.thalweg.valley.PanBlank.FoldKind;
import org.thalweg.valley.PanBlank.Slit;

/**
 * The whole pan, lying flat, from which pieces are cut.
 *
 * <pre>
 *          ___              Half a blank: the leg of the rib from the middle to g, the flat to g + T, the return beyond.
 *         |   |\            The flat is what the lines it ends on at foot and head leave of a long strip; the return
 *         |   | \__         stands along whatever remains of its outer edge.
 *         |   |  | |
 *         |   |  | |
 *       slit  | /‾‾
 *         |___|/            The rib runs on past the flat and is slit there.
 * </pre>
 */
final class PanShape {

    private static final Angle DOUBLED_BACK = Angle.degrees(180);

    private final double leg;
    private final double flat;
    private final double edgeReturn;
    private final double length;
    private final Ends left;
    private final Ends right;
    private final double ribFrom;
    private final double ribTo;
    private final boolean slitBelow;
    private final boolean slitAbove;
    private final Angle atLow;
    private final double hair;
    private final double lowest;
    private final double highest;

    PanShape(SlopedEdge valley, PanSpec spec, Tolerance tolerance) {
        leg = spec.ribLeg().metres();
        flat = spec.flat().metres();
        edgeReturn = spec.edgeReturn().metres();
        length = valley.length().metres();
        left = Ends.of(valley.left(), spec);
        right = Ends.of(valley.right(), spec);
        boolean meetsBelow = valley.meetsValleyBelow();
        boolean meetsAbove = valley.meetsValleyAbove();
        double pastFoot = (meetsBelow ? spec.ribPastValley() : spec.ribPastEave()).metres();
        double pastHead = (meetsAbove ? spec.ribPastValley() : spec.ribPastTop()).metres();
        ribFrom = -Math.max(
                pastFoot, Math.max(left.bottom().past(), right.bottom().past()));
        ribTo = length
                + Math.max(pastHead, Math.max(left.top().past(), right.top().past()));
        slitBelow = !meetsBelow;
        slitAbove = !meetsAbove;
        atLow = valley.bendAtLow();
        hair = tolerance.hair();
        double down = Math.min(
                ribFrom, Math.min(left.bottom().metal(flat), right.bottom().metal(flat)));
        double up = Math.max(
                ribTo, length - Math.min(left.top().metal(flat), right.top().metal(flat)));
        double least = ribFrom;
        double most = ribTo;
        for (Ends side : List.of(left, right)) {
            for (Point2 corner : trimmed(side, down, up)) {
                least = Math.min(least, corner.up());
                most = Math.max(most, corner.up());
            }
        }
        lowest = least;
        highest = most;
    }

    Ends left() {
        return left;
    }

    Ends right() {
        return right;
    }

    /** The lowest point of all, up the low from the foot; 0 or less. Metres. */
    double lowest() {
        return lowest;
    }

    /** The highest point of all. Metres. */
    double highest() {
        return highest;
    }

    /** Up to where both flats have their full width; the valley's length or less, below 0 where they never do. Metres. */
    double fullTo() {
        return length - Math.max(0, Math.max(left.top().metal(flat), right.top().metal(flat)));
    }

    /** What lies between two places along the low, as a blank of its own. Metres up from the foot. */
    PanBlank between(double from, double to) {
        List<Point2> onRight = half(right, from, to);
        List<Point2> onLeft = half(left, from, to);
        List<Fold> folds = new ArrayList<>(7);
        folds(onLeft, left, true, from, to, folds);
        double lower = Math.max(from, ribFrom);
        double upper = Math.min(to, ribTo);
        folds.add(new Fold(FoldKind.CROWN, point(0, lower, from), point(0, upper, from), DOUBLED_BACK, false));
        folds(onRight, right, false, from, to, folds);
        return new PanBlank(outline(onLeft, onRight, lower, upper, from), folds, slits(from, to));
    }

    /**
     * The corners of one side's flat and return, from the low's lower end round its outside to the low's upper end; across
     * from the low, along from the foot.
     */
    private List<Point2> half(Ends ends, double from, double to) {
        List<Point2> trimmed = trimmed(ends, from, to);
        int lower = -1;
        int upper = -1;
        for (int i = 0; i < trimmed.size(); i++) {
            if (trimmed.get(i).across() >= flat - hair) {
                lower = lower < 0 ? i : lower;
                upper = i;
            }
        }
        if (lower < 0
                || edgeReturn <= hair
                || trimmed.get(upper).up() - trimmed.get(lower).up() <= hair) {
            return trimmed;
        }
        List<Point2> withReturn = new ArrayList<>(trimmed.subList(0, lower + 1));
        withReturn.add(new Point2(flat + edgeReturn, trimmed.get(lower).up()));
        withReturn.add(new Point2(flat + edgeReturn, trimmed.get(upper).up()));
        withReturn.addAll(trimmed.subList(upper, trimmed.size()));
        return withReturn;
    }

    /** The flat alone. */
    private List<Point2> trimmed(Ends ends, double from, double to) {
        List<Point2> strip =
                List.of(new Point2(0, from), new Point2(flat, from), new Point2(flat, to), new Point2(0, to));
        return above(above(strip, ends.bottom(), 0, 1), ends.top(), length, -1);
    }

    /** Cuts a convex shape along the line an end of the pan lies on; {@code inward} is 1 at the foot and -1 at the head. */
    private List<Point2> above(List<Point2> shape, EndLine line, double end, int inward) {
        List<Point2> kept = new ArrayList<>(shape.size() + 1);
        for (int i = 0; i < shape.size(); i++) {
            Point2 a = shape.get(i);
            Point2 b = shape.get((i + 1) % shape.size());
            double offA = inward * (a.up() - end) - line.metal(a.across());
            double offB = inward * (b.up() - end) - line.metal(b.across());
            if (offA >= -hair) {
                kept.add(a);
            }
            if ((offA < -hair && offB > hair) || (offA > hair && offB < -hair)) {
                double at = offA / (offA - offB);
                kept.add(new Point2(a.across() + at * (b.across() - a.across()), a.up() + at * (b.up() - a.up())));
            }
        }
        return fromTheLow(kept);
    }

    /** Starts the corners of a shape where its low begins: the clipping may have cut off the first one. */
    private static List<Point2> fromTheLow(List<Point2> shape) {
        int first = 0;
        for (int i = 1; i < shape.size(); i++) {
            Point2 corner = shape.get(i);
            Point2 best = shape.get(first);
            if (corner.across() < best.across() || (corner.across() == best.across() && corner.up() < best.up())) {
                first = i;
            }
        }
        List<Point2> turned = new ArrayList<>(shape.subList(first, shape.size()));
        turned.addAll(shape.subList(0, first));
        return turned;
    }

    private void folds(List<Point2> half, Ends ends, boolean onLeft, double from, double to, List<Fold> folds) {
        List<Fold> ofSide = new ArrayList<>(4);
        Point2 low = half.get(0);
        Point2 high = half.get(half.size() - 1);
        ofSide.add(fold(FoldKind.LOW, onLeft, 0, low.up(), 0, high.up(), atLow, from));
        if (ends.bottom().turnUp()) {
            wall(ends, true, onLeft, from, to).ifPresent(ofSide::add);
        }
        if (ends.top().turnUp()) {
            wall(ends, false, onLeft, from, to).ifPresent(ofSide::add);
        }
        double returnFrom = Double.POSITIVE_INFINITY;
        double returnTo = Double.NEGATIVE_INFINITY;
        for (Point2 corner : half) {
            if (corner.across() > flat + hair) {
                returnFrom = Math.min(returnFrom, corner.up());
                returnTo = Math.max(returnTo, corner.up());
            }
        }
        if (returnTo > returnFrom) {
            ofSide.add(fold(FoldKind.RETURN, onLeft, flat, returnFrom, flat, returnTo, DOUBLED_BACK, from));
        }
        if (onLeft) {
            Collections.reverse(ofSide);
        }
        folds.addAll(ofSide);
    }

    /** The bend of the upstand, along the roof's own line as far as the piece has flat there, and metal beyond it. */
    private Optional<Fold> wall(Ends ends, boolean below, boolean onLeft, double from, double to) {
        EndLine own = below ? ends.bottom() : ends.top();
        EndLine other = below ? ends.top() : ends.bottom();
        double end = below ? 0 : length;
        double perOut = below ? own.perOut() : -own.perOut();
        double[] out = {0, flat};
        keep(out, end - from, perOut);
        keep(out, to - end, -perOut);
        keep(out, length + other.past(), -own.perOut() - other.perOut());
        double middle = end + perOut * (out[0] + out[1]) / 2;
        if (out[1] - out[0] <= hair || middle <= from + hair || middle >= to - hair) {
            return Optional.empty();
        }
        return Optional.of(fold(
                FoldKind.WALL,
                onLeft,
                out[0],
                end + perOut * out[0],
                out[1],
                end + perOut * out[1],
                Angle.degrees(90),
                from));
    }

    /** Leaves of a span what satisfies {@code at + per · x ≥ 0}. */
    private static void keep(double[] span, double at, double per) {
        if (per > 0) {
            span[0] = Math.max(span[0], -at / per);
        } else if (per < 0) {
            span[1] = Math.min(span[1], -at / per);
        } else if (at < 0) {
            span[1] = span[0];
        }
    }

    private Fold fold(
            FoldKind kind,
            boolean onLeft,
            double outA,
            double upA,
            double outB,
            double upB,
            Angle angle,
            double datum) {
        int sign = onLeft ? -1 : 1;
        Point2 a = point(sign * (leg + outA), upA, datum);
        Point2 b = point(sign * (leg + outB), upB, datum);
        return new Fold(kind, a.up() <= b.up() ? a : b, a.up() <= b.up() ? b : a, angle, true);
    }

    private static Point2 point(double across, double up, double datum) {
        return new Point2(across, up - datum);
    }

    private List<Slit> slits(double from, double to) {
        List<Slit> slits = new ArrayList<>(2);
        if (slitBelow && ribFrom < 0 && from <= ribFrom + hair) {
            slits.add(new Slit(point(0, ribFrom, from), point(0, 0, from)));
        }
        if (slitAbove && ribTo > length && to >= ribTo - hair) {
            slits.add(new Slit(point(0, length, from), point(0, ribTo, from)));
        }
        return slits;
    }

    /** Both halves with the rib between them. */
    private List<Point2> outline(List<Point2> onLeft, List<Point2> onRight, double lower, double upper, double datum) {
        List<Point2> around = new ArrayList<>(onLeft.size() + onRight.size() + 4);
        add(around, -leg, lower, datum);
        add(around, leg, lower, datum);
        for (Point2 corner : onRight) {
            add(around, leg + corner.across(), corner.up(), datum);
        }
        add(around, leg, upper, datum);
        add(around, -leg, upper, datum);
        for (int i = onLeft.size() - 1; i >= 0; i--) {
            add(around, -leg - onLeft.get(i).across(), onLeft.get(i).up(), datum);
        }
        return withoutTurnsOfNothing(around);
    }

    private void add(List<Point2> around, double across, double up, double datum) {
        around.add(point(across, up, datum));
    }

    /** Drops corners that lie on the one before or straight between their neighbours, and starts with the lowest left. */
    private List<Point2> withoutTurnsOfNothing(List<Point2> around) {
        List<Point2> apart = apart(around);
        List<Point2> kept = new ArrayList<>(apart.size());
        for (int i = 0; i < apart.size(); i++) {
            Point2 corner = apart.get(i);
            Point2 before = kept.isEmpty() ? apart.get(apart.size() - 1) : kept.get(kept.size() - 1);
            Point2 after = apart.get((i + 1) % apart.size());
            if (!straight(before, corner, after)) {
                kept.add(corner);
            }
        }
        int first = 0;
        for (int i = 1; i < kept.size(); i++) {
            Point2 corner = kept.get(i);
            Point2 best = kept.get(first);
            if (corner.up() < best.up() - hair
                    || (corner.up() <= best.up() + hair && corner.across() < best.across())) {
                first = i;
            }
        }
        Collections.rotate(kept, -first);
        return kept;
    }

    /** The corners less those that lie on the one before. */
    private List<Point2> apart(List<Point2> around) {
        List<Point2> apart = new ArrayList<>(around.size());
        Point2 before = around.get(around.size() - 1);
        for (Point2 corner : around) {
            if (Math.hypot(corner.across() - before.across(), corner.up() - before.up()) > hair) {
                apart.add(corner);
                before = corner;
            }
        }
        return apart;
    }

    private boolean straight(Point2 before, Point2 corner, Point2 after) {
        double inX = corner.across() - before.across();
        double inY = corner.up() - before.up();
        double outX = after.across() - corner.across();
        double outY = after.up() - corner.up();
        double reach = Math.hypot(outX, outY);
        return Math.abs(inX * outY - inY * outX) <= hair * reach && inX * outX + inY * outY >= 0;
    }
}
