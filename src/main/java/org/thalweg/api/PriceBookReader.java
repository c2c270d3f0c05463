package org.thalweg.api;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.problem.Nearest;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.PriceBookForm;
import org.thalweg.api.wire.PriceBookForm.BookItemForm;
import org.thalweg.api.wire.PriceBookForm.BreakForm;
import org.thalweg.api.wire.PriceBookForm.LabourForm;
import org.thalweg.api.wire.PriceBookForm.MarkupForm;
import org.thalweg.api.wire.PriceBookForm.MarkupOn;
import org.thalweg.api.wire.PriceBookForm.TaxForm;
import org.thalweg.api.wire.PriceBookForm.TaxOn;
import org.thalweg.api.wire.PriceBookForm.WasteForm;
import org.thalweg.api.wire.WireLength;
import org.thalweg.finding.Origin;
import org.thalweg.pricing.BookItem;
import org.thalweg.pricing.BookItem.Match;
import org.thalweg.pricing.BookItem.PriceBreak;
import org.thalweg.pricing.BookItems;
import org.thalweg.pricing.BookUnit;
import org.thalweg.pricing.Gtin;
import org.thalweg.pricing.LabourItem;
import org.thalweg.pricing.PriceBook;
import org.thalweg.pricing.Surcharge;
import org.thalweg.pricing.Surcharge.Base;
import org.thalweg.pricing.WastePolicy;
import org.thalweg.reference.Metal;
import org.thalweg.reference.Metals;
import org.thalweg.takeoff.OrderItem;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/** Reads a price book: digits kept, units in, every fault with its pointer. */
final class PriceBookReader {

    private static final List<String> ITEMS =
            Arrays.stream(OrderItem.values()).map(OrderItem::key).toList();
    private static final List<String> UNITS =
            Arrays.stream(BookUnit.values()).map(BookUnit::code).toList();
    private static final List<String> METALS =
            Metals.all().stream().map(Metal::key).toList();
    private static final Map<String, Currency> CURRENCIES = currencies();

    private final PriceBookForm form;
    private final Origin book;
    private final TapeReader faults;
    private final DecimalReader decimals;
    private final WastePolicy waste;
    private boolean unitsMissed;

    private PriceBookReader(PriceBookForm form, Origin book) {
        this.form = form;
        this.book = book;
        // Without units there are no lengths to read; that is noted where there are.
        this.faults = new TapeReader(
                form.units() == null ? LengthUnit.METRE : form.units().length());
        this.decimals = new DecimalReader(faults);
        this.waste = waste(form.waste(), book.at("waste"), WastePolicy.AS_ORDERED);
    }

    /**
     * A price book as it was read.
     *
     * @param faults what is wrong with it, to be told with whatever else is wrong
     * @param book   nothing where anything is
     */
    record Read(TapeReader faults, Optional<PriceBook> book) {}

    /** Reads the book that stands at {@code book}. Nothing is refused until the faults are {@link TapeReader#done}. */
    static Read read(PriceBookForm form, Origin book) {
        return new PriceBookReader(form, book).read();
    }

    private static Map<String, Currency> currencies() {
        Map<String, Currency> known = new HashMap<>();
        for (Currency currency : Currency.getAvailableCurrencies()) {
            if (currency.getDefaultFractionDigits() >= 0) {
                known.put(currency.getCurrencyCode(), currency);
            }
        }
        return known;
    }

    private Read read() {
        Currency currency = CURRENCIES.get(form.currency());
        if (currency == null) {
            unknown(
                    form.currency(),
                    CURRENCIES.keySet().stream().sorted().toList(),
                    book.at("currency"),
                    "a currency of ISO 4217");
        }
        List<BookItem> read = items();
        List<LabourItem> labour = labour();
        List<Surcharge> markups = markups();
        List<Surcharge> taxes = taxes();
        BookItems items = BookItems.of(read);
        items.clashes()
                .forEach(clash -> faults.note(() -> Fault.of(
                        ReadingCode.DUPLICATE_ENTRY,
                        clash.again().at().pointer(),
                        "This says the same as %s, so that nobody knows whose price is meant. Leave one out."
                                .formatted(clash.first().at().pointer()))));
        return new Read(
                faults,
                currency == null || faults.faultCount() > 0
                        ? Optional.empty()
                        : Optional.of(new PriceBook(currency, waste, items, labour, markups, taxes, book)));
    }

    // Goods.

    /** Those with nothing wrong in them, so that what two of them say can be compared. */
    private List<BookItem> items() {
        Origin at = book.at("items");
        List<BookItem> items = new ArrayList<>(form.items().size());
        for (int i = 0; i < form.items().size(); i++) {
            item(form.items().get(i), at.at(i)).ifPresent(items::add);
        }
        return items;
    }

