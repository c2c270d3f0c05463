package org.thalweg.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.units.AreaUnit;
import org.thalweg.units.Length;
import org.thalweg.units.MassUnit;

/** What sheets weigh: the printed tables against one another, against density, and against figures typed in here. */
class GaugesTest {

    /** NIST Special Publication 811, appendix B.8. */
    private static final double KILOGRAMS_PER_SQUARE_METRE_PER_POUND_PER_SQUARE_FOOT = 4.882428;

    /** A row with its mass printed to a ten-thousandth and converted with seven digits. */
    private static final double CONVERTED = 1e-6;

    /** Typed in from the tables named; {@code halfDigit} is half of the last digit they print, in lb/ft². */
    @ParameterizedTest
    @CsvSource({
        // galvanized sheet, thickness tolerance table after ASTM A924/A653: 22, 24, 26 and 28 gauge
        "galvanized-steel, 0.0336, 1.406, 0.0005",
        "galvanized-steel, 0.0276, 1.156, 0.0005",
        "galvanized-steel, 0.0217, 0.906, 0.0005",
        "galvanized-steel, 0.0187, 0.781, 0.0005",
        // 23 gauge, which some charts misprint as 22
        "galvanized-steel, 0.0306, 1.281, 0.0005",
        // Copper Development Association, table 1.1.3: 16, 20 and 24 oz
        "copper, 0.0216, 1.0, 0.00005",
        "copper, 0.0270, 1.25, 0.00005",
        "copper, 0.0323, 1.5, 0.00005",
        // 42 lb/ft² for each inch, 24 gauge; from memory
        "stainless-steel, 0.025, 1.05, 0.005",
        // 0.032 in aluminum sheet, from memory
        "aluminum, 0.032, 0.454, 0.0005",
        // 0.70 mm zinc at 7.2 kg/dm³ is 5.04 kg/m²
        "zinc, 0.02756, 1.0323, 0.00005"
    })
    void aSheetWeighsWhatItsTablePrints(String metal, double inches, double pounds, double halfDigit) {
        SheetMass mass = Gauges.massPerArea(metal(metal), Length.inches(inches));
        assertThat(mass.fromTable()).isTrue();
        assertThat(poundsPerSquareFoot(mass.kilogramsPerSquareMetre())).isCloseTo(pounds, within(halfDigit));
    }

    @Test
    void everyRowOfAMetalsTableComesBackAsPrinted() {
        int rows = 0;
        for (Metal metal : Metals.all()) {
            for (Gauge gauge : table(metal.gaugeSystem())) {
                SheetMass mass = Gauges.massPerArea(metal, gauge.thickness());
                assertThat(mass.fromTable()).as(gauge.toString()).isTrue();
                assertThat(mass.source().text()).startsWith(gauge.source());
                assertThat(poundsPerSquareFoot(mass.kilogramsPerSquareMetre()))
                        .isCloseTo(gauge.poundsPerSquareFoot().doubleValue(), within(CONVERTED));
                rows++;
            }
        }
        assertThat(rows).isEqualTo(23 + 9 + 5 + 6 + 4);
    }

