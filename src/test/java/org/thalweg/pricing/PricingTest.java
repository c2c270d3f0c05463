package org.thalweg.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.thalweg.pricing.Books.atLeast;
import static org.thalweg.pricing.Books.book;
import static org.thalweg.pricing.Books.breaking;
import static org.thalweg.pricing.Books.d;
import static org.thalweg.pricing.Books.item;
import static org.thalweg.pricing.Books.labour;
import static org.thalweg.pricing.Books.line;
import static org.thalweg.pricing.Books.metal;
import static org.thalweg.pricing.Books.packed;
import static org.thalweg.pricing.Books.panels;
import static org.thalweg.pricing.Books.takeoff;
import static org.thalweg.pricing.Books.total;
import static org.thalweg.pricing.Books.wasting;
import static org.thalweg.pricing.Books.width;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.pricing.BookItem.Match;
import org.thalweg.pricing.BookItem.PriceBreak;
import org.thalweg.pricing.Quote.Cost;
import org.thalweg.pricing.Surcharge.Base;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/** Quotes that can be checked with a pencil. */
class PricingTest {

    private static final PrintedLine PANELS = panels("321.9938", "2.9", "325.5", "54.875");

    private static Cost cost(BookItem item, PrintedLine line) {
        return Pricing.price(book("USD", item), takeoff(line))
                .lines()
                .get(0)
                .cost()
                .orElseThrow();
    }

    private static List<FindingCode> codes(Quote quote) {
        return quote.findings().stream().map(Finding::code).toList();
    }

    /** 325.5 in are 27.125 ft; at 3.94 a foot 106.8725. */
    @Test
    void aLineIsPricedInTheBooksUnit() {
        Cost cost = cost(item("panel", BookUnit.FOOT, "3.94"), PANELS);
        assertThat(cost.quantity().rounded(6)).isEqualByComparingTo("27.125");
        assertThat(cost.amount()).isEqualTo("106.87");
    }

    /** 100 in are 8 1/3 ft; three for 1 a foot are 8.33, not 8.34, and at 0.03 a foot exactly 0.25. */
    @Test
    void aQuantityThatNeverEndsIsRoundedOnlyAsMoney() {
        assertThat(cost(item("cleat", BookUnit.FOOT, "1"), line("cleat", "100", BookUnit.INCH))
                        .amount())
                .isEqualTo("8.33");
        assertThat(cost(item("cleat", BookUnit.FOOT, "0.03"), line("cleat", "100", BookUnit.INCH))
                        .amount())
                .isEqualTo("0.25");
    }

    /** 54.875 lb are 24.89088130375 kg (0.45359237 kg each); at 2.20 a kilogram 54.7599. */
    @Test
    void sheetMetalMayBePricedByItsMass() {
        Cost cost = cost(item("panel", BookUnit.KILOGRAM, "2.20"), PANELS);
        assertThat(cost.quantity().rounded(11)).isEqualByComparingTo("24.89088130375");
        assertThat(cost.amount()).isEqualTo("54.76");
    }

    /** (321.9938 + 2.9) in and 10 % are 357.38318 in, 29.78193166… ft; at 1 a foot. Of the mass 324.8938 / 325.5 and 10 %. */
    @Test
    void netAndLapsWithAFlatWasteInsteadOfTheOrdersOwn() {
        assertThat(cost(wasting(item("panel", BookUnit.FOOT, "1"), "10"), PANELS)
                        .amount())
                .isEqualTo("29.78");
        assertThat(cost(wasting(item("panel", BookUnit.POUND, "1"), "10"), PANELS)
                        .amount())
                .isEqualTo("60.25");
    }

    /** 1001 screws are three packs of 500; the break from 1500 is reached by the packs and holds for all of them. */
    @Test
    void packsAreWholeAndReachTheirBreak() {
        BookItem screws = breaking(
                packed(item("deckScrew", BookUnit.HUNDRED, "0"), "5"),
                new PriceBreak(d("0"), d("9.00")),
                new PriceBreak(d("15"), d("8.50")),
                new PriceBreak(d("15.01"), d("1")));
        Cost cost = cost(screws, line("deckScrew", "1001", BookUnit.ONE));
        assertThat(cost.packs()).contains(d("3"));
        assertThat(cost.price()).isEqualTo("8.50");
        assertThat(cost.amount()).isEqualTo("127.50");
        assertThat(cost(screws, line("deckScrew", "1000", BookUnit.ONE)).amount())
                .isEqualTo("90.00");
    }

