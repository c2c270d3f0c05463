package org.thalweg.wind;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Frame;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.Edge;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;
import org.thalweg.units.Count;
import org.thalweg.units.Length;
import org.thalweg.wind.Spans.Span;

/**
 * Which zone every place of a roof lies in. A place within the zone width of a line, measured level, is on an edge; within it
 * of two lines that meet at an outer corner it is at a corner. Lines are eaves, rakes, peaks and walls; on roofs steeper
 * than 7° ridges and hips too. Up to 25° a corner that a hip comes to counts as an edge [published: figure 4.3 of the handbook
 * {@link ZoneWidth#SOURCE} names, note 3]; where it comes to, and how strips end and cross, is from memory.
 *
 * <p>A plane has the strips of its own edges and of planes it runs on into over a pitch break, a joint or no bend at all;
 * over ridges and hips too where those are no lines. Valleys are no lines, and nothing is measured across them.
 */
public final class WindZones {

    /** Most pairs of edges that meet, in planes that are one roof to the wind. */
    public static final int MOST_MEETINGS = 200_000;

    /** Most parts of one line that lie on edges or at corners. Real seams have a handful. */
    public static final int MOST_PARTS = 500;

    /** Steeper roofs have strips along ridges and hips. */
    private static final double FLAT_DEGREES = 7;

    /** Up to here hips take the corners away. */
    private static final double SOFT_HIPS_DEGREES = 25;

    private final Roof roof;
    private final Length width;
    private final List<ZoneLines> ofPlane;

    private WindZones(Roof roof, Length width, List<ZoneLines> ofPlane) {
        this.roof = roof;
        this.width = width;
        this.ofPlane = ofPlane;
    }

    /**
     * @param width a, how wide the strips are; above 0. See {@link ZoneWidth}
     */
    public static WindZones of(Roof roof, Length width) {
        if (width.metres() <= 0) {
            throw new IllegalArgumentException("width (%s) must be above 0".formatted(width));
        }
        Joined flat = joined(roof, true);
        Joined steep = joined(roof, false);
        Map<Integer, List<Edge>> flatEdges = edges(roof, flat);
        Map<Integer, List<Edge>> steepEdges = edges(roof, steep);
        Map<Key, ZoneLines> known = new HashMap<>();
        List<ZoneLines> ofPlane = new ArrayList<>(roof.planes().size());
        for (int plane = 0; plane < roof.planes().size(); plane++) {
            double slope = roof.planes().get(plane).slope().roundedDegrees();
            boolean isFlat = slope <= FLAT_DEGREES;
            Map<Integer, List<Edge>> edges = isFlat ? flatEdges : steepEdges;
            Key key = new Key((isFlat ? flat : steep).first(plane), isFlat, !isFlat && slope <= SOFT_HIPS_DEGREES);
            ofPlane.add(known.computeIfAbsent(
                    key,
                    of -> new ZoneLines(
                            edges.getOrDefault(of.first, List.of()), of.flat, of.softHips, roof.tolerance())));
        }
        return new WindZones(roof, width, ofPlane);
    }

    /** What decides the lines of a plane: the first of the planes that are one to the wind, and the slope. */
    private record Key(int first, boolean flat, boolean softHips) {}

    private static Joined joined(Roof roof, boolean flat) {
        Joined joined = new Joined(roof.planes().size());
        for (Edge edge : roof.edges()) {
            if (edge.shared() && ZoneLine.of(edge.kind(), flat) == ZoneLine.NONE) {
                edge.sides().forEach(side -> joined.join(edge.sides().get(0).plane(), side.plane()));
            }
        }
        return joined;
    }

    /** The edges of planes that are one to the wind, by the first of those planes. */
    private static Map<Integer, List<Edge>> edges(Roof roof, Joined joined) {
        Map<Integer, List<Edge>> edges = new HashMap<>();
        for (Edge edge : roof.edges()) {
            edge.sides().stream()
                    .map(side -> joined.first(side.plane()))
                    .distinct()
                    .forEach(first -> edges.computeIfAbsent(first, of -> new ArrayList<>())
                            .add(edge));
        }
        return edges;
    }

