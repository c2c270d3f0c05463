package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;

/** Signs that doubles cannot tell. */
class RootSumTest {

    /** A plane whose speed is the root of a² + b². */
    private static EavePlane root(long a, long b) {
        return new EavePlane(0, a, b, 0, BigInteger.ONE);
    }

    private static RootSum sum(long one, EavePlane first, long two, EavePlane second) {
        return new RootSum().add(BigInteger.valueOf(one), first).add(BigInteger.valueOf(two), second);
    }

    @Test
    void rootsThatMakeASquareTogetherAreCountedTogether() {
        // root 2 is a third of root 18, and 5 is root 25.
        assertThat(sum(3, root(1, 1), -1, root(3, 3)).signum()).isZero();
        assertThat(sum(5, root(1, 0), -1, root(3, 4)).signum()).isZero();
        assertThat(sum(3_000_001, root(1, 1), -1_000_000, root(3, 3)).signum()).isPositive();
    }

    /** Convergents of the root of 2 by Pell's equation, p² - 2 q² = ±1: so close that doubles see nought. */
    @Test
    void nearlyNoughtIsNotNought() {
        long p = 1;
        long q = 1;
        for (int i = 1; i < 45; i++) {
            long next = p + 2 * q;
            q = p + q;
            p = next;
            int expected = BigInteger.valueOf(p)
                    .pow(2)
                    .subtract(BigInteger.valueOf(q).pow(2).shiftLeft(1))
                    .signum();
            assertThat(sum(p, root(1, 0), -q, root(1, 1)).signum()).isEqualTo(expected);
        }
    }
}
