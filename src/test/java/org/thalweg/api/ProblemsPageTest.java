package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.thalweg.api.problem.Problem;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.RefusalCode;

/** The page that explains every code has every code, in the order of the code, with something to say about it. */
class ProblemsPageTest {

    private static final Path PAGE = Path.of("openapi", "problems.md");

    static Stream<Arguments> sections() {
        return Stream.of(
                Arguments.of("Kinds of problem", Problem.values()),
                Arguments.of("Errors of reading", ReadingCode.values()),
                Arguments.of("Why it is no roof", RefusalCode.values()),
                Arguments.of("Findings", FindingCode.values()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sections")
    void everyCodeHasItsHeadingAndNoOther(String title, Enum<?>[] codes) throws IOException {
        List<String> headings = entries(title).stream()
                .map(entry -> entry.lines().findFirst().orElseThrow())
                .toList();
        assertThat(headings)
                .containsExactlyElementsOf(Arrays.stream(codes).map(Enum::name).toList());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sections")
    void everyHeadingIsFollowedByASentence(String title, Enum<?>[] codes) throws IOException {
        assertThat(entries(title)).hasSize(codes.length).allSatisfy(entry -> assertThat(
                        entry.lines().skip(1).reduce("", String::concat))
                .hasSizeGreaterThan(20)
                .endsWith("."));
    }

    @ParameterizedTest
    @EnumSource
    void everyKindOfProblemNamesItsStatus(Problem problem) throws IOException {
        assertThat(textOf("Kinds of problem", problem)).startsWith(problem.status() + ". ");
    }

    @ParameterizedTest
    @EnumSource
    void everyFindingNamesItsSeverity(FindingCode code) throws IOException {
        assertThat(textOf("Findings", code).toUpperCase(Locale.ROOT)).startsWith(code.severity() + ". ");
    }

    private static String textOf(String title, Enum<?> code) throws IOException {
        return entries(title).stream()
                .filter(entry -> entry.startsWith(code + "\n"))
                .map(entry -> entry.substring(code.name().length()).strip())
                .findFirst()
                .orElseThrow();
    }

    /** What stands under each heading of the third level in the section called {@code title}, heading first. */
    private static List<String> entries(String title) throws IOException {
        String section = Arrays.stream(Files.readString(PAGE).split("(?m)^## "))
                .filter(part -> part.startsWith(title + "\n"))
                .findFirst()
                .orElseThrow();
        return Arrays.stream(section.split("(?m)^### ")).skip(1).toList();
    }
}
