package org.thalweg.panel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Side;
import org.thalweg.geometry.SideMover;
import org.thalweg.geometry.StripCutter;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.EdgeTreatment;

/**
 * One plane, ready to be cut into strips at whatever offset: its set-backs and hems are made once, for the whole plane.
 */
final class PlaneStrips {

    /**
     * What one strip holds, before laps.
     *
     * @param strip    counted from the left, from 0
     * @param left     where the strip's left rib runs; plane frame, metres
     * @param finished plane frame
     * @param cut      with hems and turn-ups; plane frame
     */
    record Blank(int strip, double left, Region finished, Region cut) {

        double length() {
            return cut.outer().mostUp() - cut.outer().leastUp();
        }

        double width() {
            return finished.outer().mostAcross() - finished.outer().leastAcross();
        }
    }

    /**
     * Every edge's set-back, at its lower and its upper end. Which end lies lower is read in the frame the plane is laid in;
     * a level side has no upper end.
     */
    private record SetBacks(List<EdgeTreatment> treatments, Tolerance tolerance) implements SideMover.Inward {

        @Override
        public double atStart(Ring ring, int side) {
            return at(ring, side, side, ring.next(side));
        }

        @Override
        public double atEnd(Ring ring, int side) {
            return at(ring, side, ring.next(side), side);
        }

        private double at(Ring ring, int side, int end, int other) {
            if (ring.tag(side) < 0) {
                return 0;
            }
            EdgeTreatment treatment = treatments.get(ring.tag(side));
            boolean upper = ring.up(end) - ring.up(other) > tolerance.metres();
            return (upper ? treatment.setbackAtTop() : treatment.setback()).metres();
        }
    }

    private final List<Region> finished;
    private final List<Region> cut;
    private final double beside;
    private final List<EdgeTreatment> treatments;
    private final double cover;
    private final Lead lead;
    private final Tolerance tolerance;
    private final double from;
    private final double to;

