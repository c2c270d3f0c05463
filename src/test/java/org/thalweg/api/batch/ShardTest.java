package org.thalweg.api.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShardTest {

    @ParameterizedTest
    @CsvSource({"0, 1", "1, 7", "1000, 64", "63, 64", "9000000000000000000, 99999"})
    void sharesFollowEachOtherAndAreTheWhole(long size, int count) {
        long reached = 0;
        for (int index = 0; index < count; index++) {
            Shard shard = new Shard(index, count);
            assertThat(shard.begin(size)).isEqualTo(reached);
            reached = shard.end(size);
        }
        assertThat(reached).isEqualTo(size);
    }

    @ParameterizedTest
    @CsvSource({"1000, 64", "9000000000000000000, 64", "5, 7"})
    void sharesAreEven(long size, int count) {
        for (int index = 0; index < count; index++) {
            Shard shard = new Shard(index, count);
            assertThat(shard.end(size) - shard.begin(size)).isBetween(size / count, size / count + 1);
        }
    }

    @Test
    void isReadAsItIsWritten() {
        assertThat(Shard.parse("3/64")).isEqualTo(new Shard(3, 64)).hasToString("3/64");
    }

    @ParameterizedTest
    @ValueSource(strings = {"64/64", "1/0", "0/100000", "-1/4", "1", "1/", "/4", "1/2/3", "a/b", " 1/4", ""})
    void whatIsNoShardIsRefused(String text) {
        assertThatThrownBy(() -> Shard.parse(text)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void namesSortAsTheShardsDo() {
        assertThat(new Shard(9, 64).file("answers", "ndjson"))
                .isEqualTo("answers-00009-of-00064.ndjson")
                .isLessThan(new Shard(10, 64).file("answers", "ndjson"));
    }
}
