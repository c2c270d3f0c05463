package org.thalweg.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.units.Angle;
import org.thalweg.units.AreaUnit;
import org.thalweg.units.Length;

class WindTablesTest {

    private static double kz(String exposure, double feet) {
        return WindTables.exposure(exposure).orElseThrow().kz(Length.feet(feet));
    }

    /** To the last digit printed, rounded or cut off as the file says. */
    @ParameterizedTest(name = "[{index}] {0} ft, {1}")
    @CsvFileSource(resources = "/published/wind-kz.csv", numLinesToSkip = 1)
    void theWindGrowsWithHeightAsPrinted(double feet, String exposure, double printed, String cut) {
        double over = kz(exposure, feet) - printed;
        assertThat(over).isBetween(cut.equals("yes") ? 0.005 : -0.005, cut.equals("yes") ? 0.01 : 0.005);
    }

    @ParameterizedTest(name = "[{index}] {0}, {1} ft")
    @CsvFileSource(resources = "/published/wind-adjustment.csv", numLinesToSkip = 1)
    void theAdjustmentForHeightAndExposureIsThatPrinted(String exposure, double feet, double printed) {
        assertThat(kz(exposure, feet) / kz("B", 30)).isCloseTo(printed, within(0.005));
    }

    /** ASCE 7 table of Kz, its note on exposure B: cladding of low buildings takes 0.70 below 30 ft. */
    @ParameterizedTest
    @CsvSource({"B, 10, 0.70", "B, 25, 0.70", "C, 5, 0.85", "D, 0, 1.03"})
    void nearTheGroundTheWindIsTakenAsFurtherUp(String exposure, double feet, double printed) {
        assertThat(kz(exposure, feet)).isCloseTo(printed, within(0.005));
    }

    @Test
    void onlyThreeKindsOfGroundAreKnown() {
        assertThat(WindTables.exposures()).extracting(WindExposure::key).containsExactly("B", "C", "D");
        assertThat(WindTables.exposure("A")).isEmpty();
        assertThat(WindTables.exposure("b")).isEmpty();
    }

    private static double gcp(double slope, int zone, double squareFeet) {
        return WindTables.uplift(Angle.degrees(slope), zone, AreaUnit.SQUARE_FOOT.of(squareFeet))
                .orElseThrow()
                .value();
    }

    /** The coefficients at 20 and 50 ft² that the rows of IRC 2018 table R301.2(2) follow, and both ends. */
    @ParameterizedTest
    @CsvSource({
        "5, 1, 10, -1.0", "5, 1, 20, -0.9699", "5, 1, 50, -0.9301", "5, 1, 100, -0.9", "5, 3, 20, -2.2882",
        "5, 3, 50, -1.6118", "20, 1, 50, -0.8301", "20, 3, 10, -2.6", "20, 3, 100, -2.0", "40, 2, 10, -1.2"
    })
    void betweenPrintedAreasCoefficientsGoWithTheLogarithm(double slope, int zone, double area, double gcp) {
        assertThat(gcp(slope, zone, area)).isCloseTo(gcp, within(0.00005));
    }

    @Test
    void beyondThePrintedAreasTheNearestFigureHolds() {
        assertThat(gcp(20, 3, 1)).isEqualTo(-2.6);
        assertThat(gcp(20, 3, 500)).isEqualTo(-2.0);
    }

    /** 0 to 7, over 7 to 27, over 27 to 45 degrees. */
    @ParameterizedTest
    @CsvSource({"0, -2.8", "7, -2.8", "7.0001, -2.6", "27, -2.6", "27.0001, -1.2", "45, -1.2"})
    void aSlopeOnABorderGoesWithTheFlatterRoofs(double slope, double gcp) {
        assertThat(gcp(slope, 3, 10)).isEqualTo(gcp);
    }

    @Test
    void steeperThan45DegreesNothingIsPrinted() {
        assertThat(WindTables.uplift(Angle.degrees(45.001), 1, AreaUnit.SQUARE_FOOT.of(10)))
                .isEmpty();
    }

    @Test
    void aFigureBetweenASeenAndARecalledOneIsRecalled() {
        assertThat(WindTables.uplift(Angle.degrees(20), 3, AreaUnit.SQUARE_FOOT.of(10)))
                .hasValueSatisfying(gcp -> assertThat(gcp.recalled()).isFalse());
        assertThat(WindTables.uplift(Angle.degrees(20), 3, AreaUnit.SQUARE_FOOT.of(20)))
                .hasValueSatisfying(gcp -> {
                    assertThat(gcp.recalled()).isTrue();
                    assertThat(gcp.source().text()).endsWith("(from memory: memory-high)");
                });
    }
}
