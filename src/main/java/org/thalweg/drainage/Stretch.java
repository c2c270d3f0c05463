package org.thalweg.drainage;

import org.jspecify.annotations.Nullable;
import org.thalweg.geometry.Ring;

/**
 * A stretch of a low side of a plane, to be followed up its fall lines.
 *
 * @param plane     index in the roof's planes
 * @param ring      of that plane
 * @param side      index in the ring
 * @param from      across, metres
 * @param to        across, above {@code from}
 * @param alongFrom where water from {@code from} reaches the edge that was asked for; metres along it
 * @param alongTo   where water from {@code to} does
 * @param below     the stretch its water runs on to; none for the edge itself
 */
record Stretch(
        int plane,
        Ring ring,
        int side,
        double from,
        double to,
        double alongFrom,
        double alongTo,
        @Nullable Stretch below) {

    private int edge() {
        return ring.tag(side);
    }

    /** Where water from a place on the stretch reaches the edge that was asked for; metres along it. */
    double along(double across) {
        return alongFrom + (across - from) / (to - from) * (alongTo - alongFrom);
    }

    /** Whether its water crosses an edge here or further down; on planes that lie crookedly it might come round again. */
    boolean crosses(int edge) {
        for (Stretch at = this; at != null; at = at.below) {
            if (at.edge() == edge) {
                return true;
            }
        }
        return false;
    }

    /** Whether {@code next} goes on where this one ends. */
    boolean endsAt(Stretch next) {
        return ring == next.ring && side == next.side && to == next.from && below == next.below;
    }

    /** This and the next as one. */
    Stretch joined(Stretch next) {
        return new Stretch(plane, ring, side, from, next.to, alongFrom, next.alongTo, below);
    }
}
