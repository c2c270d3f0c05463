package org.thalweg.fastening;

import java.util.List;
import org.thalweg.geometry.Point2;

/**
 * One unbroken stretch of a seam, where two neighbouring strips of a plane both have metal, and the clips in it.
 *
 * @param plane index in the roof's planes
 * @param strip the strip laid first of the two; the other is the next
 * @param from  lowest place of the seam; in the frame the plane's panels are placed in, metres
 * @param to    highest place, straight above
 * @param clips how clips stand between the two
 */
public record Seam(int plane, int strip, Point2 from, Point2 to, EvenRow clips) {

    /** Where clips stand on the plane, in the frame its panels are placed in; from the lowest up. Metres. */
    public List<Point2> places() {
        return clips.places(from, to);
    }
}
