package org.thalweg.footprint;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The corners of the roof as they are found: those of the walls, then one for every place where eaves met. */
final class Nodes {

    private final double[] box;
    private final List<Place> places = new ArrayList<>();

    private record Place(
            double x, double y, double time, @Nullable Meeting meeting) {}

    /** @param box least x, least y, most x, most y of the walls, steps of the grid */
    Nodes(double[] box) {
        this.box = box;
    }

    int addWallCorner(double x, double y) {
        places.add(new Place(x, y, 0, null));
        return places.size() - 1;
    }

    int add(Meeting meeting) {
        places.add(new Place(meeting.x(), meeting.y(), meeting.time(), meeting));
        return places.size() - 1;
    }

    Meeting meeting(int node) {
        return Objects.requireNonNull(places.get(node).meeting);
    }

    int size() {
        return places.size();
    }

    double x(int node) {
        return places.get(node).x;
    }

    double y(int node) {
        return places.get(node).y;
    }

    double time(int node) {
        return places.get(node).time;
    }

    /**
     * A time before which three planes surely do not meet. Not a number if they surely meet before now, or outside the walls,
     * where no roof is; now, if that is all that doubles can tell. With the bounds of {@link Meeting}.
     */
    double earliest(EavePlane one, EavePlane two, EavePlane three, @Nullable Meeting now) {
        double m23 = (double) two.turnTo(three);
        double m13 = (double) one.turnTo(three);
        double m12 = (double) one.turnTo(two);
        double d1 = one.speed() * m23;
        double d2 = two.speed() * m13;
        double d3 = three.speed() * m12;
        double d = -d1 + d2 - d3;
        double errorD = Meeting.NOISE * (Math.abs(d1) + Math.abs(d2) + Math.abs(d3));
        if (Math.abs(d) <= 4 * errorD) {
            return now == null ? 0 : now.time() - now.errorTime();
        }
        double k1 = one.offset() * m23;
        double k2 = two.offset() * m13;
        double k3 = three.offset() * m12;
        double time = (k1 - k2 + k3) / d;
        double errorK = Meeting.NOISE * (Math.abs(k1) + Math.abs(k2) + Math.abs(k3));
        double error = (errorK + Math.abs(time) * errorD) / (Math.abs(d) - errorD) + Meeting.NOISE * Math.abs(time);
        double since = now == null ? 0 : now.time() * (1 - Meeting.NOISE) - now.errorTime();
        if (time + error < since) {
            return Double.NaN;
        }
        // Where the first two are at that time; m12 is no nought, they meet in a corner.
        double c1 = one.offset() + one.speed() * time;
        double c2 = two.offset() + two.speed() * time;
        double blurred = Math.abs(one.speed()) * error + Meeting.NOISE * (Math.abs(one.offset()) + Math.abs(c1));
        double blurredTwo = Math.abs(two.speed()) * error + Meeting.NOISE * (Math.abs(two.offset()) + Math.abs(c2));
        double x = (c1 * two.b() - c2 * one.b()) / m12;
        double y = (one.a() * c2 - two.a() * c1) / m12;
        double errorX = 2 * (blurred * Math.abs(two.b()) + blurredTwo * Math.abs(one.b())) / Math.abs(m12) + 1;
        double errorY = 2 * (blurred * Math.abs(two.a()) + blurredTwo * Math.abs(one.a())) / Math.abs(m12) + 1;
        boolean inside = x + errorX >= box[0] && y + errorY >= box[1] && x - errorX <= box[2] && y - errorY <= box[3];
        return inside ? time - error : Double.NaN;
    }
}