    @ParameterizedTest
    @CsvSource({"0, 0.00, false", "1, 25.00, true", "99.9, 25.00, true", "100, 25.00, false", "101, 25.25, false"})
    void aMinimumHoldsWhereThereIsAnything(String ordered, String amount, boolean minimum) {
        Cost cost = cost(atLeast(item("cleat", BookUnit.INCH, "0.25"), "25"), line("cleat", ordered, BookUnit.INCH));
        assertThat(cost.amount()).isEqualTo(amount);
        assertThat(cost.minimum()).isEqualTo(minimum);
    }

    @Test
    void whatSaysMostWins() {
        BookItem any = item("panel", BookUnit.FOOT, "1");
        BookItem steel = item("panel", metal("galvanized-steel"), BookUnit.FOOT, "2");
        BookItem wide = item("panel", width(Length.inches(21)), BookUnit.FOOT, "3");
        BookItem both = item(
                "panel",
                new Match(
                        Optional.of("galvanized-steel"),
                        Optional.of(Length.millimetres(0.70104)),
                        Optional.empty(),
                        Optional.empty()),
                BookUnit.FOOT,
                "4");
        BookItem copper = item("panel", metal("copper"), BookUnit.FOOT, "5");
        BookItem trim = item("trim", BookUnit.FOOT, "6");
        assertThat(price(any, copper, trim)).isEqualTo("1");
        assertThat(price(any, steel, copper)).isEqualTo("2");
        assertThat(price(wide, steel, any))
                .as("the width ranks above the metal")
                .isEqualTo("3");
        assertThat(price(any, wide, both, steel)).as("0.70104 mm are 0.0276 in").isEqualTo("4");
    }

    private static String price(BookItem... items) {
        return Pricing.price(book("USD", items), takeoff(PANELS))
                .lines()
                .get(0)
                .cost()
                .orElseThrow()
                .price()
                .toPlainString();
    }

    /** A takeoff prints four decimals of an inch and three of a millimetre. */
    @ParameterizedTest
    @CsvSource({"0.0276, true", "0.02764, true", "0.02766, false", "0.0275, false"})
    void aThicknessFitsWhenItWouldBePrintedAlike(double inches, boolean fits) {
        Match match =
                new Match(Optional.empty(), Optional.of(Length.inches(inches)), Optional.empty(), Optional.empty());
        Quote quote = Pricing.price(book("USD", item("panel", match, BookUnit.FOOT, "1")), takeoff(PANELS));
        assertThat(quote.complete()).isEqualTo(fits);
    }

