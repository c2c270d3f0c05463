package org.thalweg.api;

import java.util.List;
import java.util.Optional;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.NoAnswer;
import org.thalweg.api.problem.Problem;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.LayoutRequest;
import org.thalweg.api.wire.OrderLineAnswer;
import org.thalweg.api.wire.QuoteRequest;
import org.thalweg.api.wire.SavedTakeoff;
import org.thalweg.api.wire.UnitsForm;
import org.thalweg.finding.Origin;
import org.thalweg.packet.Layouts;
import org.thalweg.packet.TakenOff;
import org.thalweg.pricing.PriceBook;
import org.thalweg.pricing.PrintedTakeoff;
import org.thalweg.units.Units;

/** Reads a request for a quote: the price book first, then the takeoff, saved or laid out for it. */
final class QuoteReader {

    private static final Origin BOOK = Origin.REQUEST.at("priceBook");
    private static final Origin TAKEOFF = Origin.REQUEST.at("takeoff");
    private static final Origin LAYOUT = Origin.REQUEST.at("layout");

    private final QuoteRequest request;
    private final Engine engine;

    QuoteReader(QuoteRequest request, Engine engine) {
        this.request = request;
        this.engine = engine;
    }

    /**
     * A quote that is asked for.
     *
     * @param book    the prices
     * @param takeoff what is priced
     */
    record Asked(PriceBook book, PrintedTakeoff takeoff) {}

    /**
     * The units of what is priced.
     *
     * @throws NoAnswer when that is nothing, or two things
     */
    UnitsForm units() {
        SavedTakeoff takeoff = request.takeoff();
        LayoutRequest layout = request.layout();
        if (takeoff != null && layout == null) {
            return takeoff.units();
        }
        if (layout != null && takeoff == null) {
            return layout.units();
        }
        throw NoAnswer.of(
                Problem.INVALID,
                Fault.of(ReadingCode.EITHER_OR, "#", "Give either \"takeoff\" or \"layout\", one of them."));
    }

    Asked read() {
        PriceBookReader.Read read = PriceBookReader.read(request.priceBook(), BOOK);
        SavedTakeoff saved = request.takeoff();
        Optional<PrintedTakeoff> printed = saved == null
                ? Optional.empty()
                : Optional.of(PrintedTakeoffs.read(saved, TAKEOFF, engine, read.faults()));
        read.faults().done();
        return new Asked(read.book().orElseThrow(), printed.orElseGet(this::laidOut));
    }

    /** The takeoff of the layout, as {@code /v1/takeoffs} prints it. */
    private PrintedTakeoff laidOut() {
        LayoutRequest layout = request.layout();
        if (layout == null) {
            throw new IllegalStateException("a request without a takeoff has a layout");
        }
        return Refusals.toldIn(layout.units().units(), LAYOUT, () -> takeOff(layout));
    }

    /** The takeoff of a layout that is the whole request. */
    static PrintedTakeoff takeOff(LayoutRequest request) {
        TakenOff job = Layouts.takeOff(LayoutReader.read(request));
        Units units = request.units().units();
        List<OrderLineAnswer> lines = new OrderWriter(units).lines(job.order());
        return PrintedTakeoffs.of(units.length(), lines, new TotalsWriter(units).totals(job, lines));
    }
}
