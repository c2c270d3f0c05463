package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class LimitsTest {

    @Test
    void everyLimitHasItsOwnName() {
        assertThat(Limits.ALL).extracting(Limit::name).doesNotHaveDuplicates();
    }

    @Test
    void everyLimitOfALengthOrPitchIsTold() {
        List<Object> constants = Arrays.stream(Limits.class.getFields())
                .filter(field -> field.getType() == Limit.class)
                .map(LimitsTest::value)
                .toList();
        assertThat(constants).isNotEmpty();
        assertThat(Limits.ALL)
                .containsAll(constants.stream().map(Limit.class::cast).toList());
    }

    @Test
    void everyLimitOfACountIsTold() {
        // Those of answers follow from those of requests.
        List<String> ofAnswers = List.of(
                "ID_ANSWERED",
                "POINTER_LENGTH",
                "CORNERS_ANSWERED",
                "EDGES",
                "FINDINGS",
                "CAUTIONS",
                "NEEDED",
                "BLANK_CORNERS",
                "FOLDS",
                "VALLEY_ROWS",
                "TRIM_CORNERS",
                "CODES",
                "FLAT_WORKING",
                "WORKING",
                "FASTENERS",
                "SEAL_RUNS",
                "DEFAULTS",
                "PANELS_ANSWERED",
                "ORDER_LINES",
                "TOTALS",
                "REFERENCE_ROWS");
        List<Double> told = Limits.ALL.stream()
                .flatMap(limit -> List.of(limit.least(), limit.most()).stream())
                .toList();
        assertThat(Limits.class.getFields())
                .filteredOn(field -> field.getType() == int.class && !ofAnswers.contains(field.getName()))
                .isNotEmpty()
                .allSatisfy(
                        field -> assertThat(told).as(field.getName()).contains(((Integer) value(field)).doubleValue()));
    }

    private static Object value(Field field) {
        try {
            return field.get(null);
        } catch (IllegalAccessException e) {
            throw new AssertionError(e);
        }
    }
}
