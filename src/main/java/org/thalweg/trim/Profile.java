package org.thalweg.trim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.geometry.Point2;
import org.thalweg.units.Length;

/**
 * A trim in section, as it is bent.
 *
 * @param name      what the trade calls it
 * @param girths    of its legs, from the first edge to the last, to outside mould lines; one or more, each above 0
 * @param bends     between them, one fewer
 * @param first     the hem along the first edge, if there is one
 * @param last      the hem along the last edge
 * @param thickness of the metal; 0 or more. At 0 with sharp bends the flat width is the sum of the girths, as older manuals
 *                  reckon
 */
public record Profile(
        String name, List<Length> girths, List<Bend> bends, Optional<Hem> first, Optional<Hem> last, Length thickness) {

    public Profile {
        girths = List.copyOf(girths);
        bends = List.copyOf(bends);
        if (girths.isEmpty() || bends.size() != girths.size() - 1) {
            throw new IllegalArgumentException(
                    "%d legs need one bend fewer, not %d".formatted(girths.size(), bends.size()));
        }
        for (Length girth : girths) {
            if (girth.metres() <= 0) {
                throw new IllegalArgumentException("a girth (%s) must be above 0".formatted(girth));
            }
        }
        if (thickness.metres() < 0) {
            throw new IllegalArgumentException("a thickness (%s) is 0 or more".formatted(thickness));
        }
    }

    /**
     * The mould lines in section, from the first edge to the last, one more than there are legs; hems lie on their legs and add
     * none. The first edge lies at 0 and the first leg runs across; up is off the weather face. Metres.
     */
    public List<Point2> section() {
        List<Point2> lines = new ArrayList<>(girths.size() + 1);
        Point2 at = new Point2(0, 0);
        double heading = 0;
        lines.add(at);
        for (int leg = 0; leg < girths.size(); leg++) {
            if (leg > 0) {
                Bend bend = bends.get(leg - 1);
                heading += (bend.up() ? 1 : -1) * bend.turn().radians();
            }
            double girth = girths.get(leg).metres();
            at = new Point2(at.across() + girth * Math.cos(heading), at.up() + girth * Math.sin(heading));
            lines.add(at);
        }
        return lines;
    }
}
