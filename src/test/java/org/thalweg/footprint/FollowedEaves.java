package org.thalweg.footprint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;

/**
 * The eaves of a plan followed as they rise, the slow and obvious way: corners are points that move straight on; before each
 * step every corner is held against every eave, and every eave against its own two ends, and the first thing that comes is done.
 * A place is as high as the eaves are when one of them passes over it. No slope is put together and no plane is met: this
 * shares no code and no idea but the definition with what it is held against.
 *
 * <p>Over inner corners nothing simpler will do. The lowest of all planes is not the roof there: in an L the plane of a wing's
 * short inner side, run on, would cut off the far end of the other wing, which its eave never reaches. With one pitch the
 * planes could be ended square to their sides first; with several, a slope may run out beyond both ends of its side.
 *
 * <p>Plain doubles: right for plans at which no two things come at one instant; where two come within what doubles lose, the
 * eaves may never close.
 */
final class FollowedEaves {

    /** Metres: a corner so near to an eave is on it, and one so near to an eave's end does not cut it open. */
    private static final double ON = 1e-9;

    private static final class Eave {
        final double x;
        final double y;
        final double start;
        final double speed;
        Eave before = this;
        Eave after = this;

        /** Passes where x·px + y·py = start + speed · height; (x, y) points inward. */
        Eave(WallSide from, WallSide to, double speed) {
            double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
            x = (from.y() - to.y()) / length;
            y = (to.x() - from.x()) / length;
            start = x * from.x() + y * from.y();
            this.speed = speed;
        }

        /** The same eave once more, not joined to any other. */
        Eave(Eave other) {
            x = other.x;
            y = other.y;
            start = other.start;
            speed = other.speed;
        }

        double ahead(double[] place, double height) {
            return x * place[0] + y * place[1] - start - speed * height;
        }

        /** Of a place along the eave. */
        double along(double[] place) {
            return y * place[0] - x * place[1];
        }

        double[] end(double height) {
            double turn = x * after.y - y * after.x;
            double one = start + speed * height;
            double other = after.start + after.speed * height;
            return new double[] {(one * after.y - other * y) / turn, (x * other - after.x * one) / turn};
        }

        /** Of the same eave, cut open before. */
        boolean isPartOf(Eave other) {
            return x == other.x && y == other.y && start == other.start && speed == other.speed;
        }

        double length(double height) {
            return along(end(height)) - along(before.end(height));
        }

        boolean holds(double[] place, double height, double slack) {
            return along(place) > along(before.end(height)) - slack && along(place) < along(end(height)) + slack;
        }
    }

    private final Set<Eave> eaves = new LinkedHashSet<>();
    private boolean surrounded;

    private FollowedEaves(Footprint plan) {
        for (List<WallSide> ring : plan.rings()) {
            boolean left = twiceArea(ring) > 0 == (ring == plan.rings().get(0));
            List<Eave> made = new ArrayList<>();
            for (int i = 0; i < ring.size(); i++) {
                WallSide side = ring.get(i);
                WallSide next = ring.get((i + 1) % ring.size());
                double speed =
                        side.pitch().map(pitch -> pitch.run() / pitch.rise()).orElse(0.0);
                made.add(left ? new Eave(side, next, speed) : new Eave(next, side, speed));
            }
            for (int i = 0; i < made.size(); i++) {
                Eave next = made.get((i + 1) % made.size());
                join(left ? made.get(i) : next, left ? next : made.get(i));
            }
            eaves.addAll(made);
        }
    }

    private static double twiceArea(List<WallSide> ring) {
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            WallSide a = ring.get(i);
            WallSide b = ring.get((i + 1) % ring.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return twice;
    }

    /**
     * @param heights    of the places asked for; not a number where no eave ever passes
     * @param closed     whether all eaves met; if not, two things came too close together
     * @param surrounded whether two parts of an eave ever became one again: its slope lies all round what had been between
     */
    record Followed(double[] heights, boolean closed, boolean surrounded) {}

    static Followed over(Footprint plan, List<double[]> places) {
        FollowedEaves followed = new FollowedEaves(plan);
        double[] heights = new double[places.size()];
        Arrays.fill(heights, Double.NaN);
        boolean closed = followed.rise((from, to) -> followed.pass(places, heights, from, to));
        return new Followed(heights, closed, followed.surrounded);
    }

    /** Notes every place that an eave passes while the eaves rise from one height to another. */
    private void pass(List<double[]> places, double[] heights, double from, double to) {
        for (int i = 0; i < heights.length; i++) {
            for (Eave eave : eaves) {
                double height = eave.ahead(places.get(i), 0) / eave.speed;
                if (height > from && height <= to && eave.holds(places.get(i), height, ON)) {
                    heights[i] = Double.isNaN(heights[i]) ? height : Math.min(height, heights[i]);
                }
            }
        }
    }

    /** Whether all eaves met. */
    private boolean rise(BiConsumer<Double, Double> stretch) {
        double now = 0;
        for (int steps = 0; !eaves.isEmpty(); steps++) {
            double first = Double.MAX_VALUE;
            Eave comes = null;
            Eave reached = null;
            for (Eave eave : eaves) {
                double gone = nought(eave.length(now), eave.length(now + 1), now);
                if (gone < first) {
                    first = gone;
                    comes = eave;
                    reached = null;
                }
                for (Eave other : eaves) {
                    double ahead = other.ahead(eave.end(now), now);
                    if (other != eave && other != eave.after && ahead > ON) {
                        double there = nought(ahead, other.ahead(eave.end(now + 1), now + 1), now);
                        if (there < first && other.holds(eave.end(there), there, -ON)) {
                            first = there;
                            comes = eave;
                            reached = other;
                        }
                    }
                }
            }
            if (comes == null || steps > 1000) {
                return false;
            }
            stretch.accept(now, first);
            now = first;
            if (reached == null) {
                vanish(comes);
            } else {
                cutOpen(comes, reached);
            }
        }
        return true;
    }

    /** When something that changes evenly is nought, if it shrinks. */
    private static double nought(double now, double oneLater, double height) {
        return oneLater < now ? height + Math.max(0, now) / (now - oneLater) : Double.MAX_VALUE;
    }

    /**
     * An eave has shrunk to nothing. If it and its neighbour stood between two parts of one eave, the neighbour has gone with
     * it, wherever its corners were: three lines meet in one point.
     */
    private void vanish(Eave eave) {
        eaves.remove(eave);
        Eave in = eave.before;
        Eave out = eave.after;
        if (in.before.isPartOf(out)) {
            eaves.remove(in);
            in = in.before;
        } else if (out.after.isPartOf(in)) {
            eaves.remove(out);
            out = out.after;
        }
        join(in, out);
    }

    /** The corner at the end of an eave runs into another eave: that one goes on on both sides of it. */
    private void cutOpen(Eave in, Eave reached) {
        Eave rest = new Eave(reached);
        eaves.add(rest);
        Eave out = in.after;
        join(rest, reached.after);
        join(in, rest);
        join(reached, out);
    }

    private void join(Eave in, Eave out) {
        if (in != out && in.isPartOf(out)) {
            surrounded = true;
            eaves.remove(out);
            join(in, out.after);
            return;
        }
        in.after = out;
        out.before = in;
        if (out.after == in && in.before == out) {
            eaves.remove(in);
            eaves.remove(out);
        }
    }
}
