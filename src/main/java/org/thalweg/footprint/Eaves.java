package org.thalweg.footprint;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.thalweg.footprint.Faces.Turn;
import org.thalweg.footprint.NoRoof.Reason;

/**
 * All eaves at one height: rings of stretches, each on the plane of its side, joined at corners. What happens at one instant is
 * taken together, place by place. At a place, every run of corners that is just there and every stretch that just passes
 * is cut open there; then each stretch that leaves the place is joined to the next that comes to it, counter-clockwise, with
 * roof between them. That one rule covers stretches that vanish, rings that part or unite, and any number of these at once.
 * Then planes that hand over at this height do. Afterwards:
 *
 * <ul>
 *   <li>stretches that are joined in line are one stretch, if their planes are one, and their slopes one slope;
 *   <li>of two in one line of different pitches the flatter goes on over both (lower pitch wins), and the steeper ends there
 *       in a level pitch break; of two planes of one pitch, which become different further up, the first side's goes on over
 *       both;
 *   <li>two stretches that lie back on back are a ridge, and gone.
 * </ul>
 */
final class Eaves {

    private static final String UNRESOLVED = ". Move a corner by a millimetre, or draw the roof as points and planes.";

    /** A stretch of one eave between two corners. */
    static final class Stretch {
        private final EavePlane plane;
        private final int slope;
        private Joint start = Joint.NONE;
        private Joint end = Joint.NONE;
        private boolean gone;

        private Stretch(EavePlane plane, int slope) {
            this.plane = plane;
            this.slope = slope;
        }

        EavePlane plane() {
            return plane;
        }

        Joint start() {
            return start;
        }

        Joint end() {
            return end;
        }

        boolean isGone() {
            return gone;
        }
    }

    /** A corner of the eaves: where the stretch that comes in ends and the one that goes out starts. */
    static final class Joint {
        private static final Joint NONE = new Joint();

        private Stretch in;
        private Stretch out;
        private final int node;
        private final int instant;
        private boolean gone;

        private Joint() {
            EavePlane nowhere = new EavePlane(-1, 0, 0, 0, BigInteger.ZERO);
            in = new Stretch(nowhere, -1);
            out = in;
            node = -1;
            instant = -1;
        }

        private Joint(Stretch in, Stretch out, int node, int instant) {
            this.in = in;
            this.out = out;
            this.node = node;
            this.instant = instant;
        }

        Stretch in() {
            return in;
        }

        Stretch out() {
            return out;
        }

        boolean isGone() {
            return gone;
        }

        private long turn() {
            return in.plane.turnTo(out.plane);
        }

        /** Whether the roof goes round it. */
        boolean isInner() {
            return turn() < 0;
        }
    }

    private final Nodes nodes;
    private final SlopeLines lines;
    private final Tally tally;

    /** The stretches on each plane, by its number. */
    private final List<List<Stretch>> on = new ArrayList<>();

    private List<Stretch> stretches = new ArrayList<>();
    private int left;
    private int instant;
    private final List<Joint> fresh = new ArrayList<>();
    private final List<Stretch> vanished = new ArrayList<>();
    private final Set<Stretch> changed = new LinkedHashSet<>();

    Eaves(int planes, Nodes nodes, SlopeLines lines, Tally tally) {
        this.nodes = nodes;
        this.lines = lines;
        this.tally = tally;
        for (int i = 0; i < planes; i++) {
            on.add(new ArrayList<>());
        }
    }

