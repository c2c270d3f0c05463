package org.thalweg.packet;

import org.thalweg.geometry.Point3;

/** How a caller names one edge of the roof. */
public sealed interface EdgeName {

    /**
     * By the name it has in the answer.
     *
     * @param id such as V1
     */
    record ById(String id) implements EdgeName {}

    /**
     * By the straight line it lies on; every edge between the two points is meant.
     *
     * @param from one end; world, metres
     * @param to   the other end
     */
    record Between(Point3 from, Point3 to) implements EdgeName {}

    /** The valley at a corner, where there is one at most. */
    record OnlyValley() implements EdgeName {}
}
