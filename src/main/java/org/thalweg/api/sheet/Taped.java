package org.thalweg.api.sheet;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.api.wire.PlanePoint;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Tape;

/**
 * Corners of blanks on a tape. The answer prints them as numbers; they are read to the nearest mark by the rule the answer
 * names, which is how it rounds every mark of its own.
 */
final class Taped {

    private Taped() {}

    /** The corners of an outline as they are marked: what is the same here no tape tells apart. */
    static List<String> corners(List<PlanePoint> outline, LengthUnit unit) {
        List<String> marks = new ArrayList<>(2 * outline.size());
        for (PlanePoint corner : outline) {
            marks.add(mark(corner.across(), unit));
            marks.add(mark(corner.up(), unit));
        }
        return marks;
    }

    static String mark(double printed, LengthUnit unit) {
        return Tape.mark(unit.of(printed), unit);
    }
}
