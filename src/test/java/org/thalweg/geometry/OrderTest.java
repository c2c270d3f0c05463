package org.thalweg.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OrderTest {

    /** Few different keys, so that many are equal. */
    @ParameterizedTest(name = "{0} things, seed 1")
    @ValueSource(ints = {0, 1, 2, 24, 25, 49, 1_000, 4_097})
    void thingsComeInOrderAndEqualsStayInTheirs(int count) {
        int[] keys = new Random(1).ints(count, 0, 50).toArray();
        int[] expected = IntStream.range(0, count)
                .boxed()
                .sorted(Comparator.comparingInt(i -> keys[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        assertThat(Order.of(count, (a, b) -> keys[a] < keys[b])).containsExactly(expected);
    }
}
