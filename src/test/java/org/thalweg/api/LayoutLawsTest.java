package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.Building;

/** What the whole answer keeps when a roof is mirrored, moved and turned, measured in other units or drawn in more planes. */
@QuarkusTest
class LayoutLawsTest {

    private static final Path KEPT = Path.of("src/test/resources/buildings/buildings.jsonl");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final double MM = 25.4;

    /** Rolls are rolled out from the left, mirrored or not, so where they end and lap is not mirrored. */
    private static final Set<String> ROLLED =
            Set.of("underlayment", "iceBarrier", "underlaymentRolls", "iceBarrierRolls");

    /** How metal ends at each kind of edge of the kept buildings; metres. */
    private static final String METRES = """
            {"units": {"length": "m", "area": "m2", "mass": "kg"},
             "panel": {"cover": 0.45, "leads": "left", "longest": 12},
             "start": {"by": "offset", "offset": 0.1},
             "edgeTreatments": {
               "eave": {"setback": -0.025, "hem": 0.025}, "valley": {"setback": 0.3, "hem": 0.025},
               "ridge": {"setback": 0.025, "turnUp": 0.025}, "hip": {"setback": 0.025, "turnUp": 0.025},
               "opening": {"setback": 0.012, "turnUp": 0.04}},
             "fastening": {"clipTravel": 0.02},
             "underlayment": {"iceBarrier": {"overhang": 0.4}},
             "roof": {"points": {}, "planes": []}}
            """;

    static Stream<String> examples() {
        return Stream.of("layouts-demo", "layouts-hip", "layouts-shed", "layouts-dormer");
    }

    private static ObjectNode example(String name) throws IOException {
        return (ObjectNode) Door.json(Files.readString(Path.of("openapi", "examples", name + ".request.json")));
    }

    private static JsonNode laid(JsonNode request) {
        Door.Answer answer = Door.post("/v1/layouts", request.toString());
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
        return answer.json();
    }

    private static ObjectNode request(Building building) throws IOException {
        ObjectNode request = (ObjectNode) JSON.readTree(METRES);
        ObjectNode points = (ObjectNode) request.at("/roof/points");
        ArrayNode planes = (ArrayNode) request.at("/roof/planes");
        for (Building.Surface surface : building.surfaces()) {
            ObjectNode plane = planes.addObject().put("id", "s" + planes.size());
            name(surface.rings().get(0), points, plane.putArray("outline"));
            ArrayNode openings = plane.putArray("openings");
            for (List<Point3> ring : surface.rings().subList(1, surface.rings().size())) {
                name(
                        ring,
                        points,
                        openings.addObject().put("id", "o" + openings.size()).putArray("outline"));
            }
        }
        return request;
    }

    private static void name(List<Point3> ring, ObjectNode points, ArrayNode outline) {
        for (Point3 corner : ring) {
            String name = "p" + points.size();
            points.putArray(name).add(corner.x()).add(corner.y()).add(corner.z());
            outline.add(name);
        }
    }

    /** The same roof with its corners elsewhere. */
    private static ObjectNode moved(ObjectNode request, UnaryOperator<Point3> to) {
        ObjectNode moved = request.deepCopy();
        for (JsonNode point : moved.at("/roof/points")) {
            Point3 there = to.apply(point(point));
            ArrayNode at = (ArrayNode) point;
            at.set(0, DoubleNode.valueOf(there.x()));
            at.set(1, DoubleNode.valueOf(there.y()));
            at.set(2, DoubleNode.valueOf(there.z()));
        }
        return moved;
    }

    private static Point3 point(JsonNode xyz) {
        return new Point3(
                xyz.path(0).asDouble(), xyz.path(1).asDouble(), xyz.path(2).asDouble());
    }

    private static Point3 mirror(Point3 p) {
        return new Point3(-p.x(), p.y(), p.z());
    }

    /** x to −x, every ring the other way round, panels and trims laid from the other side. */
    private static ObjectNode mirrored(ObjectNode request) {
        ObjectNode mirrored = moved(request, LayoutLawsTest::mirror);
        for (JsonNode plane : mirrored.at("/roof/planes")) {
            reverse((ArrayNode) plane.path("outline"));
            plane.path("openings").forEach(opening -> reverse((ArrayNode) opening.path("outline")));
        }
        ObjectNode panel = (ObjectNode) mirrored.path("panel");
        panel.put("leads", panel.path("leads").asText("left").equals("left") ? "right" : "left");
        mirrored.withObjectProperty("trims").put("laidFrom", "right");
        return mirrored;
    }

