package org.thalweg.pricing;

/** Global Trade Item Numbers of 8, 12, 13 or 14 digits [published: GS1 General Specifications, section 7.9]. */
public final class Gtin {

    private Gtin() {}

    /**
     * Whether the last digit checks the others: weighted 3, 1, 3 … from the right, they add up with it to a whole number of
     * tens.
     */
    public static boolean checks(String digits) {
        int length = digits.length();
        if (length != 8 && (length < 12 || length > 14)) {
            return false;
        }
        int sum = 0;
        for (int i = 0; i < length; i++) {
            char c = digits.charAt(length - 1 - i);
            if (c < '0' || c > '9') {
                return false;
            }
            sum += (c - '0') * (i % 2 == 0 ? 1 : 3);
        }
        return sum % 10 == 0;
    }
}
