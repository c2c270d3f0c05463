package org.thalweg.drawing;

/**
 * A line of lettering that is yet to find its place.
 *
 * @param text   what it says
 * @param type   its size
 * @param anchor which part of it stands at its place
 * @param ink    its colour
 * @param backed whether lines drawn before are wiped out under it
 */
public record Label(String text, Type type, Anchor anchor, Ink ink, boolean backed) {

    /** In black, around its place. */
    public static Label of(String text, Type type) {
        return new Label(text, type, Anchor.MIDDLE, Ink.BLACK, false);
    }

    /** As much of {@code text} as fits into {@code width} points. */
    public static Label cut(String text, Type type, double width) {
        return of(Lettering.cut(text, type.size(), width), type);
    }

    /** The same, lines under it wiped out. */
    public Label onPaper() {
        return new Label(text, type, anchor, ink, true);
    }

    public Label in(Ink other) {
        return new Label(text, type, anchor, other, backed);
    }

    public Label at(Anchor other) {
        return new Label(text, type, other, ink, backed);
    }

    /** As much of it as fits into {@code most} points, with an ellipsis where it is cut. */
    public Label within(double most) {
        return new Label(Lettering.cut(text, type.size(), most), type, anchor, ink, backed);
    }

    /** Points. */
    public double width() {
        return Lettering.width(text, type.size());
    }
}
