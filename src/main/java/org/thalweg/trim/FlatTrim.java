package org.thalweg.trim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Place;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;

/**
 * A profile rolled out flat: how wide to slit the sheet and where to bend it. The flats and the bends between them make up
 * the width. [geometry]
 *
 * @param width from edge to edge, hems and all: the stretch-out
 * @param flats the straight part of every leg, hems first and last where there are any; below 0 where a leg is shorter than
 *              its bends take
 * @param folds where to bend, from the first edge to the last; one fewer than the flats
 */
public record FlatTrim(Length width, List<Length> flats, List<FlatFold> folds) {

    public FlatTrim {
        flats = List.copyOf(flats);
        folds = List.copyOf(folds);
    }

    /**
     * A bend on the flat sheet.
     *
     * @param at        its middle, from the first edge
     * @param allowance how wide it is: the middle lies half of it beyond the end of a flat
     * @param deduction what it takes off the sum of the girths on both sides of it; below 0 it adds
     * @param bend      how it is bent
     * @param hem       whether it is the fold of a hem
     */
    public record FlatFold(Length at, Length allowance, Length deduction, Bend bend, boolean hem) {

        /** How far to bend. */
        public Angle turn() {
            return bend.turn();
        }

        /** Whether the part beyond it comes up toward the weather face. */
        public boolean up() {
            return bend.up();
        }
    }

    /** Rolls a profile out. */
    public static FlatTrim of(Profile profile, BendAllowance allowance) {
        List<Length> girths = new ArrayList<>();
        List<Bend> bends = new ArrayList<>();
        profile.first().ifPresent(hem -> {
            girths.add(hem.girth());
            bends.add(hem.fold());
        });
        girths.addAll(profile.girths());
        bends.addAll(profile.bends());
        profile.last().ifPresent(hem -> {
            girths.add(hem.girth());
            bends.add(hem.fold());
        });
        return rolledOut(profile, girths, bends, allowance);
    }

    private static FlatTrim rolledOut(Profile profile, List<Length> girths, List<Bend> bends, BendAllowance allowance) {
        List<Length> flats = new ArrayList<>(girths.size());
        List<FlatFold> folds = new ArrayList<>(bends.size());
        double at = 0;
        double before = 0;
        for (int i = 0; i < bends.size(); i++) {
            Bend bend = bends.get(i);
            double setback = bend.setback(profile.thickness()).metres();
            double flat = girths.get(i).metres() - before - setback;
            Length bent = allowance.of(bend, profile.thickness());
            boolean hem = (i == 0 && profile.first().isPresent())
                    || (i == bends.size() - 1 && profile.last().isPresent());
            flats.add(Length.metres(flat));
            folds.add(new FlatFold(
                    Length.metres(at + flat + bent.metres() / 2),
                    bent,
                    Length.metres(2 * setback - bent.metres()),
                    bend,
                    hem));
            at += flat + bent.metres();
            before = setback;
        }
        double flat = girths.get(girths.size() - 1).metres() - before;
        flats.add(Length.metres(flat));
        return new FlatTrim(Length.metres(at + flat), flats, folds);
    }

    /** The narrowest flat, if its leg is shorter than its bends take. */
    public Optional<Length> missing() {
        return flats.stream().filter(flat -> flat.metres() < 0).min(Length::compareTo);
    }

    /**
     * What a crew should know before slitting the sheet.
     *
     * @param place     where it is to go
     * @param coilWidth of the widest sheet at hand
     */
    public List<Finding> check(Place place, Length coilWidth, Tolerance tolerance) {
        List<Finding> findings = new ArrayList<>(0);
        missing()
                .ifPresent(flat -> findings.add(Finding.of(
                        FindingCode.TRIM_LEG_TOO_SHORT,
                        place,
                        "A leg of the trim at {place} leaves {actual} flat between its bends, where {limit} is the least"
                                + " that can be bent. Make it longer, or bend it tighter.",
                        flat,
                        Length.ZERO,
                        Source.GEOMETRY)));
        if (width.metres() > coilWidth.metres() + tolerance.hair()) {
            findings.add(Finding.of(
                            FindingCode.TRIM_WIDER_THAN_COIL,
                            place,
                            "The trim at {place} is {actual} wide rolled out flat and the coil is {limit}. A coil"
                                    + " {coilWidth} wide would do; else make it in two strips.",
                            width,
                            coilWidth,
                            Source.REQUEST)
                    .needs("coilWidth", width));
        }
        return findings;
    }
}
