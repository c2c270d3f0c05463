package org.thalweg.drainage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Angle;
import org.thalweg.units.Flow;
import org.thalweg.units.FlowUnit;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Pitch;

/**
 * Manning's formula in a triangle, against printed examples and against the standard for gutters.
 *
 * <p>Of the tables these were taken from, not used: rectangular and trapezoidal channels (no pan is one), roughness of
 * other metals, and an example printed with an arithmetic error (0.28 for 0.61 cfs).
 */
class ChannelTest {

    /** Tables in feet compute with 1.486 for the cube root of 1/0.3048, which is 1.485919: so much more. */
    private static final double CONSTANT_1486 = 1.486 * Math.cbrt(0.3048) - 1;

    private static final Length LEG = Length.inches(4.25);

    /** A triangle by the runs of its banks, as hydraulics books give it. */
    private static Channel triangle(double bank, double otherBank, double fall, double roughness) {
        return new Channel(Angle.atan2(1, bank), Angle.atan2(otherBank, 1), new Angle(Math.asin(fall)), roughness);
    }

    @ParameterizedTest(name = "[{index}] {arguments}")
    @CsvFileSource(resources = "/published/triangular-channels.csv", numLinesToSkip = 1)
    void trianglesCarryWhatIsPrinted(
            String id,
            double bank,
            double otherBank,
            double n,
            double fall,
            double depth,
            String depthUnit,
            double flow,
            String flowUnit,
            String printed,
            double half) {
        LengthUnit tape = LengthUnit.of(depthUnit).orElseThrow();
        FlowUnit gauge = FlowUnit.beside(tape);
        assertThat(flowUnit).isEqualTo(gauge.symbol());
        Channel channel = triangle(bank, otherBank, fall, n);
        if (printed.equals("flow")) {
            double byConstant = gauge == FlowUnit.GALLON_PER_MINUTE ? CONSTANT_1486 * flow : 0;
            assertThat(channel.flow(tape.of(depth)).in(gauge)).as(id).isCloseTo(flow, within(half + byConstant));
        } else {
            assertThat(channel.depth(gauge.of(flow)).in(tape)).as(id).isCloseTo(depth, within(half));
        }
    }

    /**
     * The same V valleys, their section found from the pitch: z = cot ψ is the table's tan(dihedral/2), S its sin θv.
     * Tolerance: half of the last digit printed.
     */
    @ParameterizedTest
    @CsvSource({"4, 4.35890, 0.229416", "6, 3.00000, 0.333333", "8, 2.34521, 0.426401", "12, 1.73205, 0.577350"})
    void theSectionOfASquareEqualCornerIsThatOfThePublishedValleys(double rise, double z, double fall) {
        SquareCorner corner = new SquareCorner(rise, rise);
        Channel channel = corner.channel(0);
        assertThat(1 / channel.panRise().tan()).isCloseTo(z, within(0.000005));
        assertThat(corner.bed().sin()).isCloseTo(fall, within(0.0000005));
        assertThat(channel.ribLean()).isEqualTo(Angle.ZERO);
    }

    /** A V valley is two halves with nothing between; each half of a W has a rib to rub along, and carries a little less. */
    @ParameterizedTest
    @CsvSource({"4", "6", "8", "12"})
    void aRibSlowsTheWaterALittle(double rise) {
        SquareCorner corner = new SquareCorner(rise, rise);
        Channel half = corner.channel(0);
        Channel whole = new Channel(
                half.panRise(), new Angle(Math.PI / 2 - half.panRise().radians()), corner.bed(), Channel.ROUGHNESS);
        double inHalves = 2 * flow(half, 1);
        assertThat(inHalves).isLessThan(flow(whole, 1)).isGreaterThan(0.6 * flow(whole, 1));
    }

    /**
     * FHWA HEC-22 (3rd ed., example 4-1, recalled; and a public test suite on the 4th ed.) prints 1.8 cfs at a spread of
     * 9.0 ft, 1.4 at 8.2 and 1.7 at 10 ft (slope 0.005), for a gutter with an upright bank. It sums Manning's formula over
     * strips of the width (its 0.56 is 1.486 · 3/8), which suits wide streets; the one radius of the whole section, used
     * here and in the tables above, gives 1.486 · ½ · (½/1.0202)^⅔ = 0.462 in its place: 0.825 of the flow, so the depth
     * errs on the safe side. Tolerance: the two digits they print.
     */
    @ParameterizedTest
    @CsvSource({"9.0, 0.010, 1.8", "8.2, 0.010, 1.4", "10, 0.005, 1.7"})
    void streetGuttersSummedInStripsCarryMoreThanOneRadiusSays(double spreadFeet, double fall, double printedCfs) {
        Channel gutter = triangle(1 / 0.02, 0, fall, 0.016);
        double cubicFoot = Math.pow(0.3048, 3);
        double cfs = gutter.flow(Length.feet(spreadFeet * 0.02)).cubicMetresPerSecond() / cubicFoot;
        assertThat(cfs).isCloseTo(0.825 * printedCfs, within(0.05 * 0.825 + 0.01));
        assertThat(cfs).isLessThan(printedCfs);
    }