    private Optional<BookItem> item(BookItemForm given, Origin at) {
        int before = faults.faultCount();
        if (!ITEMS.contains(given.item())) {
            unknown(given.item(), ITEMS, at.at("item"), "an item of an order");
        }
        Match match = match(given, at);
        Optional<BookUnit> unit = unit(given.unit(), at.at("unit"));
        List<PriceBreak> breaks = breaks(given, at);
        Optional<BigDecimal> pack = decimals.given(given.pack(), at.at("pack"), Limits.PACK);
        Optional<BigDecimal> minimum = decimals.given(given.minimum(), at.at("minimum"), Limits.PRICE);
        WastePolicy policy = waste(given.waste(), at.at("waste"), waste);
        gtin(given.gtin(), at.at("gtin"));
        if (unit.isEmpty() || unitsMissed || faults.faultCount() > before) {
            return Optional.empty();
        }
        return Optional.of(new BookItem(
                given.item(),
                match,
                unit.get(),
                breaks,
                pack,
                minimum,
                policy,
                Optional.ofNullable(given.gtin()),
                Optional.ofNullable(given.code()),
                at));
    }

    private void gtin(@Nullable String given, Origin at) {
        if (given != null && !Gtin.checks(given)) {
            faults.note(() -> Fault.of(
                    ReadingCode.BAD_GTIN,
                    at.pointer(),
                    "%s is no trade item number: 8, 12, 13 or 14 digits, the last of which checks the others."
                            .formatted(Echo.of(given))));
        }
    }

    private Match match(BookItemForm given, Origin at) {
        if (given.metal() != null && !METALS.contains(given.metal())) {
            unknown(given.metal(), METALS, at.at("metal"), "a metal known here");
        }
        return new Match(
                Optional.ofNullable(given.metal()),
                length(given.thickness(), at.at("thickness"), Limits.BOOK_THICKNESS),
                length(given.width(), at.at("width"), Limits.BOOK_WIDTH),
                Optional.ofNullable(given.profile()));
    }

    private Optional<Length> length(@Nullable WireLength given, Origin at, Limit limit) {
        if (given != null && form.units() == null) {
            noteNoUnits(at);
            return Optional.empty();
        }
        return faults.given(given, at, limit);
    }

    /** Once for all lengths. */
    private void noteNoUnits(Origin length) {
        if (!unitsMissed) {
            unitsMissed = true;
            faults.note(() -> Fault.of(
                    ReadingCode.MISSING_MEMBER,
                    book.pointer(),
                    "\"units\" is missing here, and %s is a length. Say in which unit.".formatted(length.pointer())));
        }
    }

    private List<PriceBreak> breaks(BookItemForm given, Origin at) {
        if ((given.price() == null) == (given.breaks() == null)) {
            faults.note(() ->
                    Fault.of(ReadingCode.EITHER_OR, at.pointer(), "Give either \"price\" or \"breaks\", one of them."));
            return List.of();
        }
        if (given.price() != null) {
            return List.of(new PriceBreak(BigDecimal.ZERO, decimals.read(given.price(), at.at("price"), Limits.PRICE)));
        }
        return joined(given.breaks() == null ? List.of() : given.breaks(), at.at("breaks"));
    }

    private List<PriceBreak> joined(List<BreakForm> given, Origin at) {
        int before = faults.faultCount();
        List<PriceBreak> breaks = new ArrayList<>(given.size());
        List<Optional<BigDecimal>> ends = new ArrayList<>(given.size());
        for (BreakForm each : given) {
            Origin here = at.at(breaks.size());
            BigDecimal from = decimals.read(each.from(), here.at("from"), Limits.BREAK_FROM);
            ends.add(decimals.given(each.below(), here.at("below"), Limits.BREAK_FROM));
            breaks.add(new PriceBreak(from, decimals.read(each.price(), here.at("price"), Limits.PRICE)));
        }
        if (faults.faultCount() == before) {
            join(breaks, ends, at);
        }
        return breaks;
    }

    private void join(List<PriceBreak> breaks, List<Optional<BigDecimal>> ends, Origin at) {
        Optional<BigDecimal> end = Optional.of(BigDecimal.ZERO);
        for (int i = 0; i < breaks.size(); i++) {
            BigDecimal from = breaks.get(i).from();
            if (end.isPresent() && end.get().compareTo(from) != 0) {
                apart(at.at(i), from, "it must begin from %s, where the one before ends", end.get());
            } else if (i > 0 && from.compareTo(breaks.get(i - 1).from()) <= 0) {
                apart(
                        at.at(i),
                        from,
                        "the one before begins from %s. Write them from 0 up",
                        breaks.get(i - 1).from());
            }
            end = ends.get(i);
        }
        end.ifPresent(last -> apart(
                at.at(breaks.size() - 1),
                breaks.get(breaks.size() - 1).from(),
                "it ends at %s and no other begins there. Leave \"below\" out of the last one",
                last));
    }

    private void apart(Origin at, BigDecimal from, String why, BigDecimal other) {
        faults.note(() -> Fault.of(
                ReadingCode.BREAKS_DO_NOT_JOIN,
                at.pointer(),
                "This break begins from %s; %s.".formatted(from.toPlainString(), why.formatted(other.toPlainString())),
                Figure.of(from.doubleValue()),
                Figure.of(other.doubleValue())));
    }

