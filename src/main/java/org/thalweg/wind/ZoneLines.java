package org.thalweg.wind;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.Edge;
import org.thalweg.units.Count;
import org.thalweg.wind.Spans.Span;

/**
 * The lines that zones of one stretch of roof are measured from, and which of them make corners.
 *
 * <p>Edges of a sort that run on from each other, turning less than 30° at a time [common practice], are one line: an eave that
 * a survey has in two pieces has no corner in its middle.
 */
final class ZoneLines {

    /** Lines that turn less run on. */
    private static final double RUNS_ON = Math.cos(Math.toRadians(30));

    private final List<Edge> edges = new ArrayList<>();
    private final List<ZoneLine> sorts = new ArrayList<>();
    private final List<PlanSide> sides = new ArrayList<>();
    private final Joined lines;
    private final Map<Integer, List<PlanSide>> line = new HashMap<>();
    private final List<Corner> corners = new ArrayList<>();

    /** Two lines that meet; each as the edges it is made of. */
    private record Corner(List<PlanSide> one, List<PlanSide> other) {}

    /** An end of an edge: where it runs to, or where it starts. */
    private record End(int edge, boolean to) {}

    /** Two lines, or two edges of one line. */
    private record Pair(int one, int other) {}

    /**
     * @param all       the edges of the planes that are one roof to the wind
     * @param flat      whether it rises 7° or less
     * @param softHips  whether a corner that a hip comes to is no more than an edge
     */
    ZoneLines(Collection<Edge> all, boolean flat, boolean softHips, Tolerance tolerance) {
        for (Edge edge : all) {
            ZoneLine sort = ZoneLine.of(edge.kind(), flat);
            PlanSide side = PlanSide.of(edge.from(), edge.to());
            if (sort.strip() && side.length() > tolerance.metres()) {
                edges.add(edge);
                sorts.add(sort);
                sides.add(side);
            }
        }
        lines = new Joined(edges.size());
        Collection<List<End>> meetings = meetings();
        checkMeetings(meetings);
        meetings.forEach(this::join);
        for (int i = 0; i < sides.size(); i++) {
            line.computeIfAbsent(lines.first(i), first -> new ArrayList<>()).add(sides.get(i));
        }
        addCorners(meetings, softHips);
    }

    /** What ends in one place, place by place. Corners of a roof that are one are the very same place. */
    private Collection<List<End>> meetings() {
        Map<Point3, List<End>> at = new LinkedHashMap<>();
        for (int i = 0; i < edges.size(); i++) {
            at.computeIfAbsent(edges.get(i).from(), place -> new ArrayList<>(2)).add(new End(i, false));
            at.computeIfAbsent(edges.get(i).to(), place -> new ArrayList<>(2)).add(new End(i, true));
        }
        return at.values();
    }

    private static void checkMeetings(Collection<List<End>> meetings) {
        long pairs = 0;
        for (List<End> met : meetings) {
            pairs += (long) met.size() * (met.size() - 1) / 2;
        }
        if (pairs > WindZones.MOST_MEETINGS) {
            throw new Refused(Refusal.of(
                    RefusalCode.WIND_TOO_LARGE,
                    Origin.REQUEST.at("roof"),
                    "Edges of the roof meet each other {actual} times; at most {limit} are looked at for the wind. Lay the"
                            + " roof in parts.",
                    new Count(pairs),
                    new Count(WindZones.MOST_MEETINGS)));
        }
    }

    private void join(List<End> met) {
        for (int i = 0; i < met.size(); i++) {
            for (int j = 0; j < i; j++) {
                End one = met.get(i);
                End other = met.get(j);
                if (sorts.get(one.edge) == sorts.get(other.edge)
                        && meeting(one, other).runsOn()) {
                    lines.join(one.edge, other.edge);
                }
            }
        }
    }

