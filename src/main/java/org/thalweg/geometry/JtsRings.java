package org.thalweg.geometry;

import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;

/** Our rings as JTS writes them, the first corner repeated at the end, and back. */
final class JtsRings {

    private JtsRings() {}

    static Coordinate[] closed(Ring ring) {
        Coordinate[] corners = new Coordinate[ring.size() + 1];
        for (int i = 0; i < corners.length; i++) {
            int corner = i == ring.size() ? 0 : i;
            corners[i] = new Coordinate(ring.across(corner), ring.up(corner));
        }
        return corners;
    }

    /** The ring read the stated way round, every side tagged {@link Side#RIB}. */
    static Ring ring(Coordinate[] closed, boolean counterClockwise) {
        int n = closed.length - 1;
        boolean turn = Orientation.isCCW(closed) != counterClockwise;
        double[] across = new double[n];
        double[] up = new double[n];
        int[] tag = new int[n];
        for (int i = 0; i < n; i++) {
            Coordinate corner = turn ? closed[n - i] : closed[i];
            across[i] = corner.x;
            up[i] = corner.y;
            tag[i] = Side.RIB;
        }
        return new Ring(across, up, tag);
    }
}
