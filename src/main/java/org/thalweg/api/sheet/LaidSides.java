package org.thalweg.api.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.api.wire.LineAnswer;
import org.thalweg.api.wire.LineAnswer.EndAnswer;
import org.thalweg.api.wire.LineAnswer.Hand;
import org.thalweg.api.wire.LineAnswer.LowAnswer;
import org.thalweg.api.wire.MarkedLength;
import org.thalweg.api.wire.PlanePoint;
import org.thalweg.api.wire.ValleyAnswer.RowAnswer;
import org.thalweg.drawing.Area;
import org.thalweg.drawing.Bounds;
import org.thalweg.drawing.Callout;
import org.thalweg.drawing.Dimension;
import org.thalweg.drawing.Dot;
import org.thalweg.drawing.Flow;
import org.thalweg.drawing.Ink;
import org.thalweg.drawing.Label;
import org.thalweg.drawing.LongFit;
import org.thalweg.drawing.MarkRow;
import org.thalweg.drawing.Pen;
import org.thalweg.drawing.Sheet;
import org.thalweg.drawing.Table;
import org.thalweg.drawing.Type;
import org.thalweg.units.LengthUnit;

/**
 * Both planes of a valley or hip unfolded about its line, the foot to the left: lines beside it, what the planes end on, and
 * rows of fasteners.
 *
 * @param name   of the line they are unfolded about
 * @param length of it
 * @param sides  the plane to the left, then the one to the right
 */
record LaidSides(String name, MarkedLength length, List<Side> sides) {

    /** How its figures are to be read. */
    static final String HOW =
            "Figures at the ends of the lines: measure them along the edge the line ends on, from the end of the line in the middle.";

    private static final double MARGIN_ALONG = 62;
    private static final double MARGIN_ACROSS = 22;
    private static final double EDGE_PAST = 1.12;
    private static final double STEP = 16;
    private static final double DIMENSION_ENDS = 8;

    LaidSides {
        sides = List.copyOf(sides);
    }

    /**
     * One plane.
     *
     * @param plane  which
     * @param hand   to which side
     * @param low    the line they are unfolded about, on it
     * @param bottom what it ends on at the foot
     * @param top    and at the head
     * @param lines  beside the low
     * @param rows   of fasteners
     */
    record Side(
            String plane, Hand hand, LowAnswer low, EndAnswer bottom, EndAnswer top, List<Line> lines, List<Row> rows) {

        Side {
            lines = List.copyOf(lines);
            rows = List.copyOf(rows);
        }

        /** A place of the plane: out from the low, and up it from the foot. */
        private double[] laid(PlanePoint place) {
            double runAcross = low.to().across() - low.from().across();
            double runUp = low.to().up() - low.from().up();
            double run = Math.hypot(runAcross, runUp);
            double across = place.across() - low.from().across();
            double up = place.up() - low.from().up();
            double left = (runAcross * up - runUp * across) / run;
            return new double[] {hand == Hand.LEFT ? left : -left, (runAcross * across + runUp * up) / run};
        }

        /** Across of the drawing: what lies to the left is drawn above. */
        private double sign() {
            return hand == Hand.LEFT ? -1 : 1;
        }
    }

    /**
     * A line beside the low.
     *
     * @param name what it is
     * @param line where it is
     * @param pen  that draws it
     */
    record Line(String name, LineAnswer line, Pen pen) {}

    /**
     * A row of fasteners.
     *
     * @param row as answered
     * @param dot that draws them
     */
    record Row(RowAnswer row, Dot dot) {}

    static Optional<Line> line(String name, Optional<LineAnswer> line, Pen pen) {
        return line.map(found -> new Line(name, found, pen));
    }

    /** Draws them where {@code flow} stands, at most {@code most} points high, together with the {@code keep} points under it. */
    void on(Flow flow, String title, double most, double keep, LengthUnit unit) {
        Bounds bounds = bounds();
        Area room = new Area(flow.left() + MARGIN_ALONG, 0, flow.width() - 2 * MARGIN_ALONG, most - 2 * MARGIN_ACROSS);
        double ends = Math.max(bounds.width() / 2, Math.max(-bounds.low(), bounds.high() - length.value()) + reach());
        LongFit fit = LongFit.in(bounds, ends, unit, room);
        double height = fit.height() + 2 * MARGIN_ACROSS;
        flow.heading(name + title + "  ·  scale " + fit.scale().stated(), height + keep);
        Area area = flow.take(height);
        fit = fit.at(area.left() + MARGIN_ALONG, area.top() + MARGIN_ACROSS);
        Scales.tell(flow.sheet(), fit.scale());
        draw(flow.sheet(), fit, area);
    }

