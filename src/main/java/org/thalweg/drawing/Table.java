package org.thalweg.drawing;

import java.util.ArrayList;
import java.util.List;

/** A table: columns as wide as what is in them, long texts in lines of their own, the head again on every sheet. */
public final class Table {

    private static final double GAP = 8;
    /** No column of words is made narrower than this, so that single words are not torn. */
    private static final double NARROWEST = 62;

    private static final Type TYPE = Type.SMALL;

    /**
     * A column.
     *
     * @param heading what it holds
     * @param anchor  figures stand at the end, words at the start
     * @param most    widest it may be, points; what is longer is broken into lines
     */
    private record Column(String heading, Anchor anchor, double most) {}

    private final List<Column> columns = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();

    /** A column of words, at most {@code most} points wide. */
    public Table words(String heading, double most) {
        columns.add(new Column(heading, Anchor.START, most));
        return this;
    }

    /** A column of figures. */
    public Table figures(String heading) {
        columns.add(new Column(heading, Anchor.END, 120));
        return this;
    }

    /** One cell for each column. */
    public void row(String... cells) {
        if (cells.length != columns.size()) {
            throw new IllegalArgumentException(cells.length + " cells for " + columns.size() + " columns");
        }
        rows.add(List.of(cells));
    }

    public boolean isEmpty() {
        return rows.isEmpty();
    }

    /** Draws it where {@code flow} stands. */
    public void on(Flow flow) {
        double[] widths = widths(flow.width());
        Sheet on = null;
        for (List<String> row : rows) {
            List<List<String>> cells = new ArrayList<>();
            int lines = 1;
            for (int i = 0; i < row.size(); i++) {
                List<String> cell = Lettering.lines(row.get(i), TYPE.size(), widths[i]);
                cells.add(cell);
                lines = Math.max(lines, cell.size());
            }
            double height = lines * TYPE.leading() + 3;
            if (on == null || flow.room() < height) {
                head(flow, widths, height);
                on = flow.sheet();
            }
            Area area = flow.take(height);
            letter(flow.sheet(), cells, widths, area);
        }
    }

    private void head(Flow flow, double[] widths, double next) {
        double height = TYPE.leading() + 4;
        if (flow.room() < height + next) {
            flow.take(height + next);
            flow.skip(-height - next);
        }
        Area area = flow.take(height);
        double x = area.left();
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            flow.sheet()
                    .words(
                            column.heading,
                            at(column, x, widths[i]),
                            area.top() + TYPE.size() + 1,
                            TYPE,
                            column.anchor,
                            Ink.GREY);
            x += widths[i] + GAP;
        }
        flow.sheet().line(area.left(), area.bottom() - 1, x - GAP, area.bottom() - 1, Pen.HAIR);
    }

    private void letter(Sheet sheet, List<List<String>> cells, double[] widths, Area area) {
        double x = area.left();
        for (int i = 0; i < cells.size(); i++) {
            Column column = columns.get(i);
            double y = area.top() + TYPE.size() + 1;
            for (String line : cells.get(i)) {
                sheet.words(line, at(column, x, widths[i]), y, TYPE, column.anchor, Ink.BLACK);
                y += TYPE.leading();
            }
            x += widths[i] + GAP;
        }
        sheet.line(area.left(), area.bottom(), x - GAP, area.bottom(), Pen.RULE);
    }

    private static double at(Column column, double x, double width) {
        return x + column.anchor.share() * width;
    }

    /** As wide as what is in it, up to its most; wide columns of words give way where all together are too wide. */
    private double[] widths(double room) {
        double[] widths = new double[columns.size()];
        double sum = GAP * (columns.size() - 1);
        double loose = 0;
        for (int i = 0; i < widths.length; i++) {
            Column column = columns.get(i);
            double width = Lettering.width(column.heading, TYPE.size());
            for (List<String> row : rows) {
                width = Math.max(width, Lettering.width(row.get(i), TYPE.size()));
            }
            widths[i] = Math.min(width, column.most) + 0.01;
            sum += widths[i];
            loose += gives(column, widths[i]) ? widths[i] - NARROWEST : 0;
        }
        if (sum > room && loose > 0) {
            double share = Math.max(0, 1 - (sum - room) / loose);
            for (int i = 0; i < widths.length; i++) {
                if (gives(columns.get(i), widths[i])) {
                    widths[i] = NARROWEST + share * (widths[i] - NARROWEST);
                }
            }
        }
        return widths;
    }

    private static boolean gives(Column column, double width) {
        return column.anchor == Anchor.START && width > NARROWEST;
    }
}
