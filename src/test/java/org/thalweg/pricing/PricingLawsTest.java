package org.thalweg.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.thalweg.pricing.Books.book;
import static org.thalweg.pricing.Books.item;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.thalweg.pricing.BookItem.Match;
import org.thalweg.pricing.Quote.Cost;
import org.thalweg.pricing.Quote.GoodsCost;
import org.thalweg.pricing.Quote.LabourCost;
import org.thalweg.pricing.Quote.Share;
import org.thalweg.pricing.Surcharge.Base;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/** What holds for every quote, whatever the book and the takeoff. */
class PricingLawsTest {

    private static final List<String> ITEMS = List.of("panel", "trim", "clip", "cleat", "underlayment");
    private static final List<String> METALS = List.of("galvanized-steel", "copper");
    private static final List<String> PROFILES = List.of("ridge", "eave");
    private static final List<String> CURRENCIES = List.of("USD", "JPY", "KWD");

    static LongStream seeds() {
        return LongStream.range(0, 300);
    }

    /** A job as it might come, with every sort of entry in its book. */
    private static final class Job {

        private final Random random;
        private final String currency;
        private final List<BookItem> items = new ArrayList<>();
        private final List<LabourItem> labour = new ArrayList<>();
        private final List<Surcharge> markups = new ArrayList<>();
        private final List<Surcharge> taxes = new ArrayList<>();
        private final List<PrintedLine> lines = new ArrayList<>();
        private final List<PrintedTotal> totals = new ArrayList<>();
        private final LengthUnit unit;

        Job(long seed) {
            random = new Random(seed);
            currency = any(CURRENCIES);
            unit = any(List.of(LengthUnit.values()));
            for (String item : ITEMS) {
                for (int i = random.nextInt(6); i >= 0; i--) {
                    BookItem made = item(item, i == 0 ? Match.ANY : match(), unit(item), decimal(9_999_999, 6));
                    made = random.nextInt(4) == 0 ? Books.packed(made, decimal(500, 1)) : made;
                    made = random.nextInt(4) == 0 ? Books.atLeast(made, decimal(99_999, 2)) : made;
                    made = random.nextInt(4) == 0 ? Books.wasting(made, decimal(2_000, 2)) : made;
                    items.add(made);
                }
            }
            items.removeAll(BookItems.of(items).clashes().stream()
                    .map(BookItems.Clash::again)
                    .toList());
            labour.add(Books.labour("panels", BookUnit.ONE, decimal(99_999, 3)));
            labour.add(Books.labour("mitreLength", BookUnit.FOOT, decimal(99_999, 3)));
            for (Base base : List.of(Base.GOODS, Base.RUNNING, Base.LABOUR, Base.SUBTOTAL, Base.RUNNING)) {
                markups.add(new Surcharge("m" + markups.size(), new BigDecimal(decimal(99_999, 4)), base));
            }
            for (Base base : List.of(Base.GOODS, Base.LABOUR, Base.SUBTOTAL, Base.TOTAL)) {
                taxes.add(new Surcharge("t" + taxes.size(), new BigDecimal(decimal(99_999, 4)), base));
            }
            for (int i = random.nextInt(12); i >= 0; i--) {
                lines.add(line());
            }
            totals.add(Books.total("panels", decimal(400, 0), BookUnit.ONE));
            totals.add(Books.total(
                    "mitreLength",
                    decimal(99_999_999, 4),
                    BookUnit.of(unit.code()).orElseThrow()));
        }

        private <T> T any(List<T> of) {
            return of.get(random.nextInt(of.size()));
        }

        /** From just above 0 to a few thousands, with up to so many decimals. */
        private String decimal(int most, int decimals) {
            int least = Math.min(decimals, Math.max(0, Integer.toString(most).length() - 3));
            int scale = least + random.nextInt(decimals - least + 1);
            return BigDecimal.valueOf(1 + random.nextInt(most), scale).toPlainString();
        }

        private BookUnit unit(String item) {
            return switch (item) {
                case "clip" -> any(List.of(BookUnit.ONE, BookUnit.HUNDRED, BookUnit.THOUSAND, BookUnit.DOZEN));
                case "underlayment" -> any(List.of(BookUnit.SQUARE, BookUnit.SQUARE_METRE, BookUnit.SQUARE_YARD));
                case "cleat" -> any(List.of(BookUnit.FOOT, BookUnit.YARD, BookUnit.METRE));
                default -> any(List.of(BookUnit.FOOT, BookUnit.METRE, BookUnit.POUND, BookUnit.TONNE));
            };
        }

