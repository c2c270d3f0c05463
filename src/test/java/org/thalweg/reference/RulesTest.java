package org.thalweg.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.Measure;
import org.thalweg.units.Pitch;

class RulesTest {

    /** IBC 1507.4.2 (3) and IRC R905.10.2: a quarter in twelve, 2 %. */
    @Test
    void standingSeamRoofsRiseAQuarterInTwelveOrMore() {
        Sourced<Pitch> least = Rules.leastSlopeStandingSeam();
        assertThat(least.value()).isEqualTo(new Pitch(0.25, 12));
        assertThat(least.source().text()).isEqualTo("IBC 1507.4.2 (3) / IRC R905.10.2");
        assertThat(least.recalled()).isFalse();
    }

    /** Typed in from the codes and manuals named in the last column. */
    @ParameterizedTest(name = "{0}: {1}:12")
    @CsvSource({
        "standing-seam metal panels, 0.25, IBC 1507.4.2 (3)",
        "'lapped non-soldered seam, with applied lap sealant', 0.5, IBC 1507.4.2 (2)",
        "'lapped non-soldered seam, no sealant', 3, IBC 1507.4.2 (1)",
        "metal roof shingles, 3, IBC 2018 1507.5.2",
        "'copper standing seam, standard details', 4, Copper Development Association",
        "'copper transverse seam, narrow loose lock', 6, Copper Development Association",
        "'uncrimped seam, panel <=12 in, rib 2 in', 2, US Army Corps EI 01S908",
        "'uncrimped seam, panel <=12 in, rib 1.5 in', 3, US Army Corps EI 01S908",
        "'structural standing seam, cold regions', 1.5, US Army Corps EI 01S908",
        "'structural standing seam, corrosive environment', 1, US Army Corps EI 01S908"
    })
    void leastSlopesAreThoseOfTheCodes(String name, double rise, String source) {
        Rule rule = rule(Rules.LEAST_SLOPE, name);
        assertThat(rule.measure()).contains(new Pitch(rise, 12));
        assertThat(rule.source()).startsWith(source);
    }

    @Test
    void leastSlopesStandInTheOrderOfTheFile() {
        List<Rule> slopes = Rules.about(Rules.LEAST_SLOPE);
        assertThat(slopes).hasSize(12);
        assertThat(slopes.get(0).rule()).isEqualTo("standing-seam metal panels");
        assertThat(slopes.get(11).measure()).contains(Angle.degrees(7));
    }

    @Test
    void aRuleWithOnePlainFigureCanBeComputedWith() {
        assertThat(measure("clip", "field, maximum")).contains(Length.inches(60));
        assertThat(measure("panel length", "practical limit of continuous pan run"))
                .contains(Length.feet(45));
        assertThat(measure("panel length", "German pan length, standard maximum"))
                .contains(Length.metres(10));
        assertThat(measure("valley", "metal tile valley lap")).contains(Length.millimetres(200));
        assertThat(measure("valley", "lap in direction of flow")).contains(Length.inches(6));
    }

    @Test
    void aRuleWithSeveralFiguresOrNoneCanNot() {
        assertThat(measure(Rules.LEAST_SLOPE, "copper transverse seam, wide loose lock"))
                .as("3 to 6")
                .isEmpty();
        assertThat(measure("valley", "NRCA: metal width / rib / flange / shingle lap"))
                .as("18 / 1 / 8 / 4")
                .isEmpty();
        assertThat(measure("valley", "clips with two fasteners, head of valley fixed, rest free"))
                .as("a rule without a figure")
                .isEmpty();
        assertThat(measure("clip", "design temperature range for expansion clips"))
                .as("degrees Fahrenheit")
                .isEmpty();
    }

    @Test
    void topicsAreThoseInUse() {
        Set<String> topics = Rules.all().stream().map(Rule::topic).collect(Collectors.toCollection(LinkedHashSet::new));
        assertThat(topics).containsExactly("min slope", "valley", "clip", "panel length", "flashing", "underlayment");
        assertThat(Rules.about("gutter")).isEmpty();
    }

    @Test
    void everyRuleSaysWhereItStandsAndHowSureWeAre() {
        assertThat(Rules.all()).hasSize(62).allSatisfy(rule -> {
            assertThat(rule.source()).isNotBlank().doesNotStartWith("same");
            assertThat(rule.confidence()).matches("found|memory-high|memory-medium");
        });
    }

    /** A recalled rule is kept only where nothing printed was found; this list should get shorter. */
    @Test
    void sixRulesWereRecalledAndSaySo() {
        assertThat(Rules.all().stream()
                        .filter(rule -> rule.confidence().startsWith("memory"))
                        .map(Rule::rule))
                .containsExactly(
                        "metal-shingle valley flashing each way from centreline",
                        "maximum German valley piece between expansion joints",
                        "eave hem over a 1 in drip/turn-down, panel notched and folded",
                        "panel turned up at ridge or head wall",
                        "panel end past valley offset cleat: fold-under hem",
                        "horizontal lap / end lap");
    }

    private static Optional<Measure> measure(String topic, String name) {
        return rule(topic, name).measure();
    }

    private static Rule rule(String topic, String name) {
        return Rules.about(topic).stream()
                .filter(rule -> rule.rule().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
