package org.thalweg.api.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.thalweg.drawing.Sheet;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Tape;

/** What is lettered on sheets of valleys, trims and cutting stands in the answer, and all there is to make is on them. */
class LetteredFiguresTest {

    private static final String NUMBER = "(?:\\d+' ?)?(?:(?:\\d+ )?\\d+/\\d+|\\d+)\"|\\d+'(?! ?\\d)|\\d+ mm(?!/)";
    private static final Pattern MARK = Pattern.compile("(?:(?<![\\w.])-|(?<![\\w.\\-/']))(?:" + NUMBER + ")");
    private static final List<View> VIEWS = List.of(View.VALLEYS, View.TRIMS, View.CUTTING);

    static List<Job> jobs() {
        return Jobs.all();
    }

    private static Set<String> marks(String lettering) {
        Set<String> marks = new TreeSet<>();
        Matcher matcher = MARK.matcher(lettering);
        while (matcher.find()) {
            marks.add(matcher.group());
        }
        return marks;
    }

    @Test
    void marksAreFoundInLettering() {
        assertThat(marks("E1: 15 3/8\", V1 215 7/16\"")).containsExactlyInAnyOrder("15 3/8\"", "215 7/16\"");
        assertThat(marks("leg 2: -4 5/8\" to 0\", 42.7°")).containsExactlyInAnyOrder("-4 5/8\"", "0\"");
        assertThat(marks("2 × 120\", the last 54 1/16\"")).containsExactlyInAnyOrder("120\"", "54 1/16\"");
        assertThat(marks("V1-1, 12' 3 1/2\", -235 mm")).containsExactlyInAnyOrder("12' 3 1/2\"", "-235 mm");
        assertThat(marks("326558.381 mm/h")).isEmpty();
    }

    /** Marks of the answer, and its corners of blanks, which it prints as numbers, to the nearest mark. */
    private static Set<String> known(JsonNode answer) {
        LengthUnit unit = Arrays.stream(LengthUnit.values())
                .filter(any -> any.symbol().equals(answer.at("/units/length").asText()))
                .findFirst()
                .orElseThrow();
        Set<String> known = new HashSet<>(answer.findValuesAsText("tape"));
        for (JsonNode blank : answer.findValues("blank")) {
            for (JsonNode corner : blank.path("outline")) {
                known.add(Tape.mark(unit.of(corner.get(1).asDouble()), unit));
            }
            for (JsonNode slit : blank.path("slits")) {
                known.add(Tape.mark(unit.of(slit.path("from").get(1).asDouble()), unit));
                known.add(Tape.mark(unit.of(slit.path("to").get(1).asDouble()), unit));
            }
        }
        return known;
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void everyMarkStandsInTheAnswer(Job job) {
        Set<String> known = known(job.json());
        for (View view : VIEWS) {
            for (Sheet sheet : job.sheets(view)) {
                for (String lettering : sheet.lettering()) {
                    assertThat(known).as("%s: %s", job, lettering).containsAll(marks(withoutScale(lettering)));
                }
            }
        }
    }

    /** A scale says what an inch stands for and is no figure of the job. */
    private static String withoutScale(String lettering) {
        return lettering.replaceFirst("[Ss]cale (along it )?1:.*", "");
    }

    private static Set<String> lettered(Job job, View view) {
        return job.sheets(view).stream()
                .flatMap(sheet -> sheet.lettering().stream())
                .collect(Collectors.toSet());
    }

    private static String all(Job job, View view) {
        return job.sheets(view).stream()
                .flatMap(sheet -> sheet.lettering().stream())
                .collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void everyPieceOfEveryValleyIsListed(Job job) {
        Set<String> lettered = lettered(job, View.VALLEYS);
        for (JsonNode valley : job.json().path("valleys")) {
            assertThat(lettered).contains("Valley " + valley.path("edge").asText());
            for (JsonNode piece : valley.path("pieces")) {
                assertThat(lettered).contains(piece.path("mark").asText());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void whatAValleysPanIsBentToIsDimensioned(Job job) {
        for (JsonNode valley : job.json().path("valleys")) {
            Sheet sheet = job.sheets(View.VALLEYS).stream()
                    .filter(any ->
                            any.title().equals("Valley " + valley.path("edge").asText()))
                    .findFirst()
                    .orElseThrow();
            String pan = String.join(" | ", sheet.lettering());
            for (String member : List.of("coilWidth", "flat", "ribLeg", "edgeReturn")) {
                assertThat(pan).contains(valley.at("/pan/" + member + "/tape").asText());
            }
            for (JsonNode side : valley.path("sides")) {
                assertThat(pan).contains(side.at("/holdBack/tape").asText());
                assertThat(pan).contains(side.at("/coverUnderPanel/tape").asText());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void everyLineOfEveryHipIsListed(Job job) {
        Set<String> lettered = lettered(job, View.VALLEYS);
        for (JsonNode hip : job.json().path("hips")) {
            for (JsonNode side : hip.path("sides")) {
                for (String line : List.of("panelLine", "closureLine", "capLine")) {
                    JsonNode lower = side.path(line).path("lower");
                    if (lower.has("along")) {
                        assertThat(lettered)
                                .contains(lower.path("edge").asText() + ": "
                                        + lower.at("/along/tape").asText());
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void everyPieceOfEveryTrimIsListed(Job job) {
        Set<String> lettered = lettered(job, View.TRIMS);
        for (JsonNode trim : job.json().path("trims")) {
            for (JsonNode piece : trim.path("pieces")) {
                assertThat(lettered).contains(piece.path("mark").asText());
            }
        }
    }

    /** On the sheet that names the edge every girth and every bend line; every bend among the sheets of trims. */
    @ParameterizedTest
    @MethodSource("jobs")
    void everyProfileIsDimensioned(Job job) {
        List<Sheet> sheets = job.sheets(View.TRIMS);
        String all = all(job, View.TRIMS);
        for (JsonNode trim : job.json().path("trims")) {
            String edge = trim.path("edge").asText();
            Pattern named = Pattern.compile("On edges (\\w+, )*" + edge + "[,.]");
            Sheet sheet = sheets.stream()
                    .filter(any ->
                            named.matcher(String.join(" ", any.lettering())).find())
                    .findFirst()
                    .orElseThrow();
            for (JsonNode leg : trim.path("legs")) {
                assertThat(sheet.lettering())
                        .as("%s", edge)
                        .contains(leg.path("tape").asText());
            }
            for (JsonNode line : trim.path("bendLines")) {
                assertThat(sheet.lettering()).contains(line.at("/at/tape").asText());
            }
            for (JsonNode bend : trim.path("bendsDeg")) {
                assertThat(all).contains(Lettered.bend(bend.asDouble()));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void everyPieceCutFromABarIsTold(Job job) {
        JsonNode answer = job.json();
        if (!answer.has("cuts")) {
            assertThat(job.sheets()).extracting(Sheet::view).doesNotContain(View.CUTTING.word());
            return;
        }
        String all = all(job, View.CUTTING);
        for (JsonNode cut : answer.path("cuts")) {
            for (JsonNode bar : cut.path("bars")) {
                for (JsonNode piece : bar.path("pieces")) {
                    assertThat(all).contains(piece.path("id").asText());
                    assertThat(all).contains(piece.at("/to/tape").asText());
                }
            }
        }
        for (JsonNode panel : answer.at("/coil/run")) {
            assertThat(all).contains(panel.path("id").asText());
            assertThat(all).contains(panel.at("/upper/to/tape").asText());
        }
    }
}
