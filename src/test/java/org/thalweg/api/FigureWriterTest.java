package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.thalweg.api.problem.Figure;
import org.thalweg.units.Angle;
import org.thalweg.units.Area;
import org.thalweg.units.AreaUnit;
import org.thalweg.units.Count;
import org.thalweg.units.FlowUnit;
import org.thalweg.units.ForceUnit;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Mass;
import org.thalweg.units.MassUnit;
import org.thalweg.units.Measure;
import org.thalweg.units.Pitch;
import org.thalweg.units.PressureUnit;
import org.thalweg.units.Rainfall;
import org.thalweg.units.Temperature;
import org.thalweg.units.Units;

class FigureWriterTest {

    private static final Units INCHES = new Units(LengthUnit.INCH, AreaUnit.SQUARE, MassUnit.POUND);

    static Stream<Arguments> measures() {
        return Stream.of(
                Arguments.of(Length.metres(0.0254), new Figure(1, "in")),
                Arguments.of(new Area(9.290304), new Figure(1, "square")),
                Arguments.of(new Mass(0.45359237), new Figure(1, "lb")),
                Arguments.of(Angle.degrees(30), new Figure(30, "deg")),
                Arguments.of(new Pitch(1, 4), new Figure(3, "per 12")),
                Arguments.of(Temperature.fahrenheit(212), new Figure(100, "C")),
                Arguments.of(FlowUnit.GALLON_PER_MINUTE.of(12.5), new Figure(12.5, "gal/min")),
                Arguments.of(Rainfall.perHour(Length.inches(4.6)), new Figure(4.6, "in/h")),
                Arguments.of(ForceUnit.POUND_FORCE.of(150.5), new Figure(150.5, "lbf")),
                Arguments.of(PressureUnit.POUND_FORCE_PER_SQUARE_FOOT.of(28.8), new Figure(28.8, "lbf/ft2")),
                Arguments.of(new Count(7), new Figure(7, "1")));
    }

    @ParameterizedTest
    @CsvSource({
        "FOOT, 0.5, gal/min, 0.08333, ft/h",
        "MILLIMETRE, 0.0315, L/s, 25.4, mm/h",
        "CENTIMETRE, 0.0315, L/s, 2.54, cm/h",
        "METRE, 0.0315, L/s, 0.0254, m/h"
    })
    void waterFollowsTheUnitOfLength(LengthUnit tape, double flow, String flowUnit, double rain, String rainUnit) {
        Units units = new Units(tape, AreaUnit.SQUARE_METRE, MassUnit.KILOGRAM);
        assertThat(FigureWriter.write(FlowUnit.GALLON_PER_MINUTE.of(0.5), units))
                .isEqualTo(new Figure(flow, flowUnit));
        assertThat(FigureWriter.write(Rainfall.perHour(Length.inches(1)), units))
                .isEqualTo(new Figure(rain, rainUnit));
    }

    @ParameterizedTest
    @MethodSource("measures")
    void everyMeasureIsWrittenInTheCallersUnit(Measure measure, Figure written) {
        assertThat(FigureWriter.write(measure, INCHES)).isEqualTo(written);
    }

    @Test
    void figuresGoWhereTheSentenceHasThem() {
        assertThat(FigureWriter.fill(
                        "{actual} is over {limit}.",
                        Optional.of(new Figure(12.5, "in")),
                        Optional.of(new Figure(12, "in"))))
                .isEqualTo("12.5 in is over 12 in.");
        assertThat(FigureWriter.fill("Nothing to fill.", Optional.empty(), Optional.empty()))
                .isEqualTo("Nothing to fill.");
    }
}
