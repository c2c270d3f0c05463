package org.thalweg.drainage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Place;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.Drawn;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.units.FlowUnit;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Rainfall;

/** The water of the valley of {@link InnerCorner}, 8 m² on either side, in a pan of a 48 in coil unless a test says else. */
class ValleyWaterTest {

    private static final PanRoom WIDE = room(12.75, 12.75, 4.25);

    /** 6 in of cover, 1 in of edge return and the rib's leg are what half the coil holds besides the hold-back. */
    private static PanRoom room(double bottomInches, double topInches, double legInches) {
        return new PanRoom(
                Length.inches(bottomInches),
                Length.inches(topInches),
                Length.inches(1),
                Length.inches(legInches),
                Length.inches(6 + 1 + legInches),
                Source.REQUEST);
    }

    private static Rainfall inchesAnHour(double inches) {
        return Rainfall.perHour(Length.inches(inches));
    }

    private static WaterCase asked(Drawn.Read read, PanRoom room, Optional<Rainfall> rain, double... stations) {
        Edge valley = read.edge("VW");
        List<Length> along = new ArrayList<>(List.of(Length.ZERO));
        for (double station : stations) {
            along.add(Length.metres(station));
        }
        return new WaterCase(
                new Place(Place.Kind.EDGE, valley.id(), Origin.REQUEST),
                valley.length(),
                valley.slope(),
                List.of(InnerCorner.side(read, "VW", "VBCW"), InnerCorner.side(read, "VW", "VWDE")),
                room,
                along,
                rain,
                Channel.ROUGHNESS,
                read.roof().tolerance());
    }

    private static ValleyWater water(PanRoom room, double rain, double... stations) {
        return ValleyWater.of(asked(InnerCorner.read(), room, Optional.of(inchesAnHour(rain)), stations));
    }

    private static Finding only(ValleyWater water, FindingCode code) {
        List<Finding> found =
                water.findings().stream().filter(f -> f.code() == code).toList();
        assertThat(found).as("%s of %s", code, water.findings()).isNotEmpty();
        return found.get(0);
    }

    private static double needed(Finding finding, String name) {
        return finding.needed().stream()
                .filter(needed -> needed.name().equals(name))
                .map(needed -> ((Length) needed.figure()).in(LengthUnit.INCH))
                .findFirst()
                .orElseThrow();
    }

    /** 8 m² is 86.11 ft², which 4 in/h bring 3.579 gal/min off (0.0103896 each). The depth by hand, from the section. */
    @Test
    void eachSideCarriesTheRainOfItsCatchment() {
        SideWater side = water(WIDE, 4).sides().get(0);
        StationWater bottom = side.stations().get(0);
        assertThat(bottom.flow().orElseThrow().in(FlowUnit.GALLON_PER_MINUTE)).isCloseTo(3.579, within(0.0005));
        // Square corner of 6:12: cot ψ = 3, S = 1/3, an upright rib; A = 1.5 y², P = (√10 + 1) y, n = 0.012.
        double y = Math.pow(
                bottom.flow().orElseThrow().cubicMetresPerSecond()
                        * 0.012
                        / (1.5 * Math.pow(1.5 / (Math.sqrt(10) + 1), 2 / 3.0) * Math.sqrt(1 / 3.0)),
                3 / 8.0);
        assertThat(bottom.depth().orElseThrow().metres()).isCloseTo(y, within(1e-12));
        assertThat(bottom.spread().orElseThrow().metres()).isCloseTo(y * Math.sqrt(10), within(1e-12));
        assertThat(bottom.spreadLimit().in(LengthUnit.INCH)).isCloseTo(11.75, within(1e-12));
        assertThat(side.ribHeight().orElseThrow().in(LengthUnit.INCH)).isCloseTo(4.25, within(1e-12));
    }

