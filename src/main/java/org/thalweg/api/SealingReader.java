package org.thalweg.api;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.SealingForm;
import org.thalweg.api.wire.WireLength;
import org.thalweg.finding.Origin;
import org.thalweg.sealing.SealKind;
import org.thalweg.sealing.SealingRules;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/** Reads with how much everything is made tight. */
final class SealingReader {

    static final SealingForm NONE = new SealingForm(null, null, null, null, null, null, null, null, null);

    private static final Origin SEALING = Origin.REQUEST.at("sealing");

    private final SealingForm form;
    private final TapeReader tape;
    private final SealingRules usual;
    private final Map<SealKind, Integer> lines;

    SealingReader(@Nullable SealingForm form, LengthUnit unit, TapeReader tape) {
        this.form = form == null ? NONE : form;
        this.tape = tape;
        this.usual = unit.inInches() ? SealingRules.INCHES : SealingRules.METRIC;
        this.lines = new EnumMap<>(usual.lines());
    }

    /** @param edgeDistance from the edges of a trim to its first and last rivet: that of all fasteners */
    SealingRules read(Length edgeDistance) {
        count(form.valleyTapeCount(), "valleyTapeCount", SealKind.VALLEY);
        count(form.cleatTapeCount(), "cleatTapeCount", SealKind.CLEAT);
        count(form.closureTapeCount(), "closureTapeCount", SealKind.CLOSURE, SealKind.HEAD_WALL);
        count(form.endLapTapeCount(), "endLapTapeCount", SealKind.END_LAP);
        count(form.openingTapeCount(), "openingTapeCount", SealKind.OPENING);
        count(form.panLapBeadCount(), "panLapBeadCount", SealKind.PAN_LAP);
        count(form.trimLapBeadCount(), "trimLapBeadCount", SealKind.TRIM_LAP);
        return new SealingRules(
                lines,
                length(form.rivetSpacing(), usual.rivetSpacing(), "rivetSpacing", Limits.RIVET_SPACING),
                edgeDistance,
                length(form.beadPerCartridge(), usual.beadPerCartridge(), "beadPerCartridge", Limits.BEAD));
    }

    private void count(@Nullable Double given, String member, SealKind... kinds) {
        if (given == null) {
            return;
        }
        if (given != Math.rint(given)) {
            tape.note(() -> Fault.of(
                    ReadingCode.OUT_OF_RANGE,
                    SEALING.at(member).pointer(),
                    "This counts things; give a whole number."));
            return;
        }
        for (SealKind kind : kinds) {
            lines.put(kind, given.intValue());
        }
    }

    /** What can't be read has been noted; the usual figure stands in until the reading is done. */
    private Length length(@Nullable WireLength given, Length absent, String member, Limit limit) {
        Length read = tape.length(given, absent, SEALING.at(member), limit);
        return read.metres() > 0 ? read : absent;
    }
}
