package org.thalweg.takeoff;

import java.util.List;
import org.thalweg.units.Length;

/**
 * Blanks of one length.
 *
 * @param length what each is ordered as
 * @param marks  the panels cut from them, in the order of the layout; never none
 */
public record BlankOrder(Length length, List<String> marks) {

    public BlankOrder {
        marks = List.copyOf(marks);
    }

    public int count() {
        return marks.size();
    }
}
