package org.thalweg.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.stock.StockBar;
import org.thalweg.stock.Turning;
import org.thalweg.units.Length;

/**
 * What goods of sheet metal are cut from, and how.
 *
 * @param offers       what there is, in the order the caller likes it
 * @param kerf         what a cut takes, grid steps; 0 or more
 * @param keepable     the shortest off-cut that goes back to the rack, grid steps; 1 or more
 * @param milliseconds about how long all plans together may be thought about; work is counted, no clock is asked
 * @param mark         the finest mark of a shop's tape: widths of sheet that are nearest to the same mark are one width
 * @param coil         the coil panels come from, where they come out of one run
 */
public record SheetStock(
        List<Offer> offers, long kerf, long keepable, int milliseconds, Length mark, Optional<CoilOffer> coil) {

    public SheetStock {
        offers = List.copyOf(offers);
    }

    /**
     * One sort of bar: sheet as long as the bar and slit to the width of what is cut from it.
     *
     * @param bar   length, cost and count
     * @param rack  whether it lies on the rack and is not bought
     * @param item  the only item that is cut from it; nothing where all are
     * @param width the only width that is cut from it; nothing where all are
     */
    public record Offer(StockBar bar, boolean rack, Optional<OrderItem> item, Optional<Length> width) {

        boolean serves(OrderItem wanted, Optional<Length> wide, Length mark) {
            boolean fits = width.isEmpty()
                    || wide.isPresent()
                            && marked(width.get(), mark)
                                    .equals(wide.map(w -> marked(w, mark)).get());
            return fits && (item.isEmpty() || item.get() == wanted);
        }
    }

    /**
     * A coil that panels are formed from in one run.
     *
     * @param name      the caller's name for it
     * @param turning   whether panels may be turned end for end
     * @param keepOrder whether they come in the order they are laid, and not in the one that takes the least coil
     */
    public record CoilOffer(String name, Turning turning, boolean keepOrder) {}

    /** The width a shop cuts for this one. */
    static Length marked(Length width, Length mark) {
        return Length.metres(Math.rint(width.metres() / mark.metres()) * mark.metres());
    }

    /** Whether goods of this item may be cut from any of it. */
    public boolean mayServe(OrderItem item) {
        return (item == OrderItem.VALLEY_PAN || item == OrderItem.TRIM || item == OrderItem.CLEAT)
                && offers.stream().anyMatch(offer -> offer.item().orElse(item) == item);
    }

    /** What these goods may be cut from, in the caller's order. */
    List<Offer> offersFor(OrderItem item, Optional<Length> width) {
        List<Offer> serving = new ArrayList<>(offers.size());
        for (Offer offer : offers) {
            if (offer.serves(item, width, mark)) {
                serving.add(offer);
            }
        }
        return serving;
    }
}
