package org.thalweg.panel;

import org.thalweg.geometry.Frame;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Vector3;
import org.thalweg.roof.Plane;
import org.thalweg.units.Angle;

/** The frame of a level plane once the caller has said which way water shall run. */
final class FallFrame {

    private FallFrame() {}

    /** Up is against the fall, across to the right of it; the origin stays. */
    static Frame of(Frame level, Angle fall) {
        Vector3 against = new Vector3(-fall.cos(), -fall.sin(), 0);
        Vector3 across = against.cross(level.outward()).unit();
        return new Frame(level.origin(), across, level.outward().cross(across), level.outward());
    }

    static Region turned(Plane plane, Frame frame) {
        return new Region(
                turned(plane.shape().outer(), plane.frame(), frame),
                plane.shape().openings().stream()
                        .map(opening -> turned(opening, plane.frame(), frame))
                        .toList());
    }

    private static Ring turned(Ring ring, Frame from, Frame to) {
        int n = ring.size();
        double[] across = new double[n];
        double[] up = new double[n];
        int[] tag = new int[n];
        for (int i = 0; i < n; i++) {
            Point2 point = to.onPlane(from.inWorld(ring.corner(i)));
            across[i] = point.across();
            up[i] = point.up();
            tag[i] = ring.tag(i);
        }
        return new Ring(across, up, tag);
    }
}
