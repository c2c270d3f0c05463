package org.thalweg.drawing;

import java.util.Optional;

/** One thing on a sheet, in the order it was drawn. */
sealed interface Stroke {

    /** Draws it on {@code canvas}. */
    void on(Canvas canvas);

    /** Whether it runs through a line of lettering at {@code box}. */
    boolean crosses(LetterBox box);

    /**
     * A run of straight lines.
     *
     * @param corners x and y by turns
     * @param closed  whether it goes back to its first corner
     * @param pen     that draws it, if it is drawn
     * @param fill    what fills it, if anything does
     */
    record Run(double[] corners, boolean closed, Optional<Pen> pen, Optional<Ink> fill) implements Stroke {
        @Override
        public void on(Canvas canvas) {
            canvas.run(corners, closed, pen, fill);
        }

        /** A fill without an outline is background. */
        @Override
        public boolean crosses(LetterBox box) {
            int sides = pen.isPresent() ? corners.length / 2 - (closed ? 0 : 1) : 0;
            for (int i = 0; i < sides; i++) {
                int from = 2 * i;
                int to = (from + 2) % corners.length;
                if (box.crossed(corners[from], corners[from + 1], corners[to], corners[to + 1])) {
                    return true;
                }
            }
            return false;
        }
    }

    /**
     * Many dots of one kind.
     *
     * @param places x and y by turns
     * @param dot    their shape
     */
    record Dots(double[] places, Dot dot) implements Stroke {
        @Override
        public void on(Canvas canvas) {
            canvas.dots(places, dot);
        }

        @Override
        public boolean crosses(LetterBox box) {
            for (int i = 0; i < places.length; i += 2) {
                if (box.crossed(places[i] - 1, places[i + 1], places[i] + 1, places[i + 1])) {
                    return true;
                }
            }
            return false;
        }
    }

    /**
     * A line of lettering.
     *
     * @param text   what it says
     * @param x      where its anchor stands
     * @param y      of its baseline there
     * @param turn   degrees counter-clockwise
     * @param type   its size
     * @param anchor which part of it stands at x, y
     * @param ink    its colour
     */
    record Words(String text, double x, double y, double turn, Type type, Anchor anchor, Ink ink) implements Stroke {

        /** How far letters reach above and below their baseline, ems. */
        private static final double ASCENT = 0.74;

        private static final double DESCENT = 0.2;

        @Override
        public void on(Canvas canvas) {
            canvas.words(this);
        }

        @Override
        public boolean crosses(LetterBox box) {
            return box.meets(box());
        }

        double width() {
            return Lettering.width(text, type.size());
        }

        /** Where its first letter begins. */
        double startX() {
            return x - anchor.share() * width() * Math.cos(Math.toRadians(turn));
        }

        double startY() {
            return y + anchor.share() * width() * Math.sin(Math.toRadians(turn));
        }

        LetterBox box() {
            double down = DESCENT * type.size();
            return new LetterBox(
                    startX() + down * Math.sin(Math.toRadians(turn)),
                    startY() + down * Math.cos(Math.toRadians(turn)),
                    width(),
                    (ASCENT + DESCENT) * type.size(),
                    turn);
        }
    }
}
