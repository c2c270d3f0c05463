package org.thalweg.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Place;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.finding.Source;
import org.thalweg.pricing.Quote.Cost;
import org.thalweg.pricing.Quote.GoodsCost;
import org.thalweg.pricing.Quote.LabourCost;
import org.thalweg.pricing.Quote.Share;
import org.thalweg.units.Count;

/** Turns the lines of a takeoff into money by a price book. */
public final class Pricing {

    /** A sum above it is somebody's mistake: a trillion of whatever is paid in. */
    public static final long MOST = 1_000_000_000_000L;

    private static final BigDecimal LIMIT = BigDecimal.valueOf(MOST);
    private static final BigDecimal NONE = BigDecimal.ZERO;

    private final PriceBook book;
    private final PrintedTakeoff takeoff;
    private final int decimals;
    private final List<Finding> findings = new ArrayList<>(0);

    private Pricing(PriceBook book, PrintedTakeoff takeoff) {
        this.book = book;
        this.takeoff = takeoff;
        this.decimals = book.decimals();
    }

    /**
     * What {@code takeoff} costs by {@code book}.
     *
     * @throws Refused when a sum is above {@link #MOST}
     */
    public static Quote price(PriceBook book, PrintedTakeoff takeoff) {
        return new Pricing(book, takeoff).quote();
    }

    private Quote quote() {
        List<GoodsCost> lines = new ArrayList<>(takeoff.lines().size());
        BigDecimal goods = rounded(NONE);
        for (PrintedLine line : takeoff.lines()) {
            GoodsCost cost = goods(line, lines.size());
            lines.add(cost);
            goods = plus(goods, cost.cost());
        }
        List<LabourCost> labour = new ArrayList<>(book.labour().size());
        BigDecimal work = rounded(NONE);
        for (LabourItem item : book.labour()) {
            LabourCost cost = labour(item);
            labour.add(cost);
            work = plus(work, cost.cost());
        }
        return summed(lines, labour, goods, work);
    }

    private Quote summed(List<GoodsCost> lines, List<LabourCost> labour, BigDecimal goods, BigDecimal work) {
        BigDecimal subtotal = goods.add(work);
        BigDecimal running = subtotal;
        List<Share> markups = new ArrayList<>(book.markups().size());
        for (Surcharge markup : book.markups()) {
            Share share = share(markup, goods, work, running);
            markups.add(share);
            running = running.add(share.amount());
        }
        if (!findings.isEmpty()) {
            limited(running);
            return new Quote(
                    lines,
                    labour,
                    goods,
                    work,
                    subtotal,
                    markups,
                    Optional.empty(),
                    List.of(),
                    Optional.empty(),
                    findings);
        }
        BigDecimal total = running;
        List<Share> taxes = new ArrayList<>(book.taxes().size());
        for (Surcharge tax : book.taxes()) {
            Share share = share(tax, goods, work, running);
            taxes.add(share);
            total = total.add(share.amount());
        }
        limited(total);
        return new Quote(
                lines,
                labour,
                goods,
                work,
                subtotal,
                markups,
                Optional.of(running),
                taxes,
                Optional.of(total),
                findings);
    }

    // Goods.

    private GoodsCost goods(PrintedLine line, int index) {
        BookItem item = book.items().find(line, takeoff.length());
        if (item == null) {
            note(FindingCode.NO_PRICE, place(line, book.at().at("items")), NO_ENTRY.formatted(index + 1));
            return new GoodsCost(line, Optional.empty(), Optional.empty());
        }
        Ratio quantity = wanted(line, item);
        if (quantity == null) {
            note(
                    FindingCode.PRICE_PER_OTHER_MEASURE,
                    place(line, item.at().at("unit")),
                    OTHER_MEASURE.formatted(
                            "line %d of the order".formatted(index + 1),
                            line.unit().code(),
                            item.unit().code()));
            return new GoodsCost(line, Optional.of(item), Optional.empty());
        }
        Optional<BigDecimal> packs = item.pack().map(quantity::packsOf);
        Ratio paid =
                packs.isPresent() ? Ratio.of(packs.get().multiply(item.pack().get())) : quantity;
        return new GoodsCost(line, Optional.of(item), Optional.of(cost(paid, packs, item.price(paid), item.minimum())));
    }

