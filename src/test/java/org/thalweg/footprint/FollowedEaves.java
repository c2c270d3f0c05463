package org.thalweg.footprint;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import org.thalweg.footprint.WallSide.Change;
import org.thalweg.units.Pitch;

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
        /** Points inward. */
        final double x;

        final double y;
        /** What it becomes further up: from which height on, and how fast. */
        final Deque<double[]> changes;
        /** Parts of the eave of a side have one line, and so has what goes on behind a gable over a part of the side. */
        final Object line;
        /** What of the roof it draws; parts that were cut off from each other since the last change draw one piece. */
        Piece piece;

        double start;
        double speed;
        double since;
        Eave before = this;
        Eave after = this;

        /** It stands still on the line through a place until the first change. */
        Eave(double placeX, double placeY, double x, double y, List<double[]> changes) {
            this.x = x;
            this.y = y;
            this.changes = new ArrayDeque<>(changes);
            start = x * placeX + y * placeY;
            line = this;
            piece = new Piece();
        }

        /** The same eave once more, not joined to any other: cut off from it, or another on the same line. */
        Eave(Eave part, boolean cutOff) {
            x = part.x;
            y = part.y;
            changes = new ArrayDeque<>(part.changes);
            start = part.start;
            speed = part.speed;
            since = part.since;
            line = part.line;
            piece = cutOff ? part.piece : new Piece();
        }

        double next() {
            return changes.isEmpty() ? Double.MAX_VALUE : changes.getFirst()[0];
        }

        void change() {
            double[] change = changes.removeFirst();
            start = offset(change[0]);
            since = change[0];
            speed = change[1];
            piece = new Piece();
        }

        private double offset(double height) {
            return start + speed * (height - since);
        }

        double ahead(double[] place, double height) {
            return x * place[0] + y * place[1] - offset(height);
        }

        /** When it passes a place. */
        double passes(double[] place) {
            return since + (x * place[0] + y * place[1] - start) / speed;
        }

        /** Of a place along the eave. */
        double along(double[] place) {
            return y * place[0] - x * place[1];
        }

        double[] end(double height) {
            double turn = x * after.y - y * after.x;
            double one = offset(height);
            double other = after.offset(height);
            return new double[] {(one * after.y - other * y) / turn, (x * other - after.x * one) / turn};
        }

        double length(double height) {
            return along(end(height)) - along(before.end(height));
        }

        boolean holds(double[] place, double height, double slack) {
            return along(place) > along(before.end(height)) - slack && along(place) < along(end(height)) + slack;
        }

        boolean isPartWith(Eave other) {
            return line == other.line;
        }
    }

    /** Of what is drawn by an eave between two changes; one piece may turn out to be a part of another. */
    private static final class Piece {
        private Piece partOf = this;

        Piece all() {
            return partOf == this ? this : partOf.all();
        }
    }

    private final Set<Eave> eaves = new LinkedHashSet<>();
    private boolean surrounded;

    private FollowedEaves(Footprint plan) {
        for (List<WallSide> ring : plan.rings()) {
            List<Eave> made = new ArrayList<>();
            boolean left = twiceArea(ring) > 0 == (ring == plan.rings().get(0));
            List<WallSide> wound = left ? ring : turned(ring);
            for (int i = 0; i < wound.size(); i++) {
                // What goes on behind a gable over a part of a side has come with the gable.
                if (i == 0 || wound.get(i - 1).cross().isEmpty()) {
                    addEaves(made, wound, i);
                }
            }
            for (int i = 0; i < made.size(); i++) {
                join(made.get(i), made.get((i + 1) % made.size()));
            }
            eaves.addAll(made);
        }
    }

    /** The same ring the other way round: a side starts at what was its end. */
    static List<WallSide> turned(List<WallSide> ring) {
        List<WallSide> turned = new ArrayList<>();
        for (int i = ring.size() - 1; i >= 0; i--) {
            WallSide end = ring.get((i + 1) % ring.size());
            turned.add(ring.get(i).from(end.x(), end.y()));
        }
        return turned;
    }

    /** The eave of a side; of a gable over a part of a side also those of its two slopes, square to it, which begin as points. */
    private static void addEaves(List<Eave> made, List<WallSide> ring, int number) {
        WallSide side = ring.get(number);
        WallSide end = ring.get((number + 1) % ring.size());
        double length = Math.hypot(end.x() - side.x(), end.y() - side.y());
        double alongX = (end.x() - side.x()) / length;
        double alongY = (end.y() - side.y()) / length;
        List<double[]> stages = new ArrayList<>();
        side.pitch().ifPresent(pitch -> stages.add(new double[] {side.eave(), speed(side.pitch())}));
        for (Change change : side.above()) {
            stages.add(new double[] {change.height(), speed(change.pitch())});
        }
        Eave own = new Eave(side.x(), side.y(), -alongY, alongX, stages);
        if (side.cross().isEmpty()) {
            made.add(own);
            return;
        }
        // Left and right of such a gable is one side.
        Eave main = made.get(made.size() - 1);
        List<double[]> slopes = List.of(new double[] {end.eave(), speed(side.cross())});
        made.add(new Eave(side.x(), side.y(), alongX, alongY, slopes));
        made.add(own);
        made.add(new Eave(end.x(), end.y(), -alongX, -alongY, slopes));
        made.add(new Eave(main, false));
    }

    private static double speed(Optional<Pitch> pitch) {
        return pitch.map(one -> one.run() / one.rise()).orElse(0.0);
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
     * @param closed     whether all eaves met
     * @param surrounded whether two parts of an eave ever became one again: its slope lies all round what had been between
     */
    record Followed(List<Double> heights, boolean closed, boolean surrounded) {}

    static Followed over(Footprint plan, List<double[]> places) {
        FollowedEaves followed = new FollowedEaves(plan);
        double[] heights = new double[places.size()];
        Arrays.fill(heights, Double.NaN);
        boolean closed = followed.rise((from, to) -> followed.pass(places, heights, from, to));
        return new Followed(Arrays.stream(heights).boxed().toList(), closed, followed.surrounded);
    }

    /** Notes every place that an eave passes while the eaves rise from one height to another. */
    private void pass(List<double[]> places, double[] heights, double from, double to) {
        for (int i = 0; i < heights.length; i++) {
            for (Eave eave : eaves) {
                double height = eave.passes(places.get(i));
                if (height > from && height <= to && eave.holds(places.get(i), height, ON)) {
                    heights[i] = Double.isNaN(heights[i]) ? height : Math.min(height, heights[i]);
                }
            }
        }
    }

    /** Whether all eaves met. */
    private boolean rise(BiConsumer<Double, Double> stretch) {
        double now = eaves.stream().mapToDouble(Eave::next).min().orElseThrow();
        for (int steps = 0; !eaves.isEmpty(); steps++) {
            double first = eaves.stream().mapToDouble(Eave::next).min().orElseThrow();
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
            if (first == Double.MAX_VALUE || steps > 1000) {
                return false;
            }
            stretch.accept(now, first);
            now = first;
            if (comes == null) {
                changeAt(now);
            } else if (reached == null) {
                vanish(comes, now);
            } else {
                cutOpen(comes, reached);
            }
            fold(now);
        }
        return true;
    }

    /** The two slopes of a gable over a part of a side meet in a level ridge: as long as both are, both are gone at once. */
    private void fold(double height) {
        for (Eave in : List.copyOf(eaves)) {
            Eave out = in.after;
            boolean back = Math.abs(in.x * out.y - in.y * out.x) < 1e-12 && in.x * out.x + in.y * out.y < 0;
            if (eaves.contains(in) && eaves.contains(out) && back) {
                boolean inIsShorter = in.along(in.before.end(height)) > in.along(out.end(height));
                Eave longer = inIsShorter ? out : in;
                eaves.remove(inIsShorter ? in : out);
                join(inIsShorter ? in.before : in, inIsShorter ? out : out.after);
                if (eaves.contains(longer) && longer.length(height) < ON) {
                    vanish(longer, height);
                }
            }
        }
    }

    /** When something that changes evenly is nought, if it shrinks. */
    private static double nought(double now, double oneLater, double height) {
        return oneLater < now - 1e-12 ? height + Math.max(0, now) / (now - oneLater) : Double.MAX_VALUE;
    }

    private void changeAt(double height) {
        for (Eave eave : eaves) {
            if (eave.next() == height) {
                eave.change();
            }
        }
    }

    /** An eave has shrunk to nothing, and with it whatever is a point there. */
    private void vanish(Eave eave, double height) {
        Eave in = eave.before;
        Eave out = eave.after;
        eaves.remove(eave);
        while (in != out && in.length(height) < ON) {
            eaves.remove(in);
            in = in.before;
        }
        while (in != out && out.length(height) < ON) {
            eaves.remove(out);
            out = out.after;
        }
        join(in, out);
    }

    /** The corner at the end of an eave runs into another eave: that one goes on on both sides of it. */
    private void cutOpen(Eave in, Eave reached) {
        Eave rest = new Eave(reached, true);
        eaves.add(rest);
        Eave out = in.after;
        join(rest, reached.after);
        join(in, rest);
        join(reached, out);
    }

    private void join(Eave in, Eave out) {
        if (in != out && in.isPartWith(out)) {
            surrounded |= in.piece.all() == out.piece.all();
            out.piece.all().partOf = in.piece.all();
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
