package org.thalweg.api.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.thalweg.api.wire.FlatAnswer.BendLine;
import org.thalweg.api.wire.MarkedLength;
import org.thalweg.api.wire.PlanePoint;
import org.thalweg.api.wire.TrimAnswer;
import org.thalweg.api.wire.TrimAnswer.BlankAnswer;
import org.thalweg.api.wire.TrimAnswer.CutAnswer;
import org.thalweg.api.wire.TrimAnswer.EndAnswer;
import org.thalweg.api.wire.TrimAnswer.MeetingAnswer;
import org.thalweg.api.wire.TrimAnswer.PieceAnswer;
import org.thalweg.drawing.Area;
import org.thalweg.drawing.Bounds;
import org.thalweg.drawing.Flow;
import org.thalweg.drawing.Ink;
import org.thalweg.drawing.LegendLine;
import org.thalweg.drawing.MarkRow;
import org.thalweg.drawing.MarkRow.Side;
import org.thalweg.drawing.Packet;
import org.thalweg.drawing.Pen;
import org.thalweg.drawing.Sheet;
import org.thalweg.drawing.Table;
import org.thalweg.drawing.Type;
import org.thalweg.units.LengthUnit;

/** Every profile with its girths and bends, and the pieces made of it. */
final class TrimSheets {

    private static final double SECTION = 172;
    /** Room for the names of the edges, which stay with the section. */
    private static final double EDGES = 40;

    private static final double BLANK = 44;
    private static final double AFTER = 8;
    private static final int PLAIN_CORNERS = 4;

    private TrimSheets() {}

    /** What no tape and no protractor tells apart: legs, bends to the degree, hems, the flat sheet with its bend lines. */
    private static List<Object> bentAlike(TrimAnswer trim) {
        return List.of(
                trim.profile(),
                trim.legs().stream().map(MarkedLength::tape).toList(),
                trim.bendsDeg().stream().map(Math::round).toList(),
                trim.hems(),
                trim.flatWidth().tape(),
                trim.bendLines().stream().map(bend -> bend.at().tape()).toList());
    }

    /**
     * Blanks that are cut alike and lie with the same face up.
     *
     * @param weatherFaceUp which face is seen
     * @param blank         their corners on a tape
     */
    private record Shape(boolean weatherFaceUp, List<String> blank) {}

    static void add(Packet packet, List<TrimAnswer> trims, LengthUnit unit) {
        if (trims.isEmpty()) {
            return;
        }
        Map<List<Object>, List<TrimAnswer>> alike = new LinkedHashMap<>();
        trims.forEach(trim -> alike.computeIfAbsent(bentAlike(trim), profile -> new ArrayList<>())
                .add(trim));
        Flow flow = new Flow(packet, View.TRIMS.word(), View.TRIMS.title());
        new LegendLine().pen(Pen.OUTLINE, "cut").pen(Pen.BEND, "bend").on(flow);
        flow.text(
                "Trims that no tape tells apart stand together, drawn as the first of them. Of a blank the start of the edge is to the"
                        + " left: hook the tape at the point furthest to the left; marks above are those of the half at its first edge.",
                Type.SMALL,
                Ink.GREY);
        flow.skip(AFTER);
        alike.values().forEach(same -> profile(flow, same, unit));
    }

    private static void profile(Flow flow, List<TrimAnswer> trims, LengthUnit unit) {
        TrimAnswer first = trims.get(0);
        String edges = trims.stream().map(TrimAnswer::edge).collect(Collectors.joining(", "));
        flow.heading(
                Lettered.title(first.profile()) + ", flat width "
                        + first.flatWidth().tape(),
                SECTION + EDGES);
        flow.text("On edges " + edges + ".", Type.SMALL, Ink.BLACK);
        Area area = flow.take(SECTION);
        ProfileSection.draw(flow.sheet(), area.leftPart(area.width() / 2 - 6), first, unit);
        flatSheet(flow.sheet(), area.beyond(area.width() / 2 + 6), first);
        ends(trims).on(flow);
        flow.skip(AFTER);
        pieces(flow, trims);
        blanks(flow, trims, unit);
        flow.skip(2 * AFTER);
    }

    /** Bend lines of the flat sheet, its first edge to the left; across only, so that all of it is seen. */
    private static void flatSheet(Sheet sheet, Area area, TrimAnswer trim) {
        List<BendLine> bends = trim.bendLines();
        double width = area.width() - 20;
        double points = width / trim.flatWidth().value();
        double left = area.left() + 10;
        double top = area.top() + 62;
        double bottom = area.bottom() - 60;
        sheet.ring(new double[] {left, top, left + width, top, left + width, bottom, left, bottom}, Pen.OUTLINE);
        MarkRow above = new MarkRow(Side.ABOVE, top - 2, area.left(), area.right());
        MarkRow below = new MarkRow(Side.BELOW, bottom + 2, area.left(), area.right());
        for (BendLine bend : bends) {
            double x = left + bend.at().value() * points;
            sheet.line(x, top, x, bottom, Pen.BEND);
            above.add(x, top, bend.at().tape(), Ink.ACCENT);
            below.add(x, bottom, (bend.hem() ? "hem " : "") + Lettered.bend(bend.bendDeg()));
        }
        above.add(left + width, top, trim.flatWidth().tape(), Ink.ACCENT);
        above.on(sheet);
        below.on(sheet);
        sheet.words("Flat sheet: bend lines from its first edge, to the left", area.left(), area.top() + 8, Type.SMALL);
    }

