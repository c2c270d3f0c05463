package org.thalweg.drawing;

/** Whether a place lies within an outline. */
public final class Inside {

    private Inside() {}

    /** Whether x, y lies within {@code ring}, x and y by turns; on a side of it either answer may come. */
    public static boolean of(double[] ring, double x, double y) {
        boolean inside = false;
        for (int i = 0; i < ring.length; i += 2) {
            int next = (i + 2) % ring.length;
            if (ring[i + 1] > y != ring[next + 1] > y
                    && x < ring[i] + (y - ring[i + 1]) / (ring[next + 1] - ring[i + 1]) * (ring[next] - ring[i])) {
                inside = !inside;
            }
        }
        return inside;
    }
}
