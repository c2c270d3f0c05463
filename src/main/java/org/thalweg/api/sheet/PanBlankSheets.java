package org.thalweg.api.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.thalweg.api.wire.PieceAnswer;
import org.thalweg.api.wire.PieceAnswer.BlankAnswer;
import org.thalweg.api.wire.PieceAnswer.FoldAnswer;
import org.thalweg.api.wire.ValleyAnswer;
import org.thalweg.api.wire.ValleyAnswer.PanAnswer;
import org.thalweg.drawing.Flow;
import org.thalweg.drawing.Ink;
import org.thalweg.drawing.LegendLine;
import org.thalweg.drawing.Packet;
import org.thalweg.drawing.Pen;
import org.thalweg.drawing.Type;
import org.thalweg.units.LengthUnit;
import org.thalweg.valley.PanBlank.FoldKind;

/** Every blank of a valley's pan, flat, and where its pieces lie. */
final class PanBlankSheets {

    private static final double BLANK = 130;
    private static final double LONE_BLANK = 230;
    private static final double AFTER = 10;

    private PanBlankSheets() {}

    static void add(Packet packet, ValleyAnswer valley, LengthUnit unit) {
        Flow flow = new Flow(packet, View.VALLEYS.word(), "Valley " + valley.edge() + ", pieces of the pan");
        PieceTable.on(
                flow,
                valley.pieces().stream()
                        .map(piece -> new PieceTable.Piece(piece.mark(), piece.from(), piece.length(), piece.lap()))
                        .toList(),
                "up from the foot");
        flow.skip(AFTER);
        Map<BlankAnswer, List<PieceAnswer>> alike = new LinkedHashMap<>();
        valley.pieces().forEach(piece -> alike.computeIfAbsent(piece.blank(), blank -> new ArrayList<>())
                .add(piece));
        if (!alike.isEmpty()) {
            new LegendLine()
                    .pen(Pen.OUTLINE, "cut")
                    .pen(Pen.BEND, "bend")
                    .pen(Pen.MARK, "slit")
                    .on(flow);
            flow.text(
                    "Blanks lie with the foot to the left, seen from above the roof; hook the tape at the end the marks run from.",
                    Type.SMALL,
                    Ink.GREY);
        }
        alike.forEach((blank, pieces) -> {
            blank(valley, blank, pieces).on(flow, alike.size() == 1 ? LONE_BLANK : BLANK, 12, unit);
            folds(flow, blank);
        });
    }

    private static BlankView blank(ValleyAnswer valley, BlankAnswer blank, List<PieceAnswer> pieces) {
        String marks = Marks.listed(pieces.stream().map(PieceAnswer::mark).toList());
        String count = pieces.size() == 1 ? "1 piece" : pieces.size() + " pieces alike";
        PanAnswer pan = valley.pan();
        List<String> across = new ArrayList<>();
        List<Double> borders = new ArrayList<>();
        double left =
                blank.outline().stream().mapToDouble(p -> p.across()).min().orElse(0);
        double right =
                blank.outline().stream().mapToDouble(p -> p.across()).max().orElse(0);
        borders.add(left);
        for (FoldAnswer fold : blank.folds()) {
            double at = fold.from().across();
            if (fold.kind() == FoldKind.WALL) {
                continue;
            }
            if (at > borders.get(borders.size() - 1)) {
                across.add(girth(pan, fold.kind(), at));
                borders.add(at);
            }
        }
        if (right > borders.get(borders.size() - 1)) {
            across.add(pan.edgeReturn().tape());
            borders.add(right);
        }
        return new BlankView(
                marks + ": " + count + ", " + pieces.get(0).length().tape() + " long",
                blank.outline(),
                blank.folds().stream()
                        .map(fold -> new BlankView.Line(fold.from(), fold.to()))
                        .toList(),
                blank.slits().stream()
                        .map(slit -> new BlankView.Line(slit.from(), slit.to()))
                        .toList(),
                across,
                borders,
                0);
    }

    /** What lies to the left of a fold, by what the fold is and on which side of the crown it lies. */
    private static String girth(PanAnswer pan, FoldKind kind, double at) {
        return switch (kind) {
            case CROWN -> pan.ribLeg().tape();
            case LOW -> at < 0 ? pan.flat().tape() : pan.ribLeg().tape();
            case RETURN -> at < 0 ? pan.edgeReturn().tape() : pan.flat().tape();
            case WALL -> "";
        };
    }

    private static void folds(Flow flow, BlankAnswer blank) {
        List<String> told = new ArrayList<>();
        for (FoldAnswer fold : blank.folds()) {
            told.add(Lettered.word(fold.kind()) + " " + Lettered.degrees(fold.bendDeg())
                    + (fold.up() ? " up" : " down"));
        }
        flow.text("Bends from left to right (here from above): " + String.join(", ", told), Type.SMALL, Ink.BLACK);
        flow.skip(AFTER);
    }
}
