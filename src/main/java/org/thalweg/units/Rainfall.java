package org.thalweg.units;

/**
 * How hard it rains: the depth of water that would stand on level ground after a time. Weather services print it as
 * inches or millimetres in an hour; which storm, and over how many minutes it is taken, is for the caller to know.
 *
 * @param metresPerSecond finite, 0 or more
 */
public record Rainfall(double metresPerSecond) implements Measure, Comparable<Rainfall> {

    private static final double SECONDS_AN_HOUR = 3600;

    public Rainfall {
        if (!(metresPerSecond >= 0 && Double.isFinite(metresPerSecond))) {
            throw new IllegalArgumentException("a rainfall (%s m/s) must be 0 or more".formatted(metresPerSecond));
        }
    }

    /** Rain of which this much falls in an hour. */
    public static Rainfall perHour(Length depth) {
        return new Rainfall(depth.metres() / SECONDS_AN_HOUR);
    }

    /** The rain that brings {@code flow} off {@code area}. */
    public static Rainfall of(Flow flow, Area area) {
        return new Rainfall(flow.cubicMetresPerSecond() / area.squareMetres());
    }

    /** What falls in an hour. */
    public Length inAnHour() {
        return Length.metres(metresPerSecond * SECONDS_AN_HOUR);
    }

    /** What runs off {@code area}, seen from above, when nothing soaks in and the storm lasts: Q = i · A. */
    public Flow on(Area area) {
        return new Flow(metresPerSecond * area.squareMetres());
    }

    /** How a rainfall is written beside a tape: {@code in/h}, {@code mm/h}. */
    public static String symbol(LengthUnit tape) {
        return tape.symbol() + "/h";
    }

    /** The rainfall as an answer prints it: so much an hour, with the decimals of a length. */
    public double round(LengthUnit tape) {
        return tape.round(inAnHour());
    }

    @Override
    public int compareTo(Rainfall other) {
        return Double.compare(metresPerSecond, other.metresPerSecond);
    }
}