    /**
     * The physics behind the tables: mass is density times thickness. Tolerance: half of the last digit printed of each
     * of the three figures.
     *
     * @param density typed in, pounds per square foot for each inch
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // 41.82 lb/ft² for each inch, Manufacturers' Standard Gage
        "galvanized-steel, 41.82, 0.005",
        // 0.322 lb/in³ by 144 in²: Copper Development Association, table 1.1A
        "copper, 46.368, 0.072",
        // 0.29 lb/in³, from memory
        "stainless-steel, 41.76, 0.72",
        // 0.0986 lb/in³
        "aluminum, 14.1984, 0.0072",
        // 7.2 g/cm³, from memory; 7200 kg/m³ by 0.0254 m over 4.882428
        "zinc, 37.457, 0.26"
    })
    void everyPrintedMassIsDensityTimesThickness(String key, double density, double halfDigit) {
        Metal metal = metal(key);
        double thicknessHalfDigit = key.equals("aluminum") ? 0.0005 : key.equals("zinc") ? 0.000005 : 0.00005;
        assertThat(poundsPerSquareFoot(metal.density().value().kilogramsPerSquareMetre(Length.inches(1))))
                .isCloseTo(density, within(0.0005));
        assertThat(table(metal.gaugeSystem())).isNotEmpty().allSatisfy(gauge -> {
            double thickness = gauge.thicknessInches().doubleValue();
            double massHalfDigit = gauge.poundsPerSquareFoot().ulp().doubleValue() / 2;
            assertThat(density * thickness)
                    .isCloseTo(
                            gauge.poundsPerSquareFoot().doubleValue(),
                            within(density * thicknessHalfDigit + halfDigit * thickness + massHalfDigit));
        });
    }

    /** Galvanized sheet is bare sheet of the same number with 2.5 oz of zinc to the square foot: 0.15625 lb. */
    @Test
    void galvanizedSheetWeighsWhatBareSheetDoesAndTwoAndAHalfOunces() {
        int both = 0;
        for (Gauge bare : table("us_standard_gauge_iron_steel")) {
            for (Gauge galvanized : sameNumber("galvanized_sheet_gauge", bare)) {
                double halfDigit = galvanized.poundsPerSquareFoot().ulp().doubleValue() / 2;
                assertThat(galvanized.poundsPerSquareFoot().doubleValue())
                        .as(galvanized.gauge())
                        .isCloseTo(bare.poundsPerSquareFoot().doubleValue() + 0.15625, within(halfDigit + CONVERTED));
                both++;
            }
        }
        assertThat(both).as("10, 12 and 14 to 30 gauge").isEqualTo(19);
    }

    /** And it is 0.0037 in thicker; three figures printed to 0.0001 in. */
    @Test
    void galvanizedSheetIsAsThickAsBareSheetAndItsZinc() {
        int both = 0;
        for (Gauge bare : table("manufacturers_standard_gauge_steel")) {
            for (Gauge galvanized : sameNumber("galvanized_sheet_gauge", bare)) {
                assertThat(galvanized.thicknessInches().doubleValue())
                        .as(galvanized.gauge())
                        .isCloseTo(bare.thicknessInches().doubleValue() + 0.0037, within(3 * 0.00005 + CONVERTED));
                both++;
            }
        }
        assertThat(both).as("10, 12, 14 to 26, 28 and 30 gauge").isEqualTo(17);
    }

    /** 15 U.S.C. 206 (1893): thickness in inches is ounces per square foot over 640. */
    @Test
    void theStatutesGaugesAreFortyPoundsToTheInch() {
        assertThat(table("us_standard_gauge_iron_steel")).hasSize(21).allSatisfy(gauge -> {
            BigDecimal ounces = gauge.poundsPerSquareFoot().multiply(BigDecimal.valueOf(16));
            assertThat(gauge.thicknessInches().multiply(BigDecimal.valueOf(640)))
                    .isEqualByComparingTo(ounces);
        });
    }

    @Test
    void manufacturersGaugesAreTheSheetBasisTimesThickness() {
        assertThat(table("manufacturers_standard_gauge_steel")).hasSize(19).allSatisfy(gauge -> assertThat(
                        41.82 * gauge.thicknessInches().doubleValue())
                .isCloseTo(
                        gauge.poundsPerSquareFoot().doubleValue(), within(41.82 * 0.00005 + 0.005 * 0.14 + 0.00005)));
    }

    @Test
    void aThicknessNoTablePrintsIsWeighedByDensity() {
        SheetMass mass = Gauges.massPerArea(metal("galvanized-steel"), Length.inches(0.03));
        assertThat(mass.fromTable()).isFalse();
        assertThat(mass.source().text()).isEqualTo("Manufacturers' Standard Gage basis");
        assertThat(poundsPerSquareFoot(mass.kilogramsPerSquareMetre())).isCloseTo(1.2546, within(CONVERTED));
    }

