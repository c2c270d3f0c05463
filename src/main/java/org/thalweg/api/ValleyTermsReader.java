package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.ClimateForm;
import org.thalweg.api.wire.FasteningForm;
import org.thalweg.api.wire.HipCapForm;
import org.thalweg.api.wire.ValleyPanForm;
import org.thalweg.api.wire.WireLength;
import org.thalweg.api.wire.WirePitch;
import org.thalweg.fastening.FasteningRules;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.movement.Play;
import org.thalweg.movement.Temperatures;
import org.thalweg.packet.MovementTerms;
import org.thalweg.packet.ValleyTerms;
import org.thalweg.reference.Metal;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Pitch;
import org.thalweg.units.Rainfall;
import org.thalweg.units.Temperature;
import org.thalweg.units.TemperatureScale;
import org.thalweg.valley.HipLayout.HipCap;
import org.thalweg.valley.PanSpec;

/** Reads what valleys and hips are laid out by: pan, cap, spacings, heat and rain. */
final class ValleyTermsReader {

    private static final Origin PAN = Origin.REQUEST.at("valleyPan");
    private static final Origin FASTENING = Origin.REQUEST.at("fastening");
    private static final Origin CLIMATE = Origin.REQUEST.at("climate");
    private static final Origin CAP = Origin.REQUEST.at("hipCap");

    static final ValleyPanForm NO_PAN = new ValleyPanForm(
            null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null,
            null);
    static final ClimateForm NO_CLIMATE = new ClimateForm(null, null, null, null, null);
    static final HipCapForm NO_CAP = new HipCapForm(null, null);

    private static final Pitch PARALLEL = new Pitch(0, 12);

    /** By how much more than its lap a piece of pan is longer, so that a roof can't ask for pieces without number. */
    private static final double LEAST_GAIN = 0.1;

    private final ValleyPanForm pan;
    private final FasteningForm fastening;
    private final ClimateForm climate;
    private final HipCapForm cap;
    private final TapeReader tape;
    private final ValleyDefaults defaults;

    ValleyTermsReader(
            @Nullable ValleyPanForm pan,
            @Nullable FasteningForm fastening,
            @Nullable ClimateForm climate,
            @Nullable HipCapForm cap,
            LengthUnit unit,
            TapeReader tape) {
        this.pan = pan == null ? NO_PAN : pan;
        this.fastening = fastening == null ? FasteningReader.NONE : fastening;
        this.climate = climate == null ? NO_CLIMATE : climate;
        this.cap = cap == null ? NO_CAP : cap;
        this.tape = tape;
        this.defaults = ValleyDefaults.of(unit);
    }

    /** For panels of this cover and metal, fastened by these rules. */
    ValleyTerms read(Length panelCover, Metal metal, FasteningRules rules) {
        return new ValleyTerms(
                spec(),
                panelCover,
                rules,
                defaults.cleatHem(),
                metal,
                temperatures(),
                temperaturesGiven() ? Source.REQUEST : Temperatures.USUAL_SOURCE,
                movement(),
                tape.given(climate.rainfall(), CLIMATE.at("rainfall"), Limits.RAINFALL)
                        .map(Rainfall::perHour),
                pan(pan.waterMargin(), defaults.margin(), "waterMargin", Limits.WATER_MARGIN),
                stations(),
                hipCap());
    }

    private Length pan(@Nullable WireLength given, Length absent, String member, Limit limit) {
        return tape.length(given, absent, PAN.at(member), limit);
    }

    private PanSpec spec() {
        Length coil = pan(pan.coilWidth(), defaults.coilWidth(), "coilWidth", Limits.COIL_WIDTH);
        Length leg = pan(pan.ribLeg(), defaults.ribLeg(), "ribLeg", Limits.RIB_LEG);
        Length edgeReturn = pan(pan.edgeReturn(), defaults.edgeReturn(), "edgeReturn", Limits.EDGE_RETURN);
        Length piece = pan(pan.pieceLength(), defaults.pieceLength(), "pieceLength", Limits.PIECE_LENGTH);
        Length lap = pan(pan.lap(), defaults.lap(), "lap", Limits.LAP);
        boolean wide = wideEnough(coil, leg, edgeReturn);
        boolean longer = longEnough(piece, lap);
        if (pan.holdBack() != null && pan.cover() != null) {
            tape.note(() -> Fault.of(
                    ReadingCode.EITHER_OR,
                    PAN.at("cover").pointer(),
                    "Give how far the panels are held back, or how far the pan reaches under them, not both: each follows"
                            + " from the other."));
        }
        // What can't be read has been noted; the usual pan stands in until the reading is done.
        return new PanSpec(
                wide ? coil : defaults.coilWidth(),
                wide ? leg : defaults.ribLeg(),
                wide ? edgeReturn : defaults.edgeReturn(),
                tape.given(pan.holdBack(), PAN.at("holdBack"), Limits.HOLD_BACK),
                tape.given(pan.cover(), PAN.at("cover"), Limits.PAN_COVER),
                widening(pan.widening()),
                longer ? piece : defaults.pieceLength(),
                pan(pan.shortestPiece(), defaults.shortestPiece(), "shortestPiece", Limits.SHORTEST_PIECE),
                longer ? lap : defaults.lap(),
                pan(pan.eaveProjection(), defaults.eaveProjection(), "eaveProjection", Limits.EAVE_PROJECTION),
                pan(pan.wallTurnUp(), defaults.wallTurnUp(), "wallTurnUp", Limits.WALL_TURN_UP),
                pan(pan.ribPastEave(), defaults.ribPastEnd(), "ribPastEave", Limits.RIB_PAST_EAVE),
                pan(pan.ribPastTop(), defaults.ribPastEnd(), "ribPastTop", Limits.RIB_PAST_TOP),
                pan(pan.ribPastValley(), defaults.ribPastValley(), "ribPastValley", Limits.RIB_PAST_VALLEY),
                pan(pan.cleatLength(), defaults.pieceLength(), "cleatLength", Limits.CLEAT_LENGTH));
    }

