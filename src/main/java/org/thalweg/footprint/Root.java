package org.thalweg.footprint;

import java.math.BigInteger;
import org.jspecify.annotations.Nullable;

/** The square root of a whole number above 0. */
final class Root {

    private static final int[] SIEVES = {64, 63 * 65, 11 * 17 * 19};
    private static final boolean[][] SQUARES = squares();

    static final Root ONE = new Root(BigInteger.ONE);

    private final BigInteger radicand;
    private final int[] rests = new int[SIEVES.length];

    private @Nullable BigInteger inverse;
    private int inverseBits;

    Root(BigInteger radicand) {
        this.radicand = radicand;
        for (int i = 0; i < SIEVES.length; i++) {
            rests[i] = radicand.mod(BigInteger.valueOf(SIEVES[i])).intValue();
        }
    }

    BigInteger radicand() {
        return radicand;
    }

    private Root(Root one, Root other) {
        radicand = one.radicand.multiply(other.radicand);
        for (int i = 0; i < SIEVES.length; i++) {
            rests[i] = (int) ((long) one.rests[i] * other.rests[i] % SIEVES[i]);
        }
    }

    Root times(Root other) {
        return new Root(this, other);
    }

    /** Both roots multiplied, 0 if that is no whole number. */
    BigInteger wholeWith(Root other) {
        if (radicand.equals(other.radicand)) {
            return radicand;
        }
        for (int i = 0; i < SIEVES.length; i++) {
            if (!SQUARES[i][(int) ((long) rests[i] * other.rests[i] % SIEVES[i])]) {
                return BigInteger.ZERO;
            }
        }
        BigInteger[] root = radicand.multiply(other.radicand).sqrtAndRemainder();
        return root[1].signum() == 0 ? root[0] : BigInteger.ZERO;
    }

    /** 2^{@code bits} over the root, rounded down. */
    BigInteger inverse(int bits) {
        BigInteger known = inverse;
        if (known == null || bits > inverseBits) {
            known = BigInteger.ONE.shiftLeft(2 * bits).divide(radicand).sqrt();
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
