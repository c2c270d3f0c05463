package org.thalweg.fastening;

import org.thalweg.geometry.Frame;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.roof.Plane;

/** A plane in the frame its panels are placed in: its own, but for a level plane that was given a fall. */
final class Deck {

    private Deck() {}

    static Region of(Plane plane, Frame laid) {
        if (laid.equals(plane.frame())) {
            return plane.shape();
        }
        return new Region(
                turned(plane.shape().outer(), plane.frame(), laid),
                plane.shape().openings().stream()
                        .map(opening -> turned(opening, plane.frame(), laid))
                        .toList());
    }

    private static Ring turned(Ring ring, Frame own, Frame laid) {
        int n = ring.size();
        double[] across = new double[n];
        double[] up = new double[n];
        int[] tag = new int[n];
        for (int i = 0; i < n; i++) {
            Point2 corner = turned(ring.corner(i), own, laid);
            across[i] = corner.across();
            up[i] = corner.up();
            tag[i] = ring.tag(i);
        }
        return new Ring(across, up, tag);
    }

    /** One place of the plane. */
    static Point2 turned(Point2 place, Frame own, Frame laid) {
        return laid.equals(own) ? place : laid.onPlane(own.inWorld(place));
    }
}
