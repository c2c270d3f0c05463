package org.thalweg.api.sheet;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import org.thalweg.api.wire.RiseAndRun;
import org.thalweg.api.wire.Words;
import org.thalweg.units.AreaUnit;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.MassUnit;

/** Words and figures of an answer as they are lettered on a sheet. */
final class Lettered {

    /** Whole numbers up to here are printed without an exponent, as in the answer. */
    private static final double LARGEST_PLAIN = 1e15;

    private Lettered() {}

    /** The contract's word for {@code constant} as people write it: level valley. */
    static String word(Enum<?> constant) {
        return spaced(Words.of(constant));
    }

    /** {@code valleyPan} as people write it: valley pan. */
    static String spaced(String name) {
        StringBuilder words = new StringBuilder(name.length() + 4);
        for (int i = 0; i < name.length(); i++) {
            char letter = name.charAt(i);
            if (Character.isUpperCase(letter)) {
                words.append(i > 0 ? " " : "");
            }
            words.append(Character.toLowerCase(letter));
        }
        return words.toString();
    }

    /** With a capital first. */
    static String title(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** As the answer prints it: a whole number without a fraction, nothing with an exponent. */
    static String number(double value) {
        if (value == Math.rint(value) && Math.abs(value) < LARGEST_PLAIN) {
            return Long.toString((long) value);
        }
        return BigDecimal.valueOf(value).toPlainString();
    }

    /** The unit behind a code of UN/CEFACT Recommendation 20, which price books use and crews do not. */
    static String unit(String code) {
        return Arrays.stream(LengthUnit.values())
                .filter(unit -> unit.code().equals(code))
                .map(LengthUnit::symbol)
                .findFirst()
                .or(() -> Arrays.stream(AreaUnit.values())
                        .filter(unit -> unit.code().equals(code))
                        .map(Lettered::unit)
                        .findFirst())
                .or(() -> Arrays.stream(MassUnit.values())
                        .filter(unit -> unit.code().equals(code))
                        .map(MassUnit::symbol)
                        .findFirst())
                .orElseGet(() -> switch (code) {
                    case "C62" -> "pieces";
                    case "P1" -> "%";
                    default -> code;
                });
    }

    /** {@code ft2} as people write it. */
    static String unit(AreaUnit unit) {
        return unit.symbol().replace('2', '²');
    }

    static String pitch(RiseAndRun pitch) {
        return number(pitch.rise()) + ":" + number(pitch.run());
    }

    static String degrees(double degrees) {
        return number(degrees) + "°";
    }

    /** Above 0 up, below 0 down. */
    static String bend(double degrees) {
        return degrees(Math.abs(degrees)) + (degrees < 0 ? " down" : degrees > 0 ? " up" : "");
    }
}
