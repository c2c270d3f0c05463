package org.thalweg.api;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.LayoutAnswer.Total;
import org.thalweg.api.wire.OrderLineAnswer;
import org.thalweg.api.wire.SavedTakeoff;
import org.thalweg.api.wire.SavedTakeoff.SavedLine;
import org.thalweg.api.wire.SavedTakeoff.SavedMade;
import org.thalweg.api.wire.SavedTakeoff.SavedMass;
import org.thalweg.api.wire.SavedTakeoff.SavedTotal;
import org.thalweg.api.wire.WireDecimal;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.pricing.BookUnit;
import org.thalweg.pricing.PrintedLine;
import org.thalweg.pricing.PrintedTakeoff;
import org.thalweg.pricing.PrintedTotal;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.MassUnit;

/** Takeoffs as they are printed: just answered, or answered once and posted back. Both come to the same figures. */
final class PrintedTakeoffs {

    private PrintedTakeoffs() {}

    // Just answered.

    static PrintedTakeoff of(LengthUnit length, List<OrderLineAnswer> orderLines, List<Total> answered) {
        List<PrintedLine> lines = new ArrayList<>(orderLines.size());
        for (OrderLineAnswer line : orderLines) {
            lines.add(new PrintedLine(
                    line.item(),
                    line.made()
                            .map(made -> new PrintedLine.Made(
                                    made.metal(), made.thickness(), made.width().value(), made.profile())),
                    printed(line.net()),
                    printed(line.lap()),
                    printed(line.ordered()),
                    BookUnit.of(line.unit()).orElseThrow(),
                    line.mass().map(PrintedTakeoffs::mass)));
        }
        List<PrintedTotal> totals = new ArrayList<>(answered.size());
        for (Total total : answered) {
            totals.add(
                    new PrintedTotal(total.item(), total.of(), printed(total.quantity()), BookUnit.of(total.unit())));
        }
        return new PrintedTakeoff(length, lines, totals);
    }

    /** The decimal that is printed for a number: the shortest that reads as it. */
    private static BigDecimal printed(double number) {
        return BigDecimal.valueOf(number);
    }

    private static PrintedLine.Mass mass(Figure figure) {
        return new PrintedLine.Mass(
                printed(figure.value()), massUnit(figure.unit()).orElseThrow());
    }

    /** The unit that a takeoff prints masses in as {@code symbol}. */
    static Optional<BookUnit> massUnit(String symbol) {
        return MassUnit.of(symbol).flatMap(unit -> BookUnit.of(unit.code()));
    }

    // Posted back.

    /**
     * Reads the takeoff that stands at {@code at}. What can't be read is noted among {@code faults}, and something harmless stands in
     * for it.
     *
     * @throws Refused when it is of another generation of the engine and nothing else is wrong so far
     */
    static PrintedTakeoff read(SavedTakeoff saved, Origin at, Engine engine, TapeReader faults) {
        return new Reading(faults).takeoff(saved, at, engine);
    }

    /** One takeoff's reading. */
    private static final class Reading {

        private final TapeReader faults;
        private final DecimalReader decimals;

        Reading(TapeReader faults) {
            this.faults = faults;
            this.decimals = new DecimalReader(faults);
        }

        PrintedTakeoff takeoff(SavedTakeoff saved, Origin at, Engine engine) {
            if (!isDigest(saved.digest())) {
                faults.note(() -> Fault.of(
                        ReadingCode.BAD_DIGEST,
                        at.at("digest").pointer(),
                        "%s is not the digest of a takeoff: 64 hexadecimal digits in lower case. Post it as it was answered."
                                .formatted(Echo.of(saved.digest()))));
            }
            Origin linesAt = at.at("orderLines");
            List<PrintedLine> lines = new ArrayList<>(saved.orderLines().size());
            for (SavedLine line : saved.orderLines()) {
                lines.add(line(line, linesAt.at(lines.size())));
            }
            Origin totalsAt = at.at("totals");
            List<PrintedTotal> totals = new ArrayList<>();
            for (SavedTotal total : saved.totals() == null ? List.<SavedTotal>of() : saved.totals()) {
                totals.add(new PrintedTotal(
                        total.item(),
                        Optional.ofNullable(total.of()),
                        quantity(total.quantity(), totalsAt.at(totals.size()).at("quantity")),
                        BookUnit.of(total.unit())));
            }
            if (faults.faultCount() == 0 && !engine.sameGeneration(saved.engine())) {
                throw new Refused(outdated(saved.engine(), at.at("engine"), engine));
            }
            return new PrintedTakeoff(saved.units().length(), lines, totals);
        }

        private PrintedLine line(SavedLine line, Origin at) {
            Optional<BookUnit> unit = BookUnit.of(line.unit());
            if (unit.isEmpty()) {
                PriceBookReader.badUnit(line.unit(), at.at("unit"), faults);
            }
            return new PrintedLine(
                    line.item(),
                    Optional.ofNullable(line.made()).map(Reading::made),
                    quantity(line.net(), at.at("net")),
                    quantity(line.lap(), at.at("lap")),
                    quantity(line.ordered(), at.at("ordered")),
                    unit.orElse(BookUnit.ONE),
                    mass(line.mass(), at.at("mass")));
        }

        private static PrintedLine.Made made(SavedMade made) {
            return new PrintedLine.Made(
                    made.metal(), made.thickness(), made.width().value(), Optional.ofNullable(made.profile()));
        }

        private Optional<PrintedLine.Mass> mass(@Nullable SavedMass mass, Origin at) {
            if (mass == null) {
                return Optional.empty();
            }
            BigDecimal value = quantity(mass.value(), at.at("value"));
            Optional<BookUnit> unit = massUnit(mass.unit());
            if (unit.isEmpty()) {
                faults.note(() -> Fault.of(
                        ReadingCode.BAD_UNIT,
                        at.at("unit").pointer(),
                        "%s is no unit of mass that a takeoff prints. Post it as it was answered: lb or kg."
                                .formatted(Echo.of(mass.unit()))));
            }
            return unit.map(of -> new PrintedLine.Mass(value, of));
        }

        private BigDecimal quantity(WireDecimal given, Origin at) {
            return decimals.read(given, at, Limits.QUANTITY);
        }
    }

    static boolean isDigest(String digest) {
        if (digest.length() != Limits.DIGEST_LENGTH) {
            return false;
        }
        for (int i = 0; i < digest.length(); i++) {
            char c = digest.charAt(i);
            if (!(c >= '0' && c <= '9' || c >= 'a' && c <= 'f')) {
                return false;
            }
        }
        return true;
    }

    private static Refusal outdated(String saved, Origin at, Engine engine) {
        return Refusal.of(
                RefusalCode.TAKEOFF_OUTDATED,
                at,
                "The takeoff is of %s and this is %s, which may count otherwise. Post its layout request to /v1/takeoffs again, and"
                                .formatted(Echo.of(saved), engine.name())
                        + " price the answer.");
    }
}
