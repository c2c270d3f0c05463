package org.thalweg.api;

import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.WireDecimal;
import org.thalweg.finding.Origin;

/** Reads exact decimals: within their limits, and with no more decimals than are kept. What is not is kept with the rest of the faults. */
final class DecimalReader {

    private final TapeReader faults;

    DecimalReader(TapeReader faults) {
        this.faults = faults;
    }

    /** The number, if the caller gave one. */
    Optional<BigDecimal> given(@Nullable WireDecimal given, Origin at, Limit limit) {
        return given == null ? Optional.empty() : Optional.of(read(given, at, limit));
    }

    /** The number, to six decimals; something harmless where it is none. */
    BigDecimal read(WireDecimal given, Origin at, Limit limit) {
        return read(given, at, limit, Limits.DECIMALS);
    }

    /** The percentage, to four decimals. */
    BigDecimal percent(WireDecimal given, Origin at) {
        return read(given, at, Limits.PERCENT, Limits.PERCENT_DECIMALS);
    }

    /** The number, to so many decimals. */
    BigDecimal read(WireDecimal given, Origin at, Limit limit, int decimals) {
        BigDecimal number = given.number();
        if (number.compareTo(BigDecimal.valueOf(limit.least())) < 0
                || number.compareTo(BigDecimal.valueOf(limit.most())) > 0) {
            faults.note(() -> outside(number, at, limit));
            return BigDecimal.valueOf(limit.most());
        }
        int places =
                number.scale() <= decimals ? 0 : number.stripTrailingZeros().scale();
        if (places > decimals) {
            faults.note(() -> tooLong(places, at, decimals));
            return BigDecimal.valueOf(limit.most());
        }
        return number;
    }

    private static Fault outside(BigDecimal number, Origin at, Limit limit) {
        Figure actual = Figure.of(number.doubleValue());
        Figure least = Figure.of(limit.least());
        Figure most = Figure.of(limit.most());
        return Fault.of(
                ReadingCode.OUT_OF_RANGE,
                at.pointer(),
                "This is %s; it must be from %s to %s.".formatted(actual.text(), least.text(), most.text()),
                actual,
                number.compareTo(BigDecimal.valueOf(limit.least())) < 0 ? least : most);
    }

    private static Fault tooLong(int actual, Origin at, int decimals) {
        return Fault.of(
                ReadingCode.TOO_LONG,
                at.pointer(),
                "This has %d decimals; at most %d are read.".formatted(actual, decimals),
                Figure.of(actual),
                Figure.of(decimals));
    }
}
