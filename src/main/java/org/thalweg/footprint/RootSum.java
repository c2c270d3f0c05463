package org.thalweg.footprint;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Arrays;

/**
 * A sum of whole multiples of square roots: of the {@linkplain EavePlane#speed speeds} of a few planes, or of these times where
 * the planes are. Its sign is exact: roots whose radicands make a square together are counted together, and square roots of
 * which no two do are linearly independent over the rationals (Besicovitch 1940), so the sum is nought only if every count
 * is. If it is not nought, working with more and more digits must tell its sign.
 */
final class RootSum {

    private static final int FIRST_BITS = 128;
    /** Somewhat more than 90 binary digits; all that a quotient by a power of two has would take far longer. */
    private static final MathContext DIGITS = new MathContext(30);

    private Root[] roots = new Root[8];
    private BigInteger[] counts = new BigInteger[8];
    private int size;

    /** Adds {@code count} times the speed of {@code plane}. */
    RootSum add(BigInteger count, EavePlane plane) {
        return add(count.multiply(plane.weight()), plane.length());
    }

    /** Adds {@code count} times the speed of {@code plane} times the offset of another, in units. */
    RootSum add(BigInteger count, EavePlane plane, EavePlane at) {
        BigInteger speed = count.multiply(plane.weight());
        add(speed.multiply(at.whole()), plane.length());
        if (!at.shifted() || speed.signum() == 0) {
            return this;
        }
        BigInteger both = speed.multiply(at.shift());
        BigInteger whole = plane.length().wholeWith(at.length());
        return whole.signum() > 0
                ? add(both.multiply(whole), Root.ONE)
                : add(both, plane.length().times(at.length()));
    }

    /** Adds {@code count} times the offset of a plane, in units. */
    RootSum addOffset(BigInteger count, EavePlane at) {
        return add(count.multiply(at.whole()), Root.ONE).add(count.multiply(at.shift()), at.length());
    }

    private RootSum add(BigInteger count, Root root) {
        if (count.signum() == 0) {
            return this;
        }
        for (int i = 0; i < size; i++) {
            // sqrt(r) = sqrt(r·k) / k · sqrt(k): counts are kept over the radicand of the first of each kin.
            BigInteger whole = root.wholeWith(roots[i]);
            if (whole.signum() > 0) {
                counts[i] = counts[i].add(count.multiply(whole));
                return this;
            }
        }
        if (size == roots.length) {
            roots = Arrays.copyOf(roots, 2 * size);
            counts = Arrays.copyOf(counts, 2 * size);
        }
        roots[size] = root;
        counts[size++] = count.multiply(root.radicand());
        return this;
    }

    /** How many roots are in it of which no two are kin. */
    int kins() {
        return size;
    }

    int signum() {
        int sign = 0;
        boolean mixed = false;
        for (int i = 0; i < size; i++) {
            int one = counts[i].signum();
            mixed |= one * sign < 0;
            sign = one == 0 ? sign : one;
        }
        return mixed ? scaled(8)[0].signum() : sign;
    }

    /** The value to some 90 binary digits. */
    BigDecimal value() {
        int sign = 0;
        for (int i = 0; i < size; i++) {
            sign |= counts[i].signum();
        }
        if (sign == 0) {
            return BigDecimal.ZERO;
        }
        BigInteger[] scaled = scaled(90);
        return new BigDecimal(scaled[0])
                .divide(new BigDecimal(BigInteger.ONE.shiftLeft(scaled[1].intValueExact())), DIGITS);
    }

    /** The value times two to a power, and the power; more than 2^{@code sure} times as large as its error. */
    private BigInteger[] scaled(int sure) {
        for (int bits = FIRST_BITS; ; bits *= 2) {
            BigInteger sum = BigInteger.ZERO;
            BigInteger error = BigInteger.ZERO;
            for (int i = 0; i < size; i++) {
                sum = sum.add(counts[i].multiply(roots[i].inverse(bits)));
                error = error.add(counts[i].abs());
            }
            if (sum.abs().compareTo(error.shiftLeft(sure)) > 0) {
                return new BigInteger[] {sum, BigInteger.valueOf(bits)};
            }
        }
    }
}
