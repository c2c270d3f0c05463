package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.PlaneOutline;

/**
 * Good documents with random values taken out, moved or replaced. Whatever comes of it is planes with finite corners or a
 * refusal, never another exception, and every pointer names something that is there.
 */
class CityJsonMutationTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final List<String> planes = new ArrayList<>();
    private final List<String> refusals = new ArrayList<>();

    @ParameterizedTest(name = "{0}, seed {1}")
    @CsvSource({
        "cityjson-made-up/hut.city.json, 1",
        "cityjson-made-up/hut.city.json, 2",
        "cityjson/fzk_haus.city.json, 3",
        "cityjson/fzk_haus_without_semantics.city.json, 4",
        "cityjson/kit_named_surfaces.city.json, 5",
        "cityjson/3dbag_delft.city.jsonl, 6",
        "cityjson/denhaag_parts.city.json, 7",
        "cityjson/zurich_parts.city.json, 8",
        "cityjson/vienna_blocks.city.jsonl, 9"
    })
    void aBrokenDocumentGivesPlanesOrARefusal(String file, long seed) throws IOException {
        Random random = new Random(seed);
        JsonNode good = posted(Path.of("src/test/resources", file));
        Optional<String> building = Optional.of(building(good));
        for (int round = 0; round < 2_000; round++) {
            JsonNode broken = good.deepCopy();
            for (int i = random.nextInt(4); i >= 0; i--) {
                breakSomething(broken, random);
            }
            read(broken, random.nextInt(4) == 0 ? Optional.empty() : building, "round " + round);
        }
        assertThat(planes).as("rounds that gave planes").isNotEmpty();
        assertThat(refusals).as("rounds that gave refusals").isNotEmpty();
    }

    private void read(JsonNode posted, Optional<String> building, String round) {
        try {
            List<PlaneOutline> read = CityJsonReader.read(posted, building, Origin.REQUEST);
            assertThat(read).as(round).isNotEmpty();
            assertThat(read).as(round).extracting(PlaneOutline::id).doesNotHaveDuplicates();
            read.forEach(plane -> check(plane, posted, round));
            planes.add(round);
        } catch (Refused refused) {
            for (Refusal refusal : refused.refusals()) {
                assertThat(there(refusal.at(), posted))
                        .as("%s: %s", round, refusal)
                        .isTrue();
            }
            refusals.add(round);
        }
    }

    private static void check(PlaneOutline plane, JsonNode posted, String round) {
        assertThat(there(plane.at(), posted)).as(round).isTrue();
        assertThat(there(plane.outlineAt(), posted)).as(round).isTrue();
        assertThat(plane.outline()).as(round).hasSizeGreaterThanOrEqualTo(3);
        for (Point3 corner : plane.outline()) {
            assertThat(corner.x() + corner.y() + corner.z()).as(round).isFinite();
        }
    }

    private static boolean there(Origin at, JsonNode posted) {
        return !posted.at(JsonPointer.compile(at.pointer().substring(1))).isMissingNode();
    }

    /**
     * Walks down at random from the top, a geometry or its boundaries (else most walks would end in the vertices) and,
     * somewhere on the way or at the end, takes out, repeats, swaps or replaces a value.
     */
    private static void breakSomething(JsonNode document, Random random) {
        List<JsonNode> starts = new ArrayList<>(List.of(document));
        starts.addAll(document.findParents("boundaries"));
        starts.addAll(document.findValues("boundaries"));
        JsonNode holder = starts.get(random.nextInt(starts.size()));
        while (true) {
            if (holder.isEmpty()) {
                return;
            }
            int place = random.nextInt(holder.size());
            JsonNode value = child(holder, place);
            if (value instanceof ContainerNode<?> && !value.isEmpty() && random.nextInt(4) != 0) {
                holder = value;
                continue;
            }
            JsonNode instead = random.nextBoolean()
                    ? strange(random)
                    : child(holder, random.nextInt(holder.size())).deepCopy();
            replace(holder, place, random.nextInt(3) == 0 ? null : instead);
            return;
        }
    }

    private static JsonNode child(JsonNode holder, int place) {
        List<JsonNode> children = new ArrayList<>();
        holder.forEach(children::add);
        return children.get(place);
    }

    /** Takes the value away when {@code value} is null. */
    private static void replace(JsonNode holder, int place, @Nullable JsonNode value) {
        if (holder instanceof ArrayNode list) {
            if (value == null) {
                list.remove(place);
            } else {
                list.set(place, value);
            }
        } else if (holder instanceof ObjectNode object) {
            String name = new ArrayList<>(object.properties()).get(place).getKey();
            if (value == null) {
                object.remove(name);
            } else {
                object.set(name, value);
            }
        }
    }

    private static JsonNode strange(Random random) {
        return switch (random.nextInt(16)) {
            case 0 -> NODES.nullNode();
            case 1 -> NODES.booleanNode(true);
            case 2 -> NODES.textNode("");
            case 3 -> NODES.textNode("Building");
            case 4 -> NODES.textNode("MultiSolid");
            case 5 -> NODES.numberNode(random.nextInt(20));
            case 6 -> NODES.numberNode(-1 - random.nextInt(20));
            case 7 -> NODES.numberNode(Integer.MAX_VALUE);
            case 8 -> NODES.numberNode(Long.MIN_VALUE);
            case 9 -> NODES.numberNode(new BigInteger("9".repeat(400)));
            case 10 -> NODES.numberNode(new BigDecimal("1e-9999"));
            case 11 -> NODES.numberNode(Double.NaN);
            case 12 -> NODES.numberNode(random.nextGaussian() * 1e9);
            case 13 -> NODES.arrayNode();
            case 14 -> NODES.objectNode();
            default -> NODES.arrayNode().add(NODES.arrayNode().add(random.nextInt(20)));
        };
    }

    /** A document as it is; of a CityJSONSeq file its first line with its second. */
    private static JsonNode posted(Path file) throws IOException {
        if (file.toString().endsWith(".json")) {
            return JSON.readTree(file.toFile());
        }
        List<String> lines = Files.readAllLines(file);
        ObjectNode both = JSON.createObjectNode();
        both.set("metadata", JSON.readTree(lines.get(0)));
        both.set("feature", JSON.readTree(lines.get(1)));
        return both;
    }

    private static String building(JsonNode posted) {
        JsonNode holder = posted.has("feature") ? posted.path("feature") : posted;
        return holder.path("CityObjects").properties().stream()
                .filter(object -> object.getValue().path("type").asText().equals("Building"))
                .findFirst()
                .orElseThrow()
                .getKey();
    }
}
