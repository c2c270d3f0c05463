package org.thalweg.valley;

import java.util.Optional;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.EdgeKind;
import org.thalweg.units.Length;

/**
 * A line chalked beside the low, on one plane.
 *
 * @param from   its lower end; plane frame, metres
 * @param to     its upper end
 * @param length from one to the other; above 0
 * @param lower  how a crew finds its lower end
 * @param upper  how it finds its upper end
 */
public record OffsetLine(Point2 from, Point2 to, Length length, Mark lower, Mark upper) {

    /**
     * How to find one end of the line with a tape and a square.
     *
     * @param up    set the square on the low this far up from the foot; below 0 on the low run on past it
     * @param out   and measure this far out
     * @param edge  name of the edge the plane ends on there
     * @param along or measure this far along that edge from the end of the valley; nothing where the line ends half-way to
     *              that edge, or it does not reach that far or turns back
     */
    public record Mark(Length up, Length out, String edge, Optional<Length> along) {}

    /**
     * The line {@code out} off the low at the foot and {@code outAtTop} at the head, from what the plane ends on at the one to
     * what it ends on at the other; nothing when a short valley has no room for it.
     */
    static Optional<OffsetLine> of(
            SlopedEdge.Side side, double length, Ends ends, double out, double outAtTop, Tolerance tolerance) {
        double perUp = (outAtTop - out) / length;
        double below = ends.bottom().perOut();
        double above = ends.top().perOut();
        double meetsBelow = 1 - perUp * below;
        double meetsAbove = 1 + perUp * above;
        double from = out * below / meetsBelow;
        double to = (length - out * above) / meetsAbove;
        if (meetsBelow <= 0 || meetsAbove <= 0 || to - from <= tolerance.metres()) {
            return Optional.empty();
        }
        double outFrom = out + perUp * from;
        double outTo = out + perUp * to;
        return Optional.of(new OffsetLine(
                side.at(outFrom, from),
                side.at(outTo, to),
                Length.metres(Math.hypot(to - from, outTo - outFrom)),
                mark(side.bottom(), ends.bottom(), from, outFrom, tolerance),
                mark(side.top(), ends.top(), to, outTo, tolerance)));
    }

    private static Mark mark(SlopedEdge.End end, EndLine line, double up, double out, Tolerance tolerance) {
        double along = out / end.corner().sin();
        boolean there = line.onEdge() && along >= 0 && along <= end.reach().metres() + tolerance.hair();
        return new Mark(
                Length.metres(up),
                Length.metres(out),
                end.id(),
                there ? Optional.of(Length.metres(along)) : Optional.empty());
    }

    /** The lines a side of the pan ends on. */
    record Ends(EndLine bottom, EndLine top) {

        static Ends of(SlopedEdge.Side side, PanSpec spec) {
            return new Ends(EndLine.of(side.bottom(), spec), EndLine.of(side.top(), spec));
        }

        static Ends of(SlopedEdge.Side side, EdgeKind own) {
            return new Ends(EndLine.of(side.bottom(), own), EndLine.of(side.top(), own));
        }
    }
}
