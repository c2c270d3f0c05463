package org.thalweg.footprint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;
import org.thalweg.footprint.Eaves.Joint;
import org.thalweg.footprint.Eaves.Stretch;
import org.thalweg.footprint.Faces.Turn;
import org.thalweg.footprint.NoRoof.Reason;

/**
 * Lets the eaves move inward while they rise, from one instant at which something happens to the next. What can happen is
 * known when a corner comes into being: a stretch between two corners shrinks to nothing, or an inner corner runs into
 * another stretch. Both are meetings of three planes, and wait in a queue by their exact time; so do the heights at which
 * planes hand over to others.
 */
final class Front {

    /** What may come at a time. */
    private sealed interface Coming permits Vanishing, Reaching, Changing {
        Meeting at();
    }

    /** The stretch between two corners shrinks to nothing. */
    private record Vanishing(Meeting at, Joint start, Joint end) implements Coming {}

    /** An inner corner runs into the stretch of a plane, if there is one. */
    private record Reaching(Meeting at, Joint corner, EavePlane plane) implements Coming {}

    /** A plane hands over to another. */
    private record Changing(Meeting at, Turn turn) implements Coming {}

    private final Eaves eaves;
    private final Nodes nodes;
    private final Tally tally;
    private final List<EavePlane> planes;
    /** What comes next, by its exact time. */
    private final PriorityQueue<Coming> queue;
    /** Inner corners by the first plane they may run into; moved to the queue when their time has nearly come. */
    private final PriorityQueue<Prospects> later = new PriorityQueue<>(Comparator.comparingDouble(Prospects::earliest));

    private @Nullable Meeting now;

    Front(Eaves eaves, List<EavePlane> planes, List<Turn> turns, Nodes nodes, Tally tally) {
        this.eaves = eaves;
        this.planes = planes;
        this.nodes = nodes;
        this.tally = tally;
        queue = new PriorityQueue<>(this::compareTime);
        turns.forEach(turn -> queue.add(new Changing(turn.at(), turn)));
    }

    /** Lets the eaves rise until all of them have met. */
    void rise() {
        lookAhead();
        while (!eaves.areGone()) {
            bringUp();
            Coming first = queue.poll();
            if (first == null) {
                throw NoRoof.because(
                                Reason.NEVER_CLOSES,
                                "Some slopes never meet others, so part of the plan has no roof: too many sides go up as"
                                        + " gables. Give one of them a pitch.")
                        .stop();
            }
            if (!mayHappen(first)) {
                continue;
            }
            List<Coming> together = new ArrayList<>();
            together.add(first);
            for (Coming next = queue.peek(); next != null && compareTime(next, first) == 0; next = queue.peek()) {
                queue.remove();
                if (mayHappen(next)) {
                    together.add(next);
                }
            }
            happen(together);
        }
    }

    private int compareTime(Coming one, Coming other) {
        // All sides of a mansard change at one height: no roots are needed to see that.
        return one instanceof Changing changing && other instanceof Changing too
                ? Long.compare(changing.turn.height(), too.turn.height())
                : one.at().compareTime(other.at(), tally);
    }

    /** Moves to the queue whatever an inner corner may run into before, or just when, the first in the queue comes. */
    private void bringUp() {
        for (Prospects next = later.peek(); next != null; next = later.peek()) {
            Coming first = queue.peek();
            if (first != null
                    && next.earliest() > first.at().time() + first.at().errorTime()) {
                return;
            }
            later.remove();
            tally.steps(1);
            if (!next.corner().isGone()) {
                expectReaching(next.corner(), planes.get(next.take()));
                if (!next.isEmpty()) {
                    later.add(next);
                }
            }
        }
    }

    private boolean mayHappen(Coming coming) {
        if (coming instanceof Vanishing vanishing) {
            return !vanishing.start.isGone() && !vanishing.end.isGone() && vanishing.start.out() == vanishing.end.in();
        }
        if (coming instanceof Reaching reaching) {
            return !reaching.corner.isGone();
        }
        return eaves.areOn(((Changing) coming).turn.from());
    }

    /** Everything that comes at one instant. */
    private void happen(List<Coming> together) {
        now = together.get(0).at();
        List<Meeting> places = new ArrayList<>();
        List<Turn> turns = new ArrayList<>();
        for (Coming coming : together) {
            if (coming instanceof Changing changing) {
                turns.add(changing.turn);
            } else if ((!(coming instanceof Reaching reaching) || eaves.reach(coming.at(), reaching.plane))
                    && places.stream().noneMatch(place -> place.samePlace(coming.at(), tally))) {
                places.add(coming.at());
            }
        }
        if (!places.isEmpty() || !turns.isEmpty()) {
            eaves.happen(places, turns);
            if (!turns.isEmpty()) {
                List<EavePlane> begun = turns.stream().map(Turn::to).toList();
                eaves.innerFromBefore().forEach(corner -> foresee(corner, begun));
            }
            lookAhead();
        }
    }

    /** Notes what the corners and stretches made just now may come to. */
    private void lookAhead() {
        for (Stretch stretch : eaves.takeChanged()) {
            Joint start = stretch.start();
            Joint end = stretch.end();
            Meeting at = expected(start.in().plane(), stretch.plane(), end.out().plane());
            if (at != null) {
                queue.add(new Vanishing(at, start, end));
            }
        }
        for (Joint corner : eaves.takeFresh()) {
            if (corner.isInner()) {
                foresee(corner, planes);
            }
        }
    }

    /** Notes which of some planes an inner corner may run into. */
    private void foresee(Joint corner, List<EavePlane> among) {
        tally.steps(among.size());
        Prospects prospects = new Prospects(corner);
        for (EavePlane plane : among) {
            if (eaves.areOn(plane)) {
                double time = nodes.earliest(corner.in().plane(), corner.out().plane(), plane, now);
                if (!Double.isNaN(time)) {
                    prospects.add(time, plane.number());
                }
            }
        }
        if (!prospects.isEmpty()) {
            prospects.order();
            later.add(prospects);
        }
    }

    private void expectReaching(Joint corner, EavePlane plane) {
        Meeting at = expected(corner.in().plane(), corner.out().plane(), plane);
        if (at != null) {
            queue.add(new Reaching(at, corner, plane));
        }
    }

    /** Where three planes meet, if that is still to come. */
    private @Nullable Meeting expected(EavePlane one, EavePlane two, EavePlane three) {
        if (one == three || two == three) {
            return null;
        }
        Meeting at = Meeting.ordered(one, two, three, tally);
        if (at == null) {
            return null;
        }
        Meeting before = now;
        return (before == null ? at.sinceStart() > 0 : at.compareTime(before, tally) > 0) ? at : null;
    }
}
