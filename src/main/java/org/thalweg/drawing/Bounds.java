package org.thalweg.drawing;

import java.util.Arrays;
import java.util.List;

/**
 * How far something reaches, in the coordinates it is given in.
 *
 * @param left  least to the right
 * @param low   least up
 * @param right most to the right
 * @param high  most up
 */
public record Bounds(double left, double low, double right, double high) {

    /** Of all {@code shapes}, each right and up by turns; at least one corner. */
    public static Bounds of(List<double[]> shapes) {
        double[] reach = {
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        for (double[] shape : shapes) {
            for (int i = 0; i < shape.length; i += 2) {
                reach[0] = Math.min(reach[0], shape[i]);
                reach[1] = Math.min(reach[1], shape[i + 1]);
                reach[2] = Math.max(reach[2], shape[i]);
                reach[3] = Math.max(reach[3], shape[i + 1]);
            }
        }
        if (!Arrays.stream(reach).allMatch(Double::isFinite)) {
            throw new IllegalArgumentException("nothing to bound in " + shapes.size() + " shapes");
        }
        return new Bounds(reach[0], reach[1], reach[2], reach[3]);
    }

    public double width() {
        return right - left;
    }

    public double height() {
        return high - low;
    }
}
