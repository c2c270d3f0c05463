package org.thalweg.trim;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Length;

/**
 * Divides a run of trim into pieces, each over the one before: n = ceil((run − lap) / (stock − lap)). All are as long as the
 * stock but the last; if that came out too short to make, or shorter than its end cut and a lap, its neighbour gives up length
 * to it, if it can. The pieces less the laps are the run.
 */
public final class TrimPieces {

    private final TrimStock stock;
    private final double lap;
    private final Tolerance tolerance;

    /** @param lap below the length of the stock */
    public TrimPieces(TrimStock stock, Length lap, Tolerance tolerance) {
        if (!(lap.metres() >= 0 && lap.metres() < stock.length().metres())) {
            throw new IllegalArgumentException(
                    "a lap (%s) is 0 or more and below the longest piece (%s)".formatted(lap, stock.length()));
        }
        this.stock = stock;
        this.lap = lap.metres();
        this.tolerance = tolerance;
    }

    /** How many pieces a run takes; 1 at least. */
    public long count(Length run) {
        return Math.max(1, tolerance.ceil(run.metres() - lap, stock.length().metres() - lap));
    }

    /** The lengths of the pieces of a run with square ends, in the order they are laid. */
    public List<Length> lengths(Length run) {
        return lengths(run, Length.ZERO, Length.ZERO);
    }

    /**
     * The lengths of the pieces, in the order they are laid.
     *
     * @param run       in all, with what the ends reach; above 0
     * @param firstEnd  how much of it the cut at the first end takes up
     * @param secondEnd and that at the other end
     */
    List<Length> lengths(Length run, Length firstEnd, Length secondEnd) {
        double full = stock.length().metres();
        int count = Math.toIntExact(count(run));
        double last = run.metres() - (count - 1) * (full - lap);
        double before = full;
        double missing = Math.min(full, least(secondEnd)) - last;
        double spared = full - (count == 2 ? least(firstEnd) : least(Length.ZERO));
        if (count > 1 && missing > 0 && missing <= spared) {
            last += missing;
            before -= missing;
        }
        List<Length> lengths = new ArrayList<>(count);
        for (int i = 1; i < count; i++) {
            lengths.add(Length.metres(i == count - 1 ? before : full));
        }
        lengths.add(Length.metres(last));
        return lengths;
    }

    /** The shortest piece with an end cut so deep: with a lap, where there is another one. */
    private double least(Length cut) {
        return Math.max(stock.shortest().metres(), cut.metres() + lap);
    }
}
