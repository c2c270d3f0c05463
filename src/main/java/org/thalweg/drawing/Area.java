package org.thalweg.drawing;

/**
 * A part of a sheet, points.
 *
 * @param left   x of its left side
 * @param top    y of its upper side
 * @param width  to the right
 * @param height downward
 */
public record Area(double left, double top, double width, double height) {

    public double right() {
        return left + width;
    }

    public double bottom() {
        return top + height;
    }

    /** What is left of it inside a margin of {@code points} all round. */
    public Area inside(double points) {
        return new Area(left + points, top + points, width - 2 * points, height - 2 * points);
    }

    /** Its leftmost {@code points}. */
    public Area leftPart(double points) {
        return new Area(left, top, points, height);
    }

    /** What lies beyond its leftmost {@code points}. */
    public Area beyond(double points) {
        return new Area(left + points, top, width - points, height);
    }

    /** What lies under its topmost {@code points}. */
    public Area below(double points) {
        return new Area(left, top + points, width, height - points);
    }
}
