package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.PlaneOutline;

/**
 * Real buildings of open city models. Beside the files of a folder lies a {@code roofs.jsonl}, in which another program
 * that shares no code with this one has written down each building's roof rings.
 */
class CityJsonDataSetsTest {

    /** Half of the last digit printed in {@code roofs.jsonl}, and what adding such long coordinates loses. */
    private static final double PRINTED = 0.00005 + 1e-8;

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Map<String, Integer> counts = new TreeMap<>();

    /** Sources and licences stand in {@code cityjson/ATTRIBUTION.md}. */
    @Test
    void theBuildingsKeptWithTheTestsHaveTheRingsThatTheOtherProgramFound() throws IOException {
        checkFolder(Path.of("src/test/resources/cityjson"));
        assertThat(counts)
                .containsEntry("buildings compared", 23)
                .containsEntry("planes compared", 141)
                .containsEntry("holes compared", 6)
                .doesNotContainKey("buildings that the other program left out");
    }

    /** All folders in the folder named, each like the one above. */
    @Test
    @EnabledIfSystemProperty(named = "thalweg.buildings", matches = ".+")
    void everyBuildingOfEveryFolderHasTheRingsThatTheOtherProgramFound() throws IOException {
        try (Stream<Path> folders =
                Files.list(Path.of(System.getProperty("thalweg.buildings"))).sorted()) {
            for (Path folder :
                    folders.filter(f -> Files.exists(f.resolve("roofs.jsonl"))).toList()) {
                checkFolder(folder);
            }
        }
        System.out.println(counts);
        assertThat(counts.getOrDefault("buildings compared", 0)).isPositive();
    }

    private void checkFolder(Path folder) throws IOException {
        Map<String, JsonNode> expected = new LinkedHashMap<>();
        for (JsonNode roof : lines(folder.resolve("roofs.jsonl"))) {
            expected.put(
                    roof.path("source_file").asText() + "#" + roof.path("id").asText(), roof);
        }
        try (Stream<Path> files = Files.list(folder).sorted()) {
            for (Path file :
                    files.filter(f -> f.toString().contains(".city.json")).toList()) {
                checkFile(file, expected);
            }
        }
        expected.keySet().removeIf(key -> key.contains(".gml#"));
        assertThat(expected.keySet()).as("buildings of %s not met", folder).isEmpty();
    }

    private void checkFile(Path file, Map<String, JsonNode> expected) throws IOException {
        count("files");
        for (JsonNode posted : posted(file)) {
            JsonNode holder = posted.has("feature") ? posted.path("feature") : posted;
            for (Map.Entry<String, JsonNode> object : holder.path("CityObjects").properties()) {
                if (object.getValue().path("type").asText().equals("Building")) {
                    String key = file.getFileName() + "#" + object.getKey();
                    check(posted, object.getKey(), key, Optional.ofNullable(expected.remove(key)));
                }
            }
        }
    }

    private void check(JsonNode posted, String id, String key, Optional<JsonNode> expected) {
        count("buildings");
        List<PlaneOutline> planes;
        try {
            planes = CityJsonReader.read(posted, Optional.of(id), Origin.REQUEST);
        } catch (Refused refused) {
            count("refused " + refused.refusals().get(0).code());
            assertThat(expected).as(key + refused).isEmpty();
            return;
        }
        if (expected.isEmpty()) {
            count("buildings that the other program left out");
            return;
        }
        count("buildings compared");
        JsonNode roof = expected.get().path("roof");
        assertThat(planes).as(key).hasSize(roof.size());
        for (int i = 0; i < roof.size(); i++) {
            count("planes compared");
            checkPlane(planes.get(i), roof.path(i).path("rings"), expected.get().path("origin"), key);
        }
    }

    private void checkPlane(PlaneOutline plane, JsonNode rings, JsonNode origin, String key) {
        List<List<Point3>> read = new ArrayList<>();
        read.add(once(plane.outline()));
        plane.openings().forEach(opening -> read.add(once(opening.outline())));
        assertThat(read).as(key).hasSize(rings.size());
        for (int i = 0; i < read.size(); i++) {
            count(i == 0 ? "outlines compared" : "holes compared");
            assertThat(read.get(i)).as(key).hasSize(rings.path(i).size());
            for (int j = 0; j < read.get(i).size(); j++) {
                JsonNode corner = rings.path(i).path(j);
                Point3 point = read.get(i).get(j);
                assertThat(point.x() - origin.path(0).asDouble())
                        .as(key)
                        .isCloseTo(corner.path(0).asDouble(), within(PRINTED));
                assertThat(point.y() - origin.path(1).asDouble())
                        .as(key)
                        .isCloseTo(corner.path(1).asDouble(), within(PRINTED));
                assertThat(point.z() - origin.path(2).asDouble())
                        .as(key)
                        .isCloseTo(corner.path(2).asDouble(), within(PRINTED));
            }
        }
    }

    /** The other program writes a corner that is repeated at once only once. */
    private List<Point3> once(List<Point3> ring) {
        List<Point3> once = new ArrayList<>();
        for (Point3 corner : ring) {
            if (once.isEmpty() || !corner.equals(once.get(once.size() - 1))) {
                once.add(corner);
            }
        }
        if (once.size() > 1 && once.get(0).equals(once.get(once.size() - 1))) {
            once.remove(once.size() - 1);
        }
        if (once.size() < ring.size()) {
            count("rings with a corner repeated at once");
        }
        return once;
    }

    private void count(String what) {
        counts.merge(what, 1, Integer::sum);
    }

    private static List<JsonNode> posted(Path file) throws IOException {
        if (file.toString().endsWith(".json")) {
            return List.of(JSON.readTree(file.toFile()));
        }
        List<JsonNode> lines = lines(file);
        return lines.subList(1, lines.size()).stream()
                .map(line -> {
                    ObjectNode both = JSON.createObjectNode();
                    both.set("metadata", lines.get(0));
                    both.set("feature", line);
                    return (JsonNode) both;
                })
                .toList();
    }

    private static List<JsonNode> lines(Path file) throws IOException {
        List<JsonNode> nodes = new ArrayList<>();
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
            if (!line.isBlank()) {
                nodes.add(JSON.readTree(line));
            }
        }
        return nodes;
    }
}
