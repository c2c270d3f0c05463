package org.thalweg.drawing;

/** Which part of a line of lettering stands at its place. */
public enum Anchor {
    START(0, "start"),
    MIDDLE(0.5, "middle"),
    END(1, "end");

    private final double share;
    private final String svg;

    Anchor(double share, String svg) {
        this.share = share;
        this.svg = svg;
    }

    /** How much of the line lies before its place. */
    double share() {
        return share;
    }

    String svg() {
        return svg;
    }
}