    private WastePolicy waste(@Nullable WasteForm given, Origin at, WastePolicy absent) {
        if (given == null) {
            return absent;
        }
        if (given.basis() == WastePolicy.Basis.ORDERED) {
            if (given.percent() != null) {
                faults.note(() -> Fault.of(
                        ReadingCode.UNKNOWN_MEMBER,
                        at.at("percent").pointer(),
                        "What is ordered has its own waste; a percentage is only read beside \"basis\": \"net\"."));
            }
            return WastePolicy.AS_ORDERED;
        }
        return new WastePolicy(
                given.basis(),
                given.percent() == null ? BigDecimal.ZERO : decimals.percent(given.percent(), at.at("percent")));
    }

    // Labour.

    private List<LabourItem> labour() {
        List<LabourForm> given = form.labour() == null ? List.of() : form.labour();
        Origin at = book.at("labour");
        unique(given, LabourForm::id, at);
        List<LabourItem> labour = new ArrayList<>(given.size());
        for (int i = 0; i < given.size(); i++) {
            LabourForm each = given.get(i);
            Origin here = at.at(i);
            Optional<BookUnit> unit = unit(each.unit(), here.at("unit"));
            labour.add(new LabourItem(
                    each.id(),
                    each.per(),
                    Optional.ofNullable(each.of()),
                    unit.orElse(BookUnit.ONE),
                    decimals.read(each.price(), here.at("price"), Limits.PRICE),
                    decimals.given(each.minimum(), here.at("minimum"), Limits.PRICE),
                    here));
        }
        return labour;
    }

    // Mark-ups and taxes.

    private List<Surcharge> markups() {
        List<MarkupForm> given = form.markups() == null ? List.of() : form.markups();
        Origin at = book.at("markups");
        unique(given, MarkupForm::id, at);
        List<Surcharge> markups = new ArrayList<>(given.size());
        for (MarkupForm each : given) {
            BigDecimal percent =
                    decimals.percent(each.percent(), at.at(markups.size()).at("percent"));
            markups.add(new Surcharge(each.id(), percent, base(each.on())));
        }
        return markups;
    }

    private static Base base(@Nullable MarkupOn on) {
        return on == null
                ? Base.RUNNING
                : switch (on) {
                    case GOODS -> Base.GOODS;
                    case LABOUR -> Base.LABOUR;
                    case SUBTOTAL -> Base.SUBTOTAL;
                    case RUNNING -> Base.RUNNING;
                };
    }

    private List<Surcharge> taxes() {
        List<TaxForm> given = form.taxes() == null ? List.of() : form.taxes();
        Origin at = book.at("taxes");
        unique(given, TaxForm::id, at);
        List<Surcharge> taxes = new ArrayList<>(given.size());
        for (TaxForm each : given) {
            BigDecimal percent =
                    decimals.percent(each.percent(), at.at(taxes.size()).at("percent"));
            taxes.add(new Surcharge(each.id(), percent, base(each.on())));
        }
        return taxes;
    }

    private static Base base(@Nullable TaxOn on) {
        return on == null
                ? Base.TOTAL
                : switch (on) {
                    case GOODS -> Base.GOODS;
                    case LABOUR -> Base.LABOUR;
                    case SUBTOTAL -> Base.SUBTOTAL;
                    case TOTAL -> Base.TOTAL;
                };
    }

    // What all of them have.

    private <T> void unique(List<T> entries, Function<T, String> id, Origin at) {
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < entries.size(); i++) {
            Integer first = seen.putIfAbsent(id.apply(entries.get(i)), i);
            if (first != null) {
                Origin here = at.at(i);
                String other = at.at(first).pointer();
                faults.note(() -> Fault.of(
                        ReadingCode.DUPLICATE_ENTRY,
                        here.at("id").pointer(),
                        "%s has this id too. Give each its own.".formatted(other)));
            }
        }
    }

    private Optional<BookUnit> unit(String code, Origin at) {
        Optional<BookUnit> unit = BookUnit.of(code);
        if (unit.isEmpty()) {
            badUnit(code, at, faults);
        }
        return unit;
    }

    /** Notes that nothing is priced or printed by such a unit. */
    static void badUnit(String code, Origin at, TapeReader faults) {
        faults.note(() -> Fault.of(
                ReadingCode.BAD_UNIT,
                at.pointer(),
                "%s is no unit known here.%s Known, of UN/CEFACT Recommendation 20: %s."
                        .formatted(Echo.of(code), Nearest.hint(code, UNITS), String.join(", ", UNITS))));
    }

    private void unknown(String given, List<String> known, Origin at, String what) {
        faults.note(() -> Fault.of(
                ReadingCode.UNKNOWN_VALUE,
                at.pointer(),
                "%s is not %s.%s%s"
                        .formatted(
                                Echo.of(given),
                                what,
                                Nearest.hint(given, known),
                                known.size() > Limits.ORDER_ITEMS ? "" : " Known: " + String.join(", ", known) + ".")));
    }
}
