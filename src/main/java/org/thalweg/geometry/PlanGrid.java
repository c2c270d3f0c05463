package org.thalweg.geometry;

/**
 * Places seen from above, sorted into square cells of about one place each, so that the ones beside a line are found
 * without looking at all of them.
 */
public final class PlanGrid {

    /** With so few places looking at all of them is the fastest search. */
    private static final int FEW = 24;

    private final double leastX;
    private final double leastY;
    private final double perMetre;
    private final int columns;
    private final int rows;
    /** Where each cell's places start in {@link #places}; one more than there are cells. */
    private final int[] start;

    private final int[] places;

    /**
     * @param x     metres
     * @param y     metres, as many
     * @param count how many of them are places; at least 1
     */
    public PlanGrid(double[] x, double[] y, int count) {
        double[] spanX = span(x, count);
        double[] spanY = span(y, count);
        double width = spanX[1] - spanX[0];
        double depth = spanY[1] - spanY[0];
        // Never finer than a place a cell along the longer side: a row of places needs no square of cells.
        double cell = Math.max(Math.sqrt(width * depth / count), Math.max(width, depth) / count);
        boolean one = count <= FEW || !(cell > 0);
        leastX = spanX[0];
        leastY = spanY[0];
        perMetre = one ? 0 : 1 / cell;
        columns = (int) (width * perMetre) + 1;
        rows = (int) (depth * perMetre) + 1;
        start = new int[columns * rows + 1];
        places = new int[count];
        fill(x, y, count);
    }

    private void fill(double[] x, double[] y, int count) {
        for (int i = 0; i < count; i++) {
            start[cell(column(x[i]), row(y[i])) + 1]++;
        }
        for (int c = 1; c < start.length; c++) {
            start[c] += start[c - 1];
        }
        int[] free = start.clone();
        for (int i = 0; i < count; i++) {
            places[free[cell(column(x[i]), row(y[i]))]++] = i;
        }
    }

    /**
     * Every place within {@code reach} of the line from a to b, seen from above, and a few further off.
     *
     * @param ax    a, metres
     * @param ay    a, metres
     * @param bx    b, metres; may be a
     * @param by    b, metres
     * @param reach metres, 0 or more
     * @param found filled with the numbers of the places, cell by cell; as long as there are places
     * @return how many were found
     */
    public int along(double ax, double ay, double bx, double by, double reach, int[] found) {
        int first = column(Math.min(ax, bx) - reach);
        int last = column(Math.max(ax, bx) + reach);
        int count = 0;
        for (int c = first; c <= last; c++) {
            double y0 = ay;
            double y1 = by;
            if (first != last) {
                y0 = heightAt(leastX + c / perMetre - reach, ax, ay, bx, by);
                y1 = heightAt(leastX + (c + 1) / perMetre + reach, ax, ay, bx, by);
            }
            int low = start[cell(c, row(Math.min(y0, y1) - reach))];
            int high = start[cell(c, row(Math.max(y0, y1) + reach)) + 1];
            System.arraycopy(places, low, found, count, high - low);
            count += high - low;
        }
        return count;
    }

    /** y of the line from a to b at {@code x}, or of its nearer end. */
    private static double heightAt(double x, double ax, double ay, double bx, double by) {
        double t = (x - ax) / (bx - ax);
        // An upright line (t not a number, or endless) is handled by its ends: the first column gets both.
        return t > 0 ? (t < 1 ? ay + t * (by - ay) : by) : ay;
    }

    private int cell(int column, int row) {
        return column * rows + row;
    }

    private int column(double x) {
        return (int) Math.max(0, Math.min(columns - 1, (x - leastX) * perMetre));
    }

    private int row(double y) {
        return (int) Math.max(0, Math.min(rows - 1, (y - leastY) * perMetre));
    }

    private static double[] span(double[] values, int count) {
        double least = values[0];
        double most = values[0];
        for (int i = 1; i < count; i++) {
            least = Math.min(least, values[i]);
            most = Math.max(most, values[i]);
        }
        return new double[] {least, most};
    }
}
