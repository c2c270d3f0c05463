package org.thalweg.drawing;

import java.util.List;

/** Dimensions end to end along one side of what is drawn: a line with a tick at every border, and what lies between them. */
public final class Chain {

    private static final double TICK = 2;

    private Chain() {}

    /**
     * Draws one.
     *
     * @param side    to which side of the line its lettering stands
     * @param line    y of a level one, x of an upright one
     * @param borders along it, one more than there are texts
     * @param least   where along it lettering may begin
     * @param most    where it ends
     */
    public static void draw(
            Sheet sheet,
            MarkRow.Side side,
            double line,
            double[] borders,
            List<String> texts,
            double least,
            double most) {
        boolean level = side == MarkRow.Side.ABOVE || side == MarkRow.Side.BELOW;
        MarkRow row = new MarkRow(side, line, least, most);
        for (int i = 0; i < texts.size(); i++) {
            row.add((borders[i] + borders[i + 1]) / 2, line, texts.get(i));
        }
        double first = borders[0];
        double last = borders[borders.length - 1];
        if (level) {
            sheet.line(first, line, last, line, Pen.HAIR);
        } else {
            sheet.line(line, first, line, last, Pen.HAIR);
        }
        for (double at : borders) {
            double x = level ? at : line;
            double y = level ? line : at;
            sheet.line(x - TICK, y + TICK, x + TICK, y - TICK, Pen.THIN);
        }
        row.on(sheet);
    }
}
