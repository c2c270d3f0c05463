package org.thalweg.valley;

import org.thalweg.roof.EdgeKind;
import org.thalweg.units.Angle;
import org.thalweg.valley.SlopedEdge.End;

/**
 * The line a side of the pan ends on: s = t · cot ω from the end of the valley inward, where ω is the angle between the low
 * and what the plane ends on there. [geometry]
 *
 * <pre>
 *           low                 At the foot of a valley between two eaves ω = 180° − φ, so the flats reach
 *      \     |     /            further down than their low, like a swallow's tail; at a ridge ω = φ and
 *       \    |    /             they come to a point. Where another valley follows on the same plane both
 *     ___\   ^   /___           pans end on the line half-way between them, lapped.
 *    eave 1 / \ eave 2
 * </pre>
 *
 * @param angle  what the line is slanted by: ω, half of it half-way to another valley or hip, 90° where the pan has nothing to
 *               end on
 * @param perOut how much further inward along the low the line lies for each length outward; that angle's cotangent
 * @param past   how far past its own corner the pan runs, along the low; 0 or more
 * @param turnUp whether what runs past is turned up at a wall
 * @param onEdge whether it is the line of the edge the plane ends on; not where it lies half-way to one, or square
 */
public record EndLine(Angle angle, double perOut, double past, boolean turnUp, boolean onEdge) {

    /** A plane whose next edge runs on within a degree of straight, or turns back, leaves the pan nothing to end on. */
    private static final double STRAIGHT = Math.toRadians(179);

    /** Where lines along an edge of this kind end: on what the plane ends on there, or half-way to another such edge. */
    static EndLine of(End end, EdgeKind own) {
        double corner = end.corner().radians();
        if (end.kind() == own) {
            return halfWay(corner, 0);
        }
        return corner > STRAIGHT ? square(0) : slanted(corner, 0, false);
    }

    /** Where the pan of a valley ends. */
    public static EndLine of(End end, PanSpec spec) {
        double corner = end.corner().radians();
        if (end.kind() == EdgeKind.VALLEY) {
            return halfWay(corner, spec.lap().metres());
        }
        if (corner > STRAIGHT) {
            return square(spec.lap().metres());
        }
        return switch (end.kind()) {
            case EAVE, ANGLED_EAVE -> slanted(corner, spec.pastEave().metres(), false);
            case SIDE_WALL, HEAD_WALL -> slanted(corner, spec.wallTurnUp().metres(), true);
            case PITCH_BREAK, FLUSH, EXPANSION_JOINT ->
                slanted(corner, spec.lap().metres(), false);
            default -> slanted(corner, 0, false);
        };
    }

    /** {@code past} is measured square to the line. */
    private static EndLine slanted(double angle, double past, boolean turnUp) {
        return new EndLine(new Angle(angle), 1 / Math.tan(angle), past / Math.sin(angle), turnUp, true);
    }

    private static EndLine square(double past) {
        return new EndLine(Angle.degrees(90), 0, past, false, false);
    }

    private static EndLine halfWay(double corner, double past) {
        double half = corner / 2;
        return new EndLine(new Angle(half), 1 / Math.tan(half), past / Math.sin(half), false, false);
    }

    /** Where the metal ends, inward from the end of the valley; below 0 past it. */
    double metal(double t) {
        return t * perOut - past;
    }

    /** Where the roof's own line lies, which lines on the pan are measured to. */
    double line(double t) {
        return t * perOut;
    }
}
