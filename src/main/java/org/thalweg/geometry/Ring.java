package org.thalweg.geometry;

import java.util.Arrays;

/**
 * A closed line on a plane: corners in order, the last joined to the first, and for each side a tag that says what it
 * lies on. Outer rings run counter-clockwise, openings clockwise, so that metal always lies to the left of a side.
 *
 * <p>Kept as bare arrays because thousands of them are made for one roof. Not changed once made: a ring keeps the
 * arrays it is given, and whoever hands them over lets go of them.
 */
public final class Ring {

    private final double[] across;
    private final double[] up;
    private final int[] tag;

    /**
     * @param across right along the level line, metres
     * @param up     up the slope, metres; as many
     * @param tag    what side i, from corner i to corner i + 1, lies on; as many. 0 or more: the side's edge; below 0: see
     *               {@link Side}
     */
    public Ring(double[] across, double[] up, int[] tag) {
        if (across.length != up.length || across.length != tag.length) {
            throw new IllegalArgumentException(
                    "corners (%d, %d) and tags (%d) must be as many".formatted(across.length, up.length, tag.length));
        }
        this.across = across;
        this.up = up;
        this.tag = tag;
    }

    public int size() {
        return across.length;
    }

    public double across(int corner) {
        return across[corner];
    }

    public double up(int corner) {
        return up[corner];
    }

    public int tag(int side) {
        return tag[side];
    }

    public Point2 corner(int corner) {
        return new Point2(across[corner], up[corner]);
    }

    /** The same corners, moved level to these places. */
    Ring across(double[] places) {
        return new Ring(places, up, tag);
    }

    /** The corner after {@code corner}. */
    public int next(int corner) {
        return corner + 1 == across.length ? 0 : corner + 1;
    }

    /** The corner lowest up, and of those the leftmost. */
    public int lowestLeft() {
        int lowest = 0;
        for (int i = 1; i < up.length; i++) {
            if (up[i] < up[lowest] || (up[i] == up[lowest] && across[i] < across[lowest])) {
                lowest = i;
            }
        }
        return lowest;
    }

    /** Area to the left: above 0 for a counter-clockwise ring. Square metres. */
    public double signedArea() {
        double x0 = across[0];
        double y0 = up[0];
        double twice = 0;
        for (int i = 1; i + 1 < across.length; i++) {
            twice += (across[i] - x0) * (up[i + 1] - y0) - (across[i + 1] - x0) * (up[i] - y0);
        }
        return twice / 2;
    }

    public double leastAcross() {
        return least(across);
    }

    public double mostAcross() {
        return most(across);
    }

    public double leastUp() {
        return least(up);
    }

    public double mostUp() {
        return most(up);
    }

    private static double least(double[] values) {
        double least = values[0];
        for (double value : values) {
            least = Math.min(least, value);
        }
        return least;
    }

    private static double most(double[] values) {
        double most = values[0];
        for (double value : values) {
            most = Math.max(most, value);
        }
        return most;
    }

    /** Whether {@code inner}, which touches this ring in single points at most, lies inside it. */
    public boolean encloses(Ring inner) {
        int second = inner.next(0);
        return encloses((inner.across[0] + inner.across[second]) / 2, (inner.up[0] + inner.up[second]) / 2);
    }

    /** Whether a place that is not on this ring lies inside it. */
    public boolean encloses(double atAcross, double atUp) {
        boolean inside = false;
        for (int i = 0, j = across.length - 1; i < across.length; j = i++) {
            if (up[i] > atUp != up[j] > atUp
                    && atAcross < (across[j] - across[i]) * (atUp - up[i]) / (up[j] - up[i]) + across[i]) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** The same ring moved. */
    public Ring moved(double acrossBy, double upBy) {
        double[] newAcross = across.clone();
        double[] newUp = up.clone();
        for (int i = 0; i < newAcross.length; i++) {
            newAcross[i] += acrossBy;
            newUp[i] += upBy;
        }
        return new Ring(newAcross, newUp, tag);
    }

    /** The same ring read from another corner on. */
    Ring startingAt(int corner) {
        int n = across.length;
        double[] newAcross = new double[n];
        double[] newUp = new double[n];
        int[] newTag = new int[n];
        for (int i = 0; i < n; i++) {
            int from = corner + i < n ? corner + i : corner + i - n;
            newAcross[i] = across[from];
            newUp[i] = up[from];
            newTag[i] = tag[from];
        }
        return new Ring(newAcross, newUp, newTag);
    }

    /** Mirrored on the diagonal, and read the other way round so that metal stays to the left. */
    Ring turned() {
        int n = across.length;
        double[] newAcross = new double[n];
        double[] newUp = new double[n];
        int[] newTag = new int[n];
        for (int i = 0; i < n; i++) {
            newAcross[i] = up[n - 1 - i];
            newUp[i] = across[n - 1 - i];
            newTag[i] = tag[i == n - 1 ? n - 1 : n - 2 - i];
        }
        return new Ring(newAcross, newUp, newTag);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Ring ring
                && Arrays.equals(across, ring.across)
                && Arrays.equals(up, ring.up)
                && Arrays.equals(tag, ring.tag);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(across) * 31 + Arrays.hashCode(up);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < across.length; i++) {
            text.append('(')
                    .append(across[i])
                    .append(' ')
                    .append(up[i])
                    .append(")-")
                    .append(tag[i])
                    .append('-');
        }
        return text.toString();
    }
}
