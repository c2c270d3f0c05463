package org.thalweg.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.thalweg.pricing.Books.book;
import static org.thalweg.pricing.Books.item;
import static org.thalweg.pricing.Books.line;
import static org.thalweg.pricing.Books.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.SplittableRandom;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rounding to the minor unit, and what that is. */
class MoneyTest {

    private static BigDecimal amount(String currency, String quantity, String price) {
        return Pricing.price(
                        book(currency, item("clip", BookUnit.ONE, price)),
                        takeoff(line("clip", quantity, BookUnit.ONE)))
                .goods();
    }

    /** ISO 4217, column "Minor unit" (from memory, and the library's table below says the same). */
    @ParameterizedTest
    @CsvSource({
        "JPY, 0, 1235",
        "KRW, 0, 1235",
        "USD, 2, 1234.57",
        "EUR, 2, 1234.57",
        "KWD, 3, 1234.568",
        "TND, 3, 1234.568"
    })
    void amountsHaveTheDecimalsOfTheirCurrency(String currency, int decimals, String printed) {
        BigDecimal amount = amount(currency, "1", "1234.5678");
        assertThat(amount.scale()).isEqualTo(decimals);
        assertThat(amount.toPlainString()).isEqualTo(printed);
    }

    /** Two that were made apart agree on what people pay with. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "AUD", "BHD", "BRL", "CAD", "CHF", "CLP", "CNY", "CZK", "DKK", "EUR", "GBP", "INR", "ISK", "JOD", "JPY",
                "KRW", "KWD", "MXN", "NOK", "NZD", "OMR", "PLN", "SEK", "TND", "USD", "VND", "ZAR"
            })
    void anotherLibraryHasTheSameMinorUnits(String code) {
        assertThat(Currency.getInstance(code).getDefaultFractionDigits())
                .isEqualTo(CurrencyUnit.of(code).getDecimalPlaces());
    }

    @Test
    void nothingIsPaidInWhatHasNoMinorUnit() {
        assertThatThrownBy(() -> book("XAU")).isInstanceOf(IllegalArgumentException.class);
    }

    /**
     * Council Regulation (EC) No 1103/97, article 5: to the nearest cent, and exactly half-way goes up. The examples are those of
     * the Slovene government's page on rounding when the euro came: 1 EUR = 239.640 SIT.
     */
    @ParameterizedTest
    @CsvSource({"500, 239.640, 2.09", "1000, 239.640, 4.17", "24.784, 1, 24.78", "24.785, 1, 24.79"})
    void publishedExamplesOfRounding(BigDecimal over, BigDecimal under, BigDecimal printed) {
        assertThat(new Ratio(over, under).rounded(2)).isEqualTo(printed);
    }

    /** A New Tax System (Goods and Services Tax) Act 1999 of Australia, section 9-90: "rounding 0.5 cents upwards". */
    @ParameterizedTest
    @CsvSource({"0.005, 0.01", "0.00499999, 0.00", "0.015, 0.02", "0.025, 0.03", "2.665, 2.67", "1.005, 1.01"})
    void halfACentGoesUp(String price, String printed) {
        assertThat(amount("AUD", "1", price)).isEqualTo(printed);
    }

    /** 1.005 and 2.665 are just what doubles get wrong; the oracle counts in whole minor units. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void anotherLibraryRoundsAlike(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 2_000; i++) {
            String code = new String[] {"USD", "JPY", "KWD"}[random.nextInt(3)];
            BigDecimal quantity = BigDecimal.valueOf(random.nextLong(1_000_000_000), random.nextInt(5));
            BigDecimal price = BigDecimal.valueOf(random.nextLong(1_000_000), 4 + random.nextInt(3));
            BigDecimal oracle = BigMoney.of(CurrencyUnit.of(code), price)
                    .multipliedBy(quantity)
                    .toMoney(RoundingMode.HALF_UP)
                    .getAmount();
            assertThat(amount(code, quantity.toPlainString(), price.toPlainString()))
                    .isEqualTo(oracle);
        }
    }

    /** GS1's own worked example of a check digit (6291041500213), and numbers of the other three lengths (from memory). */
    @ParameterizedTest
    @CsvSource({
        "6291041500213, true",
        "6291041500214, false",
        "036000291452, true",
        "036000291453, false",
        "73513537, true",
        "73513573, false",
        "10614141000415, true",
        "00000000000000, true",
        "629104150021, false",
        "62910415002I3, false",
        "'', false"
    })
    void tradeItemNumbersCheckThemselves(String digits, boolean good) {
        assertThat(Gtin.checks(digits)).isEqualTo(good);
    }

    /** Arabic-Indic digits are digits to Java and none to GS1. */
    @Test
    void onlyPlainDigitsCount() {
        assertThat(Gtin.checks("٧٣٥١٣٥٣٧")).isFalse();
    }
}
