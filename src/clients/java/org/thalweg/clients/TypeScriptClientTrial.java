package org.thalweg.clients;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusIntegrationTest;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The TypeScript types that {@code openapi-typescript} makes of the contract. The compiler, at its strictest, holds every example
 * request and answer against them; then the demo job is run by way of {@code openapi-fetch} against the packaged application.
 */
@QuarkusIntegrationTest
class TypeScriptClientTrial {

    private static final Path SOURCES = Path.of("src", "clients", "typescript");
    private static final Path PROJECT = Path.of("target", "clients", "typescript");
    private static final long MINUTES = 5;

    private final ObjectMapper json = new ObjectMapper();

    @Test
    void everyExampleHasItsTypeAndTheDemoJobIsAnsweredAsPlainly() throws Exception {
        assumeNodeIsHere();
        copySources();
        run("npm", "ci", "--no-audit", "--no-fund");
        run("npm", "run", "build");
        Path file = PROJECT.resolve("answered.json").toAbsolutePath();
        run("node", "run.mjs", Examples.service(), file.toString());

        JsonNode answered = json.readTree(file.toFile());
        assertThat(answered.path("answers").size()).isEqualTo(7);
        for (var answer : answered.path("answers").properties()) {
            JsonNode plain = Examples.answered(answer.getKey(), Examples.request(answer.getKey()));
            assertThat(Trees.differences(plain, answer.getValue())).isEmpty();
        }
        JsonNode quote = Examples.answered("quotes-shed", Examples.request("quotes-shed"));
        assertThat(answered.path("total").isObject()).isTrue();
        assertThat(answered.path("total")).isEqualTo(quote.path("total"));
        assertThat(answered.path("faults").toString()).isEqualTo("[\"BAD_LENGTH #/panel/cover\"]");
        JsonNode square = Examples.answered("valleys-square", Examples.request("valleys-square"));
        assertThat(Trees.differences(square, answered.at("/shop/shown"))).isEmpty();
        assertThat(answered.at("/shop/beside").fieldNames()).toIterable().containsExactly("#/corner/pitches/1");
    }

    /** Without Node the rest of the build goes on, and says so; where the build is the judge it may not. */
    private static void assumeNodeIsHere() {
        boolean here = runs("node", "--version") && runs("npm", "--version");
        if (!here && "true".equals(System.getenv("CI"))) {
            throw new AssertionError("Node and npm are not on the PATH, and the TypeScript client was not tried.");
        }
        if (!here) {
            System.out.println("SKIPPED: Node and npm are not on the PATH; the TypeScript client was not tried.");
        }
        assumeTrue(here, "Node and npm are not on the PATH");
    }

    private static boolean runs(String... command) {
        try {
            return new ProcessBuilder(command).start().waitFor() == 0;
        } catch (IOException notThere) {
            return false;
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private static void copySources() throws IOException {
        Files.createDirectories(PROJECT);
        try (Stream<Path> files = Files.list(SOURCES)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, PROJECT.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    private static void run(String... command) throws IOException, InterruptedException {
        File said = PROJECT.resolve("said.log").toFile();
        Process process = new ProcessBuilder(command)
                .directory(PROJECT.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said)
                .start();
        boolean ended = process.waitFor(MINUTES, TimeUnit.MINUTES);
        if (!ended) {
            process.destroyForcibly();
        }
        String log = Files.readString(said.toPath());
        assertThat(ended).as(log).isTrue();
        assertThat(process.exitValue()).as("%s: %s", List.of(command), log).isZero();
    }
}
