package org.thalweg.drainage;

import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Angle;
import org.thalweg.units.Pitch;

/**
 * The valley at a square corner by the formulas of the trade: plane 0 rises {@code rise} in 12 toward +y, plane 1
 * {@code otherRise} in 12 toward +x, so the valley runs as (rise, otherRise) in plan.
 */
record SquareCorner(double rise, double otherRise) {

    Angle bed() {
        return Angle.atan2(rise * otherRise / 12, Math.hypot(rise, otherRise));
    }

    PanFlat flat(int side) {
        double own = side == 0 ? rise : otherRise;
        double other = side == 0 ? otherRise : rise;
        Angle pitch = new Pitch(own, 12).slope();
        return new PanFlat(pitch, Angle.atan2(other / own, pitch.cos()), true);
    }

    Channel channel(int side) {
        return Channel.of(flat(side), flat(1 - side), bed(), Channel.ROUGHNESS, Tolerance.DEFAULT)
                .orElseThrow();
    }
}
