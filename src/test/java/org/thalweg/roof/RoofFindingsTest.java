package org.thalweg.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point3;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/** What a crew should know of roofs that can be read. Findings about edges: see {@link EdgeNamingTest}. */
class RoofFindingsTest {

    private static final String SHED = """
            D-----------C
            |           |
            |           |
            |           |
            A-----------B
            """;

    private static Drawn shed(double rise) {
        return Drawn.plan(SHED).height(rise, "CD").planes("ABCD");
    }

    @Test
    void aLevelPlaneHasNoFallLineAndIsBelowTheLeastSlope() {
        Drawn.Read roof = shed(0).read();
        assertThat(roof.codes()).containsExactly(FindingCode.LEVEL_PLANE, FindingCode.SLOPE_BELOW_MINIMUM);
        assertThat(roof.plane("ABCD").level()).isTrue();
        assertThat(roof.finding(FindingCode.LEVEL_PLANE).place().id()).isEqualTo("ABCD");
    }

    @Test
    void aPlaneOfMoreThanHalfADegreeHasAFallLine() {
        double justOver = 4 * Math.tan(Math.toRadians(0.501));
        double justUnder = 4 * Math.tan(Math.toRadians(0.499));
        assertThat(shed(justOver).read().plane("ABCD").level()).isFalse();
        assertThat(shed(justUnder).read().plane("ABCD").level()).isTrue();
    }

    @Test
    void aPlaneAtTheLeastSlopeIsNotBelowIt() {
        assertThat(shed(4 * 0.25 / 12).read().codes()).isEmpty();
        assertThat(shed(4 * 0.1).leastSlope(new Pitch(1.2, 12)).read().codes()).isEmpty();
    }

    @Test
    void aPlaneFlatterThanTheSystemAllowsIsNamedWithBothFigures() {
        Finding finding = shed(0.3).leastSlope(new Pitch(1, 12)).read().finding(FindingCode.SLOPE_BELOW_MINIMUM);
        assertThat(((Pitch) finding.actual().orElseThrow()).rise()).isCloseTo(0.9, within(1e-9));
        assertThat(finding.limit()).isEqualTo(Optional.of(new Pitch(1, 12)));
        assertThat(finding.source()).isEqualTo(Source.COMMON_PRACTICE);
    }

    @Test
    void aPlaneALittleOutOfFlatIsUsableAndSaysSo() {
        Drawn.Read roof = shed(2).move("C", p -> new Point3(p.x(), p.y(), 2.02)).read();
        Finding finding = roof.finding(FindingCode.PLANE_NOT_FLAT);
        // A quarter of the 20 mm, seen square to a plane pitched about 2 in 4.
        assertThat(((Length) finding.actual().orElseThrow()).metres()).isCloseTo(0.00447, within(0.00001));
        assertThat(finding.limit()).isEqualTo(Optional.of(Length.metres(0.001)));
    }

    @Test
    void aPlaneFlatWithinTheToleranceSaysNothing() {
        assertThat(shed(2).move("C", p -> new Point3(p.x(), p.y(), 2.003))
                        .read()
                        .codes())
                .isEmpty();
    }

    /** T stands so far below S, in the plane of the upper ring: 3 in 4. */
    private static Drawn nearly(double gap) {
        return Drawn.plan("""
                        D-----------C
                        |           |
                        R-----------S
                        |           |
                        A-----------B
                        """)
                .height(1.5, "RS")
                .corner('T', 12, 2 + 0.8 * gap, 1.5 - 0.6 * gap)
                .planes("ABSR", "CDRT");
    }

    @Test
    void cornersThatComeCloseAndDoNotMeetAreNamedOnce() {
        Drawn.Read roof = nearly(0.02).read();
        Finding finding = roof.finding(FindingCode.NEAR_MISS);
        assertThat(((Length) finding.actual().orElseThrow()).metres()).isCloseTo(0.02, within(1e-12));
        assertThat(finding.place().id()).isEqualTo("ABSR");
        assertThat(finding.place().at()).hasToString("#/planes/0/outline/2");
    }

    @Test
    void cornersThatMeetWithinTheToleranceAreOneAndNoNearMiss() {
        Drawn.Read roof = nearly(0.0009).read();
        assertThat(roof.codes()).isEmpty();
        assertThat(roof.kind("RS")).isEqualTo(EdgeKind.RIDGE);
    }

    @Test
    void cornersFurtherApartAreNoNearMiss() {
        assertThat(nearly(0.03).read().codes()).isEmpty();
    }

    @Test
    void aLargerToleranceJoinsThem() {
        assertThat(nearly(0.02).tolerance(0.025).read().kind("RS")).isEqualTo(EdgeKind.RIDGE);
    }

    @Test
    void everyFindingSaysWhatToDoAndWhere() {
        assertThat(nearly(0.02).read().roof().findings())
                .allSatisfy(finding -> assertThat(finding.message()).contains("{place}"));
        assertThat(shed(0).read().roof().findings())
                .allSatisfy(finding -> assertThat(finding.message()).contains("{place}", "{actual}", "{limit}"));
    }
}
