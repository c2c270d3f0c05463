package org.thalweg.underlayment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Vector3;
import org.thalweg.reference.Rules;
import org.thalweg.roof.Drawn;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;
import org.thalweg.underlayment.IceBarrier.IceStrip;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Pitch;

class IceBarrierTest {

    private static final double PRECISE = 1e-9;

    private static final Roll ROLL =
            new Roll(Length.inches(36), Length.feet(66), Length.inches(4), Length.inches(6), Length.feet(6));

    private static IceSpec spec(double overhang, double valley) {
        return new IceSpec(
                Length.inches(overhang),
                Rules.iceBarrierInsideWall().value(),
                Rules.iceBarrierSteep().value(),
                Rules.iceBarrierAlongSlope().value(),
                Length.inches(valley),
                ROLL);
    }

    /**
     * IRC R905.1.2: 24 in inside the wall line, measured level; from 8:12 on (IRC 2015 to 2021) 36 in along the slope at least.
     * Along the slope (overhang + 24) · √(rise² + 12²) / 12, by calculator.
     */
    @ParameterizedTest(name = "{0}:12, overhang {1} in")
    @CsvSource({
        "0, 12, 36",
        "4, 0, 25.2982",
        "6, 12, 40.2492",
        "7.9, 0, 28.7340",
        "8, 0, 36",
        "8, 12, 43.2666",
        "12, 0, 36",
        "12, 1.5, 36.0624",
        "12, 24, 67.8823"
    })
    void theBarrierReachesTwoFeetInsideTheWall(double rise, double overhang, double inches) {
        Length width = spec(overhang, 0).width(new Pitch(rise, 12).slope(), Angle.ZERO);
        assertThat(width.in(LengthUnit.INCH)).isCloseTo(inches, within(5e-5));
    }

    /** The code of 2024 has no rule for steep roofs. */
    @Test
    void withoutTheRuleForSteepRoofsTheWallAloneCounts() {
        IceSpec newer = new IceSpec(Length.ZERO, Length.inches(24), new Pitch(8, 12), Length.ZERO, Length.ZERO, ROLL);
        assertThat(newer.width(new Pitch(12, 12).slope(), Angle.ZERO).in(LengthUnit.INCH))
                .isCloseTo(33.9411, within(5e-5));
    }

    /** An eave that climbs: places of the plane that far off it stand 36 in from it in plan, whatever their way along it. */
    @Test
    void alongAnAngledEaveTheWidthIsMeasuredLevelToo() {
        Drawn.Read read = Drawn.plan("")
                .corner('A', 0, 0, 0)
                .corner('B', 6, 0, 0)
                .corner('C', 9, 2, 1)
                .corner('D', 9, 8, 4)
                .corner('E', 0, 8, 4)
                .planes("ABCDE")
                .read();
        Edge angled = read.edge("BC");
        assertThat(angled.kind()).isEqualTo(EdgeKind.ANGLED_EAVE);
        Plane plane = read.roof().planes().get(0);
        Vector3 along = angled.to().minus(angled.from()).unit();
        Vector3 inward = plane.frame().outward().cross(along);
        double width = spec(12, 0).width(plane.slope(), angled.slope()).metres();
        Point3 off = angled.from().plus(inward.times(width));
        double level = Math.hypot(along.x(), along.y());
        double inPlan = Math.abs((off.x() - angled.from().x()) * along.y()
                        - (off.y() - angled.from().y()) * along.x())
                / level;
        assertThat(inPlan).isCloseTo(36 * 0.0254, within(PRECISE));
    }

    /**
     * Two wings of 6:12 that meet at an inner corner, D, with the valley DG. In inches: a width of 40.2492 takes two courses of
     * 36 in, the second from 32 to 68.
     */
    private static Drawn winged(int hand) {
        return Drawn.plan("")
                .corner('A', 0, 0, 0)
                .corner('B', hand * 14, 0, 0)
                .corner('C', hand * 14, 6, 0)
                .corner('D', hand * 6, 6, 0)
                .corner('E', hand * 6, 12, 0)
                .corner('F', 0, 12, 0)
                .corner('G', hand * 3, 3, 1.5)
                .corner('H', hand * 11, 3, 1.5)
                .corner('I', hand * 3, 9, 1.5)
                .planes("ABHG", "BCH", "CDGH", "DEIG", "EFI", "FAGI");
    }

    private static IceStrip strip(IceBarrier barrier, Roof roof, Edge edge) {
        int index = IntStream.range(0, roof.edges().size())
                .filter(i -> roof.edges().get(i).id().equals(edge.id()))
                .findFirst()
                .orElseThrow();
        return barrier.strips().stream()
                .filter(strip -> strip.edge() == index)
                .findFirst()
                .orElseThrow();
    }

