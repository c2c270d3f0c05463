package org.thalweg.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.geometry.Tolerance;
import org.thalweg.takeoff.Quantity.Kind;

class QuantityTest {

    private static final double ROUNDING = 1e-12;

    /** 5 per cent of 212 are 10.6, so 11 more; 7 per cent of 100 are 7, not 8 as binary fractions would have it. */
    @ParameterizedTest(name = "{0} pieces, {1} hundredths of a per cent more, packs of {2}: {3}")
    @CsvSource({
        "212, 500, , 223",
        "100, 700, , 107",
        "100, 0, , 100",
        "223, 0, 250, 250",
        "251, 0, 250, 500",
        "240, 500, 250, 500"
    })
    void piecesAreOrderedWholeAndInWholePacks(int pieces, long extra, Double pack, int ordered) {
        OrderRule rule = new OrderRule(extra, pack == null ? OptionalDouble.empty() : OptionalDouble.of(pack));
        Quantity bought = Quantity.count(pieces).bought(rule, Tolerance.DEFAULT);
        assertThat(bought.ordered()).isEqualTo(ordered);
        assertThat(bought.net()).isEqualTo(pieces);
    }

    @Test
    void aLengthThatFillsItsRollsToAHairTakesNoOther() {
        OrderRule rolls = new OrderRule(0, OptionalDouble.of(15.24));
        Quantity bought = Quantity.length(3 * 15.24 + 1e-12).bought(rolls, Tolerance.DEFAULT);
        assertThat(bought.ordered()).isCloseTo(45.72, within(1e-9));
        assertThat(Quantity.length(46).bought(rolls, Tolerance.DEFAULT).ordered())
                .isCloseTo(60.96, within(ROUNDING));
    }

    @Test
    void whatNeitherShowsNorLapsIsWaste() {
        Quantity blanks = Quantity.of(Kind.LENGTH, 10, 8.5, 0.5);
        assertThat(blanks.waste()).isCloseTo(1, within(ROUNDING));
        assertThat(blanks.ordered()).isCloseTo(10, within(ROUNDING));
    }

    @Test
    void noPartOfAnOrderIsLessThanNothing() {
        assertThat(Quantity.of(Kind.LENGTH, 10, 11, 1)).isEqualTo(new Quantity(Kind.LENGTH, 10, 0, 0, 0));
        assertThatThrownBy(() -> new Quantity(Kind.COUNT, 1, 0, -1, 0)).hasMessageContaining("0 or more");
        assertThatThrownBy(() -> new Quantity(Kind.LENGTH, 1, 0, 0, -1)).hasMessageContaining("0 or more");
    }

    @Test
    void whatLiesOnTheRackIsNotBought() {
        Quantity cut = Quantity.of(Kind.LENGTH, 10, 8.5, 0.5).cut(12, 3);
        assertThat(cut.waste()).isCloseTo(3, within(ROUNDING));
        assertThat(cut.ordered()).isCloseTo(9, within(ROUNDING));
    }
}
