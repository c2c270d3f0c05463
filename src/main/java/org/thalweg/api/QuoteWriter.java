package org.thalweg.api;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.thalweg.api.wire.PriceBookForm;
import org.thalweg.api.wire.PriceBookForm.MarkupForm;
import org.thalweg.api.wire.PriceBookForm.TaxForm;
import org.thalweg.api.wire.QuoteAnswer;
import org.thalweg.api.wire.QuoteAnswer.GoodsAnswer;
import org.thalweg.api.wire.QuoteAnswer.LabourAnswer;
import org.thalweg.api.wire.QuoteAnswer.MoneyAnswer;
import org.thalweg.api.wire.QuoteAnswer.QuoteUsed;
import org.thalweg.api.wire.QuoteAnswer.QuotedMade;
import org.thalweg.api.wire.QuoteAnswer.ShareAnswer;
import org.thalweg.api.wire.QuoteAnswer.WasteUsed;
import org.thalweg.api.wire.UnitsForm;
import org.thalweg.api.wire.Words;
import org.thalweg.finding.Origin;
import org.thalweg.pricing.BookItem;
import org.thalweg.pricing.BookUnit;
import org.thalweg.pricing.PriceBook;
import org.thalweg.pricing.PrintedLine;
import org.thalweg.pricing.PrintedTotal;
import org.thalweg.pricing.Quote;
import org.thalweg.pricing.Quote.Cost;
import org.thalweg.pricing.Quote.GoodsCost;
import org.thalweg.pricing.Quote.LabourCost;
import org.thalweg.pricing.Quote.Share;
import org.thalweg.pricing.WastePolicy;

/** Writes a quote. Money comes with all its decimals, as text, so that no reader makes a binary fraction of it. */
final class QuoteWriter {

    private static final String ROUNDING =
            "An amount is its exact quantity times its price, rounded once, half up, to the minor unit of the currency (ISO 4217)."
                    + " Sums are sums of amounts as printed; percentages are taken of sums as printed and rounded likewise.";

    private final UnitsForm units;
    private final Currency currency;

    QuoteWriter(UnitsForm units, Currency currency) {
        this.units = units;
        this.currency = currency;
    }

    QuoteAnswer answer(Quote quote, PriceBookForm form, PriceBook book, String engine, String digest) {
        List<GoodsAnswer> lines = new ArrayList<>(quote.lines().size());
        quote.lines().forEach(line -> lines.add(line(line)));
        List<LabourAnswer> labour = new ArrayList<>(quote.labour().size());
        quote.labour().forEach(work -> labour.add(labour(work)));
        return new QuoteAnswer(
                engine,
                digest,
                units,
                currency.getCurrencyCode(),
                used(form, book),
                lines,
                labour,
                money(quote.goods()),
                money(quote.work()),
                money(quote.subtotal()),
                shares(quote.markups()),
                quote.net().map(this::money),
                shares(quote.taxes()),
                quote.total().map(this::money),
                quote.complete(),
                FindingWriter.findings(quote.findings(), units.units()),
                Cautions.ALL);
    }

    private GoodsAnswer line(GoodsCost goods) {
        PrintedLine line = goods.line();
        Optional<BookItem> entry = goods.entry();
        Optional<Cost> cost = goods.cost();
        return new GoodsAnswer(
                line.item(),
                line.made().map(made -> new QuotedMade(made.metal(), made.thickness(), made.width(), made.profile())),
                line.ordered().doubleValue(),
                line.unit().code(),
                cost.map(QuoteWriter::quantity),
                cost.flatMap(Cost::packs).map(BigDecimal::doubleValue),
                entry.map(BookItem::unit).map(BookUnit::code),
                cost.map(Cost::price).map(this::money),
                cost.map(Cost::amount).map(this::money),
                cost.isPresent() && cost.get().minimum(),
                entry.map(BookItem::at).map(Origin::pointer),
                entry.flatMap(BookItem::gtin),
                entry.flatMap(BookItem::code));
    }

    private LabourAnswer labour(LabourCost work) {
        Optional<PrintedTotal> total = work.total();
        Optional<Cost> cost = work.cost();
        return new LabourAnswer(
                work.entry().id(),
                work.entry().per(),
                work.entry().of(),
                total.map(of -> of.quantity().doubleValue()),
                total.flatMap(PrintedTotal::unit).map(BookUnit::code),
                cost.map(QuoteWriter::quantity),
                work.entry().unit().code(),
                money(work.entry().price()),
                cost.map(Cost::amount).map(this::money),
                cost.isPresent() && cost.get().minimum(),
                work.entry().at().pointer());
    }

    private static double quantity(Cost cost) {
        return cost.quantity().rounded(Limits.DECIMALS).doubleValue();
    }

    private List<ShareAnswer> shares(List<Share> shares) {
        List<ShareAnswer> written = new ArrayList<>(shares.size());
        for (Share share : shares) {
            written.add(new ShareAnswer(
                    share.of().id(),
                    share.of().percent().toPlainString(),
                    Words.of(share.of().base()),
                    money(share.base()),
                    money(share.amount())));
        }
        return written;
    }

    private MoneyAnswer money(BigDecimal amount) {
        return new MoneyAnswer(amount.toPlainString(), currency.getCurrencyCode());
    }

    private static QuoteUsed used(PriceBookForm form, PriceBook book) {
        WastePolicy waste = book.waste();
        List<String> left = new ArrayList<>();
        UsedWriter.ifAbsent(form.waste(), "#/priceBook/waste", left);
        List<MarkupForm> markups = form.markups() == null ? List.of() : form.markups();
        for (int i = 0; i < markups.size(); i++) {
            UsedWriter.ifAbsent(markups.get(i).on(), "#/priceBook/markups/" + i + "/on", left);
        }
        List<TaxForm> taxes = form.taxes() == null ? List.of() : form.taxes();
        for (int i = 0; i < taxes.size(); i++) {
            UsedWriter.ifAbsent(taxes.get(i).on(), "#/priceBook/taxes/" + i + "/on", left);
        }
        return new QuoteUsed(new WasteUsed(waste.basis(), waste.percent().toPlainString()), ROUNDING, left);
    }
}