    @Test
    void equalPitchesAndAreasGiveEqualSides() {
        ValleyWater water = water(WIDE, 4, 1.5, 3);
        SideWater one = water.sides().get(0);
        SideWater other = water.sides().get(1);
        for (int i = 0; i < 3; i++) {
            assertThat(one.stations().get(i).depth().orElseThrow().metres())
                    .isCloseTo(other.stations().get(i).depth().orElseThrow().metres(), within(1e-13));
        }
        assertThat(one.left()).isFalse();
        assertThat(other.left()).isTrue();
        assertThat(water.findings()).isEmpty();
    }

    @Test
    void withoutARainfallThereAreAreasAndLimitsAndNoDepths() {
        ValleyWater water = ValleyWater.of(asked(InnerCorner.read(), WIDE, Optional.empty(), 3));
        StationWater halfWay = water.sides().get(0).stations().get(1);
        assertThat(halfWay.area().squareMetres()).isCloseTo(2, within(1e-12));
        assertThat(halfWay.flow()).isEmpty();
        assertThat(halfWay.depth()).isEmpty();
        assertThat(halfWay.spread()).isEmpty();
        assertThat(water.sides().get(0).reachesPanel()).isPresent();
        assertThat(water.findings()).isEmpty();
    }

    @Test
    void moreRainIsNeverLessDeep() {
        double last = 0;
        for (double rain = 0; rain < 40; rain += 0.5) {
            double depth = water(WIDE, rain)
                    .sides()
                    .get(1)
                    .stations()
                    .get(0)
                    .depth()
                    .orElseThrow()
                    .metres();
            assertThat(depth).isGreaterThanOrEqualTo(last);
            last = depth;
        }
        assertThat(last).isPositive();
    }

    @Test
    void atTheRainfallOfALimitTheLimitIsMetAndNotPassed() {
        for (double leg : new double[] {0.4, 4.25}) {
            SideWater side = water(room(3, 3, leg), 1).sides().get(0);
            double toPanel = side.reachesPanel().orElseThrow().inAnHour().in(LengthUnit.INCH);
            double toRib = side.reachesRib().orElseThrow().inAnHour().in(LengthUnit.INCH);
            StationWater atPanel =
                    water(room(3, 3, leg), toPanel).sides().get(0).stations().get(0);
            StationWater atRib =
                    water(room(3, 3, leg), toRib).sides().get(0).stations().get(0);
            assertThat(atPanel.spread().orElseThrow().in(LengthUnit.INCH)).isCloseTo(2, within(1e-9));
            assertThat(atRib.depth().orElseThrow().metres())
                    .isCloseTo(side.ribHeight().orElseThrow().metres(), within(1e-12));
            assertThat(codes(water(room(3, 3, leg), toPanel))).doesNotContain(FindingCode.WATER_UNDER_PANEL);
            assertThat(codes(water(room(3, 3, leg), toPanel * 1.001))).contains(FindingCode.WATER_UNDER_PANEL);
            assertThat(codes(water(room(3, 3, leg), toRib))).doesNotContain(FindingCode.WATER_OVER_RIB);
            assertThat(codes(water(room(3, 3, leg), toRib * 1.001))).contains(FindingCode.WATER_OVER_RIB);
        }
    }

    private static List<FindingCode> codes(ValleyWater water) {
        return water.findings().stream().map(Finding::code).toList();
    }

    @Test
    void theHoldBackAndTheCoilThatWouldDoDo() {
        Finding finding = only(water(room(2, 2, 1.75), 12), FindingCode.WATER_UNDER_PANEL);
        double holdBack = needed(finding, "holdBack");
        Length spread = (Length) finding.actual().orElseThrow();
        assertThat(finding.limit()).contains(Length.metres(0.0254));
        assertThat(holdBack).isCloseTo(spread.in(LengthUnit.INCH) + 1, within(0.0002));
        assertThat(needed(finding, "coilWidth")).isCloseTo(2 * (holdBack + 8.75), within(0.0005));
        double printed = Math.round(holdBack * 1e4) / 1e4;
        assertThat(codes(water(room(printed, printed, 1.75), 12))).doesNotContain(FindingCode.WATER_UNDER_PANEL);
        assertThat(codes(water(room(printed - 0.0005, printed - 0.0005, 1.75), 12)))
                .contains(FindingCode.WATER_UNDER_PANEL);
        assertThat(finding.message()).contains("{actual}", "{limit}", "{holdBack}", "{coilWidth}", "right of valley");
    }

