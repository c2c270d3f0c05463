package org.thalweg;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The programs that {@code openapi/recipes.md} prints are those that the profile {@code clients} compiles and runs. */
class RecipesTest {

    @ParameterizedTest
    @CsvSource({"java, java/org/thalweg/clients/Estimate.java", "ts, typescript/shop.ts"})
    void theProgramPrintedIsTheOneThatRuns(String language, Path source) throws IOException {
        String printed = only("```" + language + "\n(.*?)```", Path.of("openapi", "recipes.md"));
        String run = only(
                "// recipe\n(.*?)\n *// end of recipe",
                Path.of("src", "clients").resolve(source));
        assertThat(printed).isEqualTo(run.stripIndent().strip() + "\n");
    }

    private static String only(String pattern, Path file) throws IOException {
        MatchResult[] found = Pattern.compile(pattern, Pattern.DOTALL)
                .matcher(Files.readString(file))
                .results()
                .toArray(MatchResult[]::new);
        assertThat(found).as(file.toString()).hasSize(1);
        return found[0].group(1);
    }
}