    /** What two millimetres tell apart may be one inch: nobody could say which price an inch takeoff has. */
    @Test
    void twoEntriesThatSayTheSameClash() {
        BookItem one = item("trim", width(Length.millimetres(200)), BookUnit.METRE, "1");
        BookItem same = item("trim", width(Length.metres(0.2)), BookUnit.FOOT, "2");
        BookItem near = item("trim", width(Length.millimetres(200.001)), BookUnit.FOOT, "2");
        BookItem apart = item("trim", width(Length.millimetres(200.01)), BookUnit.FOOT, "3");
        assertThat(BookItems.of(List.of(one, same)).clashes()).containsExactly(new BookItems.Clash(one, same));
        assertThat(BookItems.of(List.of(one, near)).clashes()).containsExactly(new BookItems.Clash(one, near));
        assertThat(BookItems.of(List.of(one, apart)).clashes()).isEmpty();
        assertThatThrownBy(() -> book("USD", one, same)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatHasNoPriceIsNeverNought() {
        Quote quote = Pricing.price(
                book(
                        "USD",
                        List.of(item("clip", BookUnit.ONE, "0.5"), item("cleat", BookUnit.ONE, "3")),
                        List.of(labour("panels", BookUnit.ONE, "12"), labour("mass", BookUnit.ONE, "1")),
                        List.of(),
                        List.of(new Surcharge("VAT", d("20"), Base.TOTAL))),
                new PrintedTakeoff(
                        LengthUnit.INCH,
                        List.of(PANELS, line("clip", "10", BookUnit.ONE), line("cleat", "120", BookUnit.INCH)),
                        List.of(total("mass", "54", BookUnit.POUND))));
        assertThat(codes(quote))
                .containsExactly(
                        FindingCode.NO_PRICE,
                        FindingCode.PRICE_PER_OTHER_MEASURE,
                        FindingCode.NO_SUCH_TOTAL,
                        FindingCode.PRICE_PER_OTHER_MEASURE);
        assertThat(quote.complete()).isFalse();
        assertThat(quote.net()).isEmpty();
        assertThat(quote.taxes()).isEmpty();
        assertThat(quote.subtotal()).isEqualTo("5.00");
    }

    @Test
    void aTotalOfNoughtCostsNothing() {
        Quote quote = Pricing.price(
                book("USD", List.of(), List.of(labour("valleys", BookUnit.EACH, "45")), List.of(), List.of()),
                new PrintedTakeoff(LengthUnit.INCH, List.of(), List.of(total("valleys", "0", BookUnit.ONE))));
        assertThat(quote.total()).contains(d("0.00"));
        assertThat(quote.work()).isEqualTo("0.00");
    }

    /**
     * Goods 100.05, labour 50.00. 10 % of the goods are 10.005, so 10.01; 10 % of what is then 160.06 are 16.01; 7.25 % of the
     * goods are 7.253…; 5 % of 176.07 are 8.8035.
     */
    @Test
    void markUpsAndTaxesComeInTheirOrderEachRounded() {
        Quote quote = Pricing.price(
                book(
                        "USD",
                        List.of(item("clip", BookUnit.ONE, "100.05")),
                        List.of(labour("panels", BookUnit.ONE, "50")),
                        List.of(
                                new Surcharge("handling", d("10"), Base.GOODS),
                                new Surcharge("margin", d("10"), Base.RUNNING)),
                        List.of(
                                new Surcharge("state", d("7.25"), Base.GOODS),
                                new Surcharge("all", d("5"), Base.TOTAL))),
                new PrintedTakeoff(
                        LengthUnit.INCH,
                        List.of(line("clip", "1", BookUnit.ONE)),
                        List.of(total("panels", "1", BookUnit.ONE))));
        assertThat(quote.markups())
                .extracting(share -> share.amount().toPlainString())
                .containsExactly("10.01", "16.01");
        assertThat(quote.net()).contains(d("176.07"));
        assertThat(quote.taxes())
                .extracting(share -> share.amount().toPlainString())
                .containsExactly("7.25", "8.80");
        assertThat(quote.total()).contains(d("192.12"));
    }

    @ParameterizedTest
    @EnumSource
    void aPartIsTakenOfTheSumThatIsNamed(Base base) {
        Surcharge part = new Surcharge("part", d("100"), base);
        boolean tax = base == Base.TOTAL;
        Surcharge first = new Surcharge("first", d("50"), Base.SUBTOTAL);
        Quote quote = Pricing.price(
                book(
                        "USD",
                        List.of(item("clip", BookUnit.ONE, "1")),
                        List.of(labour("panels", BookUnit.ONE, "3")),
                        tax ? List.of(first) : List.of(first, part),
                        tax ? List.of(part) : List.of()),
                new PrintedTakeoff(
                        LengthUnit.INCH,
                        List.of(line("clip", "1", BookUnit.ONE)),
                        List.of(total("panels", "1", BookUnit.ONE))));
        String expected =
                switch (base) {
                    case GOODS -> "1.00";
                    case LABOUR -> "3.00";
                    case SUBTOTAL -> "4.00";
                    case RUNNING, TOTAL -> "6.00";
                };
        Quote.Share share = tax ? quote.taxes().get(0) : quote.markups().get(1);
        assertThat(share.base()).isEqualTo(expected);
        assertThat(share.amount()).isEqualTo(expected);
    }

    @Test
    void moreMoneyThanIsToldIsRefused() {
        PriceBook dear = book("USD", item("clip", BookUnit.ONE, "1000000000"));
        assertThat(Pricing.price(dear, takeoff(line("clip", "1000", BookUnit.ONE)))
                        .total())
                .contains(d("1000000000000.00"));
        assertThatThrownBy(() -> Pricing.price(dear, takeoff(line("clip", "1000.000001", BookUnit.ONE))))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.refusals().get(0).code()).isEqualTo(RefusalCode.TOTAL_TOO_LARGE));
        assertThatThrownBy(() -> Pricing.price(
                        book("USD", item("clip", BookUnit.SQUARE_MILLIMETRE, "1000000000")),
                        takeoff(line("clip", "1000000000000", BookUnit.SQUARE))))
                .isInstanceOf(Refused.class);
    }
}
