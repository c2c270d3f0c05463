package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.quarkus.test.junit.QuarkusIntegrationTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every command of {@code openapi/recipes.md}, run in its order against the packaged application, prints what the page says. */
@QuarkusIntegrationTest
@TestProfile(RecipesIT.ShopAllowed.class)
class RecipesIT {

    /** The operator lets the page of the recipes in, as the page says. */
    public static class ShopAllowed implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of("thalweg.origins", "https://shop.example");
        }
    }

    /** A block of commands, and what it prints, if the page says so. */
    private static final Pattern COMMANDS =
            Pattern.compile("```sh\n(.*?)```\n(?:\n```text\n(.*?)```)?", Pattern.DOTALL);

    private static final long SECONDS = 60;

    @TempDir
    Path folder;

    private record Recipe(String commands, String prints) {

        static List<Recipe> all() throws IOException {
            return COMMANDS.matcher(Files.readString(Path.of("openapi", "recipes.md")))
                    .results()
                    .map(block -> new Recipe(block.group(1), orNothing(block.group(2))))
                    .toList();
        }

        private static String orNothing(String text) {
            return text == null ? "" : text;
        }
    }

    @Test
    void everyCommandPrintsWhatThePageSays() throws Exception {
        assumeTrue(bashAndCurlAreHere(), "bash and curl are not on the PATH, so the recipes were not run");
        List<Recipe> recipes = Recipe.all();
        assertThat(recipes).hasSizeGreaterThan(6);
        for (Recipe recipe : recipes) {
            assertThat(printed(recipe.commands)).as(recipe.commands).isEqualTo(recipe.prints);
        }
    }

    private String printed(String commands) throws IOException, InterruptedException {
        File said = folder.resolve("said").toFile();
        ProcessBuilder bash = new ProcessBuilder("bash", "-uc", commands)
                .redirectErrorStream(true)
                .redirectOutput(said);
        bash.environment()
                .putAll(Map.of("THALWEG", Door.request("").build().uri().toString(), "OUT", folder.toString()));
        Process process = bash.start();
        boolean ended = process.waitFor(SECONDS, TimeUnit.SECONDS);
        if (!ended) {
            process.destroyForcibly();
        }
        String text = Files.readString(said.toPath());
        assertThat(ended).as(text).isTrue();
        return text;
    }

    private static boolean bashAndCurlAreHere() {
        try {
            return new ProcessBuilder("bash", "-c", "curl --version").start().waitFor() == 0;
        } catch (IOException notThere) {
            return false;
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }
}
