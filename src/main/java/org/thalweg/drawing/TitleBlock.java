package org.thalweg.drawing;

import java.util.List;

/**
 * What stands on every sheet.
 *
 * @param job    the caller's name of the job; may be empty
 * @param digest of the request that was answered
 * @param engine who answered
 * @param notes  short lines for the foot: units, how tape marks are rounded
 * @param heed   the line that sends the reader to the cautions
 */
public record TitleBlock(String job, String digest, String engine, List<String> notes, String heed) {

    private static final double MARGIN = 30;
    private static final double HEAD = 24;
    private static final double FOOT = 26;

    public TitleBlock {
        notes = List.copyOf(notes);
    }

    /** Where the drawing goes on a sheet. */
    static Area field(Paper paper) {
        return new Area(MARGIN, MARGIN + HEAD, paper.width() - 2 * MARGIN, paper.height() - 2 * MARGIN - HEAD - FOOT);
    }

    /** Letters it on {@code sheet}, which is number {@code number} of {@code count}. */
    void on(Sheet sheet, int number, int count) {
        Area field = field(sheet.paper());
        double right = field.right();
        double half = field.width() / 2 - 8;
        double top = MARGIN + Type.TITLE.size();
        sheet.words(Lettering.cut(sheet.title(), Type.TITLE.size(), half), MARGIN, top, Type.TITLE);
        sheet.words(Lettering.cut(job, Type.HEAD.size(), half), right, top, Type.HEAD, Anchor.END, Ink.BLACK);
        sheet.line(MARGIN, MARGIN + HEAD - 5, right, MARGIN + HEAD - 5, Pen.OUTLINE);

        double low = field.bottom() + 6;
        sheet.line(MARGIN, low, right, low, Pen.HAIR);
        double first = low + 9;
        double second = first + Type.TINY.leading();
        sheet.words("Scale " + sheet.scale(), MARGIN, first, Type.SMALL);
        sheet.words("Sheet " + number + " of " + count, right, first, Type.SMALL, Anchor.END, Ink.BLACK);
        sheet.words(
                String.join("  ·  ", notes), MARGIN + field.width() * 0.28, first, Type.TINY, Anchor.START, Ink.GREY);
        sheet.words(heed, MARGIN, second + 2, Type.TINY, Anchor.START, Ink.ACCENT);
        sheet.words(engine + "  ·  request " + digest, right, second + 2, Type.TINY, Anchor.END, Ink.GREY);
    }
}
