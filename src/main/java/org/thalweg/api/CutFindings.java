package org.thalweg.api;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Place;
import org.thalweg.finding.Source;
import org.thalweg.stock.CutPiece;
import org.thalweg.stock.CuttingCase;
import org.thalweg.stock.CuttingPlan;
import org.thalweg.stock.CuttingPlan.Unplaced;
import org.thalweg.stock.Grid;
import org.thalweg.stock.StockBar;
import org.thalweg.units.Count;

/** What a crew should know of a cutting plan: the pieces that are on no bar, and why. */
final class CutFindings {

    private final CuttingCase asked;
    private final IntFunction<Origin> at;
    private final Map<String, Integer> places = new LinkedHashMap<>();

    private CutFindings(CuttingCase asked, IntFunction<Origin> at) {
        this.asked = asked;
        this.at = at;
        asked.pieces().forEach(piece -> places.put(piece.id(), places.size()));
    }

    /**
     * One for each piece that is left over, in the order of the request.
     *
     * @param at where in the request a piece comes from, by its place among the pieces
     */
    static List<Finding> of(CuttingPlan plan, CuttingCase asked, IntFunction<Origin> at) {
        CutFindings writer = new CutFindings(asked, at);
        List<Finding> findings = new ArrayList<>();
        plan.unplaced().forEach(left -> findings.add(writer.finding(left)));
        return findings;
    }

    private Finding finding(Unplaced left) {
        int index = places.getOrDefault(left.id(), 0);
        CutPiece piece = asked.pieces().get(index);
        Place place = new Place(Place.Kind.PIECE, left.id(), at.apply(index));
        return switch (left.reason()) {
            case TOO_LONG -> tooLong(piece, place);
            case TOO_FEW_BARS ->
                Finding.of(
                        FindingCode.TOO_FEW_BARS,
                        place,
                        "{actual} of the {limit} of {place} are on no bar, and no other plan cuts every piece from the stock there"
                                + " is. Add stock.",
                        new Count(left.count()),
                        new Count(piece.count()),
                        Source.REQUEST);
            case NOT_FOUND ->
                Finding.of(
                        FindingCode.PIECE_NOT_PLACED,
                        place,
                        "No bar was found for {actual} of the {limit} of {place}; another plan may have one. Add stock, or give"
                                + " more time.",
                        new Count(left.count()),
                        new Count(piece.count()),
                        Source.REQUEST);
        };
    }

    private Finding tooLong(CutPiece piece, Place place) {
        long longest = asked.stock().stream().mapToLong(StockBar::length).max().orElse(0);
        boolean alone = piece.length() > longest;
        return Finding.of(
                FindingCode.PIECE_TOO_LONG,
                place,
                alone
                        ? "{place} is {actual} long and the longest bar {limit}. Add longer stock, or make it of two pieces with a"
                                + " lap."
                        : "{place} and what must come from one bar with it are {actual} long, and the longest bar {limit}. Add longer"
                                + " stock, or take them apart.",
                Grid.length(alone ? piece.length() : together(piece)),
                Grid.length(longest),
                Source.REQUEST);
    }

    /** All that comes from one bar with the piece, and a kerf between each two. */
    private long together(CutPiece piece) {
        long length = -asked.kerf();
        for (CutPiece other : asked.pieces()) {
            if (other.together().equals(piece.together())) {
                length += other.count() * (other.length() + asked.kerf());
            }
        }
        return length;
    }
}
