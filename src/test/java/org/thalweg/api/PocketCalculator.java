package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Does what the contract says of {@code numbers}: decimal numbers, {@code + - * / ^ ( )}, a sign, and a few functions, with
 * angles in degrees. Anything else is refused.
 */
final class PocketCalculator {

    private final String keys;
    private int at;

    private PocketCalculator(String keys) {
        this.keys = keys;
    }

    static double evaluate(String numbers) {
        PocketCalculator calculator = new PocketCalculator(numbers.replace(" ", ""));
        double result = calculator.sum();
        if (calculator.at < calculator.keys.length()) {
            throw calculator.unknown();
        }
        return result;
    }

    private IllegalArgumentException unknown() {
        return new IllegalArgumentException("no such key at " + at + " of " + keys);
    }

    private boolean take(char key) {
        boolean there = at < keys.length() && keys.charAt(at) == key;
        at += there ? 1 : 0;
        return there;
    }

    private double sum() {
        double sum = product();
        while (true) {
            if (take('+')) {
                sum += product();
            } else if (take('-')) {
                sum -= product();
            } else {
                return sum;
            }
        }
    }

    private double product() {
        double product = signed();
        while (true) {
            if (take('*')) {
                product *= signed();
            } else if (take('/')) {
                product /= signed();
            } else {
                return product;
            }
        }
    }

    private double signed() {
        return take('-') ? -signed() : power();
    }

    private double power() {
        double base = one();
        return take('^') ? Math.pow(base, signed()) : base;
    }

    private double one() {
        if (take('(')) {
            double inside = sum();
            close();
            return inside;
        }
        int from = at;
        while (at < keys.length() && (Character.isDigit(keys.charAt(at)) || keys.charAt(at) == '.')) {
            at++;
        }
        return at > from ? Double.parseDouble(keys.substring(from, at)) : function();
    }

    private void close() {
        if (!take(')')) {
            throw unknown();
        }
    }

    private double function() {
        int from = at;
        while (at < keys.length() && Character.isLetter(keys.charAt(at))) {
            at++;
        }
        String name = keys.substring(from, at);
        if (!take('(')) {
            throw unknown();
        }
        List<Double> given = new ArrayList<>();
        do {
            given.add(sum());
        } while (take(','));
        close();
        if (name.equals("min") || name.equals("max")) {
            return given.stream()
                    .reduce(name.equals("min") ? Math::min : Math::max)
                    .orElseThrow();
        }
        if (given.size() != 1) {
            throw unknown();
        }
        return function(name).applyAsDouble(given.get(0));
    }

    private DoubleUnaryOperator function(String name) {
        return switch (name) {
            case "sin" -> degrees -> Math.sin(Math.toRadians(degrees));
            case "cos" -> degrees -> Math.cos(Math.toRadians(degrees));
            case "tan" -> degrees -> Math.tan(Math.toRadians(degrees));
            case "asin" -> ratio -> Math.toDegrees(Math.asin(ratio));
            case "acos" -> ratio -> Math.toDegrees(Math.acos(ratio));
            case "atan" -> ratio -> Math.toDegrees(Math.atan(ratio));
            case "sqrt" -> Math::sqrt;
            case "ceil" -> Math::ceil;
            case "floor" -> Math::floor;
            case "abs" -> Math::abs;
            default -> throw unknown();
        };
    }
}
