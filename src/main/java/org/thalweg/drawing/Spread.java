package org.thalweg.drawing;

/** Lines of lettering side by side, moved apart as little as keeps them from meeting. */
final class Spread {

    private Spread() {}

    /**
     * Places near those {@code wanted}, in the same order, none nearer to the next than {@code gap}; the squares of the moves
     * are least. What has no room between {@code least} and {@code most} begins at {@code least}.
     *
     * @param wanted from the least to the greatest
     */
    static double[] places(double[] wanted, double gap, double least, double most) {
        int count = wanted.length;
        double[] means = new double[count];
        int[] sizes = new int[count];
        int groups = 0;
        for (int i = 0; i < count; i++) {
            means[groups] = wanted[i] - i * gap;
            sizes[groups++] = 1;
            while (groups > 1 && means[groups - 2] > means[groups - 1]) {
                groups--;
                int size = sizes[groups - 1] + sizes[groups];
                means[groups - 1] = (means[groups - 1] * sizes[groups - 1] + means[groups] * sizes[groups]) / size;
                sizes[groups - 1] = size;
            }
        }
        double[] places = new double[count];
        double last = most - (count - 1) * gap;
        int next = 0;
        for (int group = 0; group < groups; group++) {
            double base = Math.max(least, Math.min(last, means[group]));
            for (int i = 0; i < sizes[group]; i++, next++) {
                places[next] = base + next * gap;
            }
        }
        return places;
    }
}
