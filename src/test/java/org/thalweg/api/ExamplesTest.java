package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every request of {@code openapi/examples} is answered by the answer beside it, byte for byte: {@code layouts-shed} is
 * posted to {@code /v1/layouts}, {@code stock-cuts-drips} to {@code /v1/stock-cuts}. What was answered is left in {@code target/examples}; if a change of it is meant, copy it.
 */
@QuarkusTest
class ExamplesTest {

    private static final Path EXAMPLES = Path.of("openapi", "examples");
    private static final Path ANSWERED = Path.of("target", "examples");
    private static final String REQUEST = ".request.json";
    private static final String ANSWER = ".answer.json";

    static List<String> names() throws IOException {
        return named(REQUEST);
    }

    private static List<String> named(String end) throws IOException {
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(end))
                    .map(name -> name.substring(0, name.length() - end.length()))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("names")
    void anExampleIsAnsweredByteForByte(String name) throws IOException {
        String path = "/v1/" + name.substring(0, name.lastIndexOf('-'));
        String answered = Door.post(path, Files.readString(EXAMPLES.resolve(name + REQUEST)))
                .text();
        Files.createDirectories(ANSWERED);
        Files.write(ANSWERED.resolve(name + ANSWER), answered.getBytes(StandardCharsets.UTF_8));
        assertThat(answered).isEqualTo(Files.readString(EXAMPLES.resolve(name + ANSWER)));
    }

    @Test
    void everyAnswerHasItsRequest() throws IOException {
        assertThat(named(ANSWER)).isNotEmpty().isEqualTo(names());
    }
}
