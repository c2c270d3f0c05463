package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A reader of the answer, who knows nothing else, counts everything in the detailed lists again and finds the totals and the
 * order. A total that nobody here knows how to count fails.
 */
@QuarkusTest
class RecountTest {

    private static final Recount NEVER = new Recount(Double.NaN, 0);

    private static JsonNode layOut(String example) throws IOException {
        String request = Files.readString(Path.of("openapi", "examples", example + ".request.json"));
        return Door.post("/v1/layouts", request).json();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "layouts-demo",
                "layouts-hip",
                "layouts-shed",
                "layouts-dormer",
                "layouts-gable",
                "takeoffs-dormer"
            })
    void everyTotalIsFoundAgainInTheLists(String example) throws IOException {
        assertTotals(layOut(example));
    }

    private static void assertTotals(JsonNode answer) {
        assertThat(answer.path("totals")).isNotEmpty();
        for (JsonNode total : answer.path("totals")) {
            String item = total.path("item").asText();
            Recount recount = recount(answer, item, total.path("of").asText());
            assertThat(total.path("quantity").asDouble())
                    .as("%s %s", item, total.path("of").asText())
                    .isCloseTo(recount.sum, within(recount.offBy));
        }
    }

    /** One more or one less of what is counted, a thousandth and a last digit of a percentage more of what is measured: whoever counts again sees it. */
    @ParameterizedTest
    @ValueSource(strings = {"layouts-demo", "layouts-hip", "layouts-shed", "layouts-dormer", "takeoffs-dormer"})
    void anyTotalThatIsALittleWrongIsSeen(String example) throws IOException {
        JsonNode answer = layOut(example);
        for (JsonNode total : answer.path("totals")) {
            double right = total.path("quantity").asDouble();
            boolean counted = total.path("unit").asText().equals("C62");
            for (double wrong : counted ? new double[] {right - 1, right + 1} : new double[] {right * 1.001 + 0.01}) {
                ((ObjectNode) total).put("quantity", wrong);
                assertThatThrownBy(() -> assertTotals(answer))
                        .as("%s instead of %s", wrong, total)
                        .isInstanceOf(AssertionError.class);
            }
            ((ObjectNode) total).put("quantity", right);
        }
        assertTotals(answer);
    }

    /** What was counted again, and by how much rounding each listed figure may have moved it. */
    private record Recount(double sum, double offBy) {

        static Recount of(long count) {
            return new Recount(count, 0);
        }

        /** A sum of figures listed to four decimals. */
        static Recount of(JsonNode list, ToDoubleFunction<JsonNode> figure) {
            double sum = 0;
            for (JsonNode entry : list) {
                sum += figure.applyAsDouble(entry);
            }
            return new Recount(sum, (list.size() + 1) * 0.51e-4);
        }
    }

    private static Recount recount(JsonNode answer, String item, String of) {
        JsonNode panels = answer.path("panels");
        return switch (item) {
            case "panels" -> Recount.of(panels.size());
            case "roofArea" ->
                Recount.of(
                        answer.at("/roof/planes"), plane -> plane.path("area").asDouble());
            case "finishedArea" ->
                Recount.of(
                        answer.path("laid"), plane -> plane.path("finishedArea").asDouble());
            case "orderedLength" -> Recount.of(panels, RecountTest::blank);
            case "orderedArea" -> blanks(answer, "cover");
            case "sheetArea" -> blanks(answer, "girth");
            case "waste" -> waste(answer);
            case "mass" -> mass(answer);
            case "orderedMass" -> orderedMass(answer);
            case "mitredEnds" -> Recount.of(count(panels, panel -> mitres(panel).size()));
            case "mitreLength" -> mitreLength(answer);
            case "valleys" -> Recount.of(answer.path("valleys").size());
            case "valleyPieces" ->
                Recount.of(count(
                        answer.path("valleys"), valley -> valley.path("pieces").size()));
            case "seams" -> Recount.of(answer.path("clips").size());
            case "clips" ->
                Recount.of(
                        count(answer.path("clips"), seam -> seam.path("places").size()));
            case "trimPieces" ->
                Recount.of(
                        count(answer.path("trims"), trim -> trim.path("pieces").size()));
            case "underlaymentRolls" -> rolls(answer, "order");
            case "iceBarrierRolls" -> rolls(answer, "iceBarrierOrder");
            case "sealantTape" -> sealed(answer, "tape");
            case "sealant" -> sealed(answer, "sealant");
            case "sealantCartridges" -> cartridges(answer);
            case "closureLength" -> sealed(answer, "closure");
            case "closures" -> Recount.of(pieces(answer, "closure"));
            case "rivets" -> Recount.of(pieces(answer, "rivet"));
            case "fasteners" -> Recount.of(fasteners(answer, row -> of.isEmpty() || row.equals(of)));
            default -> throw new AssertionError("nobody knows how to count " + item);
        };
    }

    /** The cuts of each end of a panel that a tape shows as not square. */
    private static List<List<JsonNode>> mitres(JsonNode panel) {
        List<List<JsonNode>> ends = new ArrayList<>();
        for (String end : List.of("lower", "upper")) {
            List<JsonNode> cuts = new ArrayList<>();
            panel.path("cuts").forEach(cut -> {
                if (cut.path("end").asText().equals(end)) {
                    cuts.add(cut);
                }
            });
            if (cuts.stream().anyMatch(cut -> !Set.of("0\"", "0 mm")
                    .contains(cut.at("/rise/tape").asText()))) {
                ends.add(cuts);
            }
        }
        return ends;
    }

    /** From end to end, each printed to its last place: half of it off in both directions, at both ends. */
    private static Recount mitreLength(JsonNode answer) {
        double lastPlace = answer.at("/units/length").asText().equals("mm") ? 1e-3 : 1e-4;
        double sum = 0;
        int count = 0;
        for (JsonNode panel : answer.path("panels")) {
            for (JsonNode cut : mitres(panel).stream().flatMap(List::stream).toList()) {
                sum += Math.hypot(
                        cut.at("/to/0").asDouble() - cut.at("/from/0").asDouble(),
                        cut.at("/to/1").asDouble() - cut.at("/from/1").asDouble());
                count++;
            }
        }
        return new Recount(sum, (count * Math.sqrt(2) + 0.51) * lastPlace);
    }

    private static double blank(JsonNode panel) {
        return panel.at("/blankLength/value").asDouble();
    }

    /** All blanks as wide as they cover, or as their sheet: of the examples in inches, answered in square feet. */
    private static Recount blanks(JsonNode answer, String width) {
        double length = Recount.of(answer.path("panels"), RecountTest::blank).sum;
        return new Recount(
                area(answer, length * answer.at("/used/panel/" + width).asDouble()), 0.001);
    }

    private static double area(JsonNode answer, double squareLength) {
        String units = answer.at("/units/length").asText() + " "
                + answer.at("/units/area").asText();
        return switch (units) {
            case "in ft2" -> squareLength / 144;
            case "mm m2" -> squareLength / 1e6;
            case "m m2" -> squareLength;
            default -> throw new AssertionError("no example was in " + units);
        };
    }

    private static Recount waste(JsonNode answer) {
        double ordered = blanks(answer, "cover").sum;
        double finished = Recount.of(
                        answer.path("laid"), plane -> plane.path("finishedArea").asDouble())
                .sum;
        return new Recount(100 * (1 - finished / ordered), 0.0051);
    }

    private static Recount mass(JsonNode answer) {
        return new Recount(blanks(answer, "girth").sum * massPerArea(answer), 0.0006);
    }

    /** As the tables print it: galvanized sheet of 0.0276 in at 1.156 lb/ft², zinc of 0.70 mm at 1.0323 (of 7.2 kg/dm³). */
    private static double massPerArea(JsonNode answer) {
        double printed = answer.at("/used/panel/massPerArea/value").asDouble();
        String unit = answer.at("/used/panel/massPerArea/unit").asText();
        double mass =
                switch (answer.at("/used/panel/metal").asText() + " in " + unit) {
                    case "galvanized-steel in lb/ft2" -> 1.156;
                    // NIST Special Publication 811, appendix B.8: a pound on a square foot is 4.882428 kg/m².
                    case "galvanized-steel in kg/m2" -> 1.156 * 4.882428;
                    case "zinc in kg/m2" -> 1.0323 * 4.882428;
                    default -> throw new AssertionError("no example was of this");
                };
        assertThat(printed).isCloseTo(mass, within(0.0005));
        return mass;
    }

    private static Recount orderedMass(JsonNode answer) {
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode line : answer.path("orderLines")) {
            sum = sum.add(
                    line.at("/mass/value").isNumber() ? line.at("/mass/value").decimalValue() : BigDecimal.ZERO);
        }
        return new Recount(sum.doubleValue(), 0);
    }

    private static long count(JsonNode list, ToDoubleFunction<JsonNode> each) {
        double count = 0;
        for (JsonNode entry : list) {
            count += each.applyAsDouble(entry);
        }
        return Math.round(count);
    }

    /** A roll is opened when the last one ends: all that was rolled out, put aside or left over is whole rolls. */
    private static Recount rolls(JsonNode answer, String member) {
        JsonNode order = answer.path("underlayment").path(member);
        double roll = answer.at(
                        member.equals("order")
                                ? "/used/underlayment/rollLength"
                                : "/used/underlayment/iceBarrier/rollLength")
                .asDouble();
        double length = sheets(answer, member);
        double whole =
                length + order.path("setAside").asDouble() + order.path("rest").asDouble();
        return new Recount(whole / roll, 0.01 / roll);
    }

    /** Every sheet of every run, end to end. */
    private static double sheets(JsonNode answer, String member) {
        String list = member.equals("order") ? "planes" : "iceBarrier";
        double length = 0;
        for (JsonNode of : answer.path("underlayment").path(list)) {
            length += sheets(of);
        }
        return length;
    }

    private static double sheets(JsonNode of) {
        double length = 0;
        for (JsonNode course : of.path("courses")) {
            for (JsonNode run : course.path("runs")) {
                for (JsonNode sheet : run.path("sheets")) {
                    length += sheet.path("value").asDouble();
                }
            }
        }
        return length;
    }

    private static Recount sealed(JsonNode answer, String item) {
        double length = 0;
        int lines = 0;
        for (JsonNode run : answer.path("sealing")) {
            if (run.path("item").asText().equals(item)) {
                lines += run.path("count").asInt();
                length += run.at("/length/value").asDouble() * run.path("count").asInt();
            }
        }
        return new Recount(length, half(answer) * (lines + 10));
    }

    private static Recount cartridges(JsonNode answer) {
        double bead = answer.at("/used/sealing/beadPerCartridge").asDouble();
        return new Recount(Math.ceil(sealed(answer, "sealant").sum / bead), 0);
    }

    /** Half of the last digit of a length, and a hair. */
    private static double half(JsonNode answer) {
        return answer.at("/units/length").asText().equals("mm") ? 0.51e-3 : 0.51e-4;
    }

    private static long pieces(JsonNode answer, String item) {
        return count(
                answer.path("sealing"),
                run -> run.path("item").asText().equals(item)
                        ? run.path("count").asInt()
                        : 0);
    }

    private static long fasteners(JsonNode answer, Predicate<String> kind) {
        return count(
                answer.path("fasteners"),
                row -> kind.test(row.path("kind").asText()) ? row.path("places").size() : 0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "layouts-demo",
                "layouts-hip",
                "layouts-shed",
                "layouts-dormer",
                "layouts-gable",
                "takeoffs-dormer"
            })
    void everyOrderLineIsFoundAgainInTheLists(String example) throws IOException {
        JsonNode answer = layOut(example);
        for (JsonNode line : answer.path("orderLines")) {
            Map<String, Recount> uses = uses(answer, line);
            List<String> named = new ArrayList<>();
            for (JsonNode use : line.path("uses")) {
                String name = use.path("use").asText();
                named.add(name);
                Recount recount = uses.getOrDefault(name, NEVER);
                assertThat(use.path("quantity").asDouble())
                        .as("%s of %s", name, line.path("item").asText())
                        .isCloseTo(recount.sum, within(recount.offBy));
            }
            assertThat(named).containsExactlyInAnyOrderElementsOf(uses.keySet());
        }
    }

    /** What is ordered, in how many pieces and packs, and what it weighs; the uses are above. */
    @ParameterizedTest
    @ValueSource(strings = {"layouts-demo", "layouts-hip", "layouts-shed", "layouts-dormer", "takeoffs-dormer"})
    void whatIsOrderedIsWhatTheListsTake(String example) throws IOException {
        JsonNode answer = layOut(example);
        assertThat(answer.path("orderLines")).isNotEmpty();
        answer.path("orderLines").forEach(line -> assertOrdered(answer, line));
    }

    @ParameterizedTest
    @ValueSource(strings = {"layouts-demo", "layouts-hip", "layouts-shed", "layouts-dormer", "takeoffs-dormer"})
    void anyOrderThatIsALittleWrongIsSeen(String example) throws IOException {
        JsonNode answer = layOut(example);
        for (JsonNode line : answer.path("orderLines")) {
            for (String figure : List.of("ordered", "pieces", "packs")) {
                if (line.has(figure)) {
                    ObjectNode wrong = line.deepCopy();
                    boolean counted = !figure.equals("ordered")
                            || line.path("unit").asText().equals("C62");
                    double right = line.path(figure).asDouble();
                    wrong.put(figure, counted ? right + 1 : right * 1.001);
                    assertThatThrownBy(() -> assertOrdered(answer, wrong))
                            .as("%s of %s", figure, wrong)
                            .isInstanceOf(AssertionError.class);
                }
            }
            if (line.has("mass")) {
                ObjectNode wrong = line.deepCopy();
                ((ObjectNode) wrong.path("mass"))
                        .put("value", line.at("/mass/value").asDouble() * 1.001);
                assertThatThrownBy(() -> assertOrdered(answer, wrong))
                        .as(wrong.toString())
                        .isInstanceOf(AssertionError.class);
            }
        }
    }

    private static void assertOrdered(JsonNode answer, JsonNode line) {
        String item = line.path("item").asText();
        Recount ordered = ordered(answer, line);
        assertThat(line.path("ordered").asDouble()).as(line.toString()).isCloseTo(ordered.sum, within(ordered.offBy));
        assertThat(line.has("pieces")).as(item).isEqualTo(CUT.contains(item));
        if (line.has("pieces")) {
            assertThat(line.path("pieces").asLong()).as(line.toString()).isEqualTo(cutIn(answer, line));
        }
        if (line.has("packs")) {
            double packs = ordered.sum / pack(answer, item);
            assertThat(line.path("packs").asDouble()).as(line.toString()).isCloseTo(packs, within(1e-6));
        }
        if (line.has("mass")) {
            double width = line.at("/made/width/value").asDouble();
            double mass = area(answer, line.path("ordered").asDouble() * width) * massPerArea(answer);
            assertThat(line.at("/mass/value").asDouble())
                    .as(line.toString())
                    .isCloseTo(mass, within(0.0006 + mass * half(answer) / width));
        }
    }

    private static final Set<String> CUT = Set.of("panel", "valleyPan", "trim", "cleat");

    private static Recount ordered(JsonNode answer, JsonNode line) {
        String item = line.path("item").asText();
        if (line.has("bars")) {
            return barsOf(answer, line);
        }
        return switch (item) {
            case "coil" -> new Recount(answer.at("/coil/orderedLength/value").asDouble(), 2 * half(answer));
            case "panel" -> new Recount(Recount.of(answer.path("panels"), RecountTest::blank).sum, 1e-6);
            case "valleyPan" -> blanksOf(answer, answer.path("valleys"));
            case "trim" -> blanksOf(answer, trimsOf(answer, line.path("made")));
            case "cleat" -> {
                double length = cleats(answer).values().stream()
                        .mapToDouble(Recount::sum)
                        .sum();
                yield new Recount(length, 2 * half(answer) * (1 + cleats(answer).size()));
            }
            case "underlayment", "iceBarrier" -> {
                String member = item.equals("iceBarrier") ? "iceBarrierOrder" : "order";
                double rolls = Math.rint(rolls(answer, member).sum);
                yield new Recount(rolls * pack(answer, item), 1e-3);
            }
            default -> packed(answer, line);
        };
    }

    /** The bars that are cut up, less those that lie on the rack, and the pieces that are on none. */
    private static Recount barsOf(JsonNode answer, JsonNode line) {
        double length = 0;
        int count = 0;
        for (JsonNode cut : answer.path("cuts")) {
            if (!cut.path("item").equals(line.path("item"))
                    || !cut.at("/width/tape").equals(line.at("/made/width/tape"))) {
                continue;
            }
            for (JsonNode bar : cut.path("bars")) {
                boolean rack = false;
                for (JsonNode stock : answer.at("/used/cutting/stock")) {
                    rack |= stock.path("id").equals(bar.path("stock"))
                            && stock.path("kind").asText().equals("rack");
                }
                length += rack
                        ? 0
                        : bar.path("count").asInt() * bar.at("/length/value").asDouble();
                count++;
            }
            assertThat(cut.path("unplaced")).isEmpty();
        }
        return new Recount(length, half(answer) * (1 + count));
    }

    /** What is needed with some more, in whole packs; single pieces where none are told of. */
    private static Recount packed(JsonNode answer, JsonNode line) {
        String item = line.path("item").asText();
        double needed =
                uses(answer, line).values().stream().mapToDouble(Recount::sum).sum();
        double more =
                1 + answer.at("/used/ordering/items/" + item + "/extraPercent").asDouble() / 100;
        double pack = pack(answer, item);
        boolean loose = Double.isNaN(pack) && !line.path("unit").asText().equals("C62");
        double whole = Double.isNaN(pack) ? 1 : pack;
        return loose
                ? new Recount(needed * more, half(answer) * 1_000)
                : new Recount(Math.ceil(needed * more / whole - 1e-9) * whole, 1e-6);
    }

    /** How much is in one pack; not a number where none is told of. */
    private static double pack(JsonNode answer, String item) {
        JsonNode used = answer.path("used");
        JsonNode packed = used.at("/ordering/items/" + item);
        return switch (item) {
            case "underlayment" -> roll(answer, used.path("underlayment"));
            case "iceBarrier" -> roll(answer, used.at("/underlayment/iceBarrier"));
            case "sealant" -> used.at("/sealing/beadPerCartridge").asDouble();
            default ->
                packed.path(packed.has("packLength") ? "packLength" : "packCount")
                        .asDouble(Double.NaN);
        };
    }

    private static double roll(JsonNode answer, JsonNode used) {
        return area(
                answer,
                used.path("rollWidth").asDouble() * used.path("rollLength").asDouble());
    }

    private static List<JsonNode> trimsOf(JsonNode answer, JsonNode made) {
        List<JsonNode> trims = new ArrayList<>();
        for (JsonNode trim : answer.path("trims")) {
            if (sameProfile(trim, made) && trim.at("/flatWidth/tape").equals(made.at("/width/tape"))) {
                trims.add(trim);
            }
        }
        return trims;
    }

    /** Trims that are cut together from stock are one line, whatever their profiles. */
    private static boolean sameProfile(JsonNode trim, JsonNode made) {
        return !made.has("profile") || trim.path("profile").equals(made.path("profile"));
    }

    /** All the blanks of some valleys or trims end to end, as long as their outlines. */
    private static Recount blanksOf(JsonNode answer, Iterable<JsonNode> of) {
        double length = 0;
        int count = 0;
        for (JsonNode cut : of) {
            for (JsonNode piece : cut.path("pieces")) {
                double least = Double.POSITIVE_INFINITY;
                double most = Double.NEGATIVE_INFINITY;
                for (JsonNode corner : piece.at("/blank/outline")) {
                    least = Math.min(least, corner.path(1).asDouble());
                    most = Math.max(most, corner.path(1).asDouble());
                }
                length += most - least;
                count++;
            }
        }
        return new Recount(length, 2 * half(answer) * (count + 1));
    }

    private static long cutIn(JsonNode answer, JsonNode line) {
        return switch (line.path("item").asText()) {
            case "panel" -> answer.path("panels").size();
            case "valleyPan" ->
                count(answer.path("valleys"), valley -> valley.path("pieces").size());
            case "trim" ->
                trimsOf(answer, line.path("made")).stream()
                        .mapToInt(trim -> trim.path("pieces").size())
                        .sum();
            case "cleat" ->
                count(
                        answer.path("valleys"),
                        valley -> count(valley.path("sides"), side -> side.at("/cleat/count")
                                .asInt()));
            default -> throw new AssertionError("nobody cuts " + line);
        };
    }

    /** A count that stands beside the list it counts. */
    @ParameterizedTest
    @ValueSource(strings = {"layouts-demo", "layouts-hip", "layouts-shed", "layouts-dormer", "takeoffs-dormer"})
    void everyCountIsThatOfTheListBesideIt(String example) throws IOException {
        JsonNode answer = layOut(example);
        for (String list : List.of("fasteners", "clips")) {
            assertThat(answer.path(list)).as(list).isNotEmpty().allSatisfy(row -> assertThat(
                            row.path("count").asInt())
                    .isEqualTo(row.path("places").size()));
        }
        Map<String, Double> length = new TreeMap<>();
        answer.path("panels").forEach(panel -> length.put(panel.path("mark").asText(), blank(panel)));
        List<String> marks = new ArrayList<>();
        for (JsonNode equal : answer.path("order")) {
            assertThat(equal.path("count").asInt())
                    .isEqualTo(equal.path("marks").size());
            for (JsonNode mark : equal.path("marks")) {
                marks.add(mark.asText());
                assertThat(length.get(mark.asText()))
                        .as(mark.asText())
                        .isEqualTo(equal.at("/blankLength/value").asDouble());
            }
        }
        assertThat(marks).containsExactlyInAnyOrderElementsOf(length.keySet());
        for (JsonNode plane : answer.path("laid")) {
            assertThat(plane.path("panelCount").asLong())
                    .isEqualTo(count(
                            answer.path("panels"), panel -> panel.path("plane").equals(plane.path("plane")) ? 1 : 0));
        }
    }

    /** What an item is for, counted again. */
    private static Map<String, Recount> uses(JsonNode answer, JsonNode line) {
        String item = line.path("item").asText();
        return switch (item) {
            case "trim" -> trimmed(answer, line.path("made"));
            case "panel", "coil" -> shown(answer);
            case "valleyPan" -> lengths(answer);
            case "cleat" -> cleats(answer);
            case "clip" -> clips(answer);
            case "panelScrew" -> screws(answer, true);
            case "deckScrew" -> deckScrews(answer);
            case "closure", "rivet" -> seals(answer, item, true);
            case "sealantTape" -> seals(answer, "tape", false);
            case "sealant" -> seals(answer, "sealant", false);
            case "underlayment" -> covered(answer);
            case "iceBarrier" -> strips(answer);
            default -> throw new AssertionError("nobody knows what " + item + " is for");
        };
    }

    private static Map<String, Recount> shown(JsonNode answer) {
        Map<String, Recount> uses = new TreeMap<>();
        double cover = area(answer, answer.at("/used/panel/cover").asDouble());
        for (JsonNode plane : answer.path("laid")) {
            uses.put(
                    plane.path("plane").asText(),
                    new Recount(plane.path("finishedArea").asDouble() / cover, 0.51e-4 / cover + 0.51e-4));
        }
        return uses;
    }

    private static Map<String, Recount> lengths(JsonNode answer) {
        Map<String, Recount> uses = new TreeMap<>();
        answer.path("valleys")
                .forEach(valley -> uses.put(
                        valley.path("edge").asText(),
                        new Recount(valley.at("/length/value").asDouble(), 0)));
        return uses;
    }

    private static Map<String, Recount> cleats(JsonNode answer) {
        Map<String, Recount> uses = new TreeMap<>();
        for (JsonNode valley : answer.path("valleys")) {
            double length = 0;
            for (JsonNode side : valley.path("sides")) {
                length += side.at("/cleat/length/value").asDouble();
            }
            if (length > 0) {
                uses.put(valley.path("edge").asText(), new Recount(length, 1.1e-4));
            }
        }
        return uses;
    }

    /** The edges that have a trim of this profile and this flat width. */
    private static Map<String, Recount> trimmed(JsonNode answer, JsonNode made) {
        Map<String, Recount> uses = new TreeMap<>();
        for (JsonNode trim : answer.path("trims")) {
            boolean same = sameProfile(trim, made) && trim.at("/flatWidth/tape").equals(made.at("/width/tape"));
            if (same && trim.path("pieces").size() > 0) {
                uses.put(
                        trim.path("edge").asText(),
                        new Recount(length(answer, trim.path("edge").asText()), 1e-4));
            }
        }
        return uses;
    }

    private static double length(JsonNode answer, String edge) {
        for (JsonNode known : answer.at("/roof/edges")) {
            if (known.path("id").asText().equals(edge)) {
                return known.at("/length/value").asDouble();
            }
        }
        return Double.NaN;
    }

    private static Map<String, Recount> seals(JsonNode answer, String item, boolean counted) {
        Map<String, Recount> uses = new TreeMap<>();
        for (JsonNode run : answer.path("sealing")) {
            if (run.path("item").asText().equals(item)) {
                double count = run.path("count").asInt();
                double sum = counted ? count : count * run.at("/length/value").asDouble();
                uses.merge(
                        run.path("kind").asText(),
                        new Recount(sum, counted ? 0 : half(answer) * (count + 1)),
                        (one, other) -> new Recount(one.sum + other.sum, one.offBy + other.offBy));
            }
        }
        return uses;
    }

    private static Map<String, Recount> covered(JsonNode answer) {
        Map<String, Recount> uses = new TreeMap<>();
        answer.at("/underlayment/planes")
                .forEach(plane -> uses.put(
                        plane.path("plane").asText(),
                        new Recount(plane.path("netArea").asDouble(), 0)));
        return uses;
    }

    private static Map<String, Recount> strips(JsonNode answer) {
        Map<String, Recount> uses = new TreeMap<>();
        double width = answer.at("/used/underlayment/iceBarrier/rollWidth").asDouble();
        for (JsonNode strip : answer.at("/underlayment/iceBarrier")) {
            uses.put(strip.path("edge").asText(), new Recount(area(answer, sheets(strip) * width), 0.001));
        }
        return uses;
    }

    private static Map<String, Recount> clips(JsonNode answer) {
        Map<String, Recount> uses = new TreeMap<>();
        for (JsonNode seam : answer.path("clips")) {
            add(uses, seam.path("plane").asText(), seam.path("places").size());
        }
        return uses;
    }

    private static Map<String, Recount> screws(JsonNode answer, boolean throughPanel) {
        Map<String, Recount> uses = new TreeMap<>();
        for (JsonNode row : answer.path("fasteners")) {
            if (row.has("panel") == throughPanel) {
                add(uses, row.path("kind").asText(), row.path("places").size());
            }
        }
        return uses;
    }

    /** Clips take two screws each. */
    private static Map<String, Recount> deckScrews(JsonNode answer) {
        Map<String, Recount> uses = screws(answer, false);
        add(
                uses,
                "clip",
                2
                        * (int) clips(answer).values().stream()
                                .mapToDouble(Recount::sum)
                                .sum());
        return uses;
    }

    private static void add(Map<String, Recount> uses, String name, int count) {
        uses.merge(name, Recount.of(count), (one, other) -> Recount.of(Math.round(one.sum + other.sum)));
    }
}
