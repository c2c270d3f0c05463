package org.thalweg.panel;

import java.util.List;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Tolerance;

/**
 * Where the pieces of a plane may end, lowest and highest: on the left rib, on the right rib, or at a corner between them.
 * While no rib passes a corner each of the six moves straight as the ribs move, though the piece's length need not: now
 * the one, now the other rib may hold its lowest place.
 */
final class Ends {

    /** On the left rib, on the right rib, between them. */
    static final int KINDS = 3;

    /** Low ends of piece i from 2 KINDS i on, high ends from 2 KINDS i + KINDS on; infinite where there is none. */
    private final double[] ends;

    private final double[] widths;
    private final double hair;

    private Ends(int pieces, double hair) {
        this.hair = hair;
        this.ends = new double[2 * KINDS * pieces];
        this.widths = new double[pieces];
    }

    static Ends of(List<PlaneStrips.Blank> blanks, double cover, Tolerance tolerance) {
        Ends all = new Ends(blanks.size(), tolerance.hair());
        for (int i = 0; i < blanks.size(); i++) {
            PlaneStrips.Blank blank = blanks.get(i);
            all.widths[i] = blank.width();
            all.note(i, blank.cut().outer(), blank.left(), blank.left() + cover, tolerance);
        }
        return all;
    }

    private void note(int piece, Ring ring, double left, double right, Tolerance tolerance) {
        int low = 2 * KINDS * piece;
        int high = low + KINDS;
        for (int kind = 0; kind < KINDS; kind++) {
            ends[low + kind] = Double.POSITIVE_INFINITY;
            ends[high + kind] = Double.NEGATIVE_INFINITY;
        }
        for (int i = 0; i < ring.size(); i++) {
            int kind = tolerance.same(ring.across(i), left) ? 0 : tolerance.same(ring.across(i), right) ? 1 : 2;
            ends[low + kind] = Math.min(ends[low + kind], ring.up(i));
            ends[high + kind] = Math.max(ends[high + kind], ring.up(i));
        }
    }

    int pieces() {
        return widths.length;
    }

    double length(int piece) {
        int low = 2 * KINDS * piece;
        double least = Math.min(Math.min(ends[low], ends[low + 1]), ends[low + 2]);
        double most = Math.max(Math.max(ends[low + KINDS], ends[low + KINDS + 1]), ends[low + KINDS + 2]);
        return most - least;
    }

    /** From a low end to a high end of a piece; infinite or no number where there is none. */
    double between(int piece, int high, int low) {
        return ends[2 * KINDS * piece + KINDS + high] - ends[2 * KINDS * piece + low];
    }

    double narrowest() {
        double narrowest = Double.POSITIVE_INFINITY;
        for (double width : widths) {
            narrowest = Math.min(narrowest, width);
        }
        return narrowest;
    }

    /**
     * Whether a piece may end at both of these somewhere between {@code first} and {@code last} metres of growth. It
     * can't where another end stays beyond one of them all the way; of two ends that run together the first counts.
     */
    boolean mayEnd(int piece, int high, int low, Ends growth, double first, double last) {
        int lows = 2 * KINDS * piece;
        int highs = lows + KINDS;
        for (int kind = 0; kind < KINDS; kind++) {
            if (below(lows + kind, lows + low, growth, first, last)
                    || below(highs + high, highs + kind, growth, first, last)
                    || (kind < low && together(lows + kind, lows + low, growth))
                    || (kind < high && together(highs + kind, highs + high, growth))) {
                return false;
            }
        }
        return true;
    }

    /** Whether the one stays below the other; straight lines that do so at both ends do so in between. */
    private boolean below(int one, int other, Ends growth, double first, double last) {
        return one != other
                && ends[one] + first * growth.ends[one] < ends[other] + first * growth.ends[other]
                && ends[one] + last * growth.ends[one] < ends[other] + last * growth.ends[other];
    }

    private boolean together(int one, int other, Ends growth) {
        return Math.abs(ends[one] - ends[other]) <= hair && Math.abs(growth.ends[one] - growth.ends[other]) <= hair;
    }

    /** How much everything grows for each metre, when {@code later} is {@code metres} further on. */
    Ends growth(Ends later, double metres) {
        Ends growth = new Ends(pieces(), hair);
        for (int i = 0; i < ends.length; i++) {
            growth.ends[i] = Double.isFinite(ends[i]) ? (later.ends[i] - ends[i]) / metres : 0;
        }
        for (int i = 0; i < widths.length; i++) {
            growth.widths[i] = (later.widths[i] - widths[i]) / metres;
        }
        return growth;
    }

    /** As many pieces, nothing noted. */
    Ends blank() {
        return new Ends(pieces(), hair);
    }

    /** Makes this what {@code from} becomes when it has grown for {@code metres}. */
    void set(Ends from, Ends growth, double metres) {
        for (int i = 0; i < ends.length; i++) {
            ends[i] = from.ends[i] + metres * growth.ends[i];
        }
        for (int i = 0; i < widths.length; i++) {
            widths[i] = from.widths[i] + metres * growth.widths[i];
        }
    }
}
