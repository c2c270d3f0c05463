package org.thalweg.api;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.json.PostedReader;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Faults;
import org.thalweg.api.problem.NoAnswer;
import org.thalweg.api.problem.Problem;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.FindingAnswer;
import org.thalweg.api.wire.LayoutRequest;
import org.thalweg.api.wire.RepricingJob;
import org.thalweg.api.wire.SavedTakeoff;
import org.thalweg.api.wire.UnitsForm;
import org.thalweg.finding.Origin;
import org.thalweg.pricing.PriceBook;
import org.thalweg.pricing.Pricing;
import org.thalweg.pricing.PrintedTakeoff;
import org.thalweg.pricing.Quote;
import org.thalweg.units.Units;

/** Reads and prices any job there is, as a request for a quote is read, with every fault and its place in the job's line. */
final class JobReader {

    private static final Origin TAKEOFF = Origin.REQUEST.at("takeoff");
    private static final Origin LAYOUT = Origin.REQUEST.at("layout");
    private static final Origin WAS = Origin.REQUEST.at("was");

    private final PostedReader reader;
    private final Engine engine;
    private final PriceBook book;

    JobReader(PostedReader reader, Engine engine, PriceBook book) {
        this.reader = reader;
        this.engine = engine;
        this.book = book;
    }

    /**
     * A job with its total.
     *
     * @param job   the caller's name for it
     * @param total what it comes to
     * @param was   what it came to before, with the currency's decimals
     */
    record Priced(String job, BigDecimal total, Optional<BigDecimal> was) {}

    /**
     * Prices the job that a line holds.
     *
     * @throws NoAnswer when it can't be read or has no total
     */
    Priced price(byte[] line) {
        RepricingJob asked = (RepricingJob) reader.bind(line, RepricingJob.class);
        SavedTakeoff takeoff = asked.takeoff();
        LayoutRequest layout = asked.layout();
        if (takeoff != null && layout == null) {
            return Refusals.toldIn(takeoff.units().units(), () -> saved(asked, takeoff));
        }
        if (layout != null && takeoff == null) {
            return laidOut(asked, layout);
        }
        throw NoAnswer.of(
                Problem.INVALID,
                Fault.of(ReadingCode.EITHER_OR, "#", "Give either \"takeoff\" or \"layout\", one of them."));
    }

    private Priced saved(RepricingJob asked, SavedTakeoff takeoff) {
        TapeReader faults = new TapeReader(takeoff.units().length());
        Optional<BigDecimal> was = was(asked.was(), faults);
        PrintedTakeoff printed = PrintedTakeoffs.read(takeoff, TAKEOFF, engine, faults);
        faults.done();
        return new Priced(asked.job(), total(printed, takeoff.units(), TAKEOFF), was);
    }

    private Priced laidOut(RepricingJob asked, LayoutRequest layout) {
        TapeReader faults = new TapeReader(layout.units().length());
        Optional<BigDecimal> was = was(asked.was(), faults);
        faults.done();
        Units units = layout.units().units();
        PrintedTakeoff printed = Refusals.toldIn(units, LAYOUT, () -> QuoteReader.takeOff(layout));
        return Refusals.toldIn(units, () -> new Priced(asked.job(), total(printed, layout.units(), LAYOUT), was));
    }

    private Optional<BigDecimal> was(RepricingJob.@Nullable MoneyForm given, TapeReader faults) {
        if (given == null) {
            return Optional.empty();
        }
        Currency currency = book.currency();
        if (!given.currency().equals(currency.getCurrencyCode())) {
            faults.note(() -> Fault.of(
                    ReadingCode.OTHER_CURRENCY,
                    WAS.at("currency").pointer(),
                    "%s is not the currency of the price book, %s, and no change can be told. Leave \"was\" out, or give it in %s."
                            .formatted(
                                    Echo.of(given.currency()),
                                    currency.getCurrencyCode(),
                                    currency.getCurrencyCode())));
        }
        BigDecimal amount =
                new DecimalReader(faults).read(given.amount(), WAS.at("amount"), Limits.WAS, book.decimals());
        return Optional.of(amount.setScale(book.decimals()));
    }

    private BigDecimal total(PrintedTakeoff takeoff, UnitsForm units, Origin at) {
        Quote quote = Pricing.price(book, takeoff);
        return quote.total().orElseThrow(() -> NoAnswer.of(Problem.NOT_PRICED, unpriced(quote, units, at)));
    }

    /** Every line of the order and all labour without a price, in the order of the quote's findings. */
    private static Faults unpriced(Quote quote, UnitsForm units, Origin at) {
        List<Origin> places = new ArrayList<>();
        for (int i = 0; i < quote.lines().size(); i++) {
            if (quote.lines().get(i).cost().isEmpty()) {
                // A layout has no lines yet that could be pointed at.
                places.add(at.equals(TAKEOFF) ? at.at("orderLines").at(i) : at);
            }
        }
        quote.labour().stream().filter(work -> work.cost().isEmpty()).forEach(work -> places.add(at));
        List<FindingAnswer> findings = FindingWriter.findings(quote.findings(), units.units());
        Faults faults = Faults.none();
        for (int i = 0; i < findings.size(); i++) {
            FindingAnswer finding = findings.get(i);
            String pointer = places.get(i).pointer();
            faults.add(() -> new Fault(finding.code(), pointer, finding.message(), Optional.empty(), Optional.empty()));
        }
        return faults;
    }
}
