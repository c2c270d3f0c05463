package org.thalweg.api;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.WindForm;
import org.thalweg.api.wire.WindForm.PressuresForm;
import org.thalweg.api.wire.WindForm.SiteForm;
import org.thalweg.api.wire.WireLength;
import org.thalweg.fastening.ClipLoad;
import org.thalweg.finding.Origin;
import org.thalweg.packet.WindTerms;
import org.thalweg.packet.WindTerms.Named;
import org.thalweg.packet.WindTerms.Pressures;
import org.thalweg.packet.WindTerms.WorkedOut;
import org.thalweg.packet.WindTerms.Zones;
import org.thalweg.reference.Rules;
import org.thalweg.reference.WindTables;
import org.thalweg.units.Area;
import org.thalweg.units.Force;
import org.thalweg.units.ForceUnit;
import org.thalweg.units.Length;
import org.thalweg.units.Pressure;
import org.thalweg.units.PressureUnit;
import org.thalweg.units.Speed;
import org.thalweg.units.SpeedUnit;
import org.thalweg.units.Units;
import org.thalweg.wind.LowRiseWind;
import org.thalweg.wind.ZonePressures;

/**
 * Reads the wind that clips are spaced for. What can't be read is noted; the least that is taken stands in for it until the
 * reading is done.
 */
final class WindReader {

    private static final Origin WIND = Origin.REQUEST.at("wind");
    private static final Origin PRESSURES = WIND.at("pressures");
    private static final Origin SITE = WIND.at("site");

    private final Units units;
    private final TapeReader tape;

    WindReader(Units units, TapeReader tape) {
        this.units = units;
        this.tape = tape;
    }

    /**
     * What clips are spaced for.
     *
     * @param noWider no clips stand further apart than this, if the request says so
     */
    Optional<WindTerms> read(@Nullable WindForm form, Optional<Length> noWider) {
        if (form == null) {
            return Optional.empty();
        }
        Optional<Length> height = length(form.meanRoofHeight(), "meanRoofHeight", Limits.MEAN_ROOF_HEIGHT);
        Optional<Length> width = length(form.zoneWidth(), "zoneWidth", Limits.ZONE_WIDTH);
        if (height.isEmpty() && (width.isEmpty() || form.site() != null)) {
            noteNoHeight();
            height = Optional.of(Length.metres(Limits.MEAN_ROOF_HEIGHT.least()));
        }
        Length field = length(form.fieldMost(), "fieldMost", Limits.WIND_FIELD_MOST)
                .orElseGet(() -> Rules.clipFieldSpacing().value());
        Length edge = length(form.edgeMost(), "edgeMost", Limits.WIND_EDGE_MOST)
                .orElseGet(() -> Rules.clipEdgeSpacing().value());
        return Optional.of(new WindTerms(
                clip(form, field), field, edge, noWider, new Zones(width, height), pressures(form, height)));
    }

    private void noteNoHeight() {
        tape.note(
                () -> Fault.of(
                        ReadingCode.MISSING_MEMBER,
                        WIND.pointer(),
                        "\"meanRoofHeight\" is missing here: the width of the strips and the pressure of a site follow from it."));
    }

    private Optional<Length> length(@Nullable WireLength given, String member, Limit limit) {
        return tape.given(given, WIND.at(member), limit)
                .map(read -> read.metres() > 0 ? read : Length.metres(limit.least()));
    }

    private Force clip(WindForm form, Length most) {
        either(form.clipLoad() != null, form.clipUltimate() != null, "\"clipLoad\" or \"clipUltimate\"");
        ForceUnit unit = units.force();
        if (form.clipUltimate() != null) {
            Force failing = new Force(number(
                    form.clipUltimate(),
                    unit.of(1).newtons(),
                    unit.symbol(),
                    WIND.at("clipUltimate"),
                    Limits.CLIP_ULTIMATE));
            return ClipLoad.tested(failing, most).allowable();
        }
        return new Force(
                form.clipLoad() == null
                        ? Limits.CLIP_LOAD.least()
                        : number(
                                form.clipLoad(),
                                unit.of(1).newtons(),
                                unit.symbol(),
                                WIND.at("clipLoad"),
                                Limits.CLIP_LOAD));
    }

    private void either(boolean one, boolean other, String names) {
        if (one == other) {
            tape.note(
                    () -> Fault.of(ReadingCode.EITHER_OR, WIND.pointer(), "Give %s, one of the two.".formatted(names)));
        }
    }

    private Pressures pressures(WindForm form, Optional<Length> height) {
        either(form.pressures() != null, form.site() != null, "the engineer's \"pressures\" or a \"site\"");
        if (form.site() != null && height.isPresent()) {
            return new WorkedOut(wind(form.site(), height.get()));
        }
        return new Named(
                form.pressures() == null
                        ? ZonePressures.everywhere(new Pressure(Limits.UPLIFT.least()))
                        : named(form.pressures()));
    }

    private ZonePressures named(PressuresForm form) {
        return new ZonePressures(
                pressure(form.field(), "field"), pressure(form.edge(), "edge"), pressure(form.corner(), "corner"));
    }

    private Pressure pressure(double given, String member) {
        PressureUnit unit = units.pressure();
        return new Pressure(number(given, unit.of(1).pascals(), unit.symbol(), PRESSURES.at(member), Limits.UPLIFT));
    }

    private LowRiseWind wind(SiteForm form, Length height) {
        SpeedUnit unit = SpeedUnit.beside(units.length());
        double speed =
                number(form.speed(), unit.of(1).metresPerSecond(), unit.symbol(), SITE.at("speed"), Limits.WIND_SPEED);
        double area = number(
                form.effectiveArea(),
                units.area().of(1).squareMetres(),
                units.area().symbol(),
                SITE.at("effectiveArea"),
                Limits.EFFECTIVE_AREA);
        return new LowRiseWind(
                new Speed(speed),
                form.speedMap(),
                // Every letter the contract knows has its row in the table; a test goes through them.
                WindTables.exposure(form.exposure().name()).orElseThrow(),
                height,
                new Area(area));
    }

    /**
     * A bare number in a unit that follows from the request's.
     *
     * @param each what one of the unit is in the limit's
     * @return in the limit's unit
     */
    private double number(double given, double each, String symbol, Origin at, Limit limit) {
        double read = given * each;
        if (read >= limit.least() && read <= limit.most()) {
            return read;
        }
        Figure actual = new Figure(given, symbol);
        Figure least = new Figure(rounded(limit.least() / each), symbol);
        Figure most = new Figure(rounded(limit.most() / each), symbol);
        tape.note(() -> Fault.of(
                ReadingCode.OUT_OF_RANGE,
                at.pointer(),
                "This is %s; it must be from %s to %s.".formatted(actual.text(), least.text(), most.text()),
                actual,
                read < limit.least() ? least : most));
        return limit.least();
    }

    /** For people: four decimals. */
    private static double rounded(double number) {
        return Math.rint(number * 1e4) / 1e4;
    }
}
