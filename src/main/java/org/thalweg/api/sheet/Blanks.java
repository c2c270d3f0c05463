package org.thalweg.api.sheet;

import java.util.List;
import org.thalweg.api.wire.FlatAnswer;
import org.thalweg.api.wire.LayoutAnswer;
import org.thalweg.api.wire.PanelAnswer;
import org.thalweg.api.wire.PieceAnswer;
import org.thalweg.api.wire.PlanePoint;
import org.thalweg.api.wire.TrimAnswer;
import org.thalweg.api.wire.ValleyAnswer;
import org.thalweg.api.wire.ValleysAnswer;
import org.thalweg.drawing.Bounds;
import org.thalweg.drawing.DxfFile;
import org.thalweg.units.LengthUnit;

/**
 * Flat pieces at full size for a cutting machine: one drawing unit is one unit of the request. Panels, pans and trims stand
 * in three rows, each piece to the right of the one before, its own origin moved by whole units.
 */
public final class Blanks {

    private static final String PANEL = "PANEL";
    private static final String PAN = "PAN";
    private static final String TRIM = "TRIM";
    private static final String CUT = "_CUT";
    private static final String BEND = "_BEND";
    private static final String SLIT = "_SLIT";
    private static final String MARK = "_MARK";

    /** Room between two pieces and the height of their letters, of a tape's largest unit. */
    private static final double ROOM = 0.15;

    private final DxfFile dxf;
    private final double room;
    private final double letters;
    private double right;
    private double floor;
    private double highest;

    private Blanks(LengthUnit unit) {
        this.dxf = new DxfFile(unit.symbol());
        double metre = 1 / unit.of(1).metres();
        this.room = Math.max(1, Math.ceil(ROOM * metre));
        this.letters = ROOM / 5 * metre;
    }

    /** Every panel, pan and trim of a roof. */
    public static byte[] of(LayoutAnswer answer) {
        Blanks blanks = new Blanks(answer.units().length());
        blanks.begin(PANEL, "Panels: the part from rib to rib; the metal of the seams is not drawn");
        answer.panels().forEach(blanks::panel);
        blanks.pans(answer.valleys());
        blanks.begin(TRIM, "Trims");
        answer.trims().forEach(blanks::trim);
        return blanks.dxf.bytes();
    }

    /** Every piece of a valley's pan. */
    public static byte[] of(ValleysAnswer answer) {
        Blanks blanks = new Blanks(answer.units().length());
        blanks.pans(answer.valleys());
        return blanks.dxf.bytes();
    }

    /** A new row above all that is drawn. */
    private void begin(String goods, String heading) {
        floor = Math.ceil(highest + 4 * room);
        right = 0;
        dxf.words(goods + MARK, heading, 0, floor - 3 * room, letters);
    }

    private void panel(PanelAnswer panel) {
        double[] cut = Places.of(panel.cut().outline());
        double at = place(cut, PANEL, panel.mark());
        outline(PANEL + CUT, panel.cut().outline(), at);
        panel.cut().openings().forEach(opening -> outline(PANEL + CUT, opening.outline(), at));
    }

    private void pans(List<ValleyAnswer> valleys) {
        begin(PAN, "Pans of valleys");
        for (ValleyAnswer valley : valleys) {
            for (PieceAnswer piece : valley.pieces()) {
                double at = place(Places.of(piece.blank().outline()), PAN, piece.mark());
                outline(PAN + CUT, piece.blank().outline(), at);
                piece.blank().folds().forEach(fold -> line(PAN + BEND, fold.from(), fold.to(), at));
                piece.blank().slits().forEach(slit -> line(PAN + SLIT, slit.from(), slit.to(), at));
            }
        }
    }

    private void trim(TrimAnswer trim) {
        for (TrimAnswer.PieceAnswer piece : trim.pieces()) {
            double[] outline = Places.of(piece.blank().outline());
            double at = place(outline, TRIM, piece.mark());
            outline(TRIM + CUT, piece.blank().outline(), at);
            for (FlatAnswer.BendLine bend : trim.bendLines()) {
                double across = bend.at().value();
                double[] along = Chords.along(outline, across);
                if (along.length == 2) {
                    line(TRIM + BEND, new PlanePoint(across, along[0]), new PlanePoint(across, along[1]), at);
                }
            }
        }
    }

    /** Makes room for a piece and letters its mark under it; where its own origin comes to lie. */
    private double place(double[] outline, String goods, String mark) {
        Bounds bounds = Bounds.of(List.of(outline));
        double at = Math.ceil(right - bounds.left());
        right = at + bounds.right() + room;
        highest = Math.max(highest, floor + bounds.high());
        dxf.words(goods + MARK, mark, at + bounds.left(), floor + Math.min(0, bounds.low()) - 2 * letters, letters);
        return at;
    }

    private void outline(String layer, List<PlanePoint> outline, double at) {
        dxf.outline(layer, Places.of(outline, at, floor));
    }

    private void line(String layer, PlanePoint from, PlanePoint to, double at) {
        dxf.line(layer, from.across() + at, from.up() + floor, to.across() + at, to.up() + floor);
    }
}