        private Match match() {
            return new Match(
                    random.nextBoolean() ? Optional.of(any(METALS)) : Optional.empty(),
                    random.nextBoolean() ? Optional.of(Length.millimetres(0.7)) : Optional.empty(),
                    random.nextBoolean() ? Optional.of(Length.millimetres(any(List.of(500, 570)))) : Optional.empty(),
                    random.nextBoolean() ? Optional.of(any(PROFILES)) : Optional.empty());
        }

        private PrintedLine line() {
            String item = any(ITEMS);
            BigDecimal net = new BigDecimal(decimal(99_999_999, 4));
            BigDecimal lap = new BigDecimal(decimal(999_999, 4));
            BigDecimal ordered = net.add(lap).add(new BigDecimal(decimal(999_999, 4)));
            boolean metal = item.equals("panel") || item.equals("trim");
            BookUnit of =
                    switch (item) {
                        case "clip" -> BookUnit.ONE;
                        case "underlayment" -> BookUnit.SQUARE_FOOT;
                        default -> BookUnit.of(unit.code()).orElseThrow();
                    };
            return new PrintedLine(
                    item,
                    metal
                            ? Optional.of(new PrintedLine.Made(
                                    any(METALS),
                                    unit.round(Length.millimetres(any(List.of(0.7, 0.8)))),
                                    unit.round(Length.millimetres(any(List.of(500, 570)))),
                                    random.nextBoolean() ? Optional.of(any(PROFILES)) : Optional.empty()))
                            : Optional.empty(),
                    net,
                    lap,
                    ordered,
                    of,
                    metal
                            ? Optional.of(
                                    new PrintedLine.Mass(new BigDecimal(decimal(9_999_999, 3)), BookUnit.KILOGRAM))
                            : Optional.empty());
        }

        Quote quote() {
            return Pricing.price(
                    book(currency, items, labour, markups, taxes), new PrintedTakeoff(unit, lines, totals));
        }
    }

    /** Whole minor units, added with whole numbers only. */
    private static BigInteger minor(BigDecimal amount, int decimals) {
        assertThat(amount.scale()).isEqualTo(decimals);
        return amount.unscaledValue();
    }

