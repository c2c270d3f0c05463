package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import java.io.File;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Full-size blanks as an independent reader finds them: ezdxf, Debian's {@code python3-ezdxf}. Skipped where no Python on the
 * path has it, unless {@code CI} is {@code true}: then its absence fails.
 */
@QuarkusTest
class DxfTest {

    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final ObjectMapper JSON = new ObjectMapper();

    /** The issue of a reader: outlines are written as decimals and read as doubles. */
    private static final double EXACT = 1e-6;

    private static String example(String name) throws IOException {
        return Files.readString(Path.of("openapi", "examples", name + ".request.json"));
    }

    private static JsonNode read(String path, String body) throws IOException {
        Optional<String> python = python();
        if (python.isEmpty() && !"true".equals(System.getenv("CI"))) {
            Assumptions.abort("skipped: no python3 with ezdxf on the PATH (Debian: python3-ezdxf)");
        }
        Process reader = new ProcessBuilder(python.orElseThrow(), "src/test/resources/read_dxf.py")
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        reader.getOutputStream().write(drawn(path, body));
        reader.getOutputStream().close();
        return JSON.readTree(reader.getInputStream());
    }

    /** The first Python on the path that has the reader. */
    private static Optional<String> python() {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .map(folder -> Path.of(folder, "python3"))
                .filter(Files::isExecutable)
                .map(Path::toString)
                .filter(DxfTest::hasReader)
                .findFirst();
    }

    private static boolean hasReader(String python) {
        try {
            return new ProcessBuilder(python, "-c", "import ezdxf")
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private static byte[] drawn(String path, String body) throws IOException {
        try {
            return CLIENT.send(
                            Door.request(path)
                                    .POST(BodyPublishers.ofString(body))
                                    .header("Content-Type", "application/json")
                                    .header("Accept", "image/vnd.dxf")
                                    .build(),
                            BodyHandlers.ofByteArray())
                    .body();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private static List<JsonNode> on(JsonNode drawing, String layer) {
        List<JsonNode> found = new ArrayList<>();
        drawing.path("entities").forEach(entity -> {
            if (entity.path("layer").asText().equals(layer)) {
                found.add(entity);
            }
        });
        return found;
    }

    private static void same(JsonNode drawn, JsonNode outline) {
        assertThat(drawn.path("kind").asText()).isEqualTo("POLYLINE");
        assertThat(drawn.path("closed").asBoolean()).isTrue();
        assertThat(drawn.path("corners")).hasSameSizeAs(outline);
        for (int axis = 0; axis < 2; axis++) {
            double moved = drawn.at("/corners/0/" + axis).asDouble()
                    - outline.at("/0/" + axis).asDouble();
            assertThat(moved).isCloseTo(Math.rint(moved), within(EXACT));
            for (int i = 0; i < outline.size(); i++) {
                double there = drawn.at("/corners/" + i + "/" + axis).asDouble();
                assertThat(there - Math.rint(moved))
                        .isCloseTo(outline.at("/" + i + "/" + axis).asDouble(), within(EXACT));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"layouts-demo", "layouts-hip", "layouts-gable"})
    void outlinesAreTheBlanksOfTheAnswer(String name) throws IOException {
        JsonNode answer = Door.post("/v1/layouts", example(name)).json();
        JsonNode drawing = read("/v1/layouts", example(name));
        List<JsonNode> panels = new ArrayList<>();
        answer.path("panels").forEach(panel -> {
            panels.add(panel.at("/cut/outline"));
            panel.at("/cut/openings").forEach(opening -> panels.add(opening.path("outline")));
        });
        List<JsonNode> trims = new ArrayList<>();
        answer.path("trims")
                .forEach(trim -> trim.path("pieces").forEach(piece -> trims.add(piece.at("/blank/outline"))));

        assertThat(drawing.path("version").asText()).isEqualTo("AC1009");
        assertThat(drawing.path("errors")).isEmpty();
        compare(on(drawing, "PANEL_CUT"), panels);
        compare(on(drawing, "TRIM_CUT"), trims);
        assertThat(on(drawing, "PANEL_MARK")).hasSize(answer.path("panels").size() + 1);
    }

    private static void compare(List<JsonNode> drawn, List<JsonNode> outlines) {
        assertThat(outlines).isNotEmpty();
        assertThat(drawn).hasSameSizeAs(outlines);
        for (int i = 0; i < outlines.size(); i++) {
            same(drawn.get(i), outlines.get(i));
        }
    }

    @Test
    void pansHaveTheirFoldsAndSlitsApart() throws IOException {
        JsonNode answer = Door.post("/v1/valleys", example("valleys-square")).json();
        JsonNode drawing = read("/v1/valleys", example("valleys-square"));
        List<JsonNode> pans = new ArrayList<>();
        int folds = 0;
        int slits = 0;
        for (JsonNode piece : answer.at("/valleys/0/pieces")) {
            pans.add(piece.at("/blank/outline"));
            folds += piece.at("/blank/folds").size();
            slits += piece.at("/blank/slits").size();
        }

        compare(on(drawing, "PAN_CUT"), pans);
        assertThat(folds).isPositive();
        assertThat(on(drawing, "PAN_BEND"))
                .hasSize(folds)
                .allMatch(line -> line.path("kind").asText().equals("LINE"));
        assertThat(slits).isPositive();
        assertThat(on(drawing, "PAN_SLIT")).hasSize(slits);
    }

    @Test
    void noTwoPiecesLieOverEachOther() throws IOException {
        JsonNode drawing = read("/v1/layouts", example("layouts-hip"));
        List<double[]> boxes = new ArrayList<>();
        drawing.path("entities").forEach(entity -> {
            if (entity.path("layer").asText().endsWith("_CUT")) {
                boxes.add(box(entity.path("corners")));
            }
        });

        assertThat(boxes).hasSizeGreaterThan(50);
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = i + 1; j < boxes.size(); j++) {
                double[] a = boxes.get(i);
                double[] b = boxes.get(j);
                assertThat(a[2] < b[0] || b[2] < a[0] || a[3] < b[1] || b[3] < a[1])
                        .isTrue();
            }
        }
    }

    private static double[] box(JsonNode corners) {
        double[] box = {
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        for (JsonNode corner : corners) {
            box[0] = Math.min(box[0], corner.path(0).asDouble());
            box[1] = Math.min(box[1], corner.path(1).asDouble());
            box[2] = Math.max(box[2], corner.path(0).asDouble());
            box[3] = Math.max(box[3], corner.path(1).asDouble());
        }
        return box;
    }
}
