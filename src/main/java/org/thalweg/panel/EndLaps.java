package org.thalweg.panel;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Side;
import org.thalweg.geometry.StripCutter;
import org.thalweg.geometry.Tolerance;

/**
 * Panels longer than the longest blank, cut into pieces of about equal length, upper over lower. The laps of
 * neighbouring strips lie a stagger apart so that four thicknesses never meet. [common practice]
 *
 * <p>All blanks but the top one are whole increments, so the whole panel orders its length and its laps, rounded up
 * once.
 *
 * <p>Known limit: where an opening parts the metal just below a lap, both parts are given the same blank.
 */
final class EndLaps {

    /**
     * One piece of a panel.
     *
     * @param finished what shows; plane frame
     * @param cut      with the lap at its top; plane frame
     */
    record Part(Region finished, Region cut) {}

    private final PanelSpec spec;
    private final Tolerance tolerance;

    EndLaps(PanelSpec spec, Tolerance tolerance) {
        this.spec = spec;
        this.tolerance = tolerance;
    }

    /** How many pieces a panel of this length needs. Metres. */
    int pieces(double length) {
        if (length <= spec.longest().metres() + tolerance.hair()) {
            return 1;
        }
        return (int) Math.max(2, tolerance.ceil(length - spec.endLap().metres(), spec.usable()));
    }

    /** What is ordered for a panel of this length, laps and rounding included. Metres. */
    double ordered(double length) {
        return rounded(length + (pieces(length) - 1) * spec.endLap().metres());
    }

    /** Up to a whole increment. Metres. */
    double rounded(double length) {
        double increment = spec.orderIncrement().metres();
        return increment > 0 ? tolerance.ceil(length, increment) * increment : length;
    }

    /** Cuts one long panel; {@code strip} tells which way its laps are staggered. */
    List<Part> lap(Region finished, Region cut, int strip) {
        double bottom = cut.outer().leastUp();
        double top = cut.outer().mostUp();
        double lap = spec.endLap().metres();
        int pieces = pieces(top - bottom);
        double even = rounded((top - bottom + (pieces - 1) * lap) / pieces);
        double shift = rounded(spec.stagger().metres() / 2) * (strip % 2 == 0 ? -1 : 1);
        List<Part> parts = new ArrayList<>(pieces);
        double from = bottom;
        for (int piece = 1; piece <= pieces; piece++) {
            boolean last = piece == pieces;
            double to = last ? top + 1 : from + even + (piece == 1 ? shift : 0) - lap;
            parts.addAll(parts(between(finished, from, to), between(cut, from, last ? to : to + lap)));
            from = to;
        }
        return parts;
    }

    private List<Region> between(Region shape, double from, double to) {
        Region turned = shape.turned();
        double first = Math.min(from, turned.outer().leastAcross()) - 1;
        double last = Math.max(to, turned.outer().mostAcross()) + 1;
        return StripCutter.cut(turned, new double[] {first, from, to, last}, Side.LAP, tolerance).stream()
                .filter(piece -> piece.strip() == 1)
                .map(piece -> piece.shape().turned())
                .toList();
    }

    private static List<Part> parts(List<Region> finished, List<Region> cut) {
        return finished.stream()
                .map(shape -> new Part(shape, cut.size() == 1 ? cut.get(0) : mostOver(shape, cut)))
                .toList();
    }

    /** The cut piece that shares most of the way across with a finished one. */
    private static Region mostOver(Region finished, List<Region> cut) {
        Region most = cut.get(0);
        double width = Double.NEGATIVE_INFINITY;
        Ring shown = finished.outer();
        for (Region candidate : cut) {
            Ring ring = candidate.outer();
            double shared =
                    Math.min(shown.mostAcross(), ring.mostAcross()) - Math.max(shown.leastAcross(), ring.leastAcross());
            if (shared > width) {
                width = shared;
                most = candidate;
            }
        }
        return most;
    }
}
