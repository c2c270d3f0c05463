package org.thalweg.panel;

import org.thalweg.geometry.Frame;
import org.thalweg.geometry.Vector3;
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
}
