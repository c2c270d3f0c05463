package org.thalweg.stock;

import java.util.ArrayList;
import java.util.List;

/**
 * Panels cut one after the other from one coil, whose end was square and is cut square again.
 *
 * @param panels in the order they are cut
 * @param length of coil, grid steps
 */
public record CoilRun(List<PlacedPanel> panels, long length) {

    /**
     * A panel on the coil. Two neighbours share a cut when one's right end lies on the other's left.
     *
     * @param panel  as it lies, turned if it is turned
     * @param turned end for end, against what was asked for
     * @param from   where its lower edge begins, grid steps from the square end of the coil
     */
    public record PlacedPanel(MitredPanel panel, boolean turned, long from) {}

    public CoilRun {
        panels = List.copyOf(panels);
    }

    /** Each panel as far to the left as the one before it lets it; between two ends |right − left| is lost on one edge. */
    static CoilRun of(List<MitredPanel> asLying, List<Boolean> turned) {
        List<PlacedPanel> placed = new ArrayList<>();
        long lower = 0;
        long upper = 0;
        for (int i = 0; i < asLying.size(); i++) {
            MitredPanel panel = asLying.get(i);
            long from = Math.max(lower, upper - panel.left());
            placed.add(new PlacedPanel(panel, turned.get(i), from));
            lower = from + panel.lower();
            upper = from + panel.left() + panel.upper();
        }
        return new CoilRun(placed, Math.max(lower, upper));
    }
}
