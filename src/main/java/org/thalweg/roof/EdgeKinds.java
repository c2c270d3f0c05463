package org.thalweg.roof;

import org.thalweg.units.Angle;

/**
 * What the trade calls an edge, from what its planes do there.
 *
 * <pre>
 *   shared  level  planes                                   kind
 *   yes     yes    both fall away                           ridge
 *   yes     yes    both fall to it                          level valley
 *   yes     yes    one to it, one away, or one does neither pitch break
 *   yes     no     they turn away from each other           hip
 *   yes     no     they turn towards each other             valley
 *   yes     any    they lie in one and fall one way         flush
 *   no      yes    at the bottom of its plane               eave
 *   no      yes    at the top                               high eave
 *   no      no     along the fall line                      rake
 *   no      no     other, at the low side                   angled eave
 *   no      no     other, at the high side                  angled rake
 * </pre>
 *
 * <p>A level plane has no bottom and no top: all its sides that meet no other plane are eaves. It falls neither to an edge
 * nor away from it, and no more does a plane that runs its water along the edge.
 */
final class EdgeKinds {

    /**
     * An edge that slopes more than this is not level. About 3.5 cm a metre: no ridge is built so, and a ridge measured
     * from the ground or the air is seldom out by as much. [common practice]
     */
    static final Angle LEVEL_SLOPE = Angle.degrees(2);

    /**
     * A level edge also runs within this of the level line in one of its planes. It tells the hip of a roof of 1/4:12,
     * which slopes 0.8° but runs at 45°, from a ridge that is a little out. [common practice]
     */
    static final Angle LEVEL_MITRE = Angle.degrees(5);

    /**
     * An edge within 5° of the fall line is a rake: the panels beside it are ripped, not mitred. [common practice]
     */
    static final Angle FALL_LINE = Angle.degrees(85);

    /** Planes that bend less than this lie in one: no flashing is bent so little. [common practice] */
    static final Angle FLUSH = Angle.degrees(2);

    /**
     * Panels run through from one plane to the next only if the fall lines agree within this. The hips of a roof of 1/4:12
     * bend 1.7°, but water and panels turn a corner there. [common practice]
     */
    static final Angle ONE_FALL = Angle.degrees(5);

    /**
     * An edge as one of its planes sees it.
     *
     * @param level whether the plane is level
     * @param mitre angle in the plane from its level line to the edge, in [0°, 90°]
     * @param above whether the plane lies above the edge, so that water runs down to it
     */
    record View(boolean level, Angle mitre, boolean above) {
        boolean alongLevelLine() {
            return level || mitre.compareTo(LEVEL_MITRE) <= 0;
        }

        boolean alongFallLine() {
            return mitre.compareTo(FALL_LINE) >= 0;
        }

        /** Whether water runs neither to the edge nor away from it. */
        boolean neither() {
            return level || alongFallLine();
        }
    }

    private EdgeKinds() {}

    /** An edge that meets no other plane. */
    static EdgeKind alone(Angle slope, View plane, boolean opening) {
        if (opening) {
            return EdgeKind.OPENING;
        }
        if (plane.level) {
            return EdgeKind.EAVE;
        }
        if (slope.compareTo(LEVEL_SLOPE) <= 0 && plane.alongLevelLine()) {
            return plane.above ? EdgeKind.EAVE : EdgeKind.HIGH_EAVE;
        }
        if (plane.alongFallLine()) {
            return EdgeKind.RAKE;
        }
        return plane.above ? EdgeKind.ANGLED_EAVE : EdgeKind.ANGLED_RAKE;
    }

    /**
     * An edge with a plane on either side.
     *
     * @param turn angle between the two planes' level lines; of no account when one of them is level
     */
    static EdgeKind shared(Angle slope, View one, View other, Angle bend, boolean convex, Angle turn) {
        if (bend.compareTo(FLUSH) <= 0 && (one.level || other.level || turn.compareTo(ONE_FALL) <= 0)) {
            return EdgeKind.FLUSH;
        }
        if (slope.compareTo(LEVEL_SLOPE) > 0 || !(one.alongLevelLine() || other.alongLevelLine())) {
            return convex ? EdgeKind.HIP : EdgeKind.VALLEY;
        }
        if (one.neither() || other.neither() || one.above != other.above) {
            return EdgeKind.PITCH_BREAK;
        }
        return one.above ? EdgeKind.LEVEL_VALLEY : EdgeKind.RIDGE;
    }
}
