package org.thalweg.units;

/**
 * A length or a signed distance. Kept in metres; the factory says which unit a figure came in.
 *
 * @param metres the length; finite, negative only where a signed distance is meant
 */
public record Length(double metres) implements Measure, Comparable<Length> {

    /** Nothing long. */
    public static final Length ZERO = new Length(0);

    public Length {
        if (!Double.isFinite(metres)) {
            throw new IllegalArgumentException("a length (%s m) must be finite".formatted(metres));
        }
    }

    public static Length metres(double metres) {
        return new Length(metres);
    }

    public static Length inches(double inches) {
        return LengthUnit.INCH.of(inches);
    }

    public static Length feet(double feet) {
        return LengthUnit.FOOT.of(feet);
    }

    public static Length millimetres(double millimetres) {
        return LengthUnit.MILLIMETRE.of(millimetres);
    }

    public double in(LengthUnit unit) {
        return unit.from(this);
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(metres, other.metres);
    }
}
