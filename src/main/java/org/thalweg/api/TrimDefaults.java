package org.thalweg.api;

import org.thalweg.reference.Rules;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/**
 * What trims are made of and to when the caller does not say. Round inches for callers who work in inches or feet, round
 * millimetres for the rest.
 *
 * @param seamHeight    of the panels: a finished seam of about 1 in or 25 mm [published: UFGS 07 60 00]
 * @param coilWidth     of the widest sheet [common practice, no source]
 * @param pieceLength   of the longest piece: 10 ft [published: see {@link Rules#sheetLongest}] or 3 m [common practice, no source]
 * @param shortestPiece that can be made [common practice, no source]
 * @param past          how far caps and wall flashings run past the outside of the roof [common practice, no source]
 * @param lap           of the pieces of a profile by itself [common practice, no source]
 */
record TrimDefaults(
        Length seamHeight, Length coilWidth, Length pieceLength, Length shortestPiece, Length past, Length lap) {

    private static final TrimDefaults INCHES = new TrimDefaults(
            Length.inches(1),
            Length.inches(48),
            Rules.sheetLongest().value(),
            Length.inches(12),
            Length.inches(1),
            Length.inches(4));

    private static final TrimDefaults METRIC = new TrimDefaults(
            Length.millimetres(25),
            Length.millimetres(1220),
            Length.metres(3),
            Length.millimetres(300),
            Length.millimetres(25),
            Length.millimetres(100));

    static TrimDefaults of(LengthUnit unit) {
        return unit.inInches() ? INCHES : METRIC;
    }
}
