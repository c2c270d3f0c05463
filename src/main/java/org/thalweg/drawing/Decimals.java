package org.thalweg.drawing;

/** Numbers of a drawing as short decimals: a hundredth of a point is a third of a hundredth of a millimetre. */
final class Decimals {

    private static final int PLACES = 100;

    private Decimals() {}

    static String of(double number) {
        StringBuilder text = new StringBuilder(8);
        append(text, number);
        return text.toString();
    }

    /** To two places, no zeros at the end. */
    static void append(StringBuilder text, double number) {
        long hundredths = Math.round(number * PLACES);
        if (hundredths < 0) {
            text.append('-');
            hundredths = -hundredths;
        }
        text.append(hundredths / PLACES);
        int part = (int) (hundredths % PLACES);
        if (part != 0) {
            text.append('.').append((char) ('0' + part / 10));
            if (part % 10 != 0) {
                text.append((char) ('0' + part % 10));
            }
        }
    }
}
