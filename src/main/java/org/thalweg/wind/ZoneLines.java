package org.thalweg.wind;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.Edge;
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

    private final Tolerance tolerance;
    private final List<Edge> edges = new ArrayList<>();
    private final List<ZoneLine> sorts = new ArrayList<>();
    private final List<PlanSide> sides = new ArrayList<>();
    private final Joined lines;
    private final List<Corner> corners = new ArrayList<>();

    /** Two lines that meet; each as the edges it is made of. */
    private record Corner(List<PlanSide> one, List<PlanSide> other) {}

    /**
     * @param all       the edges of the planes that are one roof to the wind
     * @param flat      whether it rises 7° or less
     * @param softHips  whether a corner that a hip comes to is no more than an edge
     */
    ZoneLines(Collection<Edge> all, boolean flat, boolean softHips, Tolerance tolerance) {
        this.tolerance = tolerance;
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
        join();
        addCorners(softHips);
    }

    private void join() {
        for (int i = 0; i < edges.size(); i++) {
            for (int j = 0; j < i; j++) {
                Optional<Meeting> meeting = meeting(i, j);
                if (sorts.get(i) == sorts.get(j)
                        && meeting.isPresent()
                        && meeting.get().runsOn()) {
                    lines.join(i, j);
                }
            }
        }
    }

    private void addCorners(boolean softHips) {
        for (int i = 0; i < edges.size(); i++) {
            for (int j = 0; j < i; j++) {
                Optional<Meeting> meeting = meeting(i, j);
                if (meeting.isPresent()
                        && !meeting.get().runsOn()
                        && corner(sorts.get(i), sorts.get(j), meeting.get())
                        && !(softHips && hipAt(meeting.get().at()))) {
                    corners.add(corner(i, j));
                }
            }
        }
    }

    private static boolean corner(ZoneLine one, ZoneLine other, Meeting meeting) {
        if (one == ZoneLine.WALL || other == ZoneLine.WALL || (one == ZoneLine.RIDGE && other == ZoneLine.RIDGE)) {
            return false;
        }
        return one != ZoneLine.RIM || other != ZoneLine.RIM || meeting.outer();
    }

    private boolean hipAt(Point3 place) {
        for (int i = 0; i < edges.size(); i++) {
            if (sorts.get(i) == ZoneLine.HIP && (ends(i, true, place) || ends(i, false, place))) {
                return true;
            }
        }
        return false;
    }

    private Corner corner(int i, int j) {
        return lines.same(i, j)
                ? new Corner(List.of(sides.get(i)), List.of(sides.get(j)))
                : new Corner(line(i), line(j));
    }

    private List<PlanSide> line(int edge) {
        List<PlanSide> line = new ArrayList<>();
        for (int i = 0; i < sides.size(); i++) {
            if (lines.same(i, edge)) {
                line.add(sides.get(i));
            }
        }
        return line;
    }

    /**
     * Where two edges meet.
     *
     * @param at    the corner
     * @param on    cosine of the turn from one to the other
     * @param outer whether the roof turns away there: not at an inner corner
     */
    private record Meeting(Point3 at, double on, boolean outer) {
        boolean runsOn() {
            return on > RUNS_ON;
        }
    }

    private Optional<Meeting> meeting(int i, int j) {
        for (boolean iEnds : new boolean[] {true, false}) {
            Point3 place = iEnds ? edges.get(i).to() : edges.get(i).from();
            for (boolean jEnds : new boolean[] {false, true}) {
                if (ends(j, jEnds, place)) {
                    return Optional.of(meeting(place, i, iEnds, j, jEnds));
                }
            }
        }
        return Optional.empty();
    }

    private boolean ends(int edge, boolean end, Point3 place) {
        Point3 own = end ? edges.get(edge).to() : edges.get(edge).from();
        return own.distance(place) <= tolerance.metres();
    }

    /** The roof lies to the left of its rim, so an outer corner turns left, from the edge that ends to the one that starts. */
    private Meeting meeting(Point3 at, int i, boolean iEnds, int j, boolean jEnds) {
        PlanSide one = sides.get(i);
        PlanSide other = sides.get(j);
        double hand = iEnds == jEnds ? -1 : 1;
        double on = hand * (one.onX() * other.onX() + one.onY() * other.onY());
        double left = one.onX() * other.onY() - one.onY() * other.onX();
        boolean outer = iEnds == jEnds || (iEnds ? left > 0 : left < 0);
        return new Meeting(at, on, outer);
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
            parts.addAll(spans(corner.one, start, end, width).and(spans(corner.other, start, end, width)));
        }
        return Spans.of(parts);
    }

    private static Spans spans(List<PlanSide> line, Point3 start, Point3 end, double width) {
        return Spans.of(line.stream()
                .flatMap(side -> side.within(width, start, end).stream())
                .toList());
    }
}
