package org.thalweg.sealing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.thalweg.fastening.FastenerRow;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.panel.Panel;

/**
 * The stretch of a straight line that lies on metal.
 *
 * @param from where it begins; in the frame of the metal, metres
 * @param to   where it ends
 */
record OnMetal(Point2 from, Point2 to) {

    double length() {
        return from.distance(to);
    }

    /** Whether it is the same stretch: a row that an obstacle breaks has its parts on one. */
    boolean same(OnMetal other, double hair) {
        return from.distance(other.from) <= hair && to.distance(other.to) <= hair;
    }

    /** What of a row's line lies on its panel about the middle of the row; in the panel's frame. */
    static OnMetal of(FastenerRow row, Panel panel) {
        Point2 from = onPanel(row.from(), panel);
        Point2 to = onPanel(row.to(), panel);
        double length = from.distance(to);
        double middle = length / 2;
        List<Double> ends = ends(panel.finished(), from, to, length);
        for (int i = 0; i + 1 < ends.size(); i += 2) {
            if (ends.get(i) <= middle && middle <= ends.get(i + 1)) {
                return new OnMetal(at(from, to, ends.get(i) / length), at(from, to, ends.get(i + 1) / length));
            }
        }
        return new OnMetal(from, to);
    }

    private static Point2 onPanel(Point2 place, Panel panel) {
        return new Point2(
                place.across() - panel.place().across(),
                place.up() - panel.place().up());
    }

    private static Point2 at(Point2 from, Point2 to, double share) {
        return new Point2(
                from.across() + share * (to.across() - from.across()), from.up() + share * (to.up() - from.up()));
    }

    /** How much metal a level line crosses; corners in order, the last joined to the first. Metres. */
    static double across(List<Point2> outline, double up) {
        List<Double> ends = new ArrayList<>(2);
        for (int i = 0; i < outline.size(); i++) {
            Point2 a = outline.get(i);
            Point2 b = outline.get((i + 1) % outline.size());
            if (a.up() > up != b.up() > up) {
                ends.add(a.across() + (b.across() - a.across()) * (up - a.up()) / (b.up() - a.up()));
            }
        }
        Collections.sort(ends);
        double metal = 0;
        for (int i = 0; i + 1 < ends.size(); i += 2) {
            metal += ends.get(i + 1) - ends.get(i);
        }
        return metal;
    }

    /** Where the line through two places enters and leaves the metal, from the first place on, ascending. */
    private static List<Double> ends(Region metal, Point2 from, Point2 to, double length) {
        List<Double> ends = new ArrayList<>(2);
        addEnds(metal.outer(), from, to, length, ends);
        for (Ring opening : metal.openings()) {
            addEnds(opening, from, to, length, ends);
        }
        Collections.sort(ends);
        return ends;
    }

    private static void addEnds(Ring ring, Point2 from, Point2 to, double length, List<Double> ends) {
        double dirAcross = (to.across() - from.across()) / length;
        double dirUp = (to.up() - from.up()) / length;
        for (int i = 0; i < ring.size(); i++) {
            int next = ring.next(i);
            double off = off(ring, i, from, dirAcross, dirUp);
            double offNext = off(ring, next, from, dirAcross, dirUp);
            if (off > 0 != offNext > 0) {
                double share = off / (off - offNext);
                double across = ring.across(i) + share * (ring.across(next) - ring.across(i)) - from.across();
                double up = ring.up(i) + share * (ring.up(next) - ring.up(i)) - from.up();
                ends.add(across * dirAcross + up * dirUp);
            }
        }
    }

    private static double off(Ring ring, int corner, Point2 from, double dirAcross, double dirUp) {
        return (ring.up(corner) - from.up()) * dirAcross - (ring.across(corner) - from.across()) * dirUp;
    }
}
