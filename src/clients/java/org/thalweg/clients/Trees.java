package org.thalweg.clients;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Holds two answers against each other: every member and every figure, wherever it stands. */
final class Trees {

    private Trees() {}

    /** Where two trees differ, each place with both values; empty when they say the same. Numbers are compared as numbers. */
    static List<String> differences(JsonNode expected, JsonNode actual) {
        List<String> differences = new ArrayList<>();
        compare("", expected, actual, differences);
        return differences;
    }

    private static void compare(String at, JsonNode expected, JsonNode actual, List<String> differences) {
        if (expected.isObject() && actual.isObject()) {
            TreeSet<String> names = new TreeSet<>();
            expected.fieldNames().forEachRemaining(names::add);
            actual.fieldNames().forEachRemaining(names::add);
            names.forEach(name -> compare(at + "/" + name, expected.path(name), actual.path(name), differences));
        } else if (expected.isArray() && actual.isArray()) {
            for (int i = 0; i < Math.max(expected.size(), actual.size()); i++) {
                compare(at + "/" + i, expected.path(i), actual.path(i), differences);
            }
        } else if (!same(expected, actual)) {
            differences.add("%s: %s became %s".formatted(at, told(expected), told(actual)));
        }
    }

    private static boolean same(JsonNode expected, JsonNode actual) {
        return expected.isNumber() && actual.isNumber()
                ? expected.decimalValue().compareTo(actual.decimalValue()) == 0
                : expected.equals(actual);
    }

    private static String told(JsonNode value) {
        return value.isMissingNode() ? "nothing" : value.toString();
    }
}