    @Test
    void aTableHasAThicknessThatItWouldPrint() {
        Metal steel = metal("galvanized-steel");
        assertThat(Gauges.massPerArea(steel, Length.millimetres(0.7)).fromTable())
                .as("0.02756 in prints as 0.0276")
                .isTrue();
        assertThat(Gauges.massPerArea(steel, Length.inches(0.02764)).fromTable())
                .isTrue();
        assertThat(Gauges.massPerArea(steel, Length.inches(0.02766)).fromTable())
                .isFalse();
        assertThat(Gauges.massPerArea(steel, Length.inches(0.02754)).fromTable())
                .isFalse();
    }

    /** The file prints 0.027 for 20 oz copper, but the column has four decimals: 0.0266 in is not 20 oz. */
    @Test
    void zerosLostAtTheEndOfAThicknessDoNotWidenIt() {
        assertThat(Gauges.massPerArea(metal("copper"), Length.inches(0.0266)).fromTable())
                .isFalse();
        assertThat(Gauges.massPerArea(metal("aluminum"), Length.inches(0.042)).fromTable())
                .isFalse();
    }

    @Test
    void noTwoRowsOfATableClaimOneThickness() {
        for (Metal metal : Metals.all()) {
            List<BigDecimal> thicknesses = table(metal.gaugeSystem()).stream()
                    .map(Gauge::thicknessInches)
                    .sorted()
                    .toList();
            int decimals =
                    thicknesses.stream().mapToInt(BigDecimal::scale).max().orElseThrow();
            for (int i = 1; i < thicknesses.size(); i++) {
                assertThat(thicknesses.get(i).subtract(thicknesses.get(i - 1)))
                        .as(metal.key())
                        .isGreaterThan(BigDecimal.ONE.movePointLeft(decimals));
            }
        }
    }

    /** 2000 lb of 24 gauge galvanized coil, 20 in wide, is 1038.06 ft long by its table (1.156 lb/ft²). */
    @Test
    void aCoilWeighsItsLengthTimesItsWidthTimesItsSheet() {
        SheetMass sheet = Gauges.massPerArea(metal("galvanized-steel"), Length.inches(0.0276));
        double squareFeet = 1038.062 * 20 / 12;
        assertThat(sheet.of(AreaUnit.SQUARE_FOOT.of(squareFeet)).in(MassUnit.POUND))
                .isCloseTo(2000, within(0.001));
    }

    @Test
    void aRecalledRowSaysSo() {
        assertThat(Gauges.massPerArea(metal("stainless-steel"), Length.inches(0.025))
                        .source()
                        .text())
                .endsWith("(from memory: memory-high)");
    }

    @Test
    void rowsStandInTheOrderOfTheFileWithEveryColumn() {
        assertThat(Gauges.all()).hasSize(87);
        assertThat(Gauges.all().get(0).gauge()).isEqualTo("10");
        List<Gauge> galvanized = table("galvanized_sheet_gauge");
        assertThat(galvanized.get(8).gauge()).isEqualTo("24");
        assertThat(galvanized.get(8).leastInches()).contains(new BigDecimal("0.0236"));
        assertThat(galvanized.get(8).mostInches()).contains(new BigDecimal("0.0316"));
        assertThat(galvanized.get(8).confidence()).isEqualTo("found+computed");
        assertThat(galvanized.get(17).gauge()).isEqualTo("25");
        assertThat(galvanized.get(17).leastInches()).isEmpty();
    }

    private static List<Gauge> table(String system) {
        return Gauges.all().stream()
                .filter(gauge -> gauge.system().equals(system))
                .toList();
    }

    private static List<Gauge> sameNumber(String system, Gauge other) {
        return table(system).stream()
                .filter(gauge -> gauge.gauge().equals(other.gauge()))
                .toList();
    }

    private static Metal metal(String key) {
        return Metals.of(key).orElseThrow();
    }

    private static double poundsPerSquareFoot(double kilogramsPerSquareMetre) {
        return kilogramsPerSquareMetre / KILOGRAMS_PER_SQUARE_METRE_PER_POUND_PER_SQUARE_FOOT;
    }
}
