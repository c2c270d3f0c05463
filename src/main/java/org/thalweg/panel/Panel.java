package org.thalweg.panel;

import java.util.List;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Region;
import org.thalweg.units.Length;

/**
 * One panel to cut.
 *
 * @param mark        what is written on it: the plane, the strip and, where a strip has several pieces, the piece
 * @param plane       index in the roof's planes
 * @param strip       1 for the first strip laid
 * @param piece       1 for the lowest piece of its strip
 * @param place       where the panel frame's origin lies on the plane; plane frame, metres
 * @param width       how wide the finished piece is; at most the cover, less when it is ripped
 * @param blankLength what is ordered: the extent of the cut outline along the slope, in whole increments
 * @param finished    the piece as it shows on the roof; panel frame
 * @param cut         the piece as cut, with hems, turn-ups and laps; panel frame, lowest at 0
 * @param marks       how it is marked for cutting
 */
public record Panel(
        String mark,
        int plane,
        int strip,
        int piece,
        Point2 place,
        Length width,
        Length blankLength,
        Region finished,
        Region cut,
        Marks marks) {

    /** Its marks, by end, then from the left. Worked out when asked for: to count panels takes none. */
    public List<Cut> cuts() {
        return marks.of(cut);
    }
}
