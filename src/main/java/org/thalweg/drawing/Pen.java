package org.thalweg.drawing;

/** The pens of a working drawing: how thick a line is, whether it is broken, and its ink. */
public enum Pen {
    /** Outlines of what is cut or seen. */
    OUTLINE(1.1, Ink.BLACK),
    /** Lines within an outline: ribs, sides of an opening. */
    THIN(0.45, Ink.BLACK),
    /** Dimension and leader lines. */
    HAIR(0.3, Ink.BLACK),
    /** Rules of tables, borders. */
    RULE(0.35, Ink.FAINT),
    /** What lies out of sight or is folded: broken. */
    HIDDEN(0.5, Ink.BLACK, 3, 2),
    /** Bends: dash and dot. */
    BEND(0.5, Ink.BLACK, 6, 1.8, 1, 1.8),
    /** What a crew marks or chalks. */
    MARK(0.9, Ink.ACCENT),
    /** A second line to chalk. */
    MARK_BROKEN(0.9, Ink.ACCENT, 4, 2),
    DOT(0.5, Ink.BLACK),
    DOT_ACCENT(0.5, Ink.ACCENT),
    RIDGE(1.6, Ink.BLACK),
    HIP(1.3, Ink.BLACK, 9, 2, 2, 2),
    VALLEY(1.6, Ink.ACCENT),
    BREAK(0.9, Ink.BLACK, 5, 2),
    EAVE(1.1, Ink.BLACK),
    RAKE(0.7, Ink.BLACK),
    WALL(1.8, Ink.GREY, 1.5, 1.5);

    private final double width;
    private final Ink ink;
    private final double[] dashes;

    Pen(double width, Ink ink, double... dashes) {
        this.width = width;
        this.ink = ink;
        this.dashes = dashes;
    }

    /** Points. */
    double width() {
        return width;
    }

    Ink ink() {
        return ink;
    }

    /** Points of line and gap by turns; none for an unbroken line. */
    double[] dashes() {
        return dashes.clone();
    }
}
