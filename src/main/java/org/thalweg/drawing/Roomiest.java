package org.thalweg.drawing;

import java.util.List;

/** Where within a shape there is most room for lettering: of a grid of places the one furthest from every side, nearer the middle where several are alike. */
public final class Roomiest {

    private static final int STEPS = 24;
    private static final double MIDDLE = 0.1;

    private Roomiest() {}

    /**
     * X and y of the place, or of the middle where no place of the grid lies inside.
     *
     * @param rings the outline and its holes, x and y by turns; inside is what an odd number of them goes round
     */
    public static double[] of(List<double[]> rings) {
        Bounds bounds = Bounds.of(rings);
        double[] best = {(bounds.left() + bounds.right()) / 2, (bounds.low() + bounds.high()) / 2};
        double middleX = best[0];
        double middleY = best[1];
        double span = Math.max(1, Math.hypot(bounds.width(), bounds.height()));
        double most = 0;
        for (int i = 1; i < STEPS; i++) {
            for (int j = 1; j < STEPS; j++) {
                double x = bounds.left() + bounds.width() * i / STEPS;
                double y = bounds.low() + bounds.height() * j / STEPS;
                double away = Math.hypot(x - middleX, y - middleY) / span;
                double room = room(rings, x, y, most);
                double worth = room * (1 - MIDDLE * away);
                if (worth > most) {
                    most = worth;
                    best = new double[] {x, y};
                }
            }
        }
        return best;
    }

    /** Distance to the nearest side; 0 outside, and where it is no more than {@code least}. */
    private static double room(List<double[]> rings, double x, double y, double least) {
        boolean inside = false;
        double nearest = Double.POSITIVE_INFINITY;
        for (double[] ring : rings) {
            inside ^= Inside.of(ring, x, y);
            for (int i = 0; i < ring.length; i += 2) {
                int next = (i + 2) % ring.length;
                nearest = Math.min(nearest, distance(ring, i, next, x, y));
                if (nearest <= least) {
                    return 0;
                }
            }
        }
        return inside ? nearest : 0;
    }

    private static double distance(double[] ring, int from, int to, double x, double y) {
        double alongX = ring[to] - ring[from];
        double alongY = ring[to + 1] - ring[from + 1];
        double square = alongX * alongX + alongY * alongY;
        double share = square == 0 ? 0 : ((x - ring[from]) * alongX + (y - ring[from + 1]) * alongY) / square;
        double held = Math.max(0, Math.min(1, share));
        return Math.hypot(x - ring[from] - held * alongX, y - ring[from + 1] - held * alongY);
    }
}
