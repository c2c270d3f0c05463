package org.thalweg.fastening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

class EvenRowTest {

    private static EvenRow row(double line, double most, double edge) {
        return EvenRow.along(Length.inches(line), Length.inches(most), Length.inches(edge), Tolerance.DEFAULT);
    }

    private static double inches(Length length) {
        return length.in(LengthUnit.INCH);
    }

    @ParameterizedTest
    @CsvSource({
        "120, 12, 6, 10, 12",
        "120, 12, 0, 11, 12",
        "121, 12, 6, 11, 10.9",
        "14, 12, 1, 2, 12",
        "14.1, 12, 1, 3, 6.05",
        "8, 12, 1, 2, 6"
    })
    void theFewestThatStandNoFurtherApartThanTheyMay(double line, double most, double edge, int count, double spacing) {
        EvenRow row = row(line, most, edge);
        assertThat(row.count()).isEqualTo(count);
        assertThat(inches(row.first())).isCloseTo(edge, within(1e-9));
        assertThat(inches(row.spacing())).isCloseTo(spacing, within(1e-9));
    }

    @Test
    void aLineTooShortForTwoHasOneInItsMiddle() {
        for (double line : new double[] {0.5, 1, 2, 2.03}) {
            EvenRow row = row(line, 12, 1);
            assertThat(row.count()).isEqualTo(1);
            assertThat(inches(row.first())).isCloseTo(line / 2, within(1e-9));
            assertThat(row.spacing()).isEqualTo(Length.ZERO);
        }
    }

    /** Twelve intervals of a third of a foot, added up in binary, are still twelve. */
    @Test
    void roundingNoiseTakesNoFastenerMore() {
        assertThat(EvenRow.along(Length.metres(12 * (0.1 + 0.2)), Length.metres(0.3), Length.ZERO, Tolerance.DEFAULT)
                        .count())
                .isEqualTo(13);
    }

    /**
     * At a fixed eave, screws at most 4 in apart between the ribs of an 18 in panel stand about 3 1/2 in apart: common practice,
     * no source. To the nearest half inch, whatever a rib leaves free.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.5, 0.75})
    void screwsAcrossAPanelOf18InchesStandAbout3AndAHalfApart(double clearance) {
        EvenRow row = row(18, 4, clearance);
        assertThat(row.count()).isEqualTo(6);
        assertThat(Math.rint(2 * inches(row.spacing())) / 2).isEqualTo(3.5);
    }

    @Test
    void anyRowIsEvenFitsItsLineAndHasNoneTooMany() {
        for (long seed = 1; seed <= 1_000; seed++) {
            Random random = new Random(seed);
            double line = 0.01 + 20 * random.nextDouble();
            double most = 0.02 + random.nextDouble();
            double edge = random.nextInt(3) == 0 ? 0 : random.nextDouble() * 0.3;
            EvenRow row =
                    EvenRow.along(Length.metres(line), Length.metres(most), Length.metres(edge), Tolerance.DEFAULT);
            double spacing = row.spacing().metres();
            double last = row.first().metres() + (row.count() - 1) * spacing;
            assertThat(last).as("seed %d", seed).isCloseTo(line - row.first().metres(), within(1e-9));
            assertThat(spacing).as("seed %d", seed).isLessThanOrEqualTo(most + 1e-7);
            if (row.count() > 2) {
                assertThat((line - 2 * edge) / (row.count() - 2))
                        .as("seed %d: one fewer would be too far apart", seed)
                        .isGreaterThan(most);
            }
        }
    }
}
