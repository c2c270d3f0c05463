package org.thalweg.trim;

import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Roof;
import org.thalweg.units.Angle;

/**
 * What one side of a trim meets at the corner its edge ends at.
 *
 * @param how    how it ends there
 * @param edge   index in {@link Roof#edges} of the edge it meets
 * @param id     that edge's name
 * @param kind   what it is
 * @param plan   angle in plan between the two edges, in [0°, 180°]; 180° in line
 * @param angle  true angle between them, in [0°, 180°]
 * @param inside whether the roof goes more than half round the corner: so where two eaves meet over a valley
 */
public record Meeting(How how, int edge, String id, EdgeKind kind, Angle plan, Angle angle, boolean inside) {

    /** How a trim ends. */
    public enum How {
        /** Its legs and those of the other trim are cut to each other. */
        MITRED,
        /** Its legs are cut along the line of the other edge. */
        ENDS_ON,
        /** It is cut square: the other edge runs on in line, or turns back. */
        SQUARE
    }

    /** The mitre in plan, from square: half of what the angle lacks of a straight line, in [0°, 90°]; 0° in line. */
    public Angle planMitre() {
        return new Angle((Math.PI - plan.radians()) / 2);
    }

    /** The same of the true angle, which a leg that both edges lie in is cut by. */
    public Angle mitre() {
        return new Angle((Math.PI - angle.radians()) / 2);
    }
}
