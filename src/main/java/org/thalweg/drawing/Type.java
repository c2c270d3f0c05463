package org.thalweg.drawing;

/** Sizes of lettering, in points. */
public enum Type {
    TITLE(13),
    HEAD(9.5),
    TEXT(8),
    SMALL(7),
    TINY(6);

    private final double size;

    Type(double size) {
        this.size = size;
    }

    /** Points. */
    public double size() {
        return size;
    }

    /** From one line to the next, points. */
    public double leading() {
        return size * 1.3;
    }
}