    /** ⌊x + ½⌋ of a percentage with four decimals. */
    private static BigInteger part(BigInteger of, BigDecimal percent) {
        BigInteger exact = of.multiply(percent.movePointRight(4).toBigIntegerExact());
        BigInteger whole = BigInteger.valueOf(1_000_000);
        return exact.add(exact).add(whole).divide(whole.add(whole));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whoeverAddsUpAQuoteFindsItsTotal(long seed) {
        Job job = new Job(seed);
        Quote quote = job.quote();
        assertThat(quote.findings()).isEmpty();
        int decimals = quote.goods().scale();
        BigInteger goods = BigInteger.ZERO;
        for (GoodsCost line : quote.lines()) {
            goods = goods.add(minor(line.cost().orElseThrow().amount(), decimals));
        }
        BigInteger work = BigInteger.ZERO;
        for (LabourCost line : quote.labour()) {
            work = work.add(minor(line.cost().orElseThrow().amount(), decimals));
        }
        BigInteger running = goods.add(work);
        assertThat(minor(quote.subtotal(), decimals)).isEqualTo(running);
        for (Share share : quote.markups()) {
            BigInteger amount =
                    part(base(share, goods, work, running), share.of().percent());
            assertThat(minor(share.amount(), decimals)).isEqualTo(amount);
            running = running.add(amount);
        }
        BigInteger total = running;
        for (Share share : quote.taxes()) {
            BigInteger amount =
                    part(base(share, goods, work, running), share.of().percent());
            assertThat(minor(share.amount(), decimals)).isEqualTo(amount);
            total = total.add(amount);
        }
        assertThat(minor(quote.net().orElseThrow(), decimals)).isEqualTo(running);
        assertThat(minor(quote.total().orElseThrow(), decimals)).isEqualTo(total);
    }

    private static BigInteger base(Share share, BigInteger goods, BigInteger work, BigInteger running) {
        return switch (share.of().base()) {
            case GOODS -> goods;
            case LABOUR -> work;
            case SUBTOTAL -> goods.add(work);
            case RUNNING, TOTAL -> running;
        };
    }

    /** An amount is the nearest there is to quantity times price: twice the difference is at most one minor unit, and never a half below. */
    @ParameterizedTest
    @MethodSource("seeds")
    void everyAmountIsTheNearest(long seed) {
        for (GoodsCost line : new Job(seed).quote().lines()) {
            Cost cost = line.cost().orElseThrow();
            if (!cost.minimum()) {
                BigDecimal exact = cost.quantity().over().multiply(cost.price());
                BigDecimal twiceOff = cost.amount()
                        .multiply(cost.quantity().under())
                        .subtract(exact)
                        .multiply(BigDecimal.valueOf(2));
                BigDecimal last = BigDecimal.ONE
                        .movePointLeft(cost.amount().scale())
                        .multiply(cost.quantity().under());
                assertThat(twiceOff).isLessThanOrEqualTo(last).isGreaterThan(last.negate());
            }
        }
    }

    /** An entry wins that fits and that no other that fits says more than; looked for by going through the book. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theEntryIsTheOneFoundByGoingThroughTheBook(long seed) {
        Job job = new Job(seed);
        for (GoodsCost line : job.quote().lines()) {
            List<BookItem> fit = job.items.stream()
                    .filter(item -> fits(item, line.line(), job.unit))
                    .toList();
            BookItem won = line.entry().orElseThrow();
            assertThat(fit).contains(won);
            assertThat(fit).allSatisfy(item -> assertThat(said(item)).isLessThanOrEqualTo(said(won)));
        }
    }

    private static boolean fits(BookItem item, PrintedLine line, LengthUnit unit) {
        Match match = item.match();
        Optional<PrintedLine.Made> made = line.made();
        return item.item().equals(line.item())
                && match.metal()
                        .map(metal ->
                                made.filter(of -> of.metal().equals(metal)).isPresent())
                        .orElse(true)
                && match.profile()
                        .map(profile -> made.filter(of -> of.profile().equals(Optional.of(profile)))
                                .isPresent())
                        .orElse(true)
                && match.width()
                        .map(width -> made.filter(of -> of.width() == unit.round(width))
                                .isPresent())
                        .orElse(true)
                && match.thickness()
                        .map(width -> made.filter(of -> of.thickness() == unit.round(width))
                                .isPresent())
                        .orElse(true);
    }

    private static long said(BookItem item) {
        Match match = item.match();
        return List.of(match.metal(), match.thickness(), match.width(), match.profile()).stream()
                .filter(Optional::isPresent)
                .count();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theOrderOfTheBookChangesNothing(long seed) {
        Job job = new Job(seed);
        Quote before = job.quote();
        Collections.shuffle(job.items, new Random(seed));
        assertThat(job.quote()).isEqualTo(before);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void twiceAsMuchCostsTwiceAsMuchBeforePacksAndMinimums(long seed) {
        Job job = new Job(seed);
        Quote once = job.quote();
        job.lines.replaceAll(PricingLawsTest::doubled);
        Quote twice = job.quote();
        for (int i = 0; i < once.lines().size(); i++) {
            Cost one = once.lines().get(i).cost().orElseThrow();
            Cost two = twice.lines().get(i).cost().orElseThrow();
            if (one.packs().isEmpty()) {
                assertThat(two.quantity().over().multiply(one.quantity().under()))
                        .isEqualByComparingTo(one.quantity()
                                .over()
                                .multiply(BigDecimal.valueOf(2))
                                .multiply(two.quantity().under()));
                assertThat(two.price()).isEqualTo(one.price());
            } else {
                assertThat(two.packs().orElseThrow())
                        .isBetween(
                                one.packs().orElseThrow(),
                                one.packs().orElseThrow().multiply(BigDecimal.valueOf(2)));
            }
        }
    }

    private static PrintedLine doubled(PrintedLine line) {
        BigDecimal two = BigDecimal.valueOf(2);
        return new PrintedLine(
                line.item(),
                line.made(),
                line.net().multiply(two),
                line.lap().multiply(two),
                line.ordered().multiply(two),
                line.unit(),
                line.mass().map(mass -> new PrintedLine.Mass(mass.number().multiply(two), mass.unit())));
    }
}
