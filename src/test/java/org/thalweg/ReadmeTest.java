package org.thalweg;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What README.md prints is what the example says and what it is answered. */
class ReadmeTest {

    private static final Path EXAMPLES = Path.of("openapi", "examples");

    private static List<String> blocks() throws IOException {
        return Pattern.compile("```json\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(Path.of("README.md")))
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    @Test
    void theRequestPrintedIsTheExample() throws IOException {
        ObjectMapper json = new ObjectMapper();
        String example = Files.readString(EXAMPLES.resolve("layouts-shed.request.json"));

        assertThat(json.readTree(blocks().get(0))).isEqualTo(json.readTree(example));
    }

    @Test
    void everyLinePrintedOfTheAnswerStandsInIt() throws IOException {
        String answer = Files.readString(EXAMPLES.resolve("layouts-shed.answer.json"));

        assertThat(blocks().get(1).lines()).isNotEmpty().allSatisfy(line -> assertThat(answer)
                .contains(line));
    }

    /** The five numbers, as a shell would post them. */
    @Test
    void theFootprintPostedIsTheExample() throws IOException {
        ObjectMapper json = new ObjectMapper();
        String readme = Files.readString(Path.of("README.md"));
        String posted = Pattern.compile("localhost:8080/v1/layouts --data '(\\{.*?)'\n", Pattern.DOTALL)
                .matcher(readme)
                .results()
                .map(found -> found.group(1))
                .findFirst()
                .orElseThrow();
        String example = Files.readString(EXAMPLES.resolve("layouts-footprint.request.json"));

        assertThat(json.readTree(posted)).isEqualTo(json.readTree(example));
        assertThat(readme).contains("openapi/examples/layouts-footprint.answer.json");
    }

    @Test
    void theExampleItPostsIsThere() throws IOException {
        assertThat(Files.readString(Path.of("README.md")))
                .contains("--data @openapi/examples/layouts-shed.request.json localhost:8080/v1/layouts");
    }
}
