package org.thalweg.api.sheet;

import java.util.List;
import org.thalweg.api.wire.PlanePoint;

/** Places of an answer as the board takes them: right and up by turns. */
final class Places {

    private Places() {}

    static double[] of(List<PlanePoint> points) {
        return of(points, 0, 0);
    }

    /** Moved by {@code across} and {@code up}. */
    static double[] of(List<PlanePoint> points, double across, double up) {
        double[] places = new double[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            places[2 * i] = points.get(i).across() + across;
            places[2 * i + 1] = points.get(i).up() + up;
        }
        return places;
    }
}