    /** The formula of EN 12056-3 as the test has it, against the worked example of the same table. */
    @Test
    void theStandardsGutterFormulaGivesItsWorkedExample() {
        double area = 28_350;
        double factors = depthFactor(105, 340) * shapeFactor(200 / 340.0);
        assertThat(3.89e-5 * Math.pow(area, 1.25)).isCloseTo(14.31, within(0.005));
        assertThat(3.89e-5 * Math.pow(area, 1.25) * factors).isCloseTo(10.447, within(0.0005));
    }

    /**
     * A second opinion on the order of size: EN 12056-3 for valley gutters, Q = 3.89e-5 A^1.25 Fd Fs (L/s, mm²), factors by
     * fits of a public hydraulics manual. It is for gutters laid level, which empty over a free end, so slope is not in it;
     * Manning's formula lives on slope and can be held against it only where a valley is nearly level. Falling 1 mm a
     * metre, with water 10 to 100 mm deep, the two agree within a quarter. Manning's flow grows with the root of the fall,
     * to twice the standard's at 3 to 4 mm a metre; of valleys at roof slopes the standard says nothing.
     */
    @ParameterizedTest
    @CsvSource({"4", "6", "8", "12"})
    void nearlyLevelValleysCarryAboutWhatTheGutterStandardSays(double rise) {
        double z = 1 / new SquareCorner(rise, rise).channel(0).panRise().tan();
        for (double depth : new double[] {10, 20, 50, 100}) {
            double standard =
                    3.89e-5 * Math.pow(z * depth * depth, 1.25) * depthFactor(depth, 2 * z * depth) * shapeFactor(0);
            double ours = triangle(z, z, 0.001, Channel.ROUGHNESS)
                    .flow(Length.millimetres(depth))
                    .in(FlowUnit.LITRE_PER_SECOND);
            assertThat(ours / standard).as("%s:12, %s mm", rise, depth).isBetween(0.75, 1.25);
        }
    }

    private static double depthFactor(double depth, double topWidth) {
        return Math.pow(depth / topWidth, 0.25);
    }

    private static double shapeFactor(double soleOverTop) {
        return 0.8943 + 0.2013 * soleOverTop - 0.0965 * soleOverTop * soleOverTop;
    }

    @ParameterizedTest
    @CsvSource({"3, 12", "6, 6", "4, 6", "12, 0.5"})
    void depthAndFlowAreEachOthersInverse(double rise, double otherRise) {
        Channel channel = new SquareCorner(rise, otherRise).channel(0);
        for (double millimetres : new double[] {0.01, 1, 8, 50, 300}) {
            Length depth = Length.millimetres(millimetres);
            assertThat(channel.depth(channel.flow(depth)).metres()).isCloseTo(depth.metres(), within(1e-13));
        }
        assertThat(channel.depth(new Flow(0))).isEqualTo(Length.ZERO);
    }

    /** Eight times as much water stands 8^(3/8) = 2.1810 as deep. */
    @Test
    void eightTimesTheWaterIsSomewhatMoreThanTwiceAsDeep() {
        Channel channel = new SquareCorner(6, 8).channel(1);
        double once = channel.depth(FlowUnit.GALLON_PER_MINUTE.of(3)).metres();
        double eightTimes = channel.depth(FlowUnit.GALLON_PER_MINUTE.of(24)).metres();
        assertThat(eightTimes / once).isCloseTo(2.1810, within(0.00005));
    }

