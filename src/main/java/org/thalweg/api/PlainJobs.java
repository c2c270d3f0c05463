package org.thalweg.api;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.json.PlainJson;
import org.thalweg.api.json.PlainJson.Name;
import org.thalweg.api.json.PlainJson.NotPlain;
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

    private static final Name JOB = new Name("job");
    private static final Name TAKEOFF = new Name("takeoff");
    private static final Name WAS = new Name("was");
    private static final Name AMOUNT = new Name("amount");
    private static final Name CURRENCY = new Name("currency");
    private static final Name ENGINE = new Name("engine");
    private static final Name DIGEST = new Name("digest");
    private static final Name UNITS = new Name("units");
    private static final Name LENGTH = new Name("length");
    private static final Name AREA = new Name("area");
    private static final Name MASS = new Name("mass");
    private static final Name ORDER_LINES = new Name("orderLines");
    private static final Name TOTALS = new Name("totals");
    private static final Name ITEM = new Name("item");
    private static final Name MADE = new Name("made");
    private static final Name METAL = new Name("metal");
    private static final Name THICKNESS = new Name("thickness");
    private static final Name WIDTH = new Name("width");
    private static final Name VALUE = new Name("value");
    private static final Name PROFILE = new Name("profile");
    private static final Name NET = new Name("net");
    private static final Name LAP = new Name("lap");
    private static final Name ORDERED = new Name("ordered");
    private static final Name UNIT = new Name("unit");
    private static final Name OF = new Name("of");
    private static final Name QUANTITY = new Name("quantity");

    private static final long MOST_QUANTITY = (long) Limits.QUANTITY.most();
    private static final long MOST_WAS = (long) Limits.WAS.most();
    private static final int LONGEST_PROFILE = Limits.ID_LENGTH;

    private static final Map<String, LengthUnit> LENGTHS = byWord(LengthUnit.values());
    private static final Map<String, AreaUnit> AREAS = byWord(AreaUnit.values());
    private static final Map<String, MassUnit> MASSES = byWord(MassUnit.values());
    private static final Map<String, BookUnit> MASS_UNITS = massUnits();

    private final PlainJson json = new PlainJson();
    private final Engine engine;
    private final Name currency;
    private final int decimals;
    private int jobFrom;
    private int jobTo;
    private @Nullable PrintedTakeoff takeoff;
    private @Nullable BigDecimal was;

    PlainJobs(Engine engine, PriceBook book) {
        this.engine = engine;
        this.currency = new Name(book.currency().getCurrencyCode());
        this.decimals = book.decimals();
    }

    private static <E extends Enum<E>> Map<String, E> byWord(E[] units) {
        Map<String, E> byWord = new HashMap<>();
        Arrays.stream(units).forEach(unit -> byWord.put(Words.of(unit), unit));
        return byWord;
    }

    private static Map<String, BookUnit> massUnits() {
        Map<String, BookUnit> bySymbol = new HashMap<>();
        for (MassUnit unit : MassUnit.values()) {
            BookUnit.of(unit.code()).ifPresent(of -> bySymbol.put(unit.symbol(), of));
        }
        return bySymbol;
    }

    /** Whether the line was read. If not, it may still be a good job. */
    boolean read(byte[] buffer, int from, int to) {
        json.begin(buffer, from, to);
        try {
            job();
            return true;
        } catch (NotPlain other) {
            return false;
        }
    }

    /** Where the job's name begins. */
    int jobFrom() {
        return jobFrom;
    }

    /** Behind its end. */
    int jobTo() {
        return jobTo;
    }

    /** The takeoff of the job read last. */
    PrintedTakeoff takeoff() {
        return given(takeoff);
    }

    /** What it came to before, with the currency's decimals. */
    Optional<BigDecimal> was() {
        return Optional.ofNullable(was);
    }

    private void job() {
        takeoff = null;
        was = null;
        jobFrom = -1;
        int object = json.object();
        while (json.member(object)) {
            if (json.is(JOB)) {
                json.copied(Limits.ID_LENGTH);
                jobFrom = json.from();
                jobTo = json.to();
            } else if (json.is(TAKEOFF)) {
                takeoff = readTakeoff();
            } else if (json.is(WAS)) {
                was = money();
            } else {
                throw json.notPlain();
            }
        }
        json.end();
        if (jobFrom < 0 || takeoff == null) {
            throw json.notPlain();
        }
    }

    private BigDecimal money() {
        BigDecimal amount = null;
        boolean named = false;
        int object = json.object();
        while (json.member(object)) {
            if (json.is(AMOUNT)) {
                amount = json.decimalOrDigits(decimals, MOST_WAS);
            } else if (json.is(CURRENCY)) {
                json.word(Limits.CURRENCY_CODE);
                named = json.is(currency);
            } else {
                throw json.notPlain();
            }
        }
        if (amount == null || !named) {
            throw json.notPlain();
        }
        return amount.setScale(decimals);
    }

    private PrintedTakeoff readTakeoff() {
        LengthUnit length = null;
        List<PrintedLine> lines = null;
        List<PrintedTotal> totals = List.of();
        boolean ours = false;
        boolean digest = false;
        int object = json.object();
        while (json.member(object)) {
            if (json.is(ORDER_LINES)) {
                lines = lines();
            } else if (json.is(TOTALS)) {
                totals = totals();
            } else if (json.is(ENGINE)) {
                ours = engine.sameGeneration(json.string(Limits.ENGINE_LENGTH));
            } else if (json.is(DIGEST)) {
                digest = json.hexadecimal(Limits.DIGEST_LENGTH);
            } else if (json.is(UNITS)) {
                length = units();
            } else {
                json.skip();
            }
        }
        if (length == null || lines == null || !ours || !digest) {
            throw json.notPlain();
        }
        return new PrintedTakeoff(length, lines, totals);
    }

    private LengthUnit units() {
        LengthUnit length = null;
        AreaUnit area = null;
        MassUnit mass = null;
        int object = json.object();
        while (json.member(object)) {
            if (json.is(LENGTH)) {
                length = LENGTHS.get(json.string(Limits.SYMBOL_LENGTH));
            } else if (json.is(AREA)) {
                area = AREAS.get(json.string(Limits.SYMBOL_LENGTH));
            } else if (json.is(MASS)) {
                mass = MASSES.get(json.string(Limits.SYMBOL_LENGTH));
            } else {
                throw json.notPlain();
            }
        }
        given(area);
        given(mass);
        return given(length);
    }

    private List<PrintedLine> lines() {
        List<PrintedLine> lines = new ArrayList<>();
        json.list();
        while (json.element(lines.size())) {
            if (lines.size() == Limits.QUOTED_LINES) {
                throw json.notPlain();
            }
            lines.add(line());
        }
        return lines;
    }

    private PrintedLine line() {
        String item = null;
        Optional<PrintedLine.Made> made = Optional.empty();
        BigDecimal net = null;
        BigDecimal lap = null;
        BigDecimal ordered = null;
        BookUnit unit = null;
        Optional<PrintedLine.Mass> mass = Optional.empty();
        int object = json.object();
        while (json.member(object)) {
            if (json.is(ITEM)) {
                item = json.string(Limits.ITEM_LENGTH);
            } else if (json.is(MADE)) {
                made = Optional.of(made());
            } else if (json.is(NET)) {
                net = quantity();
            } else if (json.is(LAP)) {
                lap = quantity();
            } else if (json.is(ORDERED)) {
                ordered = quantity();
            } else if (json.is(UNIT)) {
                unit = BookUnit.of(json.string(Limits.UNIT_CODE)).orElse(null);
            } else if (json.is(MASS)) {
                mass = Optional.of(mass());
            } else {
                json.skip();
            }
        }
        return new PrintedLine(given(item), made, given(net), given(lap), given(ordered), given(unit), mass);
    }

    private PrintedLine.Made made() {
        String metal = null;
        double thickness = -1;
        double width = -1;
        Optional<String> profile = Optional.empty();
        int object = json.object();
        while (json.member(object)) {
            if (json.is(METAL)) {
                metal = json.string(Limits.METAL_LENGTH);
            } else if (json.is(THICKNESS)) {
                thickness = json.number(Limits.SAVED_THICKNESS);
            } else if (json.is(WIDTH)) {
                width = width();
            } else if (json.is(PROFILE)) {
                profile = Optional.of(json.string(LONGEST_PROFILE));
            } else {
                json.skip();
            }
        }
        if (thickness < 0 || width < 0) {
            throw json.notPlain();
        }
        return new PrintedLine.Made(given(metal), thickness, width, profile);
    }

    private double width() {
        double value = -1;
        int object = json.object();
        while (json.member(object)) {
            if (json.is(VALUE)) {
                value = json.number(Limits.SAVED_WIDTH);
            } else {
                json.skip();
            }
        }
        return value;
    }

    private PrintedLine.Mass mass() {
        BigDecimal value = null;
        BookUnit unit = null;
        int object = json.object();
        while (json.member(object)) {
            if (json.is(VALUE)) {
                value = quantity();
            } else if (json.is(UNIT)) {
                unit = MASS_UNITS.get(json.string(Limits.SYMBOL_LENGTH));
            } else {
                json.skip();
            }
        }
        return new PrintedLine.Mass(given(value), given(unit));
    }

    private List<PrintedTotal> totals() {
        List<PrintedTotal> totals = new ArrayList<>();
        json.list();
        while (json.element(totals.size())) {
            if (totals.size() == Limits.QUOTED_TOTALS) {
                throw json.notPlain();
            }
            totals.add(total());
        }
        return totals;
    }

    private PrintedTotal total() {
        String item = null;
        Optional<String> of = Optional.empty();
        BigDecimal quantity = null;
        String unit = null;
        int object = json.object();
        while (json.member(object)) {
            if (json.is(ITEM)) {
                item = json.string(Limits.ITEM_LENGTH);
            } else if (json.is(OF)) {
                of = Optional.of(json.string(Limits.ITEM_LENGTH));
            } else if (json.is(QUANTITY)) {
                quantity = quantity();
            } else if (json.is(UNIT)) {
                unit = json.string(Limits.UNIT_CODE);
            } else {
                json.skip();
            }
        }
        return new PrintedTotal(given(item), of, given(quantity), BookUnit.of(given(unit)));
    }

    private BigDecimal quantity() {
        return json.decimal(Limits.DECIMALS, MOST_QUANTITY);
    }

    private <T> T given(@Nullable T value) {
        if (value == null) {
            throw json.notPlain();
        }
        return value;
    }
}
