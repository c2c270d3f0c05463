package org.thalweg.fastening;

import java.util.List;
import java.util.Optional;
import org.thalweg.geometry.Point2;
import org.thalweg.panel.Panel;

/**
 * Fasteners in a row on one plane.
 *
 * @param kind  what they hold down
 * @param plane index in the roof's planes
 * @param panel the panel they go through; nothing where they run on under or beside the panels. At an end lap the upper one
 * @param edge  index in the roof's edges of the edge they are for, or {@link org.thalweg.geometry.Side#LAP}
 * @param from  first place a fastener may stand; in the frame the plane's panels are placed in, metres. The left end, or the
 *              lower end of a row that runs straight up
 * @param to    last place
 * @param row   how they stand between the two
 */
public record FastenerRow(
        FastenerKind kind, int plane, Optional<Panel> panel, int edge, Point2 from, Point2 to, EvenRow row) {

    public int count() {
        return row.count();
    }

    /** Where they stand on the plane, in the frame its panels are placed in. Metres, from {@code from} on. */
    public List<Point2> places() {
        return row.places(from, to);
    }

    /** Where they stand on their panel, for work in the shop: in the panel frame; none where no panel is pierced. Metres. */
    public List<Point2> placesOnPanel() {
        return panel.map(pierced -> row.places(onPanel(pierced, from), onPanel(pierced, to)))
                .orElse(List.of());
    }

    private static Point2 onPanel(Panel panel, Point2 onPlane) {
        return new Point2(
                onPlane.across() - panel.place().across(),
                onPlane.up() - panel.place().up());
    }
}
