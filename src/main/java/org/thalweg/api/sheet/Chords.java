package org.thalweg.api.sheet;

/** Where a straight line upward runs through a flat piece. */
final class Chords {

    private Chords() {}

    /** The lowest and the highest place of {@code outline} at {@code across}; nothing where the line misses it. */
    static double[] along(double[] outline, double across) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < outline.length; i += 2) {
            int next = (i + 2) % outline.length;
            double from = outline[i] - across;
            double to = outline[next] - across;
            if (from <= 0 && to >= 0 || from >= 0 && to <= 0) {
                double share = from == to ? 0 : from / (from - to);
                double at = outline[i + 1] + share * (outline[next + 1] - outline[i + 1]);
                low = Math.min(low, Math.min(at, from == to ? outline[next + 1] : at));
                high = Math.max(high, Math.max(at, from == to ? outline[next + 1] : at));
            }
        }
        return low < high ? new double[] {low, high} : new double[0];
    }
}
