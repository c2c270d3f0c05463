package org.thalweg.packet;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Place;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Tolerance;
import org.thalweg.trim.FlatTrim;
import org.thalweg.trim.Profile;
import org.thalweg.trim.TrimPieces;
import org.thalweg.trim.TrimSpec.Sheet;
import org.thalweg.trim.TrimStock;
import org.thalweg.units.Length;

/**
 * A profile that belongs to no roof, as asked for.
 *
 * @param id      the caller's name for it
 * @param profile as it is bent
 * @param sheet   what it is bent of
 * @param stock   what its pieces are made of
 * @param lap     how far a piece lies over the one before
 * @param runs    how much of it is wanted
 * @param at      where in the request it stands
 */
public record LoneProfile(
        String id, Profile profile, Sheet sheet, TrimStock stock, Length lap, List<Run> runs, Origin at) {

    public LoneProfile {
        runs = List.copyOf(runs);
    }

    /**
     * A run of trim with square ends.
     *
     * @param length in all; above 0
     * @param count  how many there are
     */
    public record Run(Length length, int count) {}

    /**
     * A run, divided.
     *
     * @param run    which
     * @param pieces lengths of its pieces, in the order they are laid, each over the one before
     */
    public record CutRun(Run run, List<Length> pieces) {}

    /**
     * A profile, rolled out and cut.
     *
     * @param asked    which
     * @param flat     the profile rolled out
     * @param runs     its runs, in the order asked for
     * @param findings what a crew should know of it
     */
    public record Made(LoneProfile asked, FlatTrim flat, List<CutRun> runs, List<Finding> findings) {}

    private TrimPieces divided() {
        return new TrimPieces(stock, lap, Tolerance.DEFAULT);
    }

    /** How many pieces are told: of equal runs those of one. */
    long pieceCount() {
        TrimPieces divided = divided();
        return runs.stream().mapToLong(run -> divided.count(run.length())).sum();
    }

    Made make() {
        FlatTrim flat = FlatTrim.of(profile, sheet.allowance());
        TrimPieces divided = divided();
        List<CutRun> cut = runs.stream()
                .map(run -> new CutRun(run, divided.lengths(run.length())))
                .toList();
        Place place = new Place(Place.Kind.PROFILE, id, at);
        List<Finding> findings = new ArrayList<>(flat.check(place, sheet.coilWidth(), Tolerance.DEFAULT));
        cut.stream()
                .flatMap(run -> run.pieces().stream())
                .min(Length::compareTo)
                .filter(shortest -> shortest.metres() < stock.shortest().metres() - Tolerance.DEFAULT.hair())
                .ifPresent(shortest -> findings.add(tooShort(shortest, place)));
        return new Made(this, flat, cut, findings);
    }

    private Finding tooShort(Length shortest, Place place) {
        return Finding.of(
                FindingCode.TRIM_PIECE_TOO_SHORT,
                place,
                "A piece of the trim {place} is {actual} long where {limit} is the shortest that can be made. Cut it from a"
                        + " longer one.",
                shortest,
                stock.shortest(),
                Source.REQUEST);
    }
}