    /** By vectors: the flats, the valley and the bisector of the flats, in the section square to the valley. */
    @ParameterizedTest
    @CsvSource({"6, 6", "6, 8", "6, 12", "3, 14"})
    void theSectionIsThatOfTheTwoPlanes(double rise, double otherRise) {
        SquareCorner corner = new SquareCorner(rise, otherRise);
        double[] valley = unit(rise, otherRise, rise * otherRise / 12);
        double[] upright = unit(-valley[2] * valley[0], -valley[2] * valley[1], 1 - valley[2] * valley[2]);
        double[] flat = unit(cross(unit(0, -rise / 12, 1), valley));
        double[] otherFlat = unit(cross(valley, unit(-otherRise / 12, 0, 1)));
        double[] rib = unit(flat[0] + otherFlat[0], flat[1] + otherFlat[1], flat[2] + otherFlat[2]);
        double[] outward = cross(upright, valley);
        Channel channel = corner.channel(0);
        assertThat(channel.panRise().sin()).isCloseTo(dot(flat, upright), within(1e-12));
        assertThat(corner.channel(1).panRise().sin()).isCloseTo(dot(otherFlat, upright), within(1e-12));
        assertThat(channel.ribLean().sin()).isCloseTo(-dot(rib, outward), within(1e-12));
    }

    @Test
    void theRibLeansAwayFromTheSteeperFlatAndOverTheFlatterOne() {
        SquareCorner corner = new SquareCorner(12, 4);
        double steeper = corner.channel(0).panRise().inDegrees();
        double flatter = corner.channel(1).panRise().inDegrees();
        assertThat(steeper).isGreaterThan(flatter);
        assertThat(corner.channel(0).ribLean().inDegrees()).isCloseTo((steeper - flatter) / 2, within(1e-9));
        assertThat(corner.channel(1).ribLean().inDegrees()).isCloseTo((flatter - steeper) / 2, within(1e-9));
        assertThat(corner.channel(0).ribHeight(LEG)).isLessThan(LEG);
        assertThat(corner.channel(1).ribHeight(LEG).metres())
                .isCloseTo(corner.channel(0).ribHeight(LEG).metres(), within(1e-15));
        assertThat(corner.channel(0).ribLeg(corner.channel(0).ribHeight(LEG)).metres())
                .isCloseTo(LEG.metres(), within(1e-15));
    }

    @Test
    void spreadIsMeasuredOnThePan() {
        Channel channel = triangle(4.0 / 3, 0, 0.3, 0.012);
        assertThat(channel.spread(Length.inches(3)).in(LengthUnit.INCH)).isCloseTo(5, within(1e-12));
        assertThat(channel.depthOfSpread(Length.inches(5)).in(LengthUnit.INCH)).isCloseTo(3, within(1e-12));
    }

    @Test
    void aSideThatDoesNotFallToTheValleyHasNoChannelAndTheOtherHas() {
        PanFlat falls = new PanFlat(new Pitch(6, 12).slope(), Angle.degrees(50), true);
        PanFlat away = new PanFlat(new Pitch(2, 12).slope(), Angle.degrees(70), false);
        Angle bed = Angle.degrees(10);
        assertThat(Channel.of(away, falls, bed, Channel.ROUGHNESS, Tolerance.DEFAULT))
                .isEmpty();
        Channel channel = Channel.of(falls, away, bed, Channel.ROUGHNESS, Tolerance.DEFAULT)
                .orElseThrow();
        double rise = falls.rise(bed).inDegrees();
        assertThat(away.rise(bed).inDegrees()).isNegative();
        assertThat(channel.ribLean().inDegrees())
                .isCloseTo((rise - away.rise(bed).inDegrees()) / 2, within(1e-12));
    }

    @Test
    void waterDoesNotRunInALevelValleyNorAlongAFallLine() {
        PanFlat falls = new PanFlat(new Pitch(6, 12).slope(), Angle.ZERO, true);
        PanFlat rake = new PanFlat(new Pitch(6, 12).slope(), Angle.degrees(90), false);
        assertThat(Channel.of(falls, falls, Angle.ZERO, Channel.ROUGHNESS, Tolerance.DEFAULT))
                .isEmpty();
        assertThat(Channel.of(rake, falls, Angle.degrees(20), Channel.ROUGHNESS, Tolerance.DEFAULT))
                .isEmpty();
    }

    @Test
    void banksThatMeetAreNoChannel() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Channel(Angle.degrees(60), Angle.degrees(-31), Angle.degrees(20), 0.012))
                .withMessageContaining("no channel");
    }

    @Test
    void aRoughPanCarriesLess() {
        assertThat(DoubleStream.of(0.011, 0.012, 0.016)
                        .map(n -> flow(triangle(4, 0, 0.2, n), 1))
                        .boxed())
                .isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    private static double flow(Channel channel, double inches) {
        return channel.flow(Length.inches(inches)).cubicMetresPerSecond();
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double[] unit(double... a) {
        double length = Math.sqrt(dot(a, a));
        return new double[] {a[0] / length, a[1] / length, a[2] / length};
    }
}
