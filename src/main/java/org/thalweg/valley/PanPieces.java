package org.thalweg.valley;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Length;

/**
 * Divides a pan into pieces, the first at the foot, each over the one below. All are as long as a piece can be but the last;
 * if that came out too short to make, its neighbour gives up length to it, if it can.
 *
 * <p>The length that is divided is the metal's, from the lowest tip of the trimmed foot to the highest point of the head, not
 * the valley's: n = ceil((metal − lap) / (piece − lap)). A lap always lies between the foot and the head of the valley, never
 * in what hangs below the one or runs past the other, so the piece below the last may end sooner than it could, and the first
 * or the last may come out too long; a valley shorter than a lap is one piece. Where a piece is long enough for it, the last
 * lap also stays below where the flats narrow to the head, so that the cap is no mere triangle.
 */
final class PanPieces {

    private final SlopedEdge valley;
    private final PanSpec spec;
    private final PanShape shape;
    private final Tolerance tolerance;
    private final List<Finding> findings;

    PanPieces(SlopedEdge valley, PanSpec spec, PanShape shape, Tolerance tolerance, List<Finding> findings) {
        this.valley = valley;
        this.spec = spec;
        this.shape = shape;
        this.tolerance = tolerance;
        this.findings = findings;
    }

    List<PanPiece> pieces() {
        List<double[]> spans = spans();
        List<PanPiece> pieces = new ArrayList<>(spans.size());
        for (int i = 0; i < spans.size(); i++) {
            double from = spans.get(i)[0];
            double to = spans.get(i)[1];
            PanPiece piece = new PanPiece(
                    valley.edge().id() + "-" + (i + 1),
                    Length.metres(from),
                    Length.metres(to - from),
                    i == 0 ? Length.ZERO : Length.metres(spans.get(i - 1)[1] - from),
                    shape.between(from, to));
            pieces.add(piece);
            check(piece);
        }
        return pieces;
    }

    /** From where to where each piece lies, up the low from the foot. */
    private List<double[]> spans() {
        double highest = shape.highest();
        double piece = spec.pieceLength().metres();
        double lap = spec.lap().metres();
        double lapsTo = lapsTo();
        List<double[]> spans = new ArrayList<>();
        double from = shape.lowest();
        double to = Math.min(lapsTo, Math.max(from + piece, lap));
        while (from + piece < highest - tolerance.hair() && to - lap > Math.max(from, -tolerance.hair())) {
            spans.add(new double[] {from, to});
            from = to - lap;
            to = Math.min(lapsTo, from + piece);
        }
        spans.add(new double[] {from, highest});
        lengthenLast(spans);
        return spans;
    }

    /** Up to where laps may lie: where the flats narrow to the head, if a piece spans that and a lap, or the head itself. */
    private double lapsTo() {
        double lap = spec.lap().metres();
        double full = shape.fullTo();
        boolean spanned = shape.highest() - full + lap <= spec.pieceLength().metres() + tolerance.hair();
        return spanned && full >= lap ? full : valley.length().metres();
    }

    private void lengthenLast(List<double[]> spans) {
        if (spans.size() < 2) {
            return;
        }
        double[] last = spans.get(spans.size() - 1);
        double[] before = spans.get(spans.size() - 2);
        double least = spec.shortestPiece().metres();
        double missing = least - (last[1] - last[0]);
        boolean spared = before[1] - before[0] - missing >= least && last[0] - missing >= 0;
        if (missing > 0 && spared) {
            last[0] -= missing;
            before[1] -= missing;
        }
    }

    private void check(PanPiece piece) {
        if (piece.length().metres() > spec.pieceLength().metres() + tolerance.hair()) {
            findings.add(Finding.of(
                    FindingCode.PAN_PIECE_TOO_LONG,
                    valley.place(),
                    "A piece of the pan of valley {place} comes out {actual} long where {limit} is the longest: its trimmed"
                            + " end reaches that far. Make it in one length on site, or piece its tip.",
                    piece.length(),
                    spec.pieceLength(),
                    Source.REQUEST));
        }
        if (piece.length().metres() < spec.shortestPiece().metres() - tolerance.hair()) {
            findings.add(Finding.of(
                    FindingCode.PAN_PIECE_TOO_SHORT,
                    valley.place(),
                    "A piece of the pan of valley {place} is {actual} long where {limit} is the shortest that can be made."
                            + " Cut it from a longer one.",
                    piece.length(),
                    spec.shortestPiece(),
                    Source.REQUEST));
        }
    }
}
