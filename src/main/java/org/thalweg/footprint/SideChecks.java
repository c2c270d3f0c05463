package org.thalweg.footprint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.footprint.FootprintSurvey.Side;
import org.thalweg.footprint.WallSide.Change;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/** Tells callers why there is no roof over their walls: at which of their sides, by the names they gave. */
final class SideChecks {

    private final FootprintSurvey survey;
    /** By where the pitch stands, so that the pitch of all sides is refused once. */
    private final Map<String, Refusal> pitches = new LinkedHashMap<>();

    private final List<Refusal> heights = new ArrayList<>();

    private SideChecks(FootprintSurvey survey) {
        this.survey = survey;
    }

    /** Every pitch no slope can have, and every change of a side that is not above what it follows. */
    static List<Refusal> refusals(FootprintSurvey survey) {
        SideChecks checks = new SideChecks(survey);
        int number = 0;
        for (List<WallSide> ring : survey.walls().rings()) {
            for (WallSide wall : ring) {
                checks.check(wall, survey.sides().get(number++));
            }
        }
        List<Refusal> all = new ArrayList<>(checks.pitches.values());
        all.addAll(checks.heights);
        return all;
    }

    private void check(WallSide wall, Side side) {
        wall.pitch().or(wall::cross).ifPresent(pitch -> check(pitch, side.pitchAt()));
        double below = wall.eave();
        Origin above = side.saidAt().at("above");
        for (int i = 0; i < wall.above().size(); i++) {
            Change change = wall.above().get(i);
            Origin at = above.at(i);
            change.pitch().ifPresent(pitch -> check(pitch, at.at("pitch")));
            if (change.height() <= below) {
                refuseHeight(at.at("height"), change.height(), below);
            }
            below = change.height();
        }
    }

    private void check(Pitch pitch, Origin at) {
        double tan = pitch.tan();
        if (tan >= Footprints.FLATTEST && tan <= Footprints.STEEPEST) {
            return;
        }
        boolean flat = tan < Footprints.FLATTEST;
        pitches.putIfAbsent(
                at.pointer(),
                Refusal.of(
                        RefusalCode.PITCH_EXTREME,
                        at,
                        flat
                                ? "A pitch of {actual} is no slope; {limit} is the least. A roof that is level is drawn as a plan."
                                : "A pitch of {actual} is no slope; {limit} is the most. A side whose wall goes straight up is a"
                                        + " gable.",
                        pitch,
                        new Pitch(12 * (flat ? Footprints.FLATTEST : Footprints.STEEPEST), 12)));
    }

    private void refuseHeight(Origin at, double height, double below) {
        heights.add(Refusal.of(
                RefusalCode.HEIGHTS_OUT_OF_ORDER,
                at,
                "The side changes at {actual}, at or below its eave or the change before, {limit}. Heights are counted from 0,"
                        + " not from the eave, and rise.",
                inWorld(height),
                inWorld(below)));
    }

    private Length inWorld(double height) {
        return Length.metres(survey.eaveHeight().metres() + height);
    }

    /** Why there is no roof, at the caller's side. */
    static Refusal refusal(NoRoof why, FootprintSurvey survey) {
        Optional<Side> side = named(why.side(), survey);
        Optional<Side> other = named(why.other(), survey);
        String detail = why.detail()
                .replace("{side}", side.map(Side::told).orElse("a side"))
                .replace("{other}", other.map(Side::told).orElse("another side"));
        Origin at = side.map(Side::at).orElse(survey.at());
        return new Refusal(code(why.reason()), at, capital(detail), why.actual(), why.limit(), List.of());
    }

    /** What the reading of the roof refused, in terms of walls: there are no corners of the caller's to mend. */
    static Refusal tooFine(Refusal refusal, Tolerance tolerance) {
        return switch (refusal.code()) {
            case TOO_FEW_CORNERS, RING_CROSSES_ITSELF, PLANE_NOT_FLAT ->
                new Refusal(
                        RefusalCode.FINER_THAN_TOLERANCE,
                        refusal.at(),
                        "The slope of this side is so narrow in a place that it is none once corners within the tolerance, {limit},"
                                + " are one. Corners of this form are worked out, not measured: a finer tolerance, such as 0.01"
                                + " mm, is often enough. Or draw the walls with fewer, longer sides.",
                        Optional.empty(),
                        Optional.of(Length.metres(tolerance.metres())),
                        List.of());
            default -> refusal;
        };
    }

    private static Optional<Side> named(OptionalInt number, FootprintSurvey survey) {
        return number.isPresent() ? Optional.of(survey.sides().get(number.getAsInt())) : Optional.empty();
    }

    private static String capital(String sentence) {
        return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }

    private static RefusalCode code(NoRoof.Reason reason) {
        return switch (reason) {
            case TOO_FEW_CORNERS -> RefusalCode.TOO_FEW_CORNERS;
            case TOO_MANY_SIDES, TOO_LARGE, TOO_MUCH_WORK -> RefusalCode.FOOTPRINT_TOO_LARGE;
            case PITCH_EXTREME -> RefusalCode.PITCH_EXTREME;
            case HEIGHTS_OUT_OF_ORDER -> RefusalCode.HEIGHTS_OUT_OF_ORDER;
            case RINGS_CROSS -> RefusalCode.RINGS_CROSS;
            case COURTYARD_OUTSIDE -> RefusalCode.HOLE_OUTSIDE;
            case OVERHANG_TOO_WIDE -> RefusalCode.OVERHANG_TOO_WIDE;
            case OVERHANGS_IN_LINE -> RefusalCode.OVERHANGS_IN_LINE;
            case PITCHES_IN_LINE -> RefusalCode.PITCHES_IN_LINE;
            case NEVER_CLOSES -> RefusalCode.ROOF_NEVER_CLOSES;
            case SLOPE_NOT_SIMPLE -> RefusalCode.SLOPE_NOT_SIMPLE;
            case NOT_RESOLVED, CHECK_FAILED -> RefusalCode.ROOF_NOT_FOUND;
        };
    }
}
