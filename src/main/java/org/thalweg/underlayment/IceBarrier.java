package org.thalweg.underlayment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;
import org.thalweg.underlayment.Bands.Stretch;
import org.thalweg.underlayment.Underlay.RollOrder;
import org.thalweg.units.Length;

/**
 * The sheets that keep water out where ice dams it up: strips along the eaves, and under the valleys. [published: IRC
 * R905.1.2; IBC 1507.3.9]
 *
 * <p>Along an eave each course goes as far as the plane does beside it: further than the eave where a valley comes down to its
 * end, less far where a hip does. Strips that meet at a corner overlap there, and nothing is taken off for that.
 *
 * @param roll   what it is laid of
 * @param strips the eaves' in the order of the edges, then the valleys'
 * @param order  what it takes, rolled out strip by strip
 */
public record IceBarrier(Roll roll, List<IceStrip> strips, RollOrder order) {

    public IceBarrier {
        strips = List.copyOf(strips);
    }

    /**
     * One strip.
     *
     * @param edge    index in the roof's edges of what it follows
     * @param width   how wide it must be: on the plane, square to the eave; of a valley both sides together. Less where the
     *                plane ends before
     * @param courses from the eave up, their places measured off the edge, square to it, and along it from its left end seen
     *                looking up the plane; of a valley off the strip's edge, and along the low from its foot
     */
    public record IceStrip(int edge, Length width, List<Course> courses) {

        public IceStrip {
            courses = List.copyOf(courses);
        }
    }

    /** Lays it: along every eave and angled eave, and under every valley. */
    public static IceBarrier of(Roof roof, IceSpec spec) {
        Rolling rolling = new Rolling(spec.roll(), roof.tolerance());
        List<IceStrip> strips = new ArrayList<>();
        for (int i = 0; i < roof.edges().size(); i++) {
            EdgeKind kind = roof.edges().get(i).kind();
            if (kind == EdgeKind.EAVE || kind == EdgeKind.ANGLED_EAVE) {
                strips.add(eave(roof, i, spec, rolling));
            }
        }
        for (int i = 0; i < roof.edges().size(); i++) {
            if (roof.edges().get(i).kind() == EdgeKind.VALLEY && spec.valley().metres() > 0) {
                strips.add(valley(roof.edges().get(i), i, spec, rolling, roof.tolerance()));
            }
        }
        return new IceBarrier(
                spec.roll(),
                strips,
                RollOrder.of(
                        spec.roll(),
                        rolling,
                        strips.stream().map(IceStrip::courses).toList()));
    }

    private static IceStrip eave(Roof roof, int index, IceSpec spec, Rolling rolling) {
        Edge edge = roof.edges().get(index);
        Plane plane = roof.planes().get(edge.sides().get(0).plane());
        Region beside = beside(plane.shape(), index);
        double needed = spec.width(plane.slope(), edge.slope()).metres();
        double width = Math.min(needed, beside.outer().mostAcross());
        int count = Underlay.count(spec.roll(), width, roof.tolerance());
        List<List<Stretch>> bands = Bands.of(beside, spec.roll(), count, roof.tolerance());
        return new IceStrip(
                index,
                Length.metres(width),
                rolling.courses(near(bands, edge.length().metres())));
    }

    private static IceStrip valley(Edge edge, int index, IceSpec spec, Rolling rolling, Tolerance tolerance) {
        int count = Underlay.count(spec.roll(), spec.valley().metres(), tolerance);
        List<Stretch> whole = List.of(new Stretch(0, edge.length().metres()));
        List<List<Stretch>> bands = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            bands.add(whole);
        }
        return new IceStrip(index, spec.valley(), rolling.courses(bands));
    }

    /** The plane seen from one of its sides: across off it, into the plane; up along it, from its right end to its left. */
    private static Region beside(Region shape, int edge) {
        Ring ring = shape.outer();
        int side = side(ring, edge);
        for (int i = 0; side < 0; i++) {
            ring = shape.openings().get(i);
            side = side(ring, edge);
        }
        Point2 from = ring.corner(side);
        Point2 to = ring.corner(ring.next(side));
        double length = from.distance(to);
        double dirAcross = (to.across() - from.across()) / length;
        double dirUp = (to.up() - from.up()) / length;
        return new Region(
                seen(shape.outer(), to, dirAcross, dirUp),
                shape.openings().stream()
                        .map(opening -> seen(opening, to, dirAcross, dirUp))
                        .toList());
    }

    private static int side(Ring ring, int edge) {
        for (int i = 0; i < ring.size(); i++) {
            if (ring.tag(i) == edge) {
                return i;
            }
        }
        return -1;
    }

    private static Ring seen(Ring ring, Point2 origin, double dirAcross, double dirUp) {
        int n = ring.size();
        double[] off = new double[n];
        double[] along = new double[n];
        int[] tag = new int[n];
        for (int i = 0; i < n; i++) {
            double across = ring.across(i) - origin.across();
            double up = ring.up(i) - origin.up();
            off[i] = up * dirAcross - across * dirUp;
            along[i] = -(across * dirAcross + up * dirUp);
            tag[i] = ring.tag(i);
        }
        return new Ring(off, along, tag);
    }

    /**
     * What hangs together with the eave: in the first course what lies beside it, then what lies over the course before. Seen from
     * the eave's left end, looking up.
     */
    private static List<List<Stretch>> near(List<List<Stretch>> bands, double eave) {
        List<List<Stretch>> near = new ArrayList<>(bands.size());
        List<Stretch> before = List.of(new Stretch(0, eave));
        for (List<Stretch> band : bands) {
            List<Stretch> below = before;
            before = band.stream()
                    .filter(stretch -> below.stream().anyMatch(b -> stretch.from() < b.to() && stretch.to() > b.from()))
                    .toList();
            near.add(before.stream()
                    .map(stretch -> new Stretch(eave - stretch.to(), eave - stretch.from()))
                    .sorted(Comparator.comparingDouble(Stretch::from))
                    .toList());
        }
        return near;
    }
}
