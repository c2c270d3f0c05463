package org.thalweg.fastening;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.geometry.Point2;
import org.thalweg.units.Length;

/**
 * One unbroken stretch of a seam, where two neighbouring strips of a plane both have metal, and the clips in it.
 *
 * @param plane index in the roof's planes
 * @param strip the strip laid first of the two; the other is the next
 * @param from  lowest place of the seam; in the frame the plane's panels are placed in, metres
 * @param to    highest place, straight above
 * @param runs  how clips stand between the two, from the lowest up: one run, or where they are spaced for the wind one for
 *              each spacing
 */
public record Seam(int plane, int strip, Point2 from, Point2 to, List<ClipRun> runs) {

    public Seam {
        runs = List.copyOf(runs);
    }

    /** How many clips it has. */
    public int count() {
        int count = 0;
        for (ClipRun run : runs) {
            count += run.row().count();
        }
        return count;
    }

    /** From its lowest place to the first clip. */
    public Length first() {
        return runs.get(0).row().first();
    }

    /** The greatest distance between neighbours; 0 where there is only one. */
    public Length spacing() {
        return runs.stream()
                .map(run -> run.row().spacing())
                .max(Length::compareTo)
                .orElse(Length.ZERO);
    }

    /** The place this far above its lowest; in the frame the plane's panels are placed in. */
    public Point2 above(Length up) {
        return new Point2(from.across(), from.up() + up.metres());
    }

    /** Where clips stand on the plane, in the frame its panels are placed in; from the lowest up. Metres. */
    public List<Point2> places() {
        List<Point2> places = new ArrayList<>(count());
        for (ClipRun run : runs) {
            places.addAll(run.row().places(above(run.from()), to));
        }
        return places;
    }
}
