package org.thalweg.units;

import java.util.Optional;

/**
 * Tape marks: what a crew reads off the tape and calls down from the roof.
 *
 * <p>North American tapes carry sixteenths of an inch, metric ones millimetres, so that is what a {@link #mark} is
 * rounded to. A length halfway between two marks goes to the one further from zero, as the US Navy's builders' text does
 * [published: Builder 3&2 vol. 2, NAVEDTRA 14044, p. 2-12]; NIST Handbook 44 would send it to the even mark.
 */
public final class Tape {

    /** The longest text {@link #read} looks at, in characters. */
    public static final int LONGEST = Figures.LONGEST;

    private static final int SIXTEENTHS_PER_INCH = 16;
    private static final int INCHES_PER_FOOT = 12;

    private Tape() {}

    /**
     * Reads a length as written beside a drawing. Accepted, with blanks or none between figure and mark:
     *
     * <ul>
     *   <li>{@code 12' 3 1/2"}, {@code 12'-3 1/2"}, {@code 2 ft 6 in}: whole feet, then inches below 12;
     *   <li>{@code 12'}, {@code 3 1/2"}, {@code 3.5"}, {@code 3 in}, {@code 1050 mm}, {@code 10.5 cm}, {@code 1.05 m};
     *   <li>{@code 3 1/2}, {@code 42}: no mark, the given unit;
     *   <li>a leading minus, which holds for all that follows: {@code -1' 6"} is 18 inches below.
     * </ul>
     *
     * A foot may be marked {@code '}, {@code ′} or {@code ft}, an inch {@code "}, {@code ″} or {@code in}. A fraction is
     * below one. Everything else is no length: other digits, exponents, signs inside, more than {@link #LONGEST}
     * characters.
     *
     * @param unit what a figure without a mark is in
     */
    public static Optional<Length> read(String text, LengthUnit unit) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        Figures figures = new Figures(text);
        figures.skipBlanks();
        double sign = figures.take("-") ? -1 : 1;
        double metres = metres(figures, unit);
        if (Double.isNaN(metres) || !figures.done()) {
            return Optional.empty();
        }
        return Optional.of(metres == 0 ? Length.ZERO : Length.metres(sign * metres));
    }

    private static double metres(Figures figures, LengthUnit unit) {
        double amount = figures.amount();
        figures.skipBlanks();
        if (takeFootMark(figures)) {
            boolean alone = !figures.take("-") && figures.done();
            return alone ? of(amount, LengthUnit.FOOT) : withInches(amount, figures);
        }
        return of(amount, takeMark(figures).orElse(unit));
    }

    /** The finest mark on the tape of who measures in this unit: a sixteenth of an inch, or a millimetre. */
    public static Length finest(LengthUnit unit) {
        return unit.inInches() ? Length.inches(1.0 / SIXTEENTHS_PER_INCH) : LengthUnit.MILLIMETRE.of(1);
    }

    /** Feet and inches go together as inches, so that 12' 3 1/2" is the very same length as 147.5 in. */
    private static double withInches(double feet, Figures figures) {
        double inches = figures.amount();
        figures.skipBlanks();
        boolean asOnATape = feet == Math.rint(feet) && inches < INCHES_PER_FOOT && takeInchMark(figures);
        return asOnATape ? of(INCHES_PER_FOOT * feet + inches, LengthUnit.INCH) : Double.NaN;
    }

    private static double of(double amount, LengthUnit unit) {
        return Double.isNaN(amount) ? amount : unit.of(amount).metres();
    }

    private static Optional<LengthUnit> takeMark(Figures figures) {
        if (takeInchMark(figures)) {
            return Optional.of(LengthUnit.INCH);
        }
        if (figures.take("mm")) {
            return Optional.of(LengthUnit.MILLIMETRE);
        }
        if (figures.take("cm")) {
            return Optional.of(LengthUnit.CENTIMETRE);
        }
        return figures.take("m") ? Optional.of(LengthUnit.METRE) : Optional.empty();
    }

    private static boolean takeFootMark(Figures figures) {
        return figures.take("'") || figures.take("′") || figures.take("ft");
    }

    private static boolean takeInchMark(Figures figures) {
        return figures.take("\"") || figures.take("″") || figures.take("in");
    }

    /**
     * The mark on the tape nearest to {@code length}: {@code 20 1/8"} for inches, {@code 1' 8 1/8"} for feet,
     * {@code 511 mm} for any metric unit, a leading minus below zero. {@link #read} reads every mark back.
     */
    public static String mark(Length length, LengthUnit unit) {
        return switch (unit) {
            case INCH -> inchMark(sixteenths(length));
            case FOOT -> footMark(sixteenths(length));
            case MILLIMETRE, CENTIMETRE, METRE -> millimetres(length) + " mm";
        };
    }

    /** How {@link #mark} rounds, in one sentence for people. */
    public static String rule(LengthUnit unit) {
        return switch (unit) {
            case INCH, FOOT ->
                "Tape marks are to the nearest sixteenth of an inch;"
                        + " a length halfway between two marks goes to the one further from zero.";
            case MILLIMETRE, CENTIMETRE, METRE ->
                "Tape marks are to the nearest millimetre;"
                        + " a length halfway between two marks goes to the one further from zero.";
        };
    }

    private static long sixteenths(Length length) {
        return (long) Rounding.nearest(SIXTEENTHS_PER_INCH * LengthUnit.INCH.from(length));
    }

    private static long millimetres(Length length) {
        return (long) Rounding.nearest(LengthUnit.MILLIMETRE.from(length));
    }

    private static String inchMark(long sixteenths) {
        StringBuilder mark = signed(sixteenths);
        long rest = Math.abs(sixteenths);
        if (rest >= SIXTEENTHS_PER_INCH || rest == 0) {
            mark.append(rest / SIXTEENTHS_PER_INCH);
        }
        if (rest > SIXTEENTHS_PER_INCH && rest % SIXTEENTHS_PER_INCH != 0) {
            mark.append(' ');
        }
        return fraction(mark, rest).append('"').toString();
    }

    /** Feet are always there, and so are whole inches: {@code 0' 0 1/16"}. The columns of a cut list then line up. */
    private static String footMark(long sixteenths) {
        StringBuilder mark = signed(sixteenths);
        long size = Math.abs(sixteenths);
        long inches = size / SIXTEENTHS_PER_INCH;
        mark.append(inches / INCHES_PER_FOOT).append("' ").append(inches % INCHES_PER_FOOT);
        if (size % SIXTEENTHS_PER_INCH != 0) {
            mark.append(' ');
        }
        return fraction(mark, size).append('"').toString();
    }

    private static StringBuilder signed(long number) {
        return number < 0 ? new StringBuilder("-") : new StringBuilder();
    }

    /** The part below an inch, in its lowest terms; nothing if there is none. */
    private static StringBuilder fraction(StringBuilder mark, long sixteenths) {
        long part = sixteenths % SIXTEENTHS_PER_INCH;
        if (part == 0) {
            return mark;
        }
        int halvings = Long.numberOfTrailingZeros(part);
        return mark.append(part >> halvings).append('/').append(SIXTEENTHS_PER_INCH >> halvings);
    }
}