    private boolean wideEnough(Length coil, Length leg, Length edgeReturn) {
        double least = 2 * (leg.metres() + edgeReturn.metres());
        if (coil.metres() > least) {
            return true;
        }
        tape.notePassed(
                PAN.at("coilWidth"),
                coil,
                Length.metres(least),
                "The coil is %s wide; two legs of the rib and two returns alone take %s. Take a wider coil, or bend less.");
        return false;
    }

    private boolean longEnough(Length piece, Length lap) {
        double least = lap.metres() + LEAST_GAIN;
        if (lap.metres() > 0 && piece.metres() >= least) {
            return true;
        }
        tape.notePassed(
                PAN.at("pieceLength"),
                piece,
                Length.metres(least),
                "A piece is %s long; it must be at least %s, its lap and 0.1 m.");
        return false;
    }

    private Pitch widening(@Nullable WirePitch given) {
        Origin at = PAN.at("widening");
        Pitch widening = tape.pitch(given, PARALLEL, at);
        if (widening.tan() <= Limits.WIDENING.most()) {
            return widening;
        }
        Figure actual = Figure.of(widening.tan());
        Figure limit = Figure.of(Limits.WIDENING.most());
        tape.note(() -> Fault.of(
                ReadingCode.OUT_OF_RANGE,
                at.pointer(),
                "The open width gets wider by %s of its length; at most 1:12 is read, an inch to the foot."
                        .formatted(actual.text()),
                actual,
                limit));
        return PARALLEL;
    }

    private Play play() {
        return tape.given(fastening.screwPlay(), FASTENING.at("screwPlay"), Limits.SCREW_PLAY)
                .map(given -> new Play(given, Source.REQUEST))
                .orElse(Play.SCREW_HOLE);
    }

    private MovementTerms movement() {
        return new MovementTerms(
                fastening.fixedPoint() == null ? MovementTerms.USUAL.fixed() : fastening.fixedPoint(),
                tape.given(fastening.clipTravel(), FASTENING.at("clipTravel"), Limits.CLIP_TRAVEL)
                        .map(given -> new Play(given, Source.REQUEST)),
                tape.given(fastening.hemEngagement(), FASTENING.at("hemEngagement"), Limits.HEM_ENGAGEMENT),
                play());
    }

    private boolean temperaturesGiven() {
        return climate.lowest() != null || climate.highest() != null || climate.installedAt() != null;
    }

    private Temperatures temperatures() {
        if (!temperaturesGiven()) {
            return Temperatures.USUAL;
        }
        TemperatureScale scale = climate.temperature();
        if (scale == null) {
            tape.note(() -> Fault.of(
                    ReadingCode.MISSING_MEMBER,
                    CLIMATE.pointer(),
                    "\"temperature\" is missing here: say whether the temperatures are F or C."));
            return Temperatures.USUAL;
        }
        Temperature lowest = temperature(climate.lowest(), scale, Temperatures.USUAL.lowest());
        Temperature highest = temperature(climate.highest(), scale, Temperatures.USUAL.highest());
        Temperature installedAt = temperature(climate.installedAt(), scale, Temperatures.USUAL.installedAt());
        if (lowest.compareTo(installedAt) <= 0 && installedAt.compareTo(highest) <= 0) {
            return new Temperatures(lowest, highest, installedAt);
        }
        Figure actual = new Figure(scale.round(installedAt), scale.symbol());
        Figure limit = new Figure(scale.round(installedAt.compareTo(lowest) < 0 ? lowest : highest), scale.symbol());
        tape.note(() -> Fault.of(
                ReadingCode.OUT_OF_RANGE,
                CLIMATE.pointer(),
                "The metal is fastened at %s; that must lie between its lowest and its highest, %s and %s."
                        .formatted(
                                actual.text(),
                                new Figure(scale.round(lowest), scale.symbol()).text(),
                                new Figure(scale.round(highest), scale.symbol()).text()),
                actual,
                limit));
        return Temperatures.USUAL;
    }

    private static Temperature temperature(@Nullable Double given, TemperatureScale scale, Temperature absent) {
        return given == null ? absent : scale.of(given);
    }

    private List<Length> stations() {
        List<Length> stations = new ArrayList<>();
        if (pan.stations() != null) {
            for (WireLength station : pan.stations()) {
                stations.add(tape.length(station, PAN.at("stations").at(stations.size()), Limits.STATION));
            }
        }
        return stations;
    }

    HipCap hipCap() {
        Length leg = tape.length(cap.leg(), defaults.capLeg(), CAP.at("leg"), Limits.CAP_LEG);
        Length inset = tape.length(cap.closureInset(), defaults.margin(), CAP.at("closureInset"), Limits.CLOSURE_INSET);
        if (inset.metres() < leg.metres()) {
            return new HipCap(leg, inset);
        }
        tape.notePassed(
                CAP.at("leg"),
                leg,
                inset,
                "The leg of the cap is %s long; it must be more than %s, the inset of the closure under it.");
        return new HipCap(defaults.capLeg(), defaults.margin());
    }
}
