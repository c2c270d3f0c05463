package org.thalweg.wind;

import java.util.Optional;
import org.thalweg.geometry.Point3;
import org.thalweg.wind.Spans.Span;

/**
 * An edge seen from above: what lies within a zone width of it is a strip with round ends.
 *
 * @param x      of the end it starts at, metres
 * @param y      of the same
 * @param onX    the way it runs, one long
 * @param onY    the same
 * @param length seen from above, metres; above 0
 */
record PlanSide(double x, double y, double onX, double onY, double length) {

    static PlanSide of(Point3 from, Point3 to) {
        double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
        return new PlanSide(from.x(), from.y(), (to.x() - from.x()) / length, (to.y() - from.y()) / length, length);
    }

    double distance(Point3 place) {
        double px = place.x() - x;
        double py = place.y() - y;
        double on = px * onX + py * onY;
        double past = on - Math.min(Math.max(on, 0), length);
        return Math.hypot(past, px * onY - py * onX);
    }

    /**
     * Which part of a line lies within {@code width}: one part, for the strip is convex.
     *
     * @return in shares of the line, 0 at its start and 1 at its end
     */
    Optional<Span> within(double width, Point3 start, Point3 end) {
        double px = start.x() - x;
        double py = start.y() - y;
        double dx = end.x() - start.x();
        double dy = end.y() - start.y();
        double on = px * onX + py * onY;
        double alongOn = dx * onX + dy * onY;
        double off = px * onY - py * onX;
        double alongOff = dx * onY - dy * onX;
        if (past(on, on + alongOn, -width, length + width) || past(off, off + alongOff, -width, width)) {
            return Optional.empty();
        }
        double[] part = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        strip(on, alongOn, off, alongOff, width, part);
        disc(px, py, dx, dy, width, part);
        disc(px - length * onX, py - length * onY, dx, dy, width, part);
        double from = Math.max(0, part[0]);
        double to = Math.min(1, part[1]);
        return from <= to ? Optional.of(new Span(from, to)) : Optional.empty();
    }

    /** Whether both lie beyond the same end of what is between {@code least} and {@code most}. */
    private static boolean past(double one, double other, double least, double most) {
        return Math.max(one, other) < least || Math.min(one, other) > most;
    }

    /** Beside the edge: between its ends, and no further off than {@code width} on either hand. */
    private void strip(double on, double perOn, double off, double perOff, double width, double[] part) {
        double[] between = slab(on, perOn, 0, length);
        double[] beside = slab(off, perOff, -width, width);
        widen(Math.max(between[0], beside[0]), Math.min(between[1], beside[1]), part);
    }

    private static double[] slab(double at, double per, double least, double most) {
        if (per == 0) {
            return least <= at && at <= most
                    ? new double[] {Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY}
                    : new double[] {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        }
        double one = (least - at) / per;
        double other = (most - at) / per;
        return new double[] {Math.min(one, other), Math.max(one, other)};
    }

    /** Round an end: |p + t d| ≤ width. */
    private static void disc(double px, double py, double dx, double dy, double width, double[] part) {
        double dd = dx * dx + dy * dy;
        double nearest = -(px * dx + py * dy) / dd;
        double off = (px * dy - py * dx) / Math.sqrt(dd);
        if (Math.abs(off) <= width) {
            double half = Math.sqrt((width * width - off * off) / dd);
            widen(nearest - half, nearest + half, part);
        }
    }

    private static void widen(double from, double to, double[] part) {
        if (from <= to) {
            part[0] = Math.min(part[0], from);
            part[1] = Math.max(part[1], to);
        }
    }
}