    private void addCorners(Collection<List<End>> meetings, boolean softHips) {
        Set<Pair> known = new HashSet<>();
        for (List<End> met : meetings) {
            if (softHips && met.stream().anyMatch(end -> sorts.get(end.edge) == ZoneLine.HIP)) {
                continue;
            }
            for (int i = 0; i < met.size(); i++) {
                for (int j = 0; j < i; j++) {
                    addCorner(met.get(i), met.get(j), known);
                }
            }
        }
    }

    private void addCorner(End one, End other, Set<Pair> known) {
        Meeting meeting = meeting(one, other);
        if (meeting.runsOn() || !corner(sorts.get(one.edge), sorts.get(other.edge), meeting)) {
            return;
        }
        int first = lines.first(one.edge);
        int second = lines.first(other.edge);
        if (first == second) {
            corners.add(new Corner(List.of(sides.get(one.edge)), List.of(sides.get(other.edge))));
        } else if (known.add(new Pair(Math.min(first, second), Math.max(first, second)))) {
            corners.add(new Corner(line(first), line(second)));
        }
    }

    private static boolean corner(ZoneLine one, ZoneLine other, Meeting meeting) {
        if (one == ZoneLine.WALL || other == ZoneLine.WALL || (one == ZoneLine.RIDGE && other == ZoneLine.RIDGE)) {
            return false;
        }
        return one != ZoneLine.RIM || other != ZoneLine.RIM || meeting.outer();
    }

    private List<PlanSide> line(int first) {
        return line.getOrDefault(first, List.of());
    }

    /**
     * Where two edges meet.
     *
     * @param on    cosine of the turn from one to the other
     * @param outer whether the roof turns away there: not at an inner corner
     */
    private record Meeting(double on, boolean outer) {
        boolean runsOn() {
            return on > RUNS_ON;
        }
    }

    /** The roof lies to the left of its rim, so an outer corner turns left, from the edge that ends to the one that starts. */
    private Meeting meeting(End i, End j) {
        PlanSide one = sides.get(i.edge);
        PlanSide other = sides.get(j.edge);
        double hand = i.to == j.to ? -1 : 1;
        double on = hand * (one.onX() * other.onX() + one.onY() * other.onY());
        double left = one.onX() * other.onY() - one.onY() * other.onX();
        boolean outer = i.to == j.to || (i.to ? left > 0 : left < 0);
        return new Meeting(on, outer);
    }

    /** How many edges are looked at for the zones along one line. */
    long steps() {
        long steps = sides.size();
        for (Corner corner : corners) {
            steps += corner.one.size() + corner.other.size();
        }
        return steps;
    }

    WindZone at(Point3 place, double width) {
        for (Corner corner : corners) {
            if (near(corner.one, place, width) && near(corner.other, place, width)) {
                return WindZone.CORNER;
            }
        }
        return near(sides, place, width) ? WindZone.EDGE : WindZone.FIELD;
    }

    private static boolean near(List<PlanSide> line, Point3 place, double width) {
        return line.stream().anyMatch(side -> side.distance(place) <= width);
    }

    /** The parts of a line within {@code width} of any edge, in shares of it. */
    Spans edges(Point3 start, Point3 end, double width) {
        return spans(sides, start, end, width);
    }

    /** The parts at corners. */
    Spans corners(Point3 start, Point3 end, double width) {
        List<Span> parts = new ArrayList<>();
        for (Corner corner : corners) {
            Spans one = spans(corner.one, start, end, width);
            if (!one.spans().isEmpty()) {
                parts.addAll(one.and(spans(corner.other, start, end, width)));
            }
        }
        return Spans.of(parts);
    }

    private static Spans spans(List<PlanSide> line, Point3 start, Point3 end, double width) {
        List<Span> parts = new ArrayList<>(0);
        for (PlanSide side : line) {
            side.within(width, start, end).ifPresent(parts::add);
        }
        return Spans.of(parts);
    }
}