    PlaneStrips(Region shape, List<EdgeTreatment> treatments, double cover, Lead lead, Tolerance tolerance) {
        this.finished = SideMover.move(shape, new SetBacks(treatments, tolerance), tolerance);
        this.treatments = treatments;
        this.cover = cover;
        this.lead = lead;
        this.tolerance = tolerance;
        this.cut = new ArrayList<>(finished.size());
        for (Region region : finished) {
            List<Region> outward = SideMover.move(region, this::outward, tolerance);
            this.cut.add(outward.isEmpty() ? region : outward.get(0));
        }
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Region region : finished) {
            least = Math.min(least, region.outer().leastAcross());
            most = Math.max(most, region.outer().mostAcross());
        }
        double widest = cover;
        for (Region region : cut) {
            widest = Math.max(widest, least - region.outer().leastAcross());
            widest = Math.max(widest, region.outer().mostAcross() - most);
        }
        this.beside = widest + cover;
        this.from = least;
        this.to = most;
    }

    /** The plane with every edge moved by its set-back; none when nothing is left. */
    List<Region> finished() {
        return finished;
    }

    /** Every corner that finished or cut metal has before it is cut into strips. */
    List<Region> corners() {
        List<Region> all = new ArrayList<>(finished);
        all.addAll(cut);
        return all;
    }

    /** From the leftmost to the rightmost finished metal, metres. */
    double width() {
        return to - from;
    }

    /** The end where laying starts; plane frame, metres. */
    double leadingEnd() {
        return lead == Lead.LEFT ? from : to;
    }

    Lead lead() {
        return lead;
    }

    /** The strips with the first panel {@code offset} wide; by strip from the left, then from the lowest up. */
    List<Blank> at(double offset) {
        double[] lines = RibLines.of(from, to, cover, offset, lead, tolerance);
        List<Blank> blanks = new ArrayList<>(lines.length);
        for (int i = 0; i < finished.size(); i++) {
            List<StripCutter.Piece> shown = StripCutter.cut(finished.get(i), lines, Side.RIB, tolerance);
            if (cut.get(i) == finished.get(i)) {
                for (StripCutter.Piece piece : shown) {
                    blanks.add(new Blank(piece.strip(), lines[piece.strip()], piece.shape(), piece.shape()));
                }
            } else {
                addCut(shown, StripCutter.cut(cut.get(i), guarded(lines), Side.RIB, tolerance), lines, blanks);
            }
        }
        if (finished.size() > 1) {
            blanks.sort(Comparator.comparingInt(Blank::strip)
                    .thenComparingDouble(blank -> blank.finished().outer().leastUp()));
        }
        return blanks;
    }

    /** Hems and turn-ups may run out beside the first and the last strip. */
    private double[] guarded(double[] lines) {
        double[] guarded = new double[lines.length + 2];
        System.arraycopy(lines, 0, guarded, 1, lines.length);
        guarded[0] = lines[0] - beside;
        guarded[lines.length + 1] = lines[lines.length - 1] + beside;
        return guarded;
    }

    /** Gives every piece that shows the metal it is cut from; both lists are by strip, the second counts one more. */
    private void addCut(
            List<StripCutter.Piece> shown, List<StripCutter.Piece> metal, double[] lines, List<Blank> blanks) {
        int first = 0;
        for (int i = 0; i < shown.size(); i++) {
            int strip = shown.get(i).strip();
            while (first < metal.size() && metal.get(first).strip() < strip + 1) {
                first++;
            }
            int last = first;
            while (last < metal.size() && metal.get(last).strip() == strip + 1) {
                last++;
            }
            boolean alone = last == first + 1
                    && (i == 0 || shown.get(i - 1).strip() != strip)
                    && (i + 1 == shown.size() || shown.get(i + 1).strip() != strip);
            Region piece = shown.get(i).shape();
            Region of = alone ? metal.get(first).shape() : metalOf(piece, metal.subList(first, last), lines[strip]);
            blanks.add(new Blank(strip, lines[strip], piece, holding(piece, of, lines[strip])));
        }
    }

    /**
     * Metal that holds what shows of it. Set-backs of both signs larger than the sides they move can turn a corner of the
     * plane inside out; hems made on that would then cut into the piece, so it gets hems of its own, or none.
     */
    private Region holding(Region piece, Region metal, double left) {
        if (holds(metal, piece)) {
            return metal;
        }
        Region own = alone(piece, left);
        return holds(own, piece) ? own : piece;
    }

    private boolean holds(Region metal, Region piece) {
        return metal.outer().leastUp() <= piece.outer().leastUp() + tolerance.hair()
                && metal.outer().mostUp() >= piece.outer().mostUp() - tolerance.hair()
                && metal.area() >= piece.area() - tolerance.metres() * tolerance.metres();
    }

    /** A straight side crosses a strip once, so a piece and its metal have their sides in common and no others have. */
    private Region metalOf(Region piece, List<StripCutter.Piece> metal, double left) {
        Region found = null;
        for (StripCutter.Piece candidate : metal) {
            if (haveSidesInCommon(piece.outer(), candidate.shape().outer())) {
                if (found != null) {
                    return alone(piece, left);
                }
                found = candidate.shape();
            }
        }
        return found == null || joins(found, piece) ? alone(piece, left) : found;
    }

    private static boolean haveSidesInCommon(Ring a, Ring b) {
        for (int i = 0; i < a.size(); i++) {
            for (int j = 0; j < b.size(); j++) {
                if (a.tag(i) >= 0 && a.tag(i) == b.tag(j)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether metal reaches further past a piece than its hems do: into another piece of the strip. */
    private boolean joins(Region metal, Region piece) {
        return metal.outer().mostUp() > piece.outer().mostUp() + beside
                || metal.outer().leastUp() < piece.outer().leastUp() - beside;
    }

    /** The piece with hems of its own, where in the whole plane they run into those of another piece of the strip. */
    private Region alone(Region piece, double left) {
        List<Region> moved = SideMover.move(piece, this::outward, tolerance);
        Region own = moved.isEmpty() ? piece : moved.get(0);
        double[] lines = guarded(new double[] {left, left + cover});
        return StripCutter.cut(own, lines, Side.RIB, tolerance).stream()
                .filter(trimmed -> trimmed.strip() == 1)
                .map(StripCutter.Piece::shape)
                .max(Comparator.comparingDouble(Region::area))
                .orElse(piece);
    }

    /** Number of strips with the first panel {@code offset} wide. */
    int strips(double offset) {
        return RibLines.of(from, to, cover, offset, lead, tolerance).length - 1;
    }

    private double outward(int side) {
        return side < 0 ? 0 : -treatments.get(side).extra().metres();
    }
}