    @Test
    void theRibThatWouldDoDoes() {
        Finding finding = only(water(room(12.75, 12.75, 0.2), 12), FindingCode.WATER_OVER_RIB);
        double leg = Math.round(needed(finding, "ribLeg") * 1e4) / 1e4;
        assertThat(leg).isGreaterThan(0.2);
        assertThat(codes(water(room(12.75, 12.75, leg), 12))).isEmpty();
        assertThat(codes(water(room(12.75, 12.75, leg - 0.0005), 12))).contains(FindingCode.WATER_OVER_RIB);
    }

    /** A pan that is bent narrow at the top lets water under there first, and the bottom must give as much. */
    @Test
    void aTaperedPanIsHeldAgainstTheNarrowestPlaceThatIsLookedAt() {
        PanRoom tapered = room(4, 0.7, 4.25);
        assertThat(codes(water(tapered, 6))).isEmpty();
        Finding finding = only(water(tapered, 6, 3, 5), FindingCode.WATER_UNDER_PANEL);
        StationWater worst = water(tapered, 6, 3, 5).sides().get(0).stations().get(2);
        assertThat(finding.actual()).contains(worst.spread().orElseThrow());
        double wanting = worst.spread().orElseThrow().in(LengthUnit.INCH)
                - worst.spreadLimit().in(LengthUnit.INCH);
        assertThat(needed(finding, "holdBack")).isCloseTo(4 + wanting, within(0.0002));
        double more = needed(finding, "holdBack") - 4;
        assertThat(codes(water(room(4 + more, 0.7 + more, 4.25), 6, 3, 5))).isEmpty();
        assertThat(water(tapered, 6, 3, 5)
                        .sides()
                        .get(0)
                        .reachesPanel()
                        .orElseThrow()
                        .inAnHour())
                .isLessThan(water(tapered, 6)
                        .sides()
                        .get(0)
                        .reachesPanel()
                        .orElseThrow()
                        .inAnHour());
    }

    @Test
    void aHoldBackThatIsAllMarginIsReachedByAnyRain() {
        SideWater side = water(room(0.5, 0.5, 4.25), 1).sides().get(0);
        assertThat(side.reachesPanel()).contains(new Rainfall(0));
        assertThat(side.stations().get(0).spreadLimit()).isEqualTo(Length.ZERO);
    }

    @Test
    void whereNoWaterRunsThereIsNothingToFind() {
        PanRoom closedAtTheTop = room(6, 0, 4.25);
        assertThat(codes(water(closedAtTheTop, 1, 6))).isEmpty();
        assertThat(codes(water(room(0, 0, 4.25), 0))).isEmpty();
    }

    /** The wing's slope at another pitch: its ridge moves out, so the valley stays where it is and the areas differ. */
    private static Drawn.Read unequal() {
        return InnerCorner.drawn()
                .move("WD", p -> new Point3(-4, p.y(), 2))
                .planes("VBCW", "VWDE")
                .read();
    }

    /** Copper Development Association, handbook 9.5B: a baffle of 1 1/2 in where the flows are unequal. */
    @Test
    void unequalSidesNeedARibOfAnInchAndAHalf() {
        ValleyWater low = ValleyWater.of(asked(unequal(), room(12.75, 12.75, 1.25), Optional.empty()));
        Finding finding = only(low, FindingCode.RIB_TOO_LOW);
        assertThat(finding.limit()).contains(Length.inches(1.5));
        assertThat(finding.actual()).contains(Length.inches(1.25));
        assertThat(finding.source().text()).contains("9.5B");
        assertThat(codes(ValleyWater.of(asked(unequal(), room(12.75, 12.75, 1.5), Optional.empty()))))
                .isEmpty();
        assertThat(codes(ValleyWater.of(asked(InnerCorner.read(), room(12.75, 12.75, 1.25), Optional.empty()))))
                .isEmpty();
    }