    /** What is paid for, in the unit of the price; null where that measures something else. */
    private static @Nullable Ratio wanted(PrintedLine line, BookItem item) {
        if (line.unit().kind() == item.unit().kind()) {
            return item.waste().of(line).converted(line.unit(), item.unit());
        }
        if (item.unit().kind() == BookUnit.Kind.MASS && line.mass().isPresent()) {
            PrintedLine.Mass mass = line.mass().get();
            return item.waste().massOf(line, mass.number()).converted(mass.unit(), item.unit());
        }
        return null;
    }

    private static Place place(PrintedLine line, Origin at) {
        return new Place(Place.Kind.ORDER_LINE, line.item(), at);
    }

    // Labour.

    private LabourCost labour(LabourItem item) {
        PrintedTotal total = total(item);
        Place place = new Place(Place.Kind.LABOUR, item.id(), item.at());
        if (total == null) {
            note(FindingCode.NO_SUCH_TOTAL, place, NO_TOTAL);
            return new LabourCost(item, Optional.empty(), Optional.empty());
        }
        BookUnit unit = total.unit().orElse(null);
        if (unit == null || unit.kind() != item.unit().kind()) {
            note(
                    FindingCode.PRICE_PER_OTHER_MEASURE,
                    place,
                    OTHER_MEASURE.formatted(
                            "its total",
                            unit == null ? "another unit" : unit.code(),
                            item.unit().code()));
            return new LabourCost(item, Optional.of(total), Optional.empty());
        }
        Ratio quantity = Ratio.of(total.quantity()).converted(unit, item.unit());
        return new LabourCost(
                item, Optional.of(total), Optional.of(cost(quantity, Optional.empty(), item.price(), item.minimum())));
    }

    private @Nullable PrintedTotal total(LabourItem item) {
        for (PrintedTotal total : takeoff.totals()) {
            if (total.item().equals(item.per()) && total.of().equals(item.of())) {
                return total;
            }
        }
        return null;
    }

    // Money.

    /** The minimum holds where there is anything to pay for. */
    private Cost cost(Ratio quantity, Optional<BigDecimal> packs, BigDecimal price, Optional<BigDecimal> minimum) {
        BigDecimal amount = quantity.times(price).rounded(decimals);
        if (minimum.isPresent() && quantity.over().signum() > 0) {
            BigDecimal least = rounded(minimum.get());
            if (amount.compareTo(least) < 0) {
                return new Cost(quantity, packs, price, least, true);
            }
        }
        return new Cost(quantity, packs, price, amount, false);
    }

    private Share share(Surcharge of, BigDecimal goods, BigDecimal work, BigDecimal running) {
        BigDecimal base =
                switch (of.base()) {
                    case GOODS -> goods;
                    case LABOUR -> work;
                    case SUBTOTAL -> goods.add(work);
                    case RUNNING, TOTAL -> running;
                };
        return new Share(of, base, rounded(base.multiply(of.percent()).movePointLeft(2)));
    }

    private BigDecimal rounded(BigDecimal amount) {
        return amount.setScale(decimals, RoundingMode.HALF_UP);
    }

    private static BigDecimal plus(BigDecimal sum, Optional<Cost> cost) {
        return cost.isPresent() ? sum.add(cost.get().amount()) : sum;
    }

    private void limited(BigDecimal sum) {
        if (sum.compareTo(LIMIT) > 0) {
            long actual = sum.min(BigDecimal.valueOf(Long.MAX_VALUE)).longValue();
            throw new Refused(Refusal.of(
                    RefusalCode.TOTAL_TOO_LARGE,
                    book.at(),
                    "The quote comes to {actual} "
                            + book.currency().getCurrencyCode()
                            + " or more; at most {limit} is told. Look at the units and the prices.",
                    new Count(actual),
                    new Count(MOST)));
        }
    }

    // Findings.

    private static final String NO_ENTRY =
            "No entry of the price book fits line %d of the order, {place}, so there is no total. Add one, or mend what it"
                    + " must match.";

    private static final String OTHER_MEASURE =
            "{place} has no price: %s is in %s, and the price is per %s, which measures something else. Give a price per a unit"
                    + " that fits.";

    private static final String NO_TOTAL =
            "{place} has no price: the takeoff has no such total, so there is no total of the quote. Post the takeoff with its"
                    + " totals, or name one that it has.";

    private void note(FindingCode code, Place place, String message) {
        findings.add(Finding.of(code, place, message, Source.REQUEST));
    }
}
