package org.thalweg.api;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.wire.WorkingAnswer;
import org.thalweg.finding.Source;
import org.thalweg.units.Angle;
import org.thalweg.units.Area;
import org.thalweg.units.Length;
import org.thalweg.units.Measure;
import org.thalweg.units.Units;

/**
 * The sheet the working of one valley is written on, in the caller's units and degrees.
 *
 * <p>Numbers have up to twelve digits. The figures of a request then stand as they were given, and what was computed before is
 * so near what was computed with that each line comes out at the figure the answer prints, to its last digit, even where a
 * tangent is steep.
 */
final class WorkingSheet {

    static final String GEOMETRY = Source.GEOMETRY.text();

    private static final MathContext DIGITS = new MathContext(12, RoundingMode.HALF_UP);

    /** Finer than this stands only what computing with doubles leaves behind. */
    private static final int DECIMALS = 15;

    private static final int DECIMALS_OF_DEGREES = 12;

    private final Units units;
    private final List<WorkingAnswer> entries = new ArrayList<>();

    WorkingSheet(Units units) {
        this.units = units;
    }

    Units units() {
        return units;
    }

    List<WorkingAnswer> entries() {
        return List.copyOf(entries);
    }

    /**
     * Writes one line down.
     *
     * @param of      which figure: a JSON Pointer from the valley
     * @param formula what it follows from, in letters
     * @param numbers the same in numbers
     * @param result  what came out
     * @param source  where the formula or the rule stands
     */
    void add(String of, String formula, String numbers, Measure result, String source) {
        entries.add(new WorkingAnswer(of, formula, numbers, FigureWriter.write(result, units), source));
    }

    /** Whose figure one is: the caller's where the request has it. */
    static String whose(@Nullable Object given, Source otherwise) {
        return (given == null ? otherwise : Source.REQUEST).text();
    }

    /** What a figure is held against, for its source. */
    String heldAgainst(Measure least, Source rule) {
        return "held against at least " + FigureWriter.write(least, units).text() + ": " + rule.text();
    }

    String length(Length length) {
        return number(units.length().from(length));
    }

    String metres(double metres) {
        return length(Length.metres(metres));
    }

    String area(Area area) {
        return number(units.area().from(area));
    }

    String degrees(Angle angle) {
        return inBrackets(bare(angle));
    }

    String sin(Angle angle) {
        return "sin(" + bare(angle) + ")";
    }

    String cos(Angle angle) {
        return "cos(" + bare(angle) + ")";
    }

    String tan(Angle angle) {
        return "tan(" + bare(angle) + ")";
    }

    /** A number as it stands within a sum: in brackets below 0. */
    String number(double number) {
        return inBrackets(bare(number, DECIMALS));
    }

    private static String inBrackets(String bare) {
        return bare.startsWith("-") ? "(" + bare + ")" : bare;
    }

    private static String bare(Angle angle) {
        return bare(angle.inDegrees(), DECIMALS_OF_DEGREES);
    }

    private static String bare(double number, int decimals) {
        BigDecimal rounded = new BigDecimal(number).round(DIGITS);
        BigDecimal kept = rounded.scale() > decimals ? rounded.setScale(decimals, RoundingMode.HALF_UP) : rounded;
        return kept.signum() == 0 ? "0" : kept.stripTrailingZeros().toPlainString();
    }
}
