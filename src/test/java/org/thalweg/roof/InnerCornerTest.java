package org.thalweg.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Pitch;

/** The corner of a house as the start of a roof. */
class InnerCornerTest {

    /** α₁ of the trade's table and of a corner of 135° whose source stands in unequal-pitch-hip-valley.csv. */
    @ParameterizedTest
    @CsvSource({
        "6, 6, 90, 45",
        "6, 8, 90, 53.1301",
        "6, 12, 90, 63.4349",
        "8, 6, 90, 36.8699",
        "10, 8.5, 135, 56.4246",
        "8.5, 10, 135, 78.5754",
        "5, 5, 60, 30"
    })
    void theValleyLeavesTheCornerAtThePublishedAngle(double left, double right, double corner, double plan) {
        InnerCorner asked = byLength(left, right, corner, 100);
        assertThat(asked.planAngle().inDegrees()).isCloseTo(plan, within(0.00005));
        assertThat(valley(read(asked)).kind()).isEqualTo(EdgeKind.VALLEY);
    }

    @ParameterizedTest
    @CsvSource({"6, 8, 90", "6, 6, 60", "10, 8.5, 135", "2, 18, 20", "3, 24, 120", "24, 1, 150"})
    void aValleyIsAsLongAsItsLengthOrItsRunSays(double left, double right, double corner) {
        Edge asked = valley(read(byLength(left, right, corner, 144)));
        assertThat(inches(asked.length())).isCloseTo(144, within(1e-9));

        double plan = byLength(left, right, corner, 144).planAngle().radians();
        double run = 144 * Math.cos(plan) * Math.cos(asked.slope().radians());
        if (run > 0) {
            assertThat(inches(valley(read(byRun(left, right, corner, run))).length()))
                    .isCloseTo(144, within(1e-9));
        } else {
            assertThat(refusals(byRun(left, right, corner, 100)))
                    .extracting(Refusal::code)
                    .containsExactly(RefusalCode.NO_RUN);
        }
    }

    /** Each with the eave at the bottom and what was asked for at the top, and no finding. */
    @Test
    void bothPlanesRunFromTheirEaveToTheTopThatWasAskedFor() {
        for (EdgeKind top : List.of(EdgeKind.RIDGE, EdgeKind.HEAD_WALL, EdgeKind.HIGH_EAVE)) {
            Roof roof = read(new InnerCorner(
                    new Pitch(6, 12),
                    new Pitch(8, 12),
                    Angle.degrees(135),
                    Optional.empty(),
                    Optional.of(Length.inches(200)),
                    top,
                    Origin.REQUEST));
            assertThat(roof.findings()).isEmpty();
            assertThat(roof.planes()).extracting(Plane::id).containsExactly("left", "right");
            assertThat(roof.planes().get(0).slope().inDegrees()).isCloseTo(26.5651, within(0.00005));
            assertThat(roof.planes().get(1).slope().inDegrees()).isCloseTo(33.6901, within(0.00005));
            assertThat(roof.edges().stream().filter(e -> e.kind() == top)).hasSize(2);
            assertThat(roof.edges().stream().filter(e -> e.kind() == EdgeKind.EAVE))
                    .hasSize(2);
            assertThat(roof.edges().stream().filter(e -> e.kind() == EdgeKind.RAKE))
                    .hasSize(2);
        }
    }

    @Test
    void eavesThatRunInLineMeetInNoValley() {
        Refusal refusal = only(byLength(6, 8, 180, 100));
        assertThat(refusal.code()).isEqualTo(RefusalCode.NO_VALLEY);
        assertThat(refusal.at().pointer()).isEqualTo("#/planAngleDeg");
        assertThat(refusal.actual()).contains(Angle.degrees(180));
    }

    @Test
    void aLevelPlaneMeetsAnotherInNoValley() {
        assertThat(only(byLength(0, 8, 90, 100)).code()).isEqualTo(RefusalCode.NO_VALLEY);
        assertThat(only(byLength(8, 0, 90, 100)).at().pointer()).isEqualTo("#/pitches");
    }

    /** 3:12 against 24:12 at 120°: α₁ = atan2(2 sin 120°, 0.25 + 2 cos 120°) = 113.4°, so the valley leans back over the left eave. */
    @Test
    void aValleyThatLeansBackHasNoRunAlongItsEave() {
        assertThat(byLength(3, 24, 120, 100).planAngle().inDegrees()).isCloseTo(113.4, within(0.05));
        Refusal refusal = only(byRun(3, 24, 120, 100));
        assertThat(refusal.code()).isEqualTo(RefusalCode.NO_RUN);
        assertThat(refusal.at().pointer()).isEqualTo("#/run");
        assertThat(inches(valley(read(byLength(3, 24, 120, 100))).length())).isCloseTo(100, within(1e-9));
    }

    @Test
    void aCornerIsGivenByItsRunOrItsLengthAndNotBoth() {
        Optional<Length> some = Optional.of(Length.inches(100));
        for (Optional<Length> both : List.of(some, Optional.<Length>empty())) {
            assertThatThrownBy(() -> new InnerCorner(
                            new Pitch(6, 12),
                            new Pitch(6, 12),
                            Angle.degrees(90),
                            both,
                            both,
                            EdgeKind.RIDGE,
                            Origin.REQUEST))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    private static InnerCorner byLength(double left, double right, double corner, double length) {
        return corner(left, right, corner, Optional.empty(), Optional.of(Length.inches(length)));
    }

    private static InnerCorner byRun(double left, double right, double corner, double run) {
        return corner(left, right, corner, Optional.of(Length.inches(run)), Optional.empty());
    }

    private static InnerCorner corner(
            double left, double right, double corner, Optional<Length> run, Optional<Length> length) {
        return new InnerCorner(
                new Pitch(left, 12),
                new Pitch(right, 12),
                Angle.degrees(corner),
                run,
                length,
                EdgeKind.RIDGE,
                Origin.REQUEST);
    }

    private static Roof read(InnerCorner corner) {
        return Roofs.read(corner.survey(Tolerance.DEFAULT, new Pitch(0.25, 12), Source.COMMON_PRACTICE));
    }

    private static List<Refusal> refusals(InnerCorner corner) {
        return catchThrowableOfType(Refused.class, () -> read(corner)).refusals();
    }

    private static Refusal only(InnerCorner corner) {
        List<Refusal> refusals = refusals(corner);
        assertThat(refusals).hasSize(1);
        return refusals.get(0);
    }

    private static Edge valley(Roof roof) {
        return roof.edges().stream().filter(Edge::shared).findFirst().orElseThrow();
    }

    private static double inches(Length length) {
        return length.in(LengthUnit.INCH);
    }
}
