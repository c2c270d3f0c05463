package org.thalweg.drainage;

import java.util.Arrays;

/**
 * A catchment in bands: each reaches a stretch of the edge and is bounded up the slope by straight lines, so its depth
 * changes evenly along the stretch. Kept as bare arrays, four numbers a band.
 */
final class Bands {

    private static final int FROM = 0;
    private static final int TO = 1;
    private static final int AT_FROM = 2;
    private static final int AT_TO = 3;
    private static final int EACH = 4;

    private double[] of = new double[8 * EACH];
    private int count;

    int count() {
        return count;
    }

    /**
     * One more band.
     *
     * @param from   where on the edge it begins; metres along
     * @param to     where it ends, above or below {@code from}
     * @param atFrom what its area would be if it were as deep everywhere as at {@code from}; plan, square metres
     * @param atTo   the same at {@code to}
     */
    void add(double from, double to, double atFrom, double atTo) {
        int at = EACH * count++;
        if (at == of.length) {
            of = Arrays.copyOf(of, 2 * at);
        }
        boolean upward = from <= to;
        of[at + FROM] = upward ? from : to;
        of[at + TO] = upward ? to : from;
        of[at + AT_FROM] = upward ? atFrom : atTo;
        of[at + AT_TO] = upward ? atTo : atFrom;
    }

    /** Of the first {@code bands} bands. Square metres. */
    double area(int bands) {
        double area = 0;
        for (int at = 0; at < EACH * bands; at += EACH) {
            area += (of[at + AT_FROM] + of[at + AT_TO]) / 2;
        }
        return area;
    }

    /** Of what reaches the edge above a place. Square metres. */
    double areaAbove(double along) {
        double area = 0;
        for (int at = 0; at < EACH * count; at += EACH) {
            if (along <= of[at + FROM]) {
                area += (of[at + AT_FROM] + of[at + AT_TO]) / 2;
            } else if (along < of[at + TO]) {
                double left = (of[at + TO] - along) / (of[at + TO] - of[at + FROM]);
                double here = of[at + AT_TO] + left * (of[at + AT_FROM] - of[at + AT_TO]);
                area += left * (here + of[at + AT_TO]) / 2;
            }
        }
        return area;
    }
}