    /** How far out the outermost line lies. */
    private double reach() {
        double most = 0;
        for (Side side : sides) {
            for (Line line : side.lines) {
                most = Math.max(most, side.laid(line.line.from())[0]);
                most = Math.max(most, side.laid(line.line.to())[0]);
            }
        }
        return most > 0 ? most : length.value() / 4;
    }

    private Bounds bounds() {
        double out = reach() * EDGE_PAST;
        List<double[]> reached = new ArrayList<>();
        reached.add(new double[] {-out, 0, out, length.value()});
        for (Side side : sides) {
            for (Line line : side.lines) {
                reached.add(side.laid(line.line.from()));
                reached.add(side.laid(line.line.to()));
            }
        }
        return Bounds.of(reached);
    }

    private void draw(Sheet sheet, LongFit fit, Area area) {
        fit.line(sheet, 0, 0, 0, length.value(), Pen.VALLEY);
        for (Side side : sides) {
            edge(sheet, fit, side, side.bottom, 0, 1);
            edge(sheet, fit, side, side.top, length.value(), -1);
            side.lines.forEach(line -> line(sheet, fit, side, line));
            side.rows.forEach(row -> row(sheet, fit, side, row));
        }
        fit.breakOn(sheet);
        marks(sheet, fit, area);
        for (Side side : sides) {
            names(sheet, fit, area, side);
        }
        letterBeside(sheet, area, name + " " + length.tape(), Ink.BLACK, fit, 0, 0, 0, length.value());
    }

    /** The edge a plane ends on, as far as it runs beside the low on its own side. */
    private void edge(Sheet sheet, LongFit fit, Side side, EndAnswer end, double at, int upward) {
        double[] far = edgeEnd(fit, end, at, upward);
        if (far.length > 0) {
            fit.line(sheet, 0, at, side.sign() * far[0], far[1], Pen.EAVE);
        }
    }

    /** Where the drawn part of an edge ends, out and up; empty where it turns back. */
    private static double[] edgeEnd(LongFit fit, EndAnswer end, double at, int upward) {
        double corner = Math.toRadians(end.cornerDeg());
        double out = Math.sin(corner);
        double up = upward * Math.cos(corner);
        if (out < 1e-3) {
            return new double[0];
        }
        double run = fit.bounds().right() / out;
        double room = up < 0 ? at - fit.bounds().low() : fit.bounds().high() - at;
        if (Math.abs(up) * run > room) {
            run = room / Math.abs(up);
        }
        return new double[] {out * run, at + up * run};
    }

    private static void line(Sheet sheet, LongFit fit, Side side, Line line) {
        double[] from = side.laid(line.line.from());
        double[] to = side.laid(line.line.to());
        fit.line(sheet, side.sign() * from[0], from[1], side.sign() * to[0], to[1], line.pen);
    }

