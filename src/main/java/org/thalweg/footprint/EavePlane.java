package org.thalweg.footprint;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/**
 * The plane that rises from an eave: at time t its eave lies where a·x + b·y = c + shift·length / unit + speed·t, with the
 * roof still to come on the side where the left is greater. The length is that of (a, b); time is height, whole numbers are
 * steps of the grid of {@link WallPlan}, and speed is the weight (the cotangent of the pitch, made whole; 0 for a gable) times
 * the length. The shift is 0 for what rises from the walls; a slope that takes over from another further up has the one with
 * which both are at the same place then. Sides in one line that rise in one way have one and the same plane.
 */
final class EavePlane {

    private static final MathContext DIGITS = new MathContext(60);

    private final int number;
    private final long a;
    private final long b;
    private final BigInteger weight;
    private final long squareLength;
    private final Root length;
    private final BigInteger unit;
    private final BigInteger whole;
    private final BigInteger shift;
    private final long c;
    private final double speed;
    private final double offset;

    /**
     * What rises from a wall.
     *
     * @param a 2^30 at most either way, without a common factor with {@code b}
     * @param b 2^30 at most
     * @param c 2^61 at most
     */
    EavePlane(int number, long a, long b, long c, BigInteger weight) {
        this(number, a, b, c, weight, BigInteger.ZERO, BigInteger.ONE);
    }

    /** @param unit the height of time 1, in steps; the same for all planes of a plan */
    EavePlane(int number, long a, long b, long c, BigInteger weight, BigInteger shift, BigInteger unit) {
        this.number = number;
        this.a = a;
        this.b = b;
        this.c = c;
        this.weight = weight;
        this.shift = shift;
        squareLength = a * a + b * b;
        length = new Root(BigInteger.valueOf(squareLength));
        this.unit = unit;
        whole = BigInteger.valueOf(c).multiply(unit);
        speed = weight.doubleValue() * Math.sqrt((double) squareLength);
        offset = shift.signum() == 0 ? (double) c : shiftedOffset();
    }

    private double shiftedOffset() {
        BigDecimal root = BigDecimal.valueOf(squareLength).sqrt(DIGITS);
        return new BigDecimal(shift)
                .multiply(root)
                .add(new BigDecimal(whole))
                .divide(new BigDecimal(unit), DIGITS)
                .doubleValue();
    }

    int number() {
        return number;
    }

    long a() {
        return a;
    }

    long b() {
        return b;
    }

    long c() {
        return c;
    }

    /** c and the shift as a double, within 2^-53 of itself. */
    double offset() {
        return offset;
    }

    /** Within 2^-50 of itself. */
    double speed() {
        return speed;
    }

    BigInteger weight() {
        return weight;
    }

    boolean upright() {
        return weight.signum() == 0;
    }

    Root length() {
        return length;
    }

    /** The height of time 1, in steps. */
    BigInteger unit() {
        return unit;
    }

    /** c in units. */
    BigInteger whole() {
        return whole;
    }

    BigInteger shift() {
        return shift;
    }

    boolean shifted() {
        return shift.signum() != 0;
    }

    /** Whether both are at one place at all times; exact. */
    boolean isLike(EavePlane other) {
        if (a != other.a || b != other.b || !weight.equals(other.weight)) {
            return false;
        }
        return new RootSum()
                        .addOffset(BigInteger.ONE, this)
                        .addOffset(BigInteger.ONE.negate(), other)
                        .signum()
                == 0;
    }

    /** Above 0 where {@code next} turns left from this one, seen along the eaves; exact. */
    long turnTo(EavePlane next) {
        return a * next.b - b * next.a;
    }

    /** Above 0 if both run the same way, for planes that are parallel; exact. */
    boolean runsWith(EavePlane other) {
        return a * other.a + b * other.b > 0;
    }
}
