package org.thalweg.drawing;

import org.thalweg.units.LengthUnit;

/**
 * Where things lie on the sheet: from the coordinates they are given in, x right and y up, to points.
 *
 * @param scale how large
 * @param x     of the sheet where both coordinates are 0
 * @param y     of the sheet there
 * @param lying whether up runs to the right of the sheet and right runs down, as a panel lies on the bench
 */
public record Fit(Scale scale, double x, double y, boolean lying) {

    /** What is within {@code bounds}, in the middle of {@code area}, as large as a usual scale allows. */
    public static Fit middle(Bounds bounds, LengthUnit unit, Area area) {
        Scale scale = Scale.fitting(bounds.width(), bounds.height(), unit, area);
        double points = scale.points();
        return new Fit(
                scale,
                area.left() + (area.width() - bounds.width() * points) / 2 - bounds.left() * points,
                area.top() + (area.height() + bounds.height() * points) / 2 + bounds.low() * points,
                false);
    }

    public double x(double right, double up) {
        return x + (lying ? up : right) * scale.points();
    }

    public double y(double right, double up) {
        return y + (lying ? right : -up) * scale.points();
    }

    /** Points, right and up by turns, to x and y by turns. */
    public double[] corners(double[] given) {
        double[] corners = new double[given.length];
        for (int i = 0; i < given.length; i += 2) {
            corners[i] = x(given[i], given[i + 1]);
            corners[i + 1] = y(given[i], given[i + 1]);
        }
        return corners;
    }
}
