package org.thalweg.drawing;

import org.thalweg.units.LengthUnit;

/** Sheets to print on, the long side level. Sizes in points, of which an inch holds 72 [published: ISO 216; ANSI Y14.1]. */
public enum Paper {
    A4("a4", 297 / 25.4 * 72, 210 / 25.4 * 72),
    LETTER("letter", 11 * 72, 8.5 * 72);

    private final String word;
    private final double width;
    private final double height;

    Paper(String word, double width, double height) {
        this.word = word;
        this.width = width;
        this.height = height;
    }

    /** What lies in the printer of who measures in {@code unit}. */
    public static Paper usual(LengthUnit unit) {
        return unit.inInches() ? LETTER : A4;
    }

    /** How callers write it. */
    public String word() {
        return word;
    }

    /** Points. */
    public double width() {
        return width;
    }

    /** Points. */
    public double height() {
        return height;
    }
}
