package org.thalweg.wind;

import org.thalweg.roof.EdgeKind;

/** What an edge is to the wind. */
enum ZoneLine {
    /** The rim of the roof: a strip along it, and corners. */
    RIM,
    /**
     * A wall that goes on up from the roof, or a parapet: a strip along it, no corner. ASCE 7-05 figure 6-12 lets both zones go
     * down by one at a wall of 10 ft and more above a flat roof [from memory: memory-high]. How high a wall is this room
     * does not know, so the strip stays and only the corner goes.
     */
    WALL,
    /** A ridge: a strip on both hands on roofs steeper than 7°. */
    RIDGE,
    /** A hip: the same. */
    HIP,
    /** Nothing to the wind, and the planes on both hands are one roof to it. */
    NONE,
    /** Nothing to the wind, but distances are not measured across it: an inner corner, or a plane over another. */
    APART;

    /**
     * The published figures have strips along eaves, rakes, ridges and hips, and along the rim only on roofs of 7° or less.
     * [published: figure 4.3 of the handbook {@link ZoneWidth#SOURCE} names, seen without its drawings; which strips it
     * draws is from memory: memory-high]
     *
     * @param flat whether the roof rises 7° or less
     */
    static ZoneLine of(EdgeKind kind, boolean flat) {
        return switch (kind) {
            case EAVE, HIGH_EAVE, RAKE, ANGLED_EAVE, ANGLED_RAKE, STACKED -> RIM;
            case SIDE_WALL, HEAD_WALL -> WALL;
            case RIDGE -> flat ? NONE : RIDGE;
            case HIP -> flat ? NONE : HIP;
            case PITCH_BREAK, FLUSH, EXPANSION_JOINT -> NONE;
            case VALLEY, LEVEL_VALLEY, OPENING -> APART;
        };
    }

    boolean strip() {
        return this != NONE && this != APART;
    }
}
