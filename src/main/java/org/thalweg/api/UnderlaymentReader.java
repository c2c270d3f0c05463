package org.thalweg.api;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.wire.UnderlaymentForm;
import org.thalweg.api.wire.UnderlaymentForm.IceBarrierForm;
import org.thalweg.api.wire.WireLength;
import org.thalweg.finding.Origin;
import org.thalweg.reference.Rules;
import org.thalweg.underlayment.IceSpec;
import org.thalweg.underlayment.Roll;
import org.thalweg.underlayment.UnderlayCase;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/** Reads the sheets under the metal, and the ice barrier. */
final class UnderlaymentReader {

    static final UnderlaymentForm NONE = new UnderlaymentForm(null, null, null, null, null, null);

    private static final Origin SHEET = Origin.REQUEST.at("underlayment");
    private static final Origin ICE = SHEET.at("iceBarrier");

    /** By how much more than its lap a sheet is wider, so that a roof can't ask for courses without number. Metres. */
    private static final double LEAST_GAIN = 0.1;

    private final UnderlaymentForm form;
    private final TapeReader tape;
    private final UnderlayDefaults defaults;

    UnderlaymentReader(@Nullable UnderlaymentForm form, LengthUnit unit, TapeReader tape) {
        this.form = form == null ? NONE : form;
        this.tape = tape;
        this.defaults = UnderlayDefaults.of(unit);
    }

    UnderlayCase read() {
        Length apart = tape.length(
                form.endLapsApart(), defaults.sheet().lapsApart(), SHEET.at("endLapsApart"), Limits.END_LAPS_APART);
        Roll roll = roll(
                SHEET, form.rollWidth(), form.rollLength(), form.sideLap(), form.endLap(), apart, defaults.sheet());
        return new UnderlayCase(roll, Optional.ofNullable(form.iceBarrier()).map(ice -> ice(ice, apart)));
    }

    private IceSpec ice(IceBarrierForm ice, Length apart) {
        return new IceSpec(
                tape.length(ice.overhang(), ICE.at("overhang"), Limits.OVERHANG),
                tape.length(ice.insideWall(), defaults.insideWall(), ICE.at("insideWall"), Limits.INSIDE_WALL),
                Rules.iceBarrierSteep().value(),
                tape.length(ice.alongSlope(), defaults.alongSlope(), ICE.at("alongSlope"), Limits.ALONG_SLOPE),
                tape.length(ice.valleyWidth(), defaults.valley(), ICE.at("valleyWidth"), Limits.VALLEY_WIDTH),
                roll(ICE, ice.rollWidth(), ice.rollLength(), ice.sideLap(), ice.endLap(), apart, defaults.ice()));
    }

    /** What can't be read has been noted; the usual roll stands in until the reading is done. */
    private Roll roll(
            Origin at,
            @Nullable WireLength width,
            @Nullable WireLength length,
            @Nullable WireLength sideLap,
            @Nullable WireLength endLap,
            Length apart,
            Roll usual) {
        Length wide = tape.length(width, usual.width(), at.at("rollWidth"), Limits.ROLL_WIDTH);
        Length lap = tape.length(sideLap, usual.sideLap(), at.at("sideLap"), Limits.ROLL_SIDE_LAP);
        Length most = Length.metres(Math.max(0, wide.metres() - LEAST_GAIN));
        Length whole = tape.length(length, usual.length(), at.at("rollLength"), Limits.ROLL_LENGTH);
        Length end = tape.length(endLap, usual.endLap(), at.at("endLap"), Limits.ROLL_END_LAP);
        if (lap.compareTo(most) > 0 && wide.metres() > 0) {
            tape.notePassed(
                    at.at("sideLap"),
                    lap,
                    most,
                    "A course would lap the one below by %s; it must be at most %s, 0.1 m less than the width of the roll.");
        }
        boolean good = wide.metres() > 0 && lap.compareTo(most) <= 0 && whole.metres() > 2 * end.metres();
        return good ? new Roll(wide, whole, lap, end, apart) : usual;
    }
}