    /**
     * CD is 8 m long. At C a hip leads inward by 1 for each 1 in plan, at D the valley outward by as much, so on the slope by
     * cos θ = 2/√5 for each metre up: the plane is 8 m long everywhere, and within a course of 36 in (0.9144 m) it spans 8 m and
     * 0.8179 m of the valley. From the left, C: the second course begins 0.8128 · 0.8944 = 0.7270 m in.
     */
    @Test
    void aStripRunsOnWhereAValleyComesDownToItsEave() {
        Drawn.Read read = winged(1).read();
        IceBarrier barrier = IceBarrier.of(read.roof(), spec(12, 0));
        IceStrip strip = strip(barrier, read.roof(), read.edge("CD"));
        assertThat(strip.width().in(LengthUnit.INCH)).isCloseTo(40.2492, within(5e-5));
        assertThat(strip.courses()).hasSize(2);
        Course first = strip.courses().get(0);
        assertThat(first.runs()).hasSize(1);
        assertThat(first.runs().get(0).from().metres()).isCloseTo(0, within(PRECISE));
        assertThat(first.runs().get(0).to().metres()).isCloseTo(8 + 0.9144 * 2 / Math.sqrt(5), within(PRECISE));
        assertThat(strip.courses().get(1).runs().get(0).from().metres())
                .isCloseTo(32 * 0.0254 * 2 / Math.sqrt(5), within(PRECISE));
    }

    @Test
    void mirroredItIsAsLong() {
        Drawn.Read here = winged(1).read();
        Drawn.Read there = winged(-1).read();
        IceBarrier left = IceBarrier.of(here.roof(), spec(12, 36));
        IceBarrier right = IceBarrier.of(there.roof(), spec(12, 36));
        for (String eave : List.of("AB", "BC", "CD", "DE", "EF", "FA", "DG")) {
            assertThat(lengths(strip(left, here.roof(), here.edge(eave))))
                    .as(eave)
                    .isEqualTo(lengths(strip(right, there.roof(), there.edge(eave))));
        }
    }

    private static List<Long> lengths(IceStrip strip) {
        return strip.courses().stream()
                .flatMap(course -> course.runs().stream())
                .map(run -> Math.round(run.length().metres() * 1e9))
                .toList();
    }

    /** IBC 1507.3.9: 36 in under a valley, one course of this roll; 48 in take two. DG rises 1.5 over √18 in plan: 4.5 m. */
    @Test
    void underAValleyAStripLiesAsLongAsTheValley() {
        Drawn.Read read = winged(1).read();
        Edge valley = read.edge("DG");
        assertThat(valley.kind()).isEqualTo(EdgeKind.VALLEY);
        IceStrip strip = strip(IceBarrier.of(read.roof(), spec(12, 36)), read.roof(), valley);
        assertThat(strip.courses()).hasSize(1);
        assertThat(strip.courses().get(0).rolledOut().metres()).isCloseTo(4.5, within(PRECISE));
        assertThat(strip(IceBarrier.of(read.roof(), spec(12, 48)), read.roof(), valley)
                        .courses())
                .hasSize(2);
        assertThat(IceBarrier.of(read.roof(), spec(12, 0)).strips())
                .as("the six eaves")
                .hasSize(6);
    }

    /** 2 m up a slope of 3:4 is 2.5 m; the rule asks for more there. */
    @Test
    void theStripEndsWhereThePlaneDoes() {
        Roof roof = Drawn.plan("")
                .corner('A', 0, 0, 0)
                .corner('B', 9, 0, 0)
                .corner('C', 9, 2, 1.5)
                .corner('D', 0, 2, 1.5)
                .planes("ABCD")
                .read()
                .roof();
        IceStrip strip = IceBarrier.of(roof, spec(72, 0)).strips().get(0);
        assertThat(strip.width().metres()).isCloseTo(2.5, within(PRECISE));
        assertThat(strip.courses()).hasSize(3);
    }

    @Test
    void whatIsRolledOutSetAsideAndLeftIsTheRolls() {
        Roof roof = winged(1).read().roof();
        var order = IceBarrier.of(roof, spec(12, 36)).order();
        assertThat(order.rolls() * ROLL.length().metres())
                .isCloseTo(
                        order.rolledOut().metres()
                                + order.setAside().metres()
                                + order.rest().metres(),
                        within(PRECISE));
        assertThat(order.area().squareMetres()).isCloseTo(order.rolledOut().metres() * 0.9144, within(PRECISE));
    }
}
