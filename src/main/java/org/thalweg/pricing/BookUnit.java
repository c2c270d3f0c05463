package org.thalweg.pricing;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What a price may be per: units by their common codes [published: UN/CEFACT Recommendation 20, revision 17]. What they are
 * worth is exact: the yard is 0.9144 m and the pound 0.45359237 kg [published: international yard and pound, 1959; NIST SP 811,
 * appendix B.8], and Recommendation 20 prints the same, in places with fewer digits.
 */
public enum BookUnit {
    INCH("INH", Kind.LENGTH, 254),
    FOOT("FOT", Kind.LENGTH, 3_048),
    LINEAR_FOOT("LF", Kind.LENGTH, 3_048),
    YARD("YRD", Kind.LENGTH, 9_144),
    MILLIMETRE("MMT", Kind.LENGTH, 10),
    CENTIMETRE("CMT", Kind.LENGTH, 100),
    METRE("MTR", Kind.LENGTH, 10_000),
    LINEAR_METRE("LM", Kind.LENGTH, 10_000),

    SQUARE_INCH("INK", Kind.AREA, 254 * 254),
    SQUARE_FOOT("FTK", Kind.AREA, 3_048 * 3_048),
    SQUARE_YARD("YDK", Kind.AREA, 9_144 * 9_144),
    /** The roofer's square: 100 square feet. */
    SQUARE("SQR", Kind.AREA, 100 * 3_048 * 3_048),
    SQUARE_MILLIMETRE("MMK", Kind.AREA, 10 * 10),
    SQUARE_CENTIMETRE("CMK", Kind.AREA, 100 * 100),
    SQUARE_METRE("MTK", Kind.AREA, 10_000 * 10_000),

    OUNCE("ONZ", Kind.MASS, 45_359_237L),
    POUND("LBR", Kind.MASS, 16 * 45_359_237L),
    /** 2000 pounds. */
    SHORT_TON("STN", Kind.MASS, 2_000 * 16 * 45_359_237L),
    GRAM("GRM", Kind.MASS, 16 * 100_000L),
    KILOGRAM("KGM", Kind.MASS, 16 * 100_000_000L),
    TONNE("TNE", Kind.MASS, 16 * 100_000_000_000L),

    ONE("C62", Kind.COUNT, 1),
    EACH("EA", Kind.COUNT, 1),
    PIECE("H87", Kind.COUNT, 1),
    PAIR("PR", Kind.COUNT, 2),
    DOZEN("DZN", Kind.COUNT, 12),
    HUNDRED("CEN", Kind.COUNT, 100),
    GROSS("GRO", Kind.COUNT, 144),
    THOUSAND("MIL", Kind.COUNT, 1_000);

    /** What can be measured, and the grain in which every unit of the kind is a whole number. */
    public enum Kind {
        /** A tenth of a millimetre. */
        LENGTH,
        /** A hundredth of a square millimetre. */
        AREA,
        /** The sixteenth part of ten micrograms. */
        MASS,
        /** One thing. */
        COUNT
    }

    private static final Map<String, BookUnit> BY_CODE =
            Arrays.stream(values()).collect(Collectors.toMap(BookUnit::code, Function.identity()));

    private static final Ratio[][] IN = conversions();

    private final String code;
    private final Kind kind;
    private final long grains;

    BookUnit(String code, Kind kind, long grains) {
        this.code = code;
        this.kind = kind;
        this.grains = grains;
    }

    /** The unit with this common code; letter case counts. */
    public static Optional<BookUnit> of(String code) {
        return Optional.ofNullable(BY_CODE.get(code));
    }

    /** Its common code. */
    public String code() {
        return code;
    }

    public Kind kind() {
        return kind;
    }

    /** What one of it is in {@code other}, which measures the same kind of thing. */
    Ratio in(BookUnit other) {
        if (kind != other.kind) {
            throw new IllegalArgumentException("%s is not measured in %s".formatted(this, other));
        }
        return IN[ordinal()][other.ordinal()];
    }

    private static Ratio[][] conversions() {
        BookUnit[] units = values();
        Ratio[][] in = new Ratio[units.length][units.length];
        for (BookUnit from : units) {
            for (BookUnit to : units) {
                long common = BigInteger.valueOf(from.grains)
                        .gcd(BigInteger.valueOf(to.grains))
                        .longValueExact();
                in[from.ordinal()][to.ordinal()] =
                        new Ratio(BigDecimal.valueOf(from.grains / common), BigDecimal.valueOf(to.grains / common));
            }
        }
        return in;
    }
}
