package org.thalweg.pricing;

import java.util.List;
import org.thalweg.units.LengthUnit;

/**
 * What a takeoff prints of what is to be paid for. It needs no roof: a saved one can be priced years later.
 *
 * @param length unit of the thicknesses and widths in it
 * @param lines  the order
 * @param totals sums that labour may be priced by
 */
public record PrintedTakeoff(LengthUnit length, List<PrintedLine> lines, List<PrintedTotal> totals) {

    public PrintedTakeoff {
        lines = List.copyOf(lines);
        totals = List.copyOf(totals);
    }
}
