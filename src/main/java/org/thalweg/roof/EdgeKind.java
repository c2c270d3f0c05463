package org.thalweg.roof;

/** What the trade calls an edge. The list is open: callers must expect kinds that are added later. */
public enum EdgeKind {
    /** Level, water runs away from it on both sides. */
    RIDGE("ridge", "R"),
    /** Sloped, convex: water runs away from it. */
    HIP("hip", "H"),
    /** Sloped, concave: water runs to it. */
    VALLEY("valley", "V"),
    /** Level, both planes fall to it. */
    LEVEL_VALLEY("levelValley", "LV"),
    /** Level, one plane falls to it and the other away. */
    PITCH_BREAK("pitchBreak", "B"),
    /** Two planes that lie in one: nothing to bend, panels may run through. */
    FLUSH("flush", "F"),
    /** Level bottom of a plane. */
    EAVE("eave", "E"),
    /** Level top of a plane that meets no other: the peak of a single slope. */
    HIGH_EAVE("highEave", "T"),
    /** Along the fall line. */
    RAKE("rake", "K"),
    /** Neither level nor along the fall line, at the low side of its plane. */
    ANGLED_EAVE("angledEave", "AE"),
    /** Neither level nor along the fall line, at the high side of its plane. */
    ANGLED_RAKE("angledRake", "AK"),
    /** A wall beside the plane. Named by the caller. */
    SIDE_WALL("sideWall", "S"),
    /** A wall at the top of the plane. Named by the caller. */
    HEAD_WALL("headWall", "W"),
    /** A joint that lets two lengths of panel move apart. Named by the caller. */
    EXPANSION_JOINT("expansionJoint", "J"),
    /** The rim of a chimney, skylight or other opening. */
    OPENING("opening", "O"),
    /** Two planes on the same side of a line, one over the other. */
    STACKED("stacked", "X");

    private final String wire;
    private final String letter;

    EdgeKind(String wire, String letter) {
        this.wire = wire;
        this.letter = letter;
    }

    /** How callers write the kind. */
    public String wire() {
        return wire;
    }

    /** What the names of such edges begin with: V1, V2 … are valleys. */
    public String letter() {
        return letter;
    }
}
