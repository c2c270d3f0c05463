package org.thalweg.units;

/**
 * Reads figures the way people write them beside a drawing: {@code 3}, {@code 3.5}, {@code 1/2}, {@code 3 1/2}. ASCII
 * digits and a decimal point, in every locale. Keeps one place in the text and tries each form once, so the time it
 * takes grows with the text and no faster.
 *
 * <p>Where there is no figure it answers NaN, which every sum and product after it keeps.
 */
final class Figures {

    /** The longest text worth reading, in characters: no figure a crew writes is half as long. */
    static final int LONGEST = 40;

    private final String text;
    private int at;

    Figures(String text) {
        this.text = text;
    }

    /** The figure that all of {@code text} is, but for blanks around it. */
    static double amountOf(String text) {
        Figures figures = new Figures(text);
        figures.skipBlanks();
        double amount = figures.amount();
        return figures.done() ? amount : Double.NaN;
    }

    /** The plain number, no fraction, that all of {@code text} is, but for blanks around it. */
    static double numberOf(String text) {
        Figures figures = new Figures(text);
        figures.skipBlanks();
        double number = figures.number();
        return figures.done() ? number : Double.NaN;
    }

    /** Moves past {@code word} if it comes next. */
    boolean take(String word) {
        boolean next = text.startsWith(word, at);
        if (next) {
            at += word.length();
        }
        return next;
    }

    void skipBlanks() {
        while (take(" ")) {}
    }

    /** Whether nothing but blanks is left. */
    boolean done() {
        skipBlanks();
        return at == text.length();
    }

    /** A number, a fraction below one, or a whole number, blanks and a fraction below one. */
    double amount() {
        int start = at;
        double number = whole();
        if (take("/")) {
            return fraction(number, whole());
        }
        if (take(".")) {
            at = start;
            return number();
        }
        return number + fractionAfterBlanks();
    }

    private double number() {
        int start = at;
        double before = whole();
        if (!take(".")) {
            return before;
        }
        double after = whole();
        return Double.isNaN(before + after) ? Double.NaN : Double.parseDouble(text.substring(start, at));
    }

    private double whole() {
        int start = at;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at == start ? Double.NaN : Double.parseDouble(text.substring(start, at));
    }

    /** The 1/2 of 3 1/2, or 0 and not a step further if that is not what comes next. */
    private double fractionAfterBlanks() {
        int start = at;
        skipBlanks();
        if (at > start) {
            double top = whole();
            if (take("/")) {
                return fraction(top, whole());
            }
        }
        at = start;
        return 0;
    }

    /** Below one, as on a tape: 31/2 is a slip of the pen for 3 1/2, and is not read as fifteen and a half. */
    private static double fraction(double top, double bottom) {
        return top < bottom ? top / bottom : Double.NaN;
    }
}
