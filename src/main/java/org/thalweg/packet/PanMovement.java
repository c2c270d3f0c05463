package org.thalweg.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.fastening.ValleyRows.Row;
import org.thalweg.fastening.ValleyRows.RowKind;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.movement.Growth;
import org.thalweg.movement.LappedPiece;
import org.thalweg.movement.Play;
import org.thalweg.reference.Expansion;
import org.thalweg.units.Length;
import org.thalweg.valley.PanPiece;
import org.thalweg.valley.ValleyLayout;

/**
 * How far the pieces of a valley's pan move, each fastened at its head and free from there down. The pan is taken to be of
 * the panels' metal, its outer edges to be held by cleats on their folds, in which they slide. Screws that go through panels
 * and pan hold a piece all along, so that it is not free at all; how far it would move is told all the same. What is left of a
 * lap at the coldest is told and held against nothing: the published laps are as laid.
 *
 * @param pieces   in the order of the pan's
 * @param findings what a crew should know
 */
public record PanMovement(List<LappedPiece> pieces, List<Finding> findings) {

    public PanMovement {
        pieces = List.copyOf(pieces);
        findings = List.copyOf(findings);
    }

    /**
     * @param rows  every row of fasteners at the valley
     * @param terms metal, temperatures and the play of screws
     */
    static PanMovement of(ValleyLayout valley, List<Row> rows, ValleyTerms terms) {
        Expansion expansion = terms.metal().expansion().value();
        List<LappedPiece> pieces = new ArrayList<>(valley.pieces().size());
        for (PanPiece piece : valley.pieces()) {
            pieces.add(new LappedPiece(
                    Growth.of(piece.length(), expansion, terms.temperatures()),
                    pieces.isEmpty() ? Optional.empty() : Optional.of(piece.lap())));
        }
        List<Finding> findings = new ArrayList<>(0);
        if (rows.stream()
                .anyMatch(row -> row.kind() == RowKind.VALLEY && row.row().count() > 0)) {
            Play play = terms.movement().screwPlay();
            pinned(valley, pieces, play, Growth.longest(play, expansion, terms.temperatures()))
                    .ifPresent(findings::add);
        }
        return new PanMovement(pieces, findings);
    }

    private static Optional<Finding> pinned(
            ValleyLayout valley, List<LappedPiece> pieces, Play play, Optional<Length> longest) {
        Length most = Length.ZERO;
        for (LappedPiece piece : pieces) {
            most = piece.growth().most().compareTo(most) > 0 ? piece.growth().most() : most;
        }
        if (most.compareTo(play.eachWay()) <= 0) {
            return Optional.empty();
        }
        Optional<Length> wouldDo = longest.filter(length -> length.metres() > 0);
        Finding finding = Finding.of(
                FindingCode.FIXED_PAN_MOVES,
                valley.edge().place(),
                "Screws through panels and pan hold the pan of valley {place} all along: its longest piece would move {actual}"
                        + " and their holes let it {limit}. Hold the panels with a cleat"
                        + (wouldDo.isPresent() ? ", or take pieces no longer than {pieceLength}." : "."),
                most,
                play.eachWay(),
                play.source());
        return Optional.of(
                wouldDo.map(length -> finding.needs("pieceLength", length)).orElse(finding));
    }
}
