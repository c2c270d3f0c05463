package org.thalweg.footprint;

import java.math.BigInteger;
import java.util.List;
import org.thalweg.units.Pitch;

/**
 * How fast an eave moves inward as it rises: run over rise, as a ratio of whole numbers. Pitches as crews write them are
 * ratios of small numbers and stay exact; others are rounded to 2^-30, which moves a slope of 10 m by 10 nm.
 *
 * @param run  0 for a gable
 * @param rise above 0; no common factor with {@code run}
 */
record Cotangent(BigInteger run, BigInteger rise) {

    static final Cotangent UPRIGHT = new Cotangent(BigInteger.ZERO, BigInteger.ONE);

    private static final long SMALL = 4096;
    private static final double SAME = 1e-14;
    private static final int ROUNDED_BITS = 30;
    /** A unit of more digits is not worth its exactness. */
    private static final int LONGEST_UNIT = 400;

    static Cotangent of(Pitch pitch) {
        double value = pitch.run() / pitch.rise();
        // Continued fraction: the best ratios with small numbers, one after the other.
        long beforeP = 0;
        long beforeQ = 1;
        long p = 1;
        long q = 0;
        double rest = value;
        while (true) {
            long whole = (long) Math.floor(rest);
            long nextP = whole * p + beforeP;
            long nextQ = whole * q + beforeQ;
            if (nextQ > SMALL) {
                return rounded(value);
            }
            if (Math.abs((double) nextP / nextQ - value) <= SAME * value) {
                return new Cotangent(BigInteger.valueOf(nextP), BigInteger.valueOf(nextQ));
            }
            beforeP = p;
            beforeQ = q;
            p = nextP;
            q = nextQ;
            rest = 1 / (rest - whole);
        }
    }

    private static Cotangent rounded(double value) {
        BigInteger run = BigInteger.valueOf(Math.round(value * (1 << ROUNDED_BITS)));
        BigInteger rise = BigInteger.ONE.shiftLeft(ROUNDED_BITS);
        BigInteger factor = run.gcd(rise);
        return new Cotangent(run.divide(factor), rise.divide(factor));
    }

    /** What all of these times it are whole numbers, or close enough to them if that would take too many digits. */
    static BigInteger unit(List<Cotangent> all) {
        BigInteger unit = BigInteger.ONE;
        for (Cotangent one : all) {
            unit = unit.multiply(one.rise).divide(unit.gcd(one.rise));
            if (unit.bitLength() > LONGEST_UNIT) {
                return BigInteger.ONE.shiftLeft(2 * ROUNDED_BITS);
            }
        }
        return unit;
    }

    BigInteger times(BigInteger unit) {
        return unit.multiply(run).add(rise.shiftRight(1)).divide(rise);
    }
}
