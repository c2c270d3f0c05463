package org.thalweg.trim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.geometry.Point2;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;

/**
 * A profile before it is bent to an edge: some of its bends follow the bend of the edge it is for.
 *
 * @param name   what the trade calls it
 * @param girths of its legs, as in {@link Profile}; two or more
 * @param turns  between them, one fewer
 * @param atEdge which of the turns lies on the edge, counted from 0: the leg before it lies along the first plane
 * @param height how far off its plane that leg lies, on panels with seams this high; 0 or more
 * @param first  the hem along the first edge, if there is one
 * @param last   the hem along the last edge
 */
public record TrimShape(
        String name,
        List<Length> girths,
        List<Turn> turns,
        int atEdge,
        Length height,
        Optional<Hem> first,
        Optional<Hem> last) {

    public TrimShape {
        girths = List.copyOf(girths);
        turns = List.copyOf(turns);
        if (turns.isEmpty() || turns.size() != girths.size() - 1) {
            throw new IllegalArgumentException(
                    "%d legs need one turn fewer, and one at least, not %d".formatted(girths.size(), turns.size()));
        }
        if (atEdge < 0 || atEdge >= turns.size()) {
            throw new IllegalArgumentException("turn %d is none of %d".formatted(atEdge, turns.size()));
        }
        if (height.metres() < 0) {
            throw new IllegalArgumentException("a height (%s) is 0 or more".formatted(height));
        }
    }

    /**
     * A bend that may follow the edge.
     *
     * @param own      how far to bend besides; above 0 up, toward the weather face, below 0 down
     * @param withEdge whether the bend of the edge comes on top
     */
    public record Turn(Angle own, boolean withEdge) {

        /** As the edge bends. */
        public static final Turn OF_EDGE = new Turn(Angle.ZERO, true);

        /** The same at every edge; above 0 up. */
        public static Turn degrees(double degrees) {
            return new Turn(Angle.degrees(degrees), false);
        }

        /** At an edge that bends by so much; at most folded back either way. */
        Angle at(Angle edgeBend) {
            double turn = own.radians() + (withEdge ? edgeBend.radians() : 0);
            return new Angle(Math.max(-Math.PI, Math.min(Math.PI, turn)));
        }
    }

    /** Bent to an edge. */
    public Profile bentTo(Angle edgeBend, Length insideRadius, Length thickness) {
        List<Bend> bends = new ArrayList<>(turns.size());
        for (Turn turn : turns) {
            double radians = turn.at(edgeBend).radians();
            bends.add(new Bend(new Angle(Math.abs(radians)), radians > 0, insideRadius));
        }
        return new Profile(name, girths, bends, first, last, thickness);
    }

    /**
     * The mould lines in section, from the first edge to the last, one more than there are legs; hems lie on their legs and
     * add none.
     *
     * @param edgeBend how far the edge bends; above 0 up
     * @param fold     where the turn {@link #atEdge} lies
     */
    List<Point2> section(Angle edgeBend, Point2 fold) {
        Point2[] lines = new Point2[girths.size() + 1];
        lines[atEdge + 1] = fold;
        double heading = 0;
        for (int leg = atEdge; leg >= 0; leg--) {
            lines[leg] = step(lines[leg + 1], heading, -girths.get(leg).metres());
            heading -= leg > 0 ? turns.get(leg - 1).at(edgeBend).radians() : 0;
        }
        heading = 0;
        for (int leg = atEdge + 1; leg < girths.size(); leg++) {
            heading += turns.get(leg - 1).at(edgeBend).radians();
            lines[leg + 1] = step(lines[leg], heading, girths.get(leg).metres());
        }
        return List.of(lines);
    }

    private static Point2 step(Point2 from, double heading, double length) {
        return new Point2(from.across() + length * Math.cos(heading), from.up() + length * Math.sin(heading));
    }
}
