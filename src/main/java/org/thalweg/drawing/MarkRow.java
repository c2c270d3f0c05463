package org.thalweg.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Marks in a row along one side of what is drawn, as they are read off a tape: from each a hair line runs back to what it
 * marks, and where marks are close their lettering is spread.
 */
public final class MarkRow {

    private static final Type TYPE = Type.SMALL;
    private static final double GAP = TYPE.size() + 1.2;
    private static final double KNEE = 9;
    private static final double SHORT = 3;

    /** To which side of the row its lettering stands. */
    public enum Side {
        ABOVE(true, -1),
        BELOW(true, 1),
        LEFT(false, -1),
        RIGHT(false, 1);

        private final boolean level;
        private final int sign;

        Side(boolean level, int sign) {
            this.level = level;
            this.sign = sign;
        }
    }

    /**
     * One mark.
     *
     * @param at   where along the row
     * @param from where across it its hair line begins
     * @param text what it says
     * @param ink  its colour
     */
    private record Mark(double at, double from, String text, Ink ink) {}

    private final Side side;
    private final double line;
    private final double least;
    private final double most;
    private final List<Mark> marks = new ArrayList<>();

    /**
     * An empty row.
     *
     * @param line  y of a row above or below, x of a row to the left or right
     * @param least where along it lettering may begin, points
     * @param most  where it ends
     */
    public MarkRow(Side side, double line, double least, double most) {
        this.side = side;
        this.line = line;
        this.least = least;
        this.most = most;
    }

    /** Marks {@code at} along the row, with a hair line from {@code from} across it. The same mark twice is one. */
    public void add(double at, double from, String text, Ink ink) {
        for (int i = 0; i < marks.size(); i++) {
            Mark mark = marks.get(i);
            if (Math.abs(mark.at - at) < 0.3 && mark.text.equals(text)) {
                if ((from - mark.from) * side.sign < 0) {
                    marks.set(i, new Mark(at, from, text, ink));
                }
                return;
            }
        }
        marks.add(new Mark(at, from, text, ink));
    }

    public void add(double at, double from, String text) {
        add(at, from, text, Ink.BLACK);
    }

    /** Whether all of it has room. */
    public boolean fits() {
        return marks.size() * GAP <= most - least;
    }

    /** How far it reaches from its line, points. */
    public double depth() {
        return KNEE
                + marks.stream()
                        .mapToDouble(mark -> Lettering.width(mark.text, TYPE.size()))
                        .max()
                        .orElse(-KNEE)
                + 2;
    }

    /** Draws it. Ones that have no room are left out, those in the middle first. */
    public void on(Sheet sheet) {
        marks.sort(Comparator.comparingDouble(Mark::at));
        while (!fits() && !marks.isEmpty()) {
            marks.remove(marks.size() / 2);
        }
        double half = GAP / 2;
        double[] places = Spread.places(marks.stream().mapToDouble(Mark::at).toArray(), GAP, least + half, most - half);
        for (int i = 0; i < places.length; i++) {
            draw(sheet, marks.get(i), places[i]);
        }
    }

    private void draw(Sheet sheet, Mark mark, double place) {
        double knee = line + side.sign * SHORT;
        double end = line + side.sign * (KNEE - 1);
        double letters = line + side.sign * KNEE;
        double drop = TYPE.size() * 0.27 + TYPE.size() * 0.08;
        if (side.level) {
            sheet.run(new double[] {mark.at, mark.from, mark.at, knee, place, end}, Pen.HAIR);
            sheet.wordsIfClear(label(mark, side == Side.ABOVE ? Anchor.START : Anchor.END), place + drop, letters, 90);
        } else {
            sheet.run(new double[] {mark.from, mark.at, knee, mark.at, end, place}, Pen.HAIR);
            sheet.wordsIfClear(label(mark, side == Side.RIGHT ? Anchor.START : Anchor.END), letters, place + drop, 0);
        }
    }

    private static Label label(Mark mark, Anchor anchor) {
        return Label.of(mark.text, TYPE).at(anchor).in(mark.ink);
    }
}