    /** a, how wide the strips are. */
    public Length width() {
        return width;
    }

    /**
     * The zone of one place; on a border the higher one.
     *
     * @param plane index in the roof's planes
     * @param place in the plane's own frame, metres
     */
    public WindZone at(int plane, Point2 place) {
        Plane own = roof.planes().get(plane);
        return ofPlane.get(plane).at(own.frame().inWorld(place), reach());
    }

    /**
     * The zones along a straight line: all of it, in order.
     *
     * @param plane index in the roof's planes
     * @param frame a frame of that plane, its own or the one its panels are placed in
     * @param from  where the line starts; in that frame, metres
     * @param to    where it ends, apart from {@code from}
     * @throws Refused when it passes more than {@link #MOST_PARTS} edges and corners
     */
    public List<ZoneStretch> along(int plane, Frame frame, Point2 from, Point2 to) {
        Point3 start = frame.inWorld(from);
        Point3 end = frame.inWorld(to);
        ZoneLines lines = ofPlane.get(plane);
        Spans edges = lines.edges(start, end, reach());
        Spans corners = edges.spans().isEmpty() ? edges : lines.corners(start, end, reach());
        checkParts(plane, edges.spans().size() + corners.spans().size());
        return stretches(edges, corners, from.distance(to));
    }

    private void checkParts(int plane, int parts) {
        if (parts > MOST_PARTS) {
            throw new Refused(Refusal.of(
                    RefusalCode.WIND_TOO_LARGE,
                    roof.planes().get(plane).at(),
                    "A seam of this plane passes {actual} edges and corners; at most {limit} are told apart for the wind."
                            + " Check the width of the zones, or simplify the outline.",
                    new Count(parts),
                    new Count(MOST_PARTS)));
        }
    }

    /**
     * What {@link #along} looks at for one line of a plane: so many edges.
     *
     * @param plane index in the roof's planes
     */
    public long steps(int plane) {
        return ofPlane.get(plane).steps();
    }

    /** A place as far as the width counts as within it, whatever the rounding. */
    private double reach() {
        return width.metres() + roof.tolerance().hair();
    }

    private List<ZoneStretch> stretches(Spans edges, Spans corners, double length) {
        TreeSet<Double> borders = new TreeSet<>(List.of(0.0, 1.0));
        for (Spans spans : List.of(edges, corners)) {
            for (Span span : spans.spans()) {
                borders.add(span.from());
                borders.add(span.to());
            }
        }
        List<ZoneStretch> stretches = new ArrayList<>();
        double start = 0;
        for (double border : borders) {
            if ((border - start) * length > roof.tolerance().hair()) {
                add(zone((start + border) / 2, edges, corners), start * length, border * length, stretches);
                start = border;
            }
        }
        if (stretches.isEmpty()) {
            stretches.add(new ZoneStretch(Length.ZERO, Length.metres(length), zone(0.5, edges, corners)));
        }
        return upTo(length, stretches);
    }

    private static WindZone zone(double share, Spans edges, Spans corners) {
        return corners.holds(share) ? WindZone.CORNER : edges.holds(share) ? WindZone.EDGE : WindZone.FIELD;
    }

    private static void add(WindZone zone, double from, double to, List<ZoneStretch> stretches) {
        int last = stretches.size() - 1;
        if (last >= 0 && stretches.get(last).zone() == zone) {
            stretches.set(last, new ZoneStretch(stretches.get(last).from(), Length.metres(to), zone));
        } else {
            stretches.add(new ZoneStretch(Length.metres(from), Length.metres(to), zone));
        }
    }

    /** The last one to the very end of the line. */
    private static List<ZoneStretch> upTo(double length, List<ZoneStretch> stretches) {
        int last = stretches.size() - 1;
        ZoneStretch end = stretches.get(last);
        stretches.set(last, new ZoneStretch(end.from(), Length.metres(length), end.zone()));
        return List.copyOf(stretches);
    }
}
