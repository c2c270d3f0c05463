package org.thalweg.api;

import org.thalweg.reference.Rules;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/**
 * What a valley's pan and a hip's cap are like when the caller does not say. Round inches for callers who work
 * in inches or feet, round millimetres for the rest. Where no source stands beside a figure it is common practice without one.
 *
 * @param coilWidth       48 in, with which the usual pan reaches 6 in under panels held back 12 3/4 in
 * @param ribLeg          with the return 5 1/4 in
 * @param edgeReturn      a hem or water stop
 * @param pieceLength     of pan and cleat
 * @param shortestPiece   of the pan
 * @param lap             8 in [published: Copper Development Association, Copper in Architecture 9.5], or 200 mm [published: New
 *                        Zealand cladding code of practice 15.3.4]
 * @param eaveProjection  past an eave
 * @param wallTurnUp      4 in, 102 mm [published: IRC R905.2.8.3]
 * @param ribPastEnd      past foot or head
 * @param ribPastValley   past another valley
 * @param margin          of the water off the panels; inset of a hip's closure
 * @param cleatHem        round a cleat [from memory: common standing-seam practice]
 * @param capLeg          of a hip's cap
 */
record ValleyDefaults(
        Length coilWidth,
        Length ribLeg,
        Length edgeReturn,
        Length pieceLength,
        Length shortestPiece,
        Length lap,
        Length eaveProjection,
        Length wallTurnUp,
        Length ribPastEnd,
        Length ribPastValley,
        Length margin,
        Length cleatHem,
        Length capLeg) {

    private static final ValleyDefaults INCHES = new ValleyDefaults(
            Length.inches(48),
            Length.inches(4.25),
            Length.inches(1),
            Length.feet(10),
            Length.inches(12),
            Rules.valleyUsualLap().value(),
            Length.inches(0.5),
            Rules.sideWallLeastHeight().value(),
            Length.inches(2),
            Length.inches(24),
            Length.inches(1),
            Length.inches(1),
            Length.inches(6));

    private static final ValleyDefaults METRIC = new ValleyDefaults(
            Length.millimetres(1220),
            Length.millimetres(110),
            Length.millimetres(25),
            Length.metres(3),
            Length.millimetres(300),
            Rules.valleyUsualMetricLap().value(),
            Length.millimetres(12),
            Length.millimetres(102),
            Length.millimetres(50),
            Length.millimetres(600),
            Length.millimetres(25),
            Length.millimetres(25),
            Length.millimetres(150));

    static ValleyDefaults of(LengthUnit unit) {
        return unit.inInches() ? INCHES : METRIC;
    }
}