    private static void reverse(ArrayNode names) {
        List<JsonNode> reversed = new ArrayList<>();
        names.forEach(name -> reversed.add(0, name));
        names.removeAll().addAll(reversed);
    }

    /** A turn of about 36.87° (3-4-5) and a long way off, in whatever unit. */
    private static Point3 turned(Point3 p) {
        return new Point3(0.8 * p.x() - 0.6 * p.y() + 300, 0.6 * p.x() + 0.8 * p.y() - 200, p.z() + 50);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void aMirroredRoofTakesTheSameAtMirroredPlaces(String name) throws IOException {
        ObjectNode request = example(name);
        assertSame(laid(request), laid(mirrored(request)), LayoutLawsTest::mirror, name, ROLLED);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void aMovedAndTurnedRoofTakesTheSameAtTurnedPlaces(String name) throws IOException {
        ObjectNode request = example(name);
        assertSame(laid(request), laid(moved(request, LayoutLawsTest::turned)), LayoutLawsTest::turned, name, Set.of());
    }

    /** A level plane has no fall to lie along: its sheets lie along the axes of the drawing, so turning it changes them. */
    @Test
    void theBuildingsKeptHereTakeTheSameMirroredAndTurned() throws IOException {
        int places = 0;
        for (Building building : Building.in(KEPT, "").toList()) {
            ObjectNode request = request(building);
            JsonNode here = laid(request);
            boolean level = here.at("/roof/planes").findValuesAsText("level").contains("true");
            places += assertSame(here, laid(mirrored(request)), LayoutLawsTest::mirror, building.id(), ROLLED);
            JsonNode there = laid(moved(request, LayoutLawsTest::turned));
            assertSame(here, there, LayoutLawsTest::turned, building.id(), level ? ROLLED : Set.of());
        }
        assertThat(places).isGreaterThan(50_000);
    }

    /** Returns how many places were compared. */
    private static int assertSame(
            JsonNode here, JsonNode there, UnaryOperator<Point3> to, String what, Set<String> butFor) {
        assertThat(quantities(here, butFor)).as(what).isNotEmpty();
        assertNear(quantities(here, butFor), quantities(there, butFor), what);
        assertNear(lines(here, butFor), lines(there, butFor), what);
        assertNear(findings(here), findings(there), what);
        assertThat(pieces(there)).as("%s: trims", what).isEqualTo(pieces(here));
        Map<String, List<Point3>> placed = places(here);
        Map<String, List<Point3>> elsewhere = places(there);
        assertThat(elsewhere.keySet()).as(what).isEqualTo(placed.keySet());
        double near = here.at("/units/length").asText().equals("m") ? 1e-5 : 2e-3;
        placed.forEach((kind, points) -> assertSamePlaces(
                points.stream().map(to).toList(), elsewhere.getOrDefault(kind, List.of()), near, what + ": " + kind));
        return placed.values().stream().mapToInt(List::size).sum();
    }

    private static void assertNear(Map<String, Double> some, Map<String, Double> others, String what) {
        assertThat(others.keySet()).as(what).isEqualTo(some.keySet());
        some.forEach((key, figure) -> assertThat(others.get(key))
                .as("%s: %s", what, key)
                .isCloseTo(figure, within(key.endsWith("C62") ? 0 : 1e-3 + 1e-7 * Math.abs(figure))));
    }

    private static Map<String, Double> quantities(JsonNode answer, Set<String> butFor) {
        Map<String, Double> quantities = new TreeMap<>();
        for (JsonNode total : answer.path("totals")) {
            String item = total.path("item").asText();
            if (!butFor.contains(item)) {
                quantities.put(
                        item + " " + total.path("of").asText() + " "
                                + total.path("unit").asText(),
                        total.path("quantity").asDouble());
            }
        }
        return quantities;
    }

    /** Lines of one item and profile together, whose flat widths may differ in the last digit and their order by that. */
    private static Map<String, Double> lines(JsonNode answer, Set<String> butFor) {
        Map<String, Double> lines = new TreeMap<>();
        for (JsonNode line : answer.path("orderLines")) {
            String item = line.path("item").asText();
            if (!butFor.contains(item)) {
                for (String figure : List.of("net", "lap", "waste", "ordered", "pieces", "packs")) {
                    lines.merge(
                            item + " " + line.at("/made/profile").asText() + " " + figure,
                            line.path(figure).asDouble(),
                            Double::sum);
                }
            }
        }
        return lines;
    }

    private static Map<String, Double> findings(JsonNode answer) {
        Map<String, Double> findings = new TreeMap<>();
        answer.path("findings")
                .forEach(finding -> findings.merge(
                        finding.path("code").asText() + " "
                                + finding.path("severity").asText() + " C62",
                        1.0,
                        Double::sum));
        return findings;
    }

    /** How many pieces the trims of each kind of edge have. */
    private static Map<String, Integer> pieces(JsonNode answer) {
        Map<String, Integer> pieces = new TreeMap<>();
        answer.path("trims")
                .forEach(trim -> pieces.merge(
                        trim.path("kind").asText(), trim.path("pieces").size(), Integer::sum));
        return pieces;
    }

    /** Where in the world every fastener of every kind stands, every clip, and where each panel is fixed. */
    private static Map<String, List<Point3>> places(JsonNode answer) {
        Map<String, JsonNode> frames = new TreeMap<>();
        answer.at("/roof/planes").forEach(plane -> frames.put(plane.path("id").asText(), plane.path("frame")));
        Map<String, List<Point3>> places = new TreeMap<>();
        for (JsonNode row : answer.path("fasteners")) {
            JsonNode frame = frame(frames, row);
            row.path("places").forEach(place -> add(places, row.path("kind").asText(), frame, place));
        }
        for (JsonNode seam : answer.path("clips")) {
            JsonNode frame = frame(frames, seam);
            seam.path("places").forEach(place -> add(places, "clip", frame, place));
        }
        for (JsonNode panel : answer.path("movement")) {
            add(places, "fixed point", frame(frames, panel), panel.path("fixedAt"));
        }
        return places;
    }

    private static JsonNode frame(Map<String, JsonNode> frames, JsonNode onPlane) {
        return Objects.requireNonNull(frames.get(onPlane.path("plane").asText()));
    }

    private static void add(Map<String, List<Point3>> places, String kind, JsonNode frame, JsonNode place) {
        double[] at = new double[3];
        for (int i = 0; i < 3; i++) {
            at[i] = frame.path("origin").path(i).asDouble()
                    + place.path(0).asDouble() * frame.path("across").path(i).asDouble()
                    + place.path(1).asDouble() * frame.path("up").path(i).asDouble();
        }
        places.computeIfAbsent(kind, any -> new ArrayList<>()).add(new Point3(at[0], at[1], at[2]));
    }

    /** Each has its own counterpart no further off than what was rounded away. */
    private static void assertSamePlaces(List<Point3> some, List<Point3> others, double near, String what) {
        assertThat(others).as(what).hasSameSizeAs(some);
        List<Point3> left = new ArrayList<>(others);
        left.sort(Comparator.comparingDouble(Point3::x));
        for (Point3 place :
                some.stream().sorted(Comparator.comparingDouble(Point3::x)).toList()) {
            int i = 0;
            while (i < left.size()
                    && left.get(i).distance(place) > near
                    && left.get(i).x() <= place.x() + near) {
                i++;
            }
            assertThat(i < left.size() ? left.get(i).distance(place) : Double.NaN)
                    .as("%s at %s", what, place)
                    .isLessThanOrEqualTo(near);
            left.remove(i);
        }
    }

    /** Everything given, for what is not given is round in either unit. The lines of closures can't be given: 1 in or 25 mm. */
    @Test
    void theDemoHouseTakesTheSameInInchesAndInMillimetres() throws IOException {
        ObjectNode inches = example("layouts-demo");
        inches.put("tolerance", 0.04);
        ObjectNode used = (ObjectNode) laid(inches).path("used");
        for (String group : List.of("panel", "valleyPan", "hipCap", "fastening", "underlayment", "sealing")) {
            inches.set(group, used.path(group).deepCopy());
        }
        ((ObjectNode) inches.path("panel")).remove(List.of("massPerArea", "massSource", "minimumSlope"));
        ((ObjectNode) inches.path("valleyPan")).remove(List.of("widening", "stations"));
        ((ObjectNode) inches.path("fastening")).put("clipTravel", 0.75);
        inches.set("climate", used.path("climate").deepCopy());
        ((ObjectNode) inches.path("climate")).remove("temperatureSource");
        ObjectNode trims = inches.putObject("trims").put("past", 1);
        trims.set("stock", used.at("/trims/stock").deepCopy());
        trims.putObject("sheet").put("thickness", 0.0276).put("insideRadius", 0.0276);

        ObjectNode metric = inches.deepCopy();
        ((ObjectNode) metric.path("units"))
                .put("length", "mm")
                .put("area", "m2")
                .put("mass", "kg");
        metric.put("tolerance", 0.04 * MM);
        for (String group : List.of(
                "roof", "panel", "edgeTreatments", "valleyPan", "hipCap", "fastening", "underlayment", "trims")) {
            scale(metric.path(group));
        }
        for (String figure : List.of("rivetSpacing", "beadPerCartridge")) {
            ((ObjectNode) metric.path("sealing"))
                    .put(figure, inches.at("/sealing/" + figure).asDouble() * MM);
        }
        ((ObjectNode) metric.at("/ordering/items/sealantTape")).put("packLength", 600 * MM);

        JsonNode here = laid(inches);
        JsonNode there = laid(metric);
        assertThat(findings(there)).isEqualTo(findings(here));
        assertThat(pieces(there)).isEqualTo(pieces(here));
        // NIST Special Publication 811, appendix B: exact.
        Map<String, Double> size = Map.of("INH", MM, "FTK", 0.09290304, "LBR", 0.45359237, "C62", 1.0, "P1", 1.0);
        Map<String, String> unit = Map.of("INH", "MMT", "FTK", "MTK", "LBR", "KGM", "C62", "C62", "P1", "P1");
        assertThat(there.path("totals")).hasSameSizeAs(here.path("totals"));
        for (int i = 0; i < here.path("totals").size(); i++) {
            JsonNode one = here.path("totals").path(i);
            JsonNode other = there.path("totals").path(i);
            assertThat(other.path("item")).isEqualTo(one.path("item"));
            assertThat(other.path("of")).isEqualTo(one.path("of"));
            String own = one.path("unit").asText();
            assertThat(other.path("unit").asText()).isEqualTo(unit.get(own));
            double figure = one.path("quantity").asDouble() * size.getOrDefault(own, Double.NaN);
            // Sheets of trims are as wide as the nearest mark of the tape: half a sixteenth and half a millimetre of
            // each.
            double marks = one.path("item").asText().equals("orderedMass") ? marks(here) : 0;
            assertThat(other.path("quantity").asDouble())
                    .as(one.path("item").asText())
                    .isCloseTo(figure, within(own.equals("C62") ? 0 : 2e-5 * figure + marks));
        }
    }

    /** What that much sheet along all trims weighs, in kilograms; the answer is in inches, square feet and pounds. */
    private static double marks(JsonNode answer) {
        double length = 0;
        for (JsonNode line : answer.path("orderLines")) {
            length += line.path("item").asText().equals("trim")
                    ? line.path("ordered").asDouble()
                    : 0;
        }
        double squareFeet = length * (1.0 / 32 + 0.5 / MM) / 144;
        return squareFeet * answer.at("/used/panel/massPerArea/value").asDouble() * 0.45359237;
    }

    private static void scale(JsonNode node) {
        if (node instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) {
                if (list.get(i).isNumber()) {
                    list.set(i, DoubleNode.valueOf(list.get(i).asDouble() * MM));
                } else {
                    scale(list.get(i));
                }
            }
        } else if (node instanceof ObjectNode object) {
            for (Map.Entry<String, JsonNode> member : object.properties()) {
                if (member.getValue().isNumber()) {
                    member.setValue(DoubleNode.valueOf(member.getValue().asDouble() * MM));
                } else {
                    scale(member.getValue());
                }
            }
        }
    }

    /** A gable of 6:12, 300 in long; its south side drawn whole, or as two planes that meet 90 in over the eave. */
    private static ObjectNode gable(boolean split) throws IOException {
        ObjectNode request = example("layouts-demo");
        request.set("roof", JSON.readTree("""
                {"points": {"A": [0, 0, 0], "B": [300, 0, 0], "C": [300, 200, 100], "D": [0, 200, 100],
                            "E": [300, 400, 0], "F": [0, 400, 0], "L": [0, 90, 45], "M": [300, 90, 45]},
                 "planes": [%s, {"id": "north", "outline": ["E", "F", "D", "C"]}]}
                """.formatted(split ? """
                        {"id": "low", "outline": ["A", "B", "M", "L"]}, {"id": "high", "outline": ["L", "M", "C", "D"]}
                        """ : """
                        {"id": "south", "outline": ["A", "B", "C", "D"]}
                        """)));
        request.putObject("start").put("by", "offset").put("offset", 0);
        return request;
    }

    /**
     * What the new edge needs, by hand. 17 strips of 18 in: as many panels more, and one seam more for each of the 16 between
     * them. Clips at most 24 in apart, 6 in from the ends: 10 on 223.6 in, 5 and 6 on 100.6 and 123.0. Screws at most 4 in
     * apart across the upper panels: 6 on the 16.5 in between two ribs, 4 on the 10.25 in that the last panel of 12 in has. A
     * line of tape as long as the edge. Each of the two rakes is two rakes: a screw and a piece of trim more. All else stays.
     */
    @Test
    void aPitchBreakOfNothingTakesOnlyWhatItsOwnEdgeNeeds() throws IOException {
        JsonNode whole = laid(gable(false));
        JsonNode split = laid(gable(true));
        Map<String, Double> more = new TreeMap<>(quantities(split, Set.of()));
        quantities(whole, Set.of()).forEach((item, quantity) -> more.merge(item, -quantity, Double::sum));
        more.values().removeIf(figure -> Math.abs(figure) < 1e-3);
        assertThat(split.at("/roof/edges").findValuesAsText("kind")).contains("flush");
        assertThat(more)
                .containsOnlyKeys(
                        "panels  C62",
                        "seams  C62",
                        "clips  C62",
                        "fasteners endLap C62",
                        "fasteners rake C62",
                        "fasteners  C62",
                        "sealantTape  INH",
                        "trimPieces  C62")
                .containsEntry("panels  C62", 17.0)
                .containsEntry("seams  C62", 16.0)
                .containsEntry("clips  C62", 16.0)
                .containsEntry("fasteners endLap C62", 16 * 6.0 + 4)
                .containsEntry("fasteners rake C62", 2.0)
                .containsEntry("fasteners  C62", 102.0)
                .containsEntry("trimPieces  C62", 2.0);
        assertThat(more.get("sealantTape  INH")).isCloseTo(300, within(1e-3));
        Map<String, Double> told = new TreeMap<>(findings(split));
        assertThat(told.remove("FLUSH_NOT_LAPPED warning C62")).isEqualTo(1);
        assertThat(told).isEqualTo(findings(whole));
        for (String edge : List.of("eave", "ridge")) {
            assertThat(pieces(split).get(edge)).as(edge).isEqualTo(pieces(whole).get(edge));
        }
    }

    /** What mirroring must notice: a screw that is missing, one that stands elsewhere. */
    @ParameterizedTest
    @ValueSource(strings = {"missing", "elsewhere"})
    void aScrewThatIsMissingOrStandsElsewhereIsSeen(String how) throws IOException {
        JsonNode here = laid(example("layouts-hip"));
        JsonNode there = here.deepCopy();
        ArrayNode places = (ArrayNode) there.at("/fasteners/0/places");
        if (how.equals("missing")) {
            places.remove(0);
        } else {
            ((ArrayNode) places.get(0))
                    .set(0, DoubleNode.valueOf(places.get(0).path(0).asDouble() + 0.01));
        }
        assertThatThrownBy(() -> assertSame(here, there, UnaryOperator.identity(), "", Set.of()))
                .isInstanceOf(AssertionError.class);
    }
}