    /**
     * Adds a ring of walls, roof to its left.
     *
     * @param ring the plane of every eave, in order
     * @param slopes the slope of every eave
     * @param first the node of every eave's first corner; the same as of the next, if the eave begins as a point
     */
    void add(List<EavePlane> ring, int[] slopes, int[] first) {
        int n = ring.size();
        List<Stretch> made = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            made.add(stretch(ring.get(i), slopes[i]));
            if (first[i] != first[(i + 1) % n]) {
                lines.add(slopes[i], SlopeLines.NONE, first[i], first[(i + 1) % n]);
            }
        }
        for (int i = 0; i < n; i++) {
            link(made.get((i + n - 1) % n), made.get(i), first[i]);
        }
    }

    private Stretch stretch(EavePlane plane, int slope) {
        Stretch stretch = new Stretch(plane, slope);
        stretches.add(stretch);
        on.get(plane.number()).add(stretch);
        left++;
        return stretch;
    }

    boolean areGone() {
        return left == 0;
    }

    boolean areOn(EavePlane plane) {
        return !on.get(plane.number()).isEmpty();
    }

    /** Whether a place on a plane's line lies on one of its stretches, now. */
    boolean reach(Meeting place, EavePlane plane) {
        for (Stretch stretch : on.get(plane.number())) {
            if (!stretch.gone && beyondStart(place, stretch) >= 0 && beforeEnd(place, stretch) >= 0) {
                return true;
            }
        }
        tally.steps(1);
        return false;
    }

    /** All that happens at one instant: where something meets, and which planes hand over to others. */
    void happen(List<Meeting> places, List<Turn> turns) {
        for (Meeting place : places) {
            meet(place);
        }
        if (!turns.isEmpty()) {
            // Where ridges close just now nothing is left to turn.
            fresh.stream().filter(Eaves::isRidge).forEach(this::close);
            turn(turns);
        }
        settle();
        stretches.removeIf(stretch -> stretch.gone);
        for (Stretch stretch : vanished) {
            on.get(stretch.plane.number()).remove(stretch);
        }
        vanished.clear();
    }

    /** Stretches that have a new end since this was asked last. */
    List<Stretch> takeChanged() {
        List<Stretch> taken = changed.stream().filter(stretch -> !stretch.gone).toList();
        changed.clear();
        return taken;
    }

    /** Corners that are new since this was asked last; the instant is over. */
    List<Joint> takeFresh() {
        instant++;
        List<Joint> taken = fresh.stream().filter(corner -> !corner.gone).toList();
        fresh.clear();
        return taken;
    }

    /** All inner corners that were there before this instant. */
    List<Joint> innerFromBefore() {
        return stretches.stream()
                .map(Stretch::end)
                .filter(corner -> corner.isInner() && corner.instant < instant)
                .toList();
    }

    /** Above 0 if a place on the line of a stretch, now, comes after the stretch's start, 0 if it is there. */
    private int beyondStart(Meeting place, Stretch stretch) {
        return place.side(across(stretch.start, stretch.start.in, stretch), tally)
                * Long.signum(across(stretch.start, stretch.start.in, stretch).turnTo(stretch.plane));
    }

    private int beforeEnd(Meeting place, Stretch stretch) {
        return -place.side(across(stretch.end, stretch.end.out, stretch), tally)
                * Long.signum(across(stretch.end, stretch.end.out, stretch).turnTo(stretch.plane));
    }

    /** A plane that crosses the stretch at its corner, now; one made just now may lie between parallel stretches. */
    private EavePlane across(Joint corner, Stretch beside, Stretch stretch) {
        return corner.instant == instant ? nodes.meeting(corner.node).across(stretch.plane) : beside.plane;
    }

    /** Cuts open all that is at a place, and joins it anew. */
    private void meet(Meeting place) {
        Set<Joint> here = new LinkedHashSet<>();
        List<Stretch> passing = new ArrayList<>();
        tally.steps(stretches.size());
        for (Stretch stretch : stretches) {
            if (stretch.gone || place.side(stretch.plane, tally) != 0) {
                continue;
            }
            Joint end = stretch.end;
            if (end.instant != instant && place.side(end.out.plane, tally) == 0) {
                here.add(end);
            } else if (beforeEnd(place, stretch) > 0 && beyondStart(place, stretch) > 0) {
                passing.add(stretch);
            }
        }
        if (here.isEmpty() || here.size() + passing.size() < 2) {
            return;
        }
        int node = nodes.add(place);
        List<Ray> rays = new ArrayList<>();
        for (Joint corner : here) {
            if (!here.contains(corner.in.start)) {
                Joint last = corner;
                while (here.contains(last.out.end)) {
                    last = last.out.end;
                }
                rays.add(new Ray(corner.in, false));
                rays.add(new Ray(last.out, true));
            }
        }
        for (Joint corner : here) {
            end(corner, node);
            if (here.contains(corner.out.end)) {
                vanish(corner.out);
            }
        }
        for (Stretch stretch : passing) {
            Stretch rest = stretch(stretch.plane, stretch.slope);
            Joint end = stretch.end;
            rest.end = end;
            end.in = rest;
            rays.add(new Ray(stretch, false));
            rays.add(new Ray(rest, true));
        }
        rays.sort(Ray::compare);
        int first = 0;
        while (first < rays.size() && !rays.get(first).leaves) {
            first++;
        }
        for (int i = 0; i < rays.size(); i += 2) {
            Ray leaving = rays.get((first + i) % rays.size());
            Ray coming = rays.get((first + i + 1) % rays.size());
            if (!leaving.leaves || coming.leaves) {
                throw stop(Reason.NOT_RESOLVED, "Eaves cross where several of them meet" + UNRESOLVED);
            }
            join(coming.stretch, leaving.stretch, node);
        }
    }

    /** Ends a corner at a node: what it has drawn is where two slopes meet. */
    private void end(Joint corner, int node) {
        corner.gone = true;
        lines.add(corner.in.slope, corner.out.slope, corner.node, node);
        lines.add(corner.out.slope, corner.in.slope, node, corner.node);
    }

    private void vanish(Stretch stretch) {
        stretch.gone = true;
        vanished.add(stretch);
        left--;
    }

    /** Joins the end of one stretch to the start of the next. */
    private void join(Stretch in, Stretch out, int node) {
        if (in.plane.isLike(out.plane)) {
            unite(in, out);
        } else {
            link(in, out, node);
        }
    }

    private void unite(Stretch in, Stretch out) {
        lines.unite(in.slope, out.slope);
        if (in.plane.number() <= out.plane.number()) {
            vanish(out);
            in.end = out.end;
            in.end.in = in;
            changed.add(in);
        } else {
            vanish(in);
            out.start = in.start;
            out.start.out = out;
            changed.add(out);
        }
    }

    private void link(Stretch in, Stretch out, int node) {
        Joint corner = new Joint(in, out, node, instant);
        in.end = corner;
        out.start = corner;
        fresh.add(corner);
        changed.add(in);
        changed.add(out);
    }

    /** Stretches whose planes hand over to others at this height end in a level line; new ones begin there. */
    private void turn(List<Turn> turns) {
        Map<Stretch, Stretch> next = new LinkedHashMap<>();
        Map<Joint, Integer> corners = new LinkedHashMap<>();
        List<Integer> made = new ArrayList<>();
        for (Turn turn : turns) {
            for (Stretch stretch : List.copyOf(on.get(turn.from().number()))) {
                if (!stretch.gone) {
                    next.put(stretch, stretch(turn.to(), lines.above(stretch.slope)));
                    corners.computeIfAbsent(stretch.start, corner -> nodeNow(corner, turn, made));
                    corners.computeIfAbsent(stretch.end, corner -> nodeNow(corner, turn, made));
                }
            }
        }
        next.forEach((stretch, above) -> {
            int from = Objects.requireNonNull(corners.get(stretch.start));
            int to = Objects.requireNonNull(corners.get(stretch.end));
            if (from != to) {
                lines.add(stretch.slope, above.slope, to, from);
                lines.add(above.slope, stretch.slope, from, to);
            }
            vanish(stretch);
        });
        corners.forEach((corner, node) ->
                link(next.getOrDefault(corner.in, corner.in), next.getOrDefault(corner.out, corner.out), node));
    }

    /** The node at which a corner is just now, and ends. */
    private int nodeNow(Joint corner, Turn turn, List<Integer> made) {
        if (corner.instant == instant) {
            corner.gone = true;
            return corner.node;
        }
        Meeting place = Meeting.ordered(corner.in.plane, corner.out.plane, turn.to(), tally);
        if (place == null) {
            throw stop(Reason.NOT_RESOLVED, "A corner is nowhere" + UNRESOLVED);
        }
        int node = made.stream()
                .filter(other -> nodes.meeting(other).samePlace(place, tally))
                .findFirst()
                .orElseGet(() -> nodes.add(place));
        made.add(node);
        end(corner, node);
        return node;
    }

    /** Settles what lies in one line once all places of the instant have been joined. */
    private void settle() {
        for (int i = 0; i < fresh.size(); i++) {
            Joint corner = fresh.get(i);
            if (!corner.gone && corner.turn() == 0 && corner.in.plane.runsWith(corner.out.plane)) {
                if (corner.in.plane.isLike(corner.out.plane)) {
                    corner.gone = true;
                    unite(corner.in, corner.out);
                } else {
                    overtake(corner);
                }
            }
        }
        for (Joint corner : fresh) {
            if (isRidge(corner)) {
                close(corner);
            } else if (!corner.gone && corner.turn() == 0) {
                throw stop(Reason.NOT_RESOLVED, "Eaves that lie back on back do not end together" + UNRESOLVED);
            }
        }
    }

    /** Whether two stretches lie back on back from here to their other end. */
    private static boolean isRidge(Joint corner) {
        return !corner.gone
                && corner.turn() == 0
                && !corner.in.plane.runsWith(corner.out.plane)
                && corner.in.start == corner.out.end;
    }

    /** Two stretches in one line: the flatter goes on over both. */
    private void overtake(Joint corner) {
        boolean inIsFlatter = corner.in.plane.weight().compareTo(corner.out.plane.weight()) > 0;
        Stretch flatter = inIsFlatter ? corner.in : corner.out;
        Stretch steeper = inIsFlatter ? corner.out : corner.in;
        Joint far = inIsFlatter ? steeper.end : steeper.start;
        Stretch beyond = inIsFlatter ? far.out : far.in;
        int node = far.node;
        if (far.instant == instant) {
            far.gone = true;
        } else {
            Meeting place = Meeting.of(steeper.plane, flatter.plane, beyond.plane, tally);
            if (place == null || beyond == flatter) {
                throw stop(Reason.NOT_RESOLVED, "Eaves in one line end nowhere" + UNRESOLVED);
            }
            node = nodes.add(place);
            end(far, node);
        }
        corner.gone = true;
        vanish(steeper);
        int from = inIsFlatter ? corner.node : node;
        int to = inIsFlatter ? node : corner.node;
        if (from != to) {
            lines.add(flatter.slope, steeper.slope, from, to);
            lines.add(steeper.slope, flatter.slope, to, from);
        }
        join(inIsFlatter ? flatter : beyond, inIsFlatter ? beyond : flatter, node);
    }

    /** Two stretches back on back: a ridge between them. */
    private void close(Joint corner) {
        Stretch one = corner.in;
        Stretch other = corner.out;
        Joint across = one.start;
        corner.gone = true;
        across.gone = true;
        vanish(one);
        vanish(other);
        lines.add(one.slope, other.slope, corner.node, across.node);
        lines.add(other.slope, one.slope, across.node, corner.node);
    }

    private static NoRoof.Stop stop(Reason reason, String detail) {
        return NoRoof.because(reason, detail).stop();
    }

    /** A stretch as it is seen from a place: it leaves from there, or comes to it from where it points. */
    private record Ray(Stretch stretch, boolean leaves) {

        private long x() {
            return leaves ? stretch.plane.b() : -stretch.plane.b();
        }

        private long y() {
            return leaves ? -stretch.plane.a() : stretch.plane.a();
        }

        /** Counter-clockwise from the direction of x; of two that point the same way the leaving one first: no roof is between. */
        static int compare(Ray one, Ray other) {
            boolean oneLow = one.y() < 0 || (one.y() == 0 && one.x() < 0);
            boolean otherLow = other.y() < 0 || (other.y() == 0 && other.x() < 0);
            if (oneLow != otherLow) {
                return oneLow ? 1 : -1;
            }
            long turn = one.x() * other.y() - one.y() * other.x();
            return turn != 0 ? Long.signum(-turn) : Boolean.compare(other.leaves, one.leaves);
        }
    }
}
