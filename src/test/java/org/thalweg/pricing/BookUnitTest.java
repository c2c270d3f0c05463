package org.thalweg.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.thalweg.pricing.Books.d;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.thalweg.units.AreaUnit;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.MassUnit;

/** What units of prices are worth and how they are written. */
class BookUnitTest {

    private static BigDecimal one(String code, BookUnit in, int decimals) {
        return Ratio.of(BigDecimal.ONE)
                .converted(BookUnit.of(code).orElseThrow(), in)
                .rounded(decimals);
    }

    /** UN/CEFACT Recommendation 20, revision 17 (2021), annexes II and III, column "Conversion Factor", typed from it. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "INH, inch, MTR, 0.0254",
        "FOT, foot, MTR, 0.3048",
        "YRD, yard, MTR, 0.9144",
        "MMT, millimetre, MTR, 0.001",
        "CMT, centimetre, MTR, 0.01",
        "INK, square inch, MTK, 0.00064516",
        "FTK, square foot, MTK, 0.09290304",
        "YDK, square yard, MTK, 0.8361274",
        "MMK, square millimetre, MTK, 0.000001",
        "CMK, square centimetre, MTK, 0.0001",
        "ONZ, ounce, KGM, 0.02834952",
        "LBR, pound, KGM, 0.45359237",
        "STN, ton (US) or short ton (UK/US), KGM, 907.1847",
        "TNE, tonne, KGM, 1000",
        "GRM, gram, KGM, 0.001"
    })
    void everyFactorIsTheOnePrinted(String code, String name, String base, BigDecimal printed) {
        assertThat(one(code, BookUnit.of(base).orElseThrow(), printed.scale()))
                .as(name)
                .isEqualByComparingTo(printed);
    }

    /** NIST Special Publication 811, appendix B.8: 1 yd² = 8.361 274 E-01 m²; appendix B.6: 1 yd = 0.9144 m, exact, so all its digits. */
    @Test
    void nothingIsRounded() {
        assertThat(one("YDK", BookUnit.SQUARE_METRE, 12)).isEqualByComparingTo("0.83612736");
        assertThat(one("ONZ", BookUnit.KILOGRAM, 18)).isEqualByComparingTo("0.028349523125");
        assertThat(one("STN", BookUnit.POUND, 12)).isEqualByComparingTo("2000");
        assertThat(one("SQR", BookUnit.SQUARE_FOOT, 12)).isEqualByComparingTo("100");
        assertThat(BookUnit.INCH.in(BookUnit.FOOT)).isEqualTo(new Ratio(d("1"), d("12")));
    }

    /** The names of these codes in Recommendation 20: thousand, gross, hundred, dozen, pair, and three words for one. */
    @ParameterizedTest
    @CsvSource({"MIL, 1000", "GRO, 144", "CEN, 100", "DZN, 12", "PR, 2", "EA, 1", "H87, 1", "C62, 1"})
    void whatIsCountedIsCounted(String code, BigDecimal pieces) {
        assertThat(one(code, BookUnit.ONE, 0)).isEqualByComparingTo(pieces);
    }

    @ParameterizedTest
    @EnumSource
    void thereAndBackIsWhereItWas(BookUnit unit) {
        Stream.of(BookUnit.values())
                .filter(other -> other.kind() == unit.kind())
                .forEach(other -> {
                    Ratio back = Ratio.of(d("123.4567")).converted(unit, other).converted(other, unit);
                    assertThat(back.over().compareTo(d("123.4567").multiply(back.under())))
                            .isZero();
                });
    }

    @Test
    void nothingIsMeasuredInAnotherKindOfUnit() {
        assertThatThrownBy(() -> BookUnit.INCH.in(BookUnit.SQUARE_INCH)).isInstanceOf(IllegalArgumentException.class);
        assertThat(BookUnit.of("inh")).isEmpty();
        assertThat(BookUnit.of("SQ"))
                .as("another thing than the roofer's square")
                .isEmpty();
    }

    /** Whatever a takeoff prints can be priced, and is worth the same there. */
    @Test
    void everyUnitOfATakeoffIsAmongThem() {
        for (LengthUnit unit : LengthUnit.values()) {
            assertThat(one(unit.code(), BookUnit.METRE, 6).doubleValue())
                    .isEqualTo(unit.of(1).metres());
        }
        for (AreaUnit unit : AreaUnit.values()) {
            assertThat(one(unit.code(), BookUnit.SQUARE_METRE, 9).setScale(9, RoundingMode.UNNECESSARY))
                    .isEqualByComparingTo(
                            BigDecimal.valueOf(unit.of(1).squareMetres()).setScale(9, RoundingMode.HALF_UP));
        }
        for (MassUnit unit : MassUnit.values()) {
            assertThat(one(unit.code(), BookUnit.KILOGRAM, 8).doubleValue())
                    .isEqualTo(unit.of(1).kilograms());
        }
        assertThat(Arrays.stream(BookUnit.values()).map(BookUnit::code)).doesNotHaveDuplicates();
    }
}
