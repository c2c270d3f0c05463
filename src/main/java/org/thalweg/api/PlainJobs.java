package org.thalweg.api;

import static org.thalweg.api.json.PlainText.given;
import static org.thalweg.api.json.PlainText.notPlain;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.api.json.PlainText;
import org.thalweg.api.json.PlainText.NotPlain;
import org.thalweg.api.problem.NoAnswer;
import org.thalweg.api.wire.Words;
import org.thalweg.pricing.BookUnit;
import org.thalweg.pricing.PriceBook;
import org.thalweg.pricing.PrintedLine;
import org.thalweg.pricing.PrintedTakeoff;
import org.thalweg.pricing.PrintedTotal;
import org.thalweg.units.AreaUnit;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.MassUnit;

/**
 * Reads saved takeoffs as this service prints them, and nothing else: what it does not read at once is left to {@link JobReader}, which
 * reads every job and finds the same in these.
 */
final class PlainJobs {

    private static final long MOST_QUANTITY = (long) Limits.QUANTITY.most();
    private static final long MOST_WAS = (long) Limits.WAS.most();

    private static final Map<String, LengthUnit> LENGTHS = byWord(LengthUnit.values());
    private static final Map<String, AreaUnit> AREAS = byWord(AreaUnit.values());
    private static final Map<String, MassUnit> MASSES = byWord(MassUnit.values());
    private static final Map<String, BookUnit> MASS_UNITS = massUnits();

    private final Engine engine;
    private final String currency;
    private final int decimals;
    private final PlainText text;

    PlainJobs(Engine engine, PriceBook book) {
        this.engine = engine;
        this.currency = book.currency().getCurrencyCode();
        this.decimals = book.decimals();
        try {
            this.text = new PlainText();
        } catch (IOException e) {
            throw new UncheckedIOException("bytes in memory can always be read", e);
        }
    }

    /**
     * A job that was read.
     *
     * @param name    what its owner calls it
     * @param takeoff what is priced
     * @param was     what it came to before, with the currency's decimals
     */
    record Job(String name, PrintedTakeoff takeoff, Optional<BigDecimal> was) {}

    private static <E extends Enum<E>> Map<String, E> byWord(E[] units) {
        Map<String, E> byWord = new HashMap<>();
        Arrays.stream(units).forEach(unit -> byWord.put(Words.of(unit), unit));
        return byWord;
    }

    private static Map<String, BookUnit> massUnits() {
        Map<String, BookUnit> bySymbol = new HashMap<>();
        for (MassUnit unit : MassUnit.values()) {
            PrintedTakeoffs.massUnit(unit.symbol()).ifPresent(of -> bySymbol.put(unit.symbol(), of));
        }
        return bySymbol;
    }

    /** The job of a line; nothing if it was not read, and then it may still be a good one. */
    Optional<Job> read(byte[] buffer, int from, int to) {
        try (PlainText json = text.begin(buffer, from, to)) {
            return Optional.of(job(json));
        } catch (NotPlain | JsonProcessingException | NoAnswer other) {
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException("bytes in memory can always be read", e);
        }
    }

    private Job job(PlainText json) throws IOException {
        String job = null;
        PrintedTakeoff takeoff = null;
        Optional<BigDecimal> was = Optional.empty();
        json.object();
        for (String name = json.member(); name != null; name = json.member()) {
            switch (name) {
                case "job" -> job = json.string(Limits.ID_LENGTH);
                case "takeoff" -> takeoff = takeoff(json);
                case "was" -> was = Optional.of(money(json));
                default -> throw notPlain();
            }
        }
        json.end();
        return new Job(given(job), given(takeoff), was);
    }

    private BigDecimal money(PlainText json) throws IOException {
        BigDecimal amount = null;
        String code = null;
        json.object();
        for (String name = json.member(); name != null; name = json.member()) {
            switch (name) {
                case "amount" -> amount = json.decimalOrDigits(decimals, MOST_WAS);
                case "currency" -> code = json.string(Limits.CURRENCY_CODE);
                default -> throw notPlain();
            }
        }
        if (!currency.equals(code)) {
            throw notPlain();
        }
        return given(amount).setScale(decimals);
    }

    private PrintedTakeoff takeoff(PlainText json) throws IOException {
        LengthUnit length = null;
        List<PrintedLine> lines = null;
        List<PrintedTotal> totals = List.of();
        boolean ours = false;
        boolean digest = false;
        json.object();
        for (String name = json.member(); name != null; name = json.member()) {
            switch (name) {
                case "orderLines" -> lines = lines(json);
                case "totals" -> totals = totals(json);
                case "engine" -> ours = engine.sameGeneration(json.string(Limits.ENGINE_LENGTH));
                case "digest" -> digest = PrintedTakeoffs.isDigest(json.string(Limits.DIGEST_LENGTH));
                case "units" -> length = units(json);
                default -> json.skip();
            }
        }
        if (!ours || !digest) {
            throw notPlain();
        }
        return new PrintedTakeoff(given(length), given(lines), totals);
    }

