package org.thalweg.drawing;

/** The colours of the board: black line work, greys that step back, and one accent for what is to be marked or heeded. */
public enum Ink {
    BLACK(0x000000),
    GREY(0x5F5F5F),
    FAINT(0xA8A8A8),
    WASH(0xEFEFEF),
    WHITE(0xFFFFFF),
    ACCENT(0x9A3B12);

    private final int rgb;

    Ink(int rgb) {
        this.rgb = rgb;
    }

    /** Red, green and blue, eight bits each. */
    int rgb() {
        return rgb;
    }

    /** As CSS and SVG write a colour. */
    String hex() {
        return String.format("#%06X", rgb);
    }
}