    /** Those of a row; of screws through panels only the line is known here, and the table says how they stand. */
    private static void row(Sheet sheet, LongFit fit, Side side, Row row) {
        if (row.row.perPanel()) {
            return;
        }
        double[] from = side.laid(row.row.from());
        double[] to = side.laid(row.row.to());
        double run = Math.hypot(to[0] - from[0], to[1] - from[1]);
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < row.row.count(); i++) {
            double share =
                    run > 0 ? (row.row.first().value() + i * row.row.spacing().value()) / run : 0;
            double up = from[1] + share * (to[1] - from[1]);
            if (fit.shows(up)) {
                places.add(fit.x(up));
                places.add(fit.y(side.sign() * (from[0] + share * (to[0] - from[0]))));
            }
        }
        sheet.dots(places.stream().mapToDouble(Double::doubleValue).toArray(), row.dot);
    }

    /** What to measure along the edges at foot and head, and square to the low. */
    private void marks(Sheet sheet, LongFit fit, Area area) {
        MarkRow foot = new MarkRow(MarkRow.Side.LEFT, fit.left() - 2, area.top(), area.bottom());
        MarkRow head = new MarkRow(MarkRow.Side.RIGHT, fit.right() + 2, area.top(), area.bottom());
        for (Side side : sides) {
            double x = fit.left() + fit.width() * (fit.broken() ? 0.16 : 0.22);
            for (Line line : side.lines) {
                double[] from = side.laid(line.line.from());
                double[] to = side.laid(line.line.to());
                double fromY = fit.y(side.sign() * from[0]);
                double toY = fit.y(side.sign() * to[0]);
                Ink ink = ink(line);
                line.line.lower().along().ifPresent(along -> foot.add(fromY, fit.x(from[1]), along.tape(), ink));
                line.line.upper().along().ifPresent(along -> head.add(toY, fit.x(to[1]), along.tape(), ink));
                String out = line.line.lower().out().tape();
                boolean alongLow =
                        Math.abs(from[0] - to[0]) < 1e-3 * fit.bounds().width();
                if (alongLow
                        && Math.abs(fromY - fit.y(0))
                                > Label.of(out, Type.SMALL).width() + DIMENSION_ENDS) {
                    Dimension.draw(sheet, x, fit.y(0), x, fromY, 1e-3, out);
                    x += STEP;
                }
            }
        }
        foot.on(sheet);
        head.on(sheet);
    }

    private static Ink ink(Line line) {
        return line.pen == Pen.HIDDEN ? Ink.BLACK : Ink.ACCENT;
    }

    private void names(Sheet sheet, LongFit fit, Area area, Side side) {
        double sign = side.sign();
        for (Line line : side.lines) {
            double[] from = side.laid(line.line.from());
            double[] to = side.laid(line.line.to());
            letterBeside(
                    sheet,
                    area,
                    line.name + " " + line.line.length().tape(),
                    ink(line),
                    fit,
                    sign * from[0],
                    from[1],
                    sign * to[0],
                    to[1]);
        }
        endName(sheet, area, fit, side, side.bottom, 0, 1);
        endName(sheet, area, fit, side, side.top, length.value(), -1);
        Label plane = Label.of(side.plane, Type.TEXT).within(area.width() / 3);
        double middle = fit.left() + fit.width() * (fit.broken() ? 0.25 : 0.5);
        Callout.note(sheet, area, plane, middle, sign < 0 ? fit.top() : fit.bottom(), 0, sign);
    }

    private static void endName(Sheet sheet, Area area, LongFit fit, Side side, EndAnswer end, double at, int upward) {
        double[] far = edgeEnd(fit, end, at, upward);
        boolean back = far.length == 0;
        String text = end.edge() + " " + Lettered.word(end.kind()) + " " + Lettered.degrees(end.cornerDeg())
                + (back ? ", turns back" : "");
        Label label = Label.of(text, Type.SMALL);
        double x = fit.x(back ? at : far[1]);
        double y = fit.y(back ? 0 : side.sign() * far[0]);
        Callout.note(sheet, area, label, x, y, back ? -upward : 0, back ? 0 : side.sign());
    }

    /** Beside what is shown of a line, the longer part where it is broken. */
    private static void letterBeside(
            Sheet sheet,
            Area area,
            String text,
            Ink ink,
            LongFit fit,
            double across1,
            double along1,
            double across2,
            double along2) {
        double end = fit.broken() && along1 < fit.breakFrom() ? Math.min(along2, fit.breakFrom()) : along2;
        double across = along2 > along1 ? across1 + (across2 - across1) * (end - along1) / (along2 - along1) : across2;
        Label label = Label.of(text, Type.SMALL).in(ink);
        double x1 = fit.x(along1);
        double y1 = fit.y(across1);
        double x2 = fit.x(end);
        double y2 = fit.y(across);
        if (!Callout.along(sheet, area, label, x1, y1, x2, y2)) {
            Callout.note(sheet, area, label, (x1 + x2) / 2, (y1 + y2) / 2, 0, across1 < 0 ? -1 : 1);
        }
    }

    /** How to find every line with a tape and a square. */
    Table lines() {
        Table table = new Table()
                .words("plane", 110)
                .words("line", 80)
                .figures("length")
                .words("at the foot, along", 110)
                .figures("or up the low")
                .figures("and out")
                .words("at the head, along", 110)
                .figures("or up the low")
                .figures("and out");
        for (Side side : sides) {
            for (Line line : side.lines) {
                LineAnswer found = line.line;
                table.row(
                        side.plane,
                        line.name,
                        found.length().tape(),
                        along(found.lower()),
                        found.lower().up().tape(),
                        found.lower().out().tape(),
                        along(found.upper()),
                        found.upper().up().tape(),
                        found.upper().out().tape());
            }
        }
        return table;
    }

    private static String along(LineAnswer.LineMark mark) {
        return mark.along().map(along -> mark.edge() + ": " + along.tape()).orElse("not on " + mark.edge());
    }
}
