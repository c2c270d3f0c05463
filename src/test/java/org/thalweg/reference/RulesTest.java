package org.thalweg.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
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

    /** Inches, typed in from the specification, manuals, handbook and code named in the last column. */
    @ParameterizedTest(name = "{0}: {1} in")
    @MethodSource
    void lengthsOfValleysAreThosePrinted(String name, Sourced<Length> rule, double inches, String source) {
        assertThat(rule.value()).as(name).isEqualTo(Length.inches(inches));
        assertThat(rule.source().text()).startsWith(source);
        assertThat(rule.recalled()).isFalse();
    }

    static Stream<Arguments> lengthsOfValleysAreThosePrinted() {
        String specification = "UFGS (unified facilities guide spec) Section 07600";
        String handbook = "Copper Development Association, Copper in Architecture Design Handbook (web edition) ";
        return Stream.of(
                arguments("lap in direction of flow", Rules.valleyLeastLap(), 6, specification),
                arguments("lap of adjacent sheets", Rules.valleyUsualLap(), 8, handbook + "9.5"),
                arguments("under the covering each side", Rules.valleyLeastCover(), 6, specification),
                arguments("open at the top", Rules.valleyLeastExposure(), 4, specification),
                arguments("crimp or tee", Rules.valleyCrimpLeastUnequal(), 1, "Copper Flashings, a manual (1920s"),
                arguments("baffle", Rules.valleyRibLeastUnequal(), 1.5, handbook + "9.5B"),
                arguments("cleats on the fold", Rules.valleyCleatSpacing(), 12, specification),
                arguments("width of a cleat", Rules.copperCleatLeastWidth(), 2, handbook + "7.1A"),
                arguments("up a side wall", Rules.sideWallLeastHeight(), 4, "IRC R905.2.8.3"));
    }

    /** The New Zealand cladding code, 15.3.4: 200 mm. */
    @Test
    void metalTileValleysLapByTwoHundredMillimetres() {
        Sourced<Length> lap = Rules.valleyUsualMetricLap();
        assertThat(lap.value()).isEqualTo(Length.millimetres(200));
        assertThat(lap.source().text()).isEqualTo("New Zealand cladding code of practice 15.3.4");
        assertThat(lap.recalled()).isFalse();
    }

    /** UFC 3-110-03 (2006) 4-8 and EI 01S908 7d: 5 ft in the field, half of that along edges; EI 01S908 7c: a factor of 3. */
    @Test
    void clipsStandFiveFeetApartInTheFieldAndHalfOfThatAtEdges() {
        assertThat(Rules.clipFieldSpacing().value()).isEqualTo(Length.feet(5));
        assertThat(Rules.clipEdgeSpacing().value()).isEqualTo(Length.feet(2.5));
        assertThat(Rules.clipSafety().value()).isEqualTo(3.0);
        assertThat(Rules.clipFieldSpacing().source().text()).startsWith("UFC 3-110-03 (2006) 4-8");
        assertThat(Rules.clipEdgeSpacing().source().text()).endsWith("EI 01S908 7d");
        assertThat(Rules.clipSafety().source().text()).startsWith("EI 01S908");
    }

    /** Inches, typed in from the code, handbook and specification named in the last column; each rule prints several. */
    @ParameterizedTest(name = "{0}: {1} in")
    @MethodSource
    void lengthsOfFlashingsAreThosePrinted(String name, Sourced<Length> rule, double inches, String source) {
        assertThat(rule.value()).as(name).isEqualTo(Length.inches(inches));
        assertThat(rule.source().text()).startsWith(source);
        assertThat(rule.recalled()).isFalse();
    }

    static Stream<Arguments> lengthsOfFlashingsAreThosePrinted() {
        String handbook = "Copper Development Association, Copper in Architecture Design Handbook (web edition) ";
        return Stream.of(
                arguments("lap of a drip edge", Rules.dripEdgeLeastLap(), 2, "IRC R905.2.8.5"),
                arguments("drip edge up the deck", Rules.dripEdgeLeastUpDeck(), 2, "IRC R905.2.8.5"),
                arguments("lap of a rake strip", Rules.rakeStripLap(), 3, handbook + "standing seam A"),
                arguments("under the upper roofing", Rules.slopeChangeUnderUpper(), 6, handbook + "9.6A"),
                arguments("over the lower roofing", Rules.slopeChangeOverLower(), 4, handbook + "9.6A"),
                arguments("lap where the slope changes", Rules.slopeChangeLap(), 4, handbook + "9.6A"),
                arguments("longest sheet", Rules.sheetLongest(), 120, "UFGS (unified facilities guide spec)"));
    }

    /** Typed in from the codes named in the last column. Those of the table of laps were recalled. */
    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource
    void lengthsOfUnderlaymentAreThosePrinted(String name, Sourced<Length> rule, Length printed, String source) {
        assertThat(rule.value()).as(name).isEqualTo(printed);
        assertThat(rule.source().text()).startsWith(source);
        assertThat(rule.recalled()).isEqualTo(source.startsWith("IRC table"));
    }

    static Stream<Arguments> lengthsOfUnderlaymentAreThosePrinted() {
        return Stream.of(
                arguments("side lap", Rules.underlaySideLap(), Length.inches(2), "IRC table R905.1.1(2)"),
                arguments("end lap", Rules.underlayEndLap(), Length.inches(4), "IRC table R905.1.1(2)"),
                arguments("end laps apart", Rules.underlayLapsApart(), Length.feet(6), "IRC R905.2.7"),
                arguments("inside the wall line", Rules.iceBarrierInsideWall(), Length.inches(24), "IRC R905.1.2"),
                arguments(
                        "along a steep slope",
                        Rules.iceBarrierAlongSlope(),
                        Length.inches(36),
                        "IRC 2015-2021 R905.1.2"),
                arguments("strip under a valley", Rules.valleyUnderlayWidth(), Length.inches(36), "IBC 1507.3.9"));
    }

    /** IRC 2015 to 2021, R905.1.2: eight in twelve. */
    @Test
    void roofsOfEightInTwelveAreSteepToTheRuleOfIceBarriers() {
        assertThat(Rules.iceBarrierSteep().value()).isEqualTo(new Pitch(8, 12));
        assertThat(Rules.iceBarrierSteep().source().text()).isEqualTo("IRC 2015-2021 R905.1.2");
    }

    /** Copper in Architecture Design Handbook 9.5: 4 1/2 in per ft. */
    @Test
    void standardDetailsHoldForValleysOfFourAndAHalfToTheFoot() {
        Sourced<Pitch> least = Rules.valleyLeastSlopeOfDetails();
        assertThat(least.value()).isEqualTo(new Pitch(4.5, 12));
        assertThat(least.source().text())
                .startsWith("Copper Development Association")
                .endsWith("9.5");
    }

    /** Copper Flashings prints it both ways: 1/8 in to the foot, 1 in to 8 ft. */
    @Test
    void aValleyWidensDownwardsByAnInchInEightFeet() {
        Sourced<Double> widening = Rules.valleyWideningDownwards();
        assertThat(widening.value()).isEqualTo(1.0 / 96);
        assertThat(widening.source().text()).startsWith("Copper Flashings, a manual (1920s");
    }

    /** UFC 3-110-03 (2006): 200 °F, which as a difference are 111 K; the 93 °C it prints too is how warm 200 °F is. */
    @Test
    void clipsThatLetPanelsMoveAreMadeForTwoHundredDegreesFahrenheit() {
        Sourced<Double> range = Rules.designTemperatureRange();
        assertThat(range.value()).isCloseTo(111.1, within(0.05));
        assertThat(range.source().text()).isEqualTo("UFC 3-110-03 (2006) ch. 4");
        assertThat(range.recalled()).isFalse();
    }

    /** Two heights are printed for a rib between unequal flows; the larger satisfies both. */
    @Test
    void theRibBetweenUnequalFlowsIsTheHigherOfTheTwoPrinted() {
        assertThat(Rules.valleyRibLeastUnequal().value())
                .isGreaterThan(Rules.valleyCrimpLeastUnequal().value());
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
        assertThat(measure("valley", "details valid for valley slopes of at least"))
                .as("inches to the foot")
                .contains(new Pitch(4.5, 12));
    }

    @Test
    void aNumberKeepsTheDigitsPrinted() {
        assertThat(rule("clip", "safety factor on single clip/fastener resistance")
                        .number())
                .contains(new BigDecimal("3.0"));
        assertThat(rule(Rules.LEAST_SLOPE, "copper transverse seam, wide loose lock")
                        .number())
                .as("3 to 6")
                .isEmpty();
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
        assertThat(topics)
                .containsExactly("min slope", "valley", "cleat", "clip", "panel length", "flashing", "underlayment");
        assertThat(Rules.about("gutter")).isEmpty();
    }

    @Test
    void everyRuleSaysWhereItStandsAndHowSureWeAre() {
        assertThat(Rules.all()).hasSize(69).allSatisfy(rule -> {
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