    private LengthUnit units(PlainText json) throws IOException {
        LengthUnit length = null;
        AreaUnit area = null;
        MassUnit mass = null;
        json.object();
        for (String name = json.member(); name != null; name = json.member()) {
            switch (name) {
                case "length" -> length = LENGTHS.get(json.string(Limits.SYMBOL_LENGTH));
                case "area" -> area = AREAS.get(json.string(Limits.SYMBOL_LENGTH));
                case "mass" -> mass = MASSES.get(json.string(Limits.SYMBOL_LENGTH));
                default -> throw notPlain();
            }
        }
        given(area);
        given(mass);
        return given(length);
    }

    private List<PrintedLine> lines(PlainText json) throws IOException {
        List<PrintedLine> lines = new ArrayList<>();
        json.list();
        while (json.element()) {
            if (lines.size() == Limits.QUOTED_LINES) {
                throw notPlain();
            }
            lines.add(line(json));
        }
        return lines;
    }

    private PrintedLine line(PlainText json) throws IOException {
        String item = null;
        Optional<PrintedLine.Made> made = Optional.empty();
        BigDecimal net = null;
        BigDecimal lap = null;
        BigDecimal ordered = null;
        BookUnit unit = null;
        Optional<PrintedLine.Mass> mass = Optional.empty();
        for (String name = json.member(); name != null; name = json.member()) {
            switch (name) {
                case "item" -> item = json.string(Limits.ITEM_LENGTH);
                case "made" -> made = Optional.of(made(json));
                case "net" -> net = quantity(json);
                case "lap" -> lap = quantity(json);
                case "ordered" -> ordered = quantity(json);
                case "unit" -> unit = BookUnit.of(json.string(Limits.UNIT_CODE)).orElse(null);
                case "mass" -> mass = Optional.of(mass(json));
                default -> json.skip();
            }
        }
        return new PrintedLine(given(item), made, given(net), given(lap), given(ordered), given(unit), mass);
    }

    private PrintedLine.Made made(PlainText json) throws IOException {
        String metal = null;
        double thickness = -1;
        double width = -1;
        Optional<String> profile = Optional.empty();
        json.object();
        for (String name = json.member(); name != null; name = json.member()) {
            switch (name) {
                case "metal" -> metal = json.string(Limits.METAL_LENGTH);
                case "thickness" -> thickness = json.number(Limits.SAVED_THICKNESS);
                case "width" -> width = width(json);
                case "profile" -> profile = Optional.of(json.string(Limits.ID_LENGTH));
                default -> json.skip();
            }
        }
        if (thickness < 0 || width < 0) {
            throw notPlain();
        }
        return new PrintedLine.Made(given(metal), thickness, width, profile);
    }

    private double width(PlainText json) throws IOException {
        double value = -1;
        json.object();
        for (String name = json.member(); name != null; name = json.member()) {
            switch (name) {
                case "value" -> value = json.number(Limits.SAVED_WIDTH);
                default -> json.skip();
            }
        }
        return value;
    }

    private PrintedLine.Mass mass(PlainText json) throws IOException {
        BigDecimal value = null;
        BookUnit unit = null;
        json.object();
        for (String name = json.member(); name != null; name = json.member()) {
            switch (name) {
                case "value" -> value = quantity(json);
                case "unit" -> unit = MASS_UNITS.get(json.string(Limits.SYMBOL_LENGTH));
                default -> json.skip();
            }
        }
        return new PrintedLine.Mass(given(value), given(unit));
    }

    private List<PrintedTotal> totals(PlainText json) throws IOException {
        List<PrintedTotal> totals = new ArrayList<>();
        json.list();
        while (json.element()) {
            if (totals.size() == Limits.QUOTED_TOTALS) {
                throw notPlain();
            }
            totals.add(total(json));
        }
        return totals;
    }

    private PrintedTotal total(PlainText json) throws IOException {
        String item = null;
        Optional<String> of = Optional.empty();
        BigDecimal quantity = null;
        String unit = null;
        for (String name = json.member(); name != null; name = json.member()) {
            switch (name) {
                case "item" -> item = json.string(Limits.ITEM_LENGTH);
                case "of" -> of = Optional.of(json.string(Limits.ITEM_LENGTH));
                case "quantity" -> quantity = quantity(json);
                case "unit" -> unit = json.string(Limits.UNIT_CODE);
                default -> json.skip();
            }
        }
        return new PrintedTotal(given(item), of, given(quantity), BookUnit.of(given(unit)));
    }

    private static BigDecimal quantity(PlainText json) throws IOException {
        return json.decimal(Limits.DECIMALS, MOST_QUANTITY);
    }
}
