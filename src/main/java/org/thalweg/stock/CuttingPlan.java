package org.thalweg.stock;

import java.util.List;
import java.util.Optional;

/**
 * What is cut from which bar.
 *
 * @param bars       in the order of the stock, then longest pieces first; bars cut alike are counted
 * @param cost       of all bars used
 * @param lowerBound no plan that cuts every piece that is not too long costs less; equal to {@code cost} when the plan is proven
 * @param proof      what the lower bound rests on
 * @param certificate proves {@code lowerBound}, or with {@link Proof#SEARCH} as much of it as price lists can
 * @param priced     the kinds the certificate's prices stand for, in its order
 * @param unplaced   pieces that are on no bar, in the order of the request
 * @param late       whether the clock, and not the counted work, ended the thinking: then another run may differ
 */
public record CuttingPlan(
        List<CutBar> bars,
        long cost,
        long lowerBound,
        Proof proof,
        Certificate certificate,
        List<Kind> priced,
        List<Unplaced> unplaced,
        boolean late) {

    /** What a lower bound rests on. */
    public enum Proof {
        /** The certificate alone: anyone can add it up. */
        CERTIFICATE,
        /** A search that left nothing out; the certificate proves a little less. */
        SEARCH
    }

    /** Why a piece is on no bar. */
    public enum Reason {
        /** It is longer than every bar. */
        TOO_LONG,
        /** There are too few bars, which is proven: no plan cuts every piece. */
        TOO_FEW_BARS,
        /** No bar was found for it; another plan may have one. */
        NOT_FOUND
    }

    /**
     * Pieces that are alike to the saw.
     *
     * @param length of one with its kerf, or of all that must come from one bar with theirs, grid steps
     * @param count  how many
     * @param pieces the pieces' names in the request, each once
     * @param apart  what keeps them apart from others of their own and of other kinds
     */
    public record Kind(long length, int count, List<String> pieces, Optional<String> apart) {

        public Kind {
            pieces = List.copyOf(pieces);
        }
    }

    /**
     * Pieces that are on no bar.
     *
     * @param id     their name in the request
     * @param count  how many
     * @param reason why
     */
    public record Unplaced(String id, int count, Reason reason) {}

    public CuttingPlan {
        bars = List.copyOf(bars);
        priced = List.copyOf(priced);
        unplaced = List.copyOf(unplaced);
    }

    /** Every piece that is not {@link Reason#TOO_LONG} is cut, and no plan that cuts them is cheaper. */
    public boolean proven() {
        return unplaced.stream().allMatch(left -> left.reason() == Reason.TOO_LONG) && cost == lowerBound;
    }

    /** How much cheaper a plan could be at most; 0 when proven. */
    public long gap() {
        return cost - lowerBound;
    }

    public int barCount() {
        return bars.stream().mapToInt(CutBar::count).sum();
    }

    /** Worth of what goes back to the rack. */
    public long keptValue() {
        return bars.stream().mapToLong(bar -> bar.count() * bar.value()).sum();
    }
}