    private static Table ends(List<TrimAnswer> trims) {
        Table table = new Table()
                .words("edge", 60)
                .words("hand", 40)
                .words("bends", 110)
                .words("end", 30)
                .words("legs up to the edge", 150)
                .words("legs beyond it", 150)
                .figures("reaches past")
                .figures("depth")
                .words("reach of the inner and the outer line of each leg, from the corner the edge ends at", 330);
        for (TrimAnswer trim : trims) {
            for (int i = 0; i < trim.ends().size(); i++) {
                EndAnswer end = trim.ends().get(i);
                table.row(
                        i == 0 ? trim.edge() + ", " + Lettered.word(trim.kind()) : "",
                        i == 0 ? trim.hand().map(Lettered::word).orElse("") : "",
                        i == 0 ? bends(trim) : "",
                        Lettered.word(end.hand()),
                        meets(end.first()),
                        meets(end.last()),
                        end.reach().tape(),
                        end.depth().tape(),
                        end.cuts().stream().map(TrimSheets::cut).collect(Collectors.joining("; ")));
            }
        }
        return table;
    }

    private static String bends(TrimAnswer trim) {
        return trim.bendsDeg().stream().map(Lettered::bend).collect(Collectors.joining(", "));
    }

    private static String meets(MeetingAnswer meeting) {
        String what = " " + Lettered.word(meeting.kind()) + " " + meeting.edge();
        return switch (meeting.how()) {
            case MITRED ->
                "mitred " + Lettered.degrees(meeting.mitreDeg()) + (meeting.inside() ? ", inside," : "") + " to" + what;
            case ENDS_ON -> "ends on" + what;
            case SQUARE -> "square at" + what;
        };
    }

    private static String cut(CutAnswer cut) {
        return "leg " + cut.leg() + ": " + cut.inner().tape() + " to "
                + cut.outer().tape() + ", " + Lettered.degrees(cut.cutDeg());
    }

    private static void pieces(Flow flow, List<TrimAnswer> trims) {
        List<PieceTable.Piece> pieces = new ArrayList<>();
        for (TrimAnswer trim : trims) {
            for (PieceAnswer piece : trim.pieces()) {
                pieces.add(new PieceTable.Piece(piece.mark(), piece.from(), piece.length(), piece.lap()));
            }
        }
        PieceTable.on(flow, pieces, "from the corner");
        flow.skip(AFTER);
    }

    private static void blanks(Flow flow, List<TrimAnswer> trims, LengthUnit unit) {
        Map<Shape, List<PieceAnswer>> alike = new LinkedHashMap<>();
        for (TrimAnswer trim : trims) {
            for (PieceAnswer piece : trim.pieces()) {
                List<String> corners = Taped.corners(piece.blank().outline(), unit);
                alike.computeIfAbsent(new Shape(trim.weatherFaceUp(), corners), shape -> new ArrayList<>())
                        .add(piece);
            }
        }
        List<String> plain = new ArrayList<>();
        List<Map.Entry<Shape, List<PieceAnswer>>> cut = new ArrayList<>();
        for (Map.Entry<Shape, List<PieceAnswer>> same : alike.entrySet()) {
            BlankAnswer blank = same.getValue().get(0).blank();
            if (blank.outline().size() > PLAIN_CORNERS || slanted(blank)) {
                cut.add(same);
            } else {
                plain.add(named(same.getValue()));
            }
        }
        if (!plain.isEmpty()) {
            flow.text("Cut square at both ends: " + String.join("; ", plain) + ".", Type.SMALL, Ink.BLACK);
            flow.skip(AFTER);
        }
        cut.forEach(same -> view(trims.get(0), same.getKey(), same.getValue()).on(flow, BLANK, 0, unit));
    }

    /** Whether any of its sides runs neither along nor square across. */
    private static boolean slanted(BlankAnswer blank) {
        List<PlanePoint> corners = blank.outline();
        for (int i = 0; i < corners.size(); i++) {
            PlanePoint from = corners.get(i);
            PlanePoint to = corners.get((i + 1) % corners.size());
            if (from.across() != to.across() && from.up() != to.up()) {
                return true;
            }
        }
        return false;
    }

    private static String named(List<PieceAnswer> pieces) {
        String marks = Marks.listed(pieces.stream().map(PieceAnswer::mark).toList());
        String count = pieces.size() == 1 ? "" : " (" + pieces.size() + " alike)";
        return marks + count + ", " + pieces.get(0).length().tape();
    }

    private static BlankView view(TrimAnswer trim, Shape shape, List<PieceAnswer> pieces) {
        BlankAnswer blank = pieces.get(0).blank();
        double[] outline = Places.of(blank.outline());
        double width = Bounds.of(List.of(outline)).right();
        List<BlankView.Line> lines = new ArrayList<>();
        List<Double> borders = new ArrayList<>();
        List<String> across = new ArrayList<>();
        for (BendLine bend : trim.bendLines()) {
            double at = bend.at().value();
            double[] chord = Chords.along(outline, at);
            if (chord.length == 2) {
                lines.add(new BlankView.Line(new PlanePoint(at, chord[0]), new PlanePoint(at, chord[1])));
            }
            borders.add(at);
            across.add(bend.at().tape());
        }
        borders.add(width);
        across.add(trim.flatWidth().tape());
        return new BlankView(
                named(pieces) + ", " + (shape.weatherFaceUp() ? "weather face up" : "back up"),
                blank.outline(),
                lines,
                List.of(),
                across,
                borders,
                width / 2);
    }
}
