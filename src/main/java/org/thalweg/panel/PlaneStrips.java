package org.thalweg.panel;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Side;
import org.thalweg.geometry.SideMover;
import org.thalweg.geometry.StripCutter;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.EdgeTreatment;

/**
 * One plane, ready to be cut into strips at whatever offset: its set-backs are made once, its hems each time.
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

    private final List<Region> finished;
    private final List<EdgeTreatment> treatments;
    private final double cover;
    private final Lead lead;
    private final Tolerance tolerance;
    private final double from;
    private final double to;

    PlaneStrips(Region shape, List<EdgeTreatment> treatments, double cover, Lead lead, Tolerance tolerance) {
        this.finished = SideMover.move(
                shape, side -> side < 0 ? 0 : treatments.get(side).setback().metres(), tolerance);
        this.treatments = treatments;
        this.cover = cover;
        this.lead = lead;
        this.tolerance = tolerance;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Region region : finished) {
            least = Math.min(least, region.outer().leastAcross());
            most = Math.max(most, region.outer().mostAcross());
        }
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
        for (Region region : finished) {
            all.addAll(SideMover.move(region, this::outward, tolerance));
        }
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
        for (Region region : finished) {
            for (StripCutter.Piece piece : StripCutter.cut(region, lines, Side.RIB, tolerance)) {
                blanks.add(new Blank(piece.strip(), lines[piece.strip()], piece.shape(), cut(piece.shape())));
            }
        }
        if (finished.size() > 1) {
            blanks.sort((a, b) -> a.strip != b.strip
                    ? Integer.compare(a.strip, b.strip)
                    : Double.compare(
                            a.finished.outer().leastUp(), b.finished.outer().leastUp()));
        }
        return blanks;
    }

    /** Number of strips with the first panel {@code offset} wide. */
    int strips(double offset) {
        return RibLines.of(from, to, cover, offset, lead, tolerance).length - 1;
    }

    private Region cut(Region piece) {
        List<Region> cut = SideMover.move(piece, this::outward, tolerance);
        return cut.isEmpty() ? piece : cut.get(0);
    }

    private double outward(int side) {
        return side < 0 ? 0 : -treatments.get(side).extra().metres();
    }
}
