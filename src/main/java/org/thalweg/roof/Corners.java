package org.thalweg.roof;

import java.util.Arrays;
import java.util.List;
import org.thalweg.geometry.Order;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Tolerance;
import org.thalweg.geometry.Vector3;

/**
 * Every corner of a survey, with corners that nearly meet joined into one.
 *
 * <p>Measured from the least x, y and z of all, so that a house on a national grid, a thousand kilometres from its
 * origin, is worked with numbers as small as the house.
 *
 * <p>Corners are visited by x, then y, then z; each joins the first one kept within the tolerance, or is kept itself.
 * So two kept corners stand further apart than the tolerance, and the order of the planes changes no number.
 */
final class Corners {

    /** No corner lies further out than this along x, y or z: beyond it not even a hair is left of a double. Metres. */
    static final double FURTHEST = 1e9;

    /** x, y, z of the datum; world, metres. */
    private final double[] datum = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};

    /** Kept corners, by x, then y, then z; metres from the datum. Only the first {@link #count} count. */
    final double[] x;

    final double[] y;
    final double[] z;
    final int count;

    /** For each corner of the survey, plane by plane, ring by ring: the kept corner it joined. */
    final int[] joined;

    /** How far two corners that are one may stand apart. */
    final double reach;

    Corners(List<PlaneOutline> planes, Tolerance tolerance) {
        reach = tolerance.metres() + tolerance.hair();
        int drawn = drawn(planes);
        double[] drawnX = new double[drawn];
        double[] drawnY = new double[drawn];
        double[] drawnZ = new double[drawn];
        gather(planes, drawnX, drawnY, drawnZ);
        x = new double[drawn];
        y = new double[drawn];
        z = new double[drawn];
        joined = new int[drawn];
        count = join(drawnX, drawnY, drawnZ);
    }

    private static int drawn(List<PlaneOutline> planes) {
        int drawn = 0;
        for (PlaneOutline plane : planes) {
            drawn += plane.outline().size();
            for (PlaneOutline.OpeningOutline opening : plane.openings()) {
                drawn += opening.outline().size();
            }
        }
        return drawn;
    }

    private void gather(List<PlaneOutline> planes, double[] toX, double[] toY, double[] toZ) {
        int at = 0;
        for (PlaneOutline plane : planes) {
            at = gatherRing(plane.outline(), at, toX, toY, toZ);
            for (PlaneOutline.OpeningOutline opening : plane.openings()) {
                at = gatherRing(opening.outline(), at, toX, toY, toZ);
            }
        }
        for (int i = 0; i < at; i++) {
            toX[i] -= datum[0];
            toY[i] -= datum[1];
            toZ[i] -= datum[2];
        }
    }

    private int gatherRing(List<Point3> ring, int from, double[] toX, double[] toY, double[] toZ) {
        int at = from;
        for (int i = 0; i < ring.size(); i++, at++) {
            Point3 corner = ring.get(i);
            if (!(within(corner.x()) && within(corner.y()) && within(corner.z()))) {
                throw new IllegalArgumentException("a corner (%s) must lie within %s m".formatted(corner, FURTHEST));
            }
            toX[at] = corner.x();
            toY[at] = corner.y();
            toZ[at] = corner.z();
            datum[0] = Math.min(datum[0], corner.x());
            datum[1] = Math.min(datum[1], corner.y());
            datum[2] = Math.min(datum[2], corner.z());
        }
        return at;
    }

    /** False for what is no number, too. */
    private static boolean within(double metres) {
        return Math.abs(metres) <= FURTHEST;
    }

    private int join(double[] fromX, double[] fromY, double[] fromZ) {
        int[] order = Order.of(fromX.length, (a, b) -> before(fromX, fromY, fromZ, a, b));
        Kept kept = new Kept(fromX.length);
        int size = 0;
        for (int corner : order) {
            int found = kept.first(fromX[corner], fromY[corner], fromZ[corner]);
            if (found < 0) {
                found = size++;
                x[found] = fromX[corner];
                y[found] = fromY[corner];
                z[found] = fromZ[corner];
                kept.add(found);
            }
            joined[corner] = found;
        }
        return size;
    }

    private static boolean before(double[] x, double[] y, double[] z, int a, int b) {
        if (x[a] != x[b]) {
            return x[a] < x[b];
        }
        return y[a] != y[b] ? y[a] < y[b] : z[a] < z[b];
    }

    /** The kept corners, findable by place: each in the bucket of the small cube it lies in. */
    private final class Kept {
        private final double perMetre = 1 / (4 * reach);
        private final int mask;
        private final int[] bucket;
        private final int[] next;

        Kept(int most) {
            int size = Integer.highestOneBit(Math.max(4, most)) * 2;
            mask = size - 1;
            bucket = new int[size];
            next = new int[most];
            Arrays.fill(bucket, -1);
        }

        void add(int corner) {
            int at = bucket(cell(x[corner]), cell(y[corner]), cell(z[corner]));
            next[corner] = bucket[at];
            bucket[at] = corner;
        }

        /** The first corner kept within reach of a place, or −1. */
        int first(double px, double py, double pz) {
            int first = -1;
            for (long i = cell(px - reach); i <= cell(px + reach); i++) {
                for (long j = cell(py - reach); j <= cell(py + reach); j++) {
                    for (long k = cell(pz - reach); k <= cell(pz + reach); k++) {
                        first = firstIn(bucket(i, j, k), first, px, py, pz);
                    }
                }
            }
            return first;
        }

        private int firstIn(int at, int best, double px, double py, double pz) {
            int first = best;
            for (int c = bucket[at]; c >= 0; c = next[c]) {
                double dx = x[c] - px;
                double dy = y[c] - py;
                double dz = z[c] - pz;
                if (dx * dx + dy * dy + dz * dz <= reach * reach && (first < 0 || c < first)) {
                    first = c;
                }
            }
            return first;
        }

        /** Cubes are four reaches wide and shifted by half a cube, so that round figures seldom lie on a border. */
        private long cell(double metres) {
            return (long) Math.floor(metres * perMetre + 0.5);
        }

        private int bucket(long i, long j, long k) {
            long mixed = ((i * 0x9E3779B97F4A7C15L + j) * 0xC2B2AE3D27D4EB4FL + k) * 0x165667B19E3779F9L;
            return (int) (mixed >>> 40) & mask;
        }
    }

    /** A kept corner where the caller has it; world, metres. */
    Point3 inWorld(int corner) {
        return inWorld(x[corner], y[corner], z[corner]);
    }

    /** A place given from the datum; world, metres. */
    Point3 inWorld(double fromDatumX, double fromDatumY, double fromDatumZ) {
        return new Point3(datum[0] + fromDatumX, datum[1] + fromDatumY, datum[2] + fromDatumZ);
    }

    /** The datum; world, metres. */
    Point3 datum() {
        return new Point3(datum[0], datum[1], datum[2]);
    }

    /** The way from one kept corner to another, metres. */
    Vector3 step(int from, int to) {
        return new Vector3(x[to] - x[from], y[to] - y[from], z[to] - z[from]);
    }

    /** Distance of two kept corners, metres. */
    double distance(int a, int b) {
        double dx = x[a] - x[b];
        double dy = y[a] - y[b];
        double dz = z[a] - z[b];
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }
}