    @Test
    void mirroredTheSidesSwap() {
        Drawn.Read here = unequal();
        Drawn.Read there = InnerCorner.drawn()
                .move("WD", p -> new Point3(-4, p.y(), 2))
                .move("VBCWDE", p -> new Point3(-p.x(), p.y(), p.z()))
                .planes("VBCW", "VWDE")
                .read();
        Optional<Rainfall> rain = Optional.of(inchesAnHour(4));
        ValleyWater one = ValleyWater.of(asked(here, WIDE, rain, 2));
        ValleyWater other = ValleyWater.of(asked(there, WIDE, rain, 2));
        for (int side = 0; side < 2; side++) {
            SideWater own = one.sides().get(side);
            SideWater mirrored = other.sides().get(side);
            assertThat(mirrored.left()).isNotEqualTo(own.left());
            assertThat(mirrored.stations().get(1).depth().orElseThrow().metres())
                    .isCloseTo(own.stations().get(1).depth().orElseThrow().metres(), within(1e-13));
        }
        assertThat(one.sides().get(0).left()).isFalse();
    }

    /** Twice as long every way: four times the water, 4^(3/8) = 1.6818 times as deep. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 2})
    void aLargerRoofOfTheSameShapeBringsWaterByTheSquareOfItsSize(double size) {
        Drawn.Read large = InnerCorner.drawn()
                .move("VBCWDE", p -> new Point3(size * p.x(), size * p.y(), size * p.z()))
                .planes("VBCW", "VWDE")
                .read();
        Optional<Rainfall> rain = Optional.of(inchesAnHour(4));
        StationWater here = ValleyWater.of(asked(InnerCorner.read(), WIDE, rain))
                .sides()
                .get(0)
                .stations()
                .get(0);
        StationWater there = ValleyWater.of(asked(large, WIDE, rain))
                .sides()
                .get(0)
                .stations()
                .get(0);
        double deeper = there.depth().orElseThrow().metres()
                / here.depth().orElseThrow().metres();
        assertThat(there.area().squareMetres() / here.area().squareMetres()).isCloseTo(size * size, within(1e-12));
        assertThat(deeper).isCloseTo(size == 2 ? 1.6818 : 1 / 1.6818, within(0.00005));
    }

    /** Water of the steeper plane runs to the crease and on over a plane that falls away from it. */
    @Test
    void aSideThatFallsAwayHasNoWaterAndNoLimits() {
        Drawn.Read read = InnerCorner.drawn()
                .height(-2, "D")
                .height(-2.4, "E")
                .planes("VBCW", "VWDE")
                .read();
        assertThat(read.kind("VW")).isEqualTo(EdgeKind.VALLEY);
        SideWater away = ValleyWater.of(asked(read, WIDE, Optional.of(inchesAnHour(4))))
                .sides()
                .get(1);
        assertThat(away.channel()).isEmpty();
        assertThat(away.reachesPanel()).isEmpty();
        assertThat(away.stations().get(0).depth()).isEmpty();
        assertThat(away.stations().get(0).area().squareMetres()).isZero();
        assertThat(ValleyWater.of(asked(read, WIDE, Optional.empty()))
                        .sides()
                        .get(0)
                        .channel())
                .isPresent();
    }

    @Test
    void stationsBeginAtTheBottomAndAscend() {
        Drawn.Read read = InnerCorner.read();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> asked(read, WIDE, Optional.empty(), 2, 2))
                .withMessageContaining("ascend");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> asked(read, WIDE, Optional.empty(), 7))
                .withMessageContaining("6.0");
    }
}
