package org.thalweg.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.units.LengthUnit;

/** The metals and the figures chosen for them. */
class MetalsTest {

    private static final double FAHRENHEIT_DEGREES_PER_KELVIN = 1.8;

    /** Against published worked examples; tolerance: half of the last digit they print. */
    @ParameterizedTest(name = "{0}, {2} {1}, {4} {3}")
    @CsvFileSource(resources = "/published/thermal-movement.csv", numLinesToSkip = 1)
    void growthAgreesWithPublishedExamples(
            String metal, String unit, double length, String degrees, double warming, double growth, double halfDigit) {
        LengthUnit tape = LengthUnit.of(unit).orElseThrow();
        double kelvins = degrees.equals("F") ? warming / FAHRENHEIT_DEGREES_PER_KELVIN : warming;
        assertThat(metal(metal)
                        .expansion()
                        .value()
                        .growth(tape.of(length), kelvins)
                        .in(tape))
                .isCloseTo(growth, within(halfDigit));
    }

    /**
     * Copper Development Association: 9.8e-6 per °F is the handbook's mean for 68 to 572 °F (table 1.1A); its fact sheet
     * gives 16.8e-6 per kelvin (9.33e-6 per °F) for 25 to 100 °C. A roof's figure lies between, near the second.
     */
    @Test
    void copperGrowsAsAtRoofTemperaturesAndNotAsAtFiveHundredDegrees() {
        double perKelvin = metal("copper").expansion().value().perKelvin();
        assertThat(perKelvin).isGreaterThan(16.8e-6).isCloseTo(16.8e-6, within(0.2e-6));
        assertThat(perKelvin).isLessThan(9.8e-6 * FAHRENHEIT_DEGREES_PER_KELVIN);
    }

    @Test
    void aSheetThatCoolsShrinksByWhatItGrowsWhenItWarms() {
        Expansion zinc = metal("zinc").expansion().value();
        double warmed = zinc.growth(LengthUnit.METRE.of(10), 30).metres();
        assertThat(zinc.growth(LengthUnit.METRE.of(10), -30).metres()).isEqualTo(-warmed);
        assertThat(warmed).as("0.022 mm/(m K), EN 988").isCloseTo(0.0066, within(1e-12));
    }

    /** Densities in kg/m³, typed in from the sources named; the tolerance is half of the last digit they print. */
    @ParameterizedTest
    @CsvSource({
        // specific gravity 8.89 to 8.94: Copper Development Association, table 1.1A
        "copper, 8915, 25",
        // 2730 kg/m³ for alloy 3003: nominal densities of wrought aluminum alloys
        "aluminum, 2730, 5",
        // 7.2 g/cm³, from memory
        "zinc, 7200, 50",
        // 8.0 g/cm³, from memory
        "stainless-steel, 8000, 50"
    })
    void densitiesAreThoseOfTheMetal(String key, double kilogramsPerCubicMetre, double halfDigit) {
        assertThat(metal(key).density().value().kilogramsPerCubicMetre())
                .isCloseTo(kilogramsPerCubicMetre, within(halfDigit));
    }

    /** NIST Special Publication 811, appendix B.8: lb/in³ is 2.767 990 E+04 kg/m³, lb/ft² is 4.882 428 kg/m². */
    @Test
    void unitsOfDensityConvertAsNistPrintsThem() {
        assertThat(Density.of(1, "lb/in3").kilogramsPerCubicMetre()).isCloseTo(27_679.90, within(0.005));
        assertThat(Density.of(1, "lb/ft2/in").kilogramsPerSquareMetre(LengthUnit.INCH.of(1)))
                .isCloseTo(4.882428, within(5e-7));
        assertThat(Density.of(1, "g/cm3").kilogramsPerCubicMetre()).isEqualTo(1000);
    }

    @Test
    void aFigureInAnUnknownUnitIsRefusedAndNotGuessedAt() {
        assertThatThrownBy(() -> Density.of(1, "psi")).hasMessageContaining("psi");
        assertThatThrownBy(() -> Expansion.of(1, "lb/in3")).hasMessageContaining("lb/in3");
    }

    @Test
    void whatWasRecalledSaysSoWhereItIsCited() {
        assertThat(metal("zinc").density().recalled()).isTrue();
        assertThat(metal("zinc").density().source().text()).isEqualTo("EN 988 (from memory: memory-high)");
        assertThat(metal("stainless-steel").density().source().text()).endsWith("(from memory: memory-high)");
        assertThat(metal("copper").density().recalled()).isFalse();
        assertThat(metal("copper").density().source().text())
                .isEqualTo(
                        "Copper Development Association, Copper in Architecture Design Handbook (web edition) Table 1.1A");
    }

    @Test
    void onlyTwoOfTheFiguresUsedWereRecalled() {
        assertThat(Metals.all().stream()
                        .filter(metal ->
                                metal.density().recalled() || metal.expansion().recalled())
                        .map(Metal::key))
                .containsExactly("stainless-steel", "zinc");
    }

    @Test
    void metalsAreNamedAsCallersNameThem() {
        assertThat(Metals.all())
                .extracting(Metal::key)
                .containsExactly("galvanized-steel", "copper", "stainless-steel", "aluminum", "zinc");
        assertThat(Metals.of("zinc")).containsSame(Metals.all().get(4));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Zinc", "aluminium", "aluminium-zinc-steel", "zinc "})
    void otherNamesAreNoMetal(String key) {
        assertThat(Metals.of(key)).isEmpty();
    }

    @Test
    void theLinesUsedForAMetalStandInTheTable() {
        assertThat(Metals.all()).allSatisfy(metal -> {
            assertThat(Metals.figures()).contains(metal.printedDensity(), metal.printedExpansion());
            assertThat(metal.printedDensity().density()).isEqualTo(metal.density());
            assertThat(metal.printedExpansion().expansion()).isEqualTo(metal.expansion());
        });
        assertThat(metal("copper").printedExpansion().value()).isEqualTo("9.4e-06");
        assertThat(metal("aluminum").printedDensity().value()).isEqualTo("0.0986");
    }

    @Test
    void figuresStandInTheOrderOfTheFileWithTheDigitsPrinted() {
        assertThat(Metals.figures()).hasSize(18);
        MetalFigure first = Metals.figures().get(0);
        assertThat(first.metal()).isEqualTo("steel_galvanized");
        assertThat(first.value()).isEqualTo("6.7e-06");
        assertThat(first.unit()).isEqualTo("in/in/F");
        assertThat(Metals.figures()).allSatisfy(figure -> {
            assertThat(figure.source()).isNotBlank();
            assertThat(figure.confidence()).matches("(found|memory).*");
        });
    }

    private static Metal metal(String key) {
        return Metals.of(key).orElseThrow();
    }
}
