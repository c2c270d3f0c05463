package org.thalweg.footprint;

import java.math.BigInteger;
import org.jspecify.annotations.Nullable;

/**
 * The plane that rises from an eave: at time t its eave lies where a·x + b·y = c + speed·t, with the roof still to come on
 * the side where the left is greater. Time is height, whole numbers are steps of the grid of {@link WallPlan}, and speed is the
 * weight (the cotangent of the pitch, made whole; 0 for a gable) times the length of (a, b). Sides in one line with one pitch
 * have one and the same plane.
 */
final class EavePlane {

    private static final int[] SIEVES = {64, 63 * 65, 11 * 17 * 19};
    private static final boolean[][] SQUARES = squares();

    private final int number;
    private final long a;
    private final long b;
    private final long c;
    private final BigInteger weight;
    private final long squareLength;
    private final BigInteger scale;
    private final double speed;
    private final double offset;
    private final int[] rests = new int[SIEVES.length];

    private @Nullable BigInteger inverse;
    private int inverseBits;

    /**
     * @param a 2^30 at most either way, without a common factor with {@code b}
     * @param b 2^30 at most
     * @param c 2^61 at most
     */
    EavePlane(int number, long a, long b, long c, BigInteger weight) {
        this.number = number;
        this.a = a;
        this.b = b;
        this.c = c;
        this.weight = weight;
        squareLength = a * a + b * b;
        scale = BigInteger.valueOf(squareLength);
        speed = weight.doubleValue() * Math.sqrt((double) squareLength);
        offset = (double) c;
        for (int i = 0; i < SIEVES.length; i++) {
            rests[i] = (int) (squareLength % SIEVES[i]);
        }
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

    /** c as a double, within 2^-53 of itself. */
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

    long squareLength() {
        return squareLength;
    }

    BigInteger scale() {
        return scale;
    }

    /** Above 0 where {@code next} turns left from this one, seen along the eaves; exact. */
    long turnTo(EavePlane next) {
        return a * next.b - b * next.a;
    }

    /** Above 0 if both run the same way, for planes that are parallel; exact. */
    boolean runsWith(EavePlane other) {
        return a * other.a + b * other.b > 0;
    }

    /** The root of both radicands multiplied, 0 if that is no whole number. */
    BigInteger rootWith(EavePlane other) {
        for (int i = 0; i < SIEVES.length; i++) {
            if (!SQUARES[i][(int) ((long) rests[i] * other.rests[i] % SIEVES[i])]) {
                return BigInteger.ZERO;
            }
        }
        BigInteger[] root = scale.multiply(other.scale).sqrtAndRemainder();
        return root[1].signum() == 0 ? root[0] : BigInteger.ZERO;
    }

    /** 2^{@code bits} over the length of (a, b), rounded down. */
    BigInteger inverseRoot(int bits) {
        BigInteger known = inverse;
        if (known == null || bits > inverseBits) {
            known = BigInteger.ONE.shiftLeft(2 * bits).divide(scale).sqrt();
            inverse = known;
            inverseBits = bits;
        }
        return bits == inverseBits ? known : known.shiftRight(inverseBits - bits);
    }

    private static boolean[][] squares() {
        boolean[][] squares = new boolean[SIEVES.length][];
        for (int i = 0; i < SIEVES.length; i++) {
            squares[i] = new boolean[SIEVES[i]];
            for (long root = 0; root < SIEVES[i]; root++) {
                squares[i][(int) (root * root % SIEVES[i])] = true;
            }
        }
        return squares;
    }
}
