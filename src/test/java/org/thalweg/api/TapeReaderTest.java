package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.problem.NoAnswer;
import org.thalweg.api.wire.WireLength;
import org.thalweg.api.wire.WirePitch;
import org.thalweg.finding.Origin;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Pitch;

class TapeReaderTest {

    private static final Origin AT = Origin.REQUEST.at("panel").at("cover");
    private static final Pitch DEFAULT = new Pitch(1, 12);

    private final TapeReader inches = new TapeReader(LengthUnit.INCH);

    @Test
    void aNumberIsInTheRequestsUnit() {
        Length read = inches.length(WireLength.of(18), AT, Limits.COVER);
        assertThat(read.metres()).isCloseTo(0.4572, within(1e-12));
        assertThatCode(inches::done).doesNotThrowAnyException();
    }

    @Test
    void aTapeStringMayBringItsOwnUnit() {
        assertThat(inches.length(WireLength.of("450 mm"), AT, Limits.COVER).metres())
                .isCloseTo(0.45, within(1e-12));
        assertThat(inches.length(WireLength.of("1' 6\""), AT, Limits.COVER).metres())
                .isCloseTo(0.4572, within(1e-12));
    }

    @Test
    void whatIsAbsentIsTheDefault() {
        assertThat(inches.length(null, Length.metres(0.5), AT, Limits.COVER)).isEqualTo(Length.metres(0.5));
        assertThat(inches.pitch(null, DEFAULT, AT)).isEqualTo(DEFAULT);
    }

    @Test
    void aLengthOutsideItsLimitIsToldInTheCallersUnit() {
        inches.length(WireLength.of(100), AT, Limits.COVER);
        Fault fault = only();
        assertThat(fault.code()).isEqualTo("OUT_OF_RANGE");
        assertThat(fault.pointer()).isEqualTo("#/panel/cover");
        assertThat(fault.actual()).contains(new Figure(100, "in"));
        assertThat(fault.limit()).contains(new Figure(78.7402, "in"));
        assertThat(fault.detail()).isEqualTo("This is 100 in; it must be from 1.9685 in to 78.7402 in.");
    }

    @ParameterizedTest
    @CsvSource({"NaN", "''", "12 parsecs", "--1", "1e5"})
    void aStringThatIsNoLengthIsRefused(String tape) {
        inches.length(WireLength.of(tape), AT, Limits.COVER);
        Fault fault = only();
        assertThat(fault.code()).isEqualTo("BAD_LENGTH");
        assertThat(fault.detail()).startsWith("\"" + tape + "\" can't be read as a length.");
    }

    @ParameterizedTest
    @CsvSource({"6:12,6,12", "1/4:12,0.25,12", "0:12,0,12"})
    void aPitchStringIsRiseAndRun(String text, double rise, double run) {
        assertThat(inches.pitch(WirePitch.of(text), DEFAULT, AT)).isEqualTo(new Pitch(rise, run));
    }

    @ParameterizedTest
    @CsvSource({"steep", "6", "6:0", "-6:12", "6:12:1"})
    void aStringThatIsNoPitchIsRefused(String text) {
        inches.pitch(WirePitch.of(text), DEFAULT, AT);
        assertThat(only().code()).isEqualTo("BAD_PITCH");
    }

    @ParameterizedTest
    @CsvSource({"-1,12,0", "6,0,0.001", "6,-12,0.001", "2000,12,1000", "6,1001,1000"})
    void aPitchOutsideItsLimitsIsRefused(double rise, double run, double limit) {
        inches.pitch(WirePitch.of(rise, run), DEFAULT, AT);
        Fault fault = only();
        assertThat(fault.code()).isEqualTo("OUT_OF_RANGE");
        assertThat(fault.limit()).contains(Figure.of(limit));
    }

    @Test
    void everythingThatCanNotBeReadIsToldAtOnce() {
        inches.length(WireLength.of("x"), AT, Limits.COVER);
        inches.pitch(WirePitch.of("y"), DEFAULT, AT);
        NoAnswer refusal = catchThrowableOfType(NoAnswer.class, inches::done);
        assertThat(refusal.answer().errors()).extracting(Fault::code).containsExactly("BAD_LENGTH", "BAD_PITCH");
        assertThat(refusal.answer().detail()).isEqualTo("2 things are wrong; each is in errors.");
    }

    private Fault only() {
        NoAnswer refusal = catchThrowableOfType(NoAnswer.class, inches::done);
        assertThat(refusal).isNotNull();
        assertThat(refusal.answer().code()).isEqualTo("INVALID");
        assertThat(refusal.answer().errors()).hasSize(1);
        return refusal.answer().errors().get(0);
    }
}
