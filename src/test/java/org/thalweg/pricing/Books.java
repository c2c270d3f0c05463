package org.thalweg.pricing;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Origin;
import org.thalweg.pricing.BookItem.Match;
import org.thalweg.pricing.BookItem.PriceBreak;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/** Price books and takeoffs for tests, short to write. */
final class Books {

    static final Origin BOOK = Origin.REQUEST.at("priceBook");

    private Books() {}

    static BigDecimal d(String number) {
        return new BigDecimal(number);
    }

    static BookItem item(String item, BookUnit unit, String price) {
        return item(item, Match.ANY, unit, price);
    }

    static BookItem item(String item, Match match, BookUnit unit, String price) {
        return new BookItem(
                item,
                match,
                unit,
                List.of(new PriceBreak(BigDecimal.ZERO, d(price))),
                Optional.empty(),
                Optional.empty(),
                WastePolicy.AS_ORDERED,
                Optional.empty(),
                Optional.empty(),
                BOOK.at("items").at(0));
    }

    static BookItem packed(BookItem item, String pack) {
        return new BookItem(
                item.item(),
                item.match(),
                item.unit(),
                item.breaks(),
                Optional.of(d(pack)),
                item.minimum(),
                item.waste(),
                item.gtin(),
                item.code(),
                item.at());
    }

    static BookItem atLeast(BookItem item, String minimum) {
        return new BookItem(
                item.item(),
                item.match(),
                item.unit(),
                item.breaks(),
                item.pack(),
                Optional.of(d(minimum)),
                item.waste(),
                item.gtin(),
                item.code(),
                item.at());
    }

    static BookItem wasting(BookItem item, String percent) {
        return new BookItem(
                item.item(),
                item.match(),
                item.unit(),
                item.breaks(),
                item.pack(),
                item.minimum(),
                new WastePolicy(WastePolicy.Basis.NET, d(percent)),
                item.gtin(),
                item.code(),
                item.at());
    }

    /** {@code more} are a quantity and the price from there on, and so on. */
    static BookItem breaking(BookItem item, PriceBreak... more) {
        return new BookItem(
                item.item(),
                item.match(),
                item.unit(),
                List.of(more),
                item.pack(),
                item.minimum(),
                item.waste(),
                item.gtin(),
                item.code(),
                item.at());
    }

    static Match metal(String metal) {
        return new Match(Optional.of(metal), Optional.empty(), Optional.empty(), Optional.empty());
    }

    static Match width(Length width) {
        return new Match(Optional.empty(), Optional.empty(), Optional.of(width), Optional.empty());
    }

    static LabourItem labour(String per, BookUnit unit, String price) {
        return new LabourItem(
                per,
                per,
                Optional.empty(),
                unit,
                d(price),
                Optional.empty(),
                BOOK.at("labour").at(0));
    }

    static PriceBook book(String currency, BookItem... items) {
        return book(currency, List.of(items), List.of(), List.of(), List.of());
    }

    static PriceBook book(
            String currency,
            List<BookItem> items,
            List<LabourItem> labour,
            List<Surcharge> markups,
            List<Surcharge> taxes) {
        return new PriceBook(
                Currency.getInstance(currency),
                WastePolicy.AS_ORDERED,
                BookItems.of(items),
                labour,
                markups,
                taxes,
                BOOK);
    }

    static PrintedLine line(String item, String ordered, BookUnit unit) {
        return new PrintedLine(item, Optional.empty(), d(ordered), BigDecimal.ZERO, d(ordered), unit, Optional.empty());
    }

    /** Panels of galvanized steel, 0.0276 in thick and 21 in wide. */
    static PrintedLine panels(String net, String lap, String ordered, String pounds) {
        return new PrintedLine(
                "panel",
                Optional.of(new PrintedLine.Made("galvanized-steel", 0.0276, 21, Optional.empty())),
                d(net),
                d(lap),
                d(ordered),
                BookUnit.INCH,
                Optional.of(new PrintedLine.Mass(d(pounds), BookUnit.POUND)));
    }

    static PrintedTakeoff takeoff(PrintedLine... lines) {
        return new PrintedTakeoff(LengthUnit.INCH, List.of(lines), List.of());
    }

    static PrintedTotal total(String item, String quantity, BookUnit unit) {
        return new PrintedTotal(item, Optional.empty(), d(quantity), Optional.of(unit));
    }
}
