package org.thalweg.trim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.geometry.Point2;
import org.thalweg.roof.EdgeKind;
import org.thalweg.trim.TrimShape.Turn;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/** The profiles of the house in section, in inches: what lies where when the edge bends this way or that. */
class UsualShapesTest {

    private static final double NOTHING = 1e-9;
    private static final Set<EdgeKind> WITHOUT = EnumSet.of(
            EdgeKind.VALLEY, EdgeKind.LEVEL_VALLEY, EdgeKind.FLUSH, EdgeKind.EXPANSION_JOINT, EdgeKind.STACKED);

    @ParameterizedTest
    @EnumSource
    void everyEdgeThatGetsATrimHasAProfile(EdgeKind kind) {
        assertThat(shape(kind, -30, 1.75).isEmpty()).isEqualTo(WITHOUT.contains(kind));
    }

    /** 6:12 slopes 26.565°; the fascia is plumb, so the drip bends 63.435° down and its face hangs straight. */
    @Test
    void theFaceOfAnEaveDripHangsPlumb() {
        double slope = Math.atan2(6, 12);
        List<Point2> eave = section(EdgeKind.EAVE, Math.toDegrees(slope) - 90, 1.75);
        Point2 down = between(eave, 1);
        // Plumb, seen in the plane: down the slope and off it by the slope.
        assertThat(down.across()).isCloseTo(2 * Math.sin(slope), within(NOTHING));
        assertThat(down.up()).isCloseTo(-2 * Math.cos(slope), within(NOTHING));
        assertThat(eave.get(1)).isEqualTo(new Point2(0, 0));
        assertThat(inches(eave.get(0).across())).isCloseTo(-4, within(NOTHING));
    }

    /** Kicked out by 30°: of its 3/4 in, 3/8 in stand out from a fascia under a level roof. */
    @Test
    void theKickOfAnEaveDripStandsOutFromTheFascia() {
        Point2 kick = between(section(EdgeKind.EAVE, -90, 0), 2);
        assertThat(kick.across()).isCloseTo(0.375, within(NOTHING));
        assertThat(kick.up()).isLessThan(0);
    }

    @ParameterizedTest
    @CsvSource({"-90, 1.75", "-70, 1.75", "-116, 2.375", "-90, 0"})
    void aRakeCoverStandsOnThePanAndReachesThreeInchesBelowTheRoofLine(double bend, double seam) {
        List<Point2> rake = section(EdgeKind.RAKE, bend, seam);
        int top = seam > 0 ? 1 : 0;
        assertThat(inches(rake.get(0).up())).as("on the pan").isCloseTo(0, within(NOTHING));
        assertThat(inches(rake.get(top).up())).isCloseTo(seam, within(NOTHING));
        assertThat(inches(rake.get(top + 1).up())).isCloseTo(seam, within(NOTHING));
        double below = inches(rake.get(top + 2).up()) / Math.sin(Math.toRadians(bend));
        assertThat(below).as("along the fascia").isCloseTo(3, within(NOTHING));
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 36.8699, 53.1301, 120})
    void theLegsOfACapLieASeamHighOverBothPlanes(double bend) {
        for (EdgeKind kind : List.of(EdgeKind.RIDGE, EdgeKind.HIP)) {
            List<Point2> cap = section(kind, -bend, 1.75);
            assertThat(cap).hasSize(3);
            cap.subList(0, 2).forEach(line -> assertThat(inches(line.up())).isCloseTo(1.75, within(NOTHING)));
            cap.subList(1, 3).forEach(line -> assertThat(offSecond(line, -bend)).isCloseTo(1.75, within(NOTHING)));
        }
    }

    @Test
    void aVentedCapStandsAnInchHigherAndItsEdgesComeDownToTheSeams() {
        Optional<TrimShape> vented = UsualShapes.of(EdgeKind.RIDGE, Angle.degrees(-50), Length.inches(1.75), true);
        assertThat(vented.orElseThrow().name()).isEqualTo("vented ridge cap");
        List<Point2> lines = vented.orElseThrow().section(Angle.degrees(-50), fold(EdgeKind.RIDGE, -50, 2.75));
        assertThat(inches(lines.get(0).up())).isCloseTo(1.75, within(NOTHING));
        assertThat(inches(lines.get(1).up())).isCloseTo(2.75, within(NOTHING));
        assertThat(offSecond(lines.get(3), -50)).isCloseTo(2.75, within(NOTHING));
        assertThat(offSecond(lines.get(4), -50)).isCloseTo(1.75, within(NOTHING));
    }

    /** 6 in under the upper panels and 4 in over the lower ones, which have seams to clear whichever way the slope changes. */
    @ParameterizedTest
    @ValueSource(doubles = {-59, -25, -3, 3, 25, 59})
    void aPitchBreakFlashingLiesOnTheUpperDeckAndOverTheLowerSeams(double bend) {
        List<Point2> lines = section(EdgeKind.PITCH_BREAK, bend, 1.75);
        assertThat(inches(lines.get(0).across())).isCloseTo(-6, within(NOTHING));
        assertThat(inches(lines.get(0).up())).isCloseTo(0, within(NOTHING));
        assertThat(offSecond(lines.get(2), bend)).isCloseTo(1.75, within(NOTHING));
        assertThat(offSecond(lines.get(3), bend)).isCloseTo(1.75, within(NOTHING));
        assertThat(inches(lines.get(2).distance(lines.get(3)))).isCloseTo(4, within(NOTHING));
    }

    @Test
    void theStepOfAPitchBreakNeverGrowsPastTwoSeams() {
        assertThat(inches(shape(EdgeKind.PITCH_BREAK, -85, 1.75)
                        .orElseThrow()
                        .girths()
                        .get(1)
                        .metres()))
                .isCloseTo(3.5, within(NOTHING));
    }

    /** IRC R905.2.8.3: 4 in up the wall and 4 in out. */
    @ParameterizedTest
    @CsvSource({"SIDE_WALL, 90", "HEAD_WALL, 63.435", "OPENING, 90"})
    void aWallFlashingGoesFourInchesUpAndOutOverTheSeam(EdgeKind kind, double bend) {
        List<Point2> wall = section(kind, bend, 1.75);
        assertThat(inches(wall.get(0).up())).as("on the pan").isCloseTo(0, within(NOTHING));
        assertThat(inches(wall.get(1).up())).isCloseTo(1.75, within(NOTHING));
        assertThat(inches(wall.get(1).distance(wall.get(2)))).isCloseTo(4, within(NOTHING));
        assertThat(inches(wall.get(2).distance(wall.get(3)))).isCloseTo(4, within(NOTHING));
        assertThat(Math.toDegrees(Math.atan2(
                        wall.get(3).up() - wall.get(2).up(),
                        wall.get(3).across() - wall.get(2).across())))
                .isCloseTo(bend, within(NOTHING));
    }

    /**
     * Two legs of 6 in and two hems of 1/2 in, open by 1/8 in, of 0.0276 in sheet. By hand: each hem takes up
     * π (0.0625 + 0.4469 · 0.0276) − 2 · 0.0901 = 0.0549 more than its girths, the crown 2 · 0.0552 · tan 18.43° − 0.6435 ·
     * (0.0276 + 0.0123) = 0.0111 less.
     */
    @Test
    void aHipCapIsALittleMoreThanThirteenInchesWide() {
        Profile cap = shape(EdgeKind.HIP, -36.8699, 1.75)
                .orElseThrow()
                .bentTo(Angle.degrees(-36.8699), Length.inches(0.0276), Length.inches(0.0276));
        assertThat(cap.bends()).singleElement().satisfies(bend -> {
            assertThat(bend.turn().inDegrees()).isCloseTo(36.8699, within(NOTHING));
            assertThat(bend.up()).isFalse();
        });
        assertThat(FlatTrim.of(cap, BendAllowance.USUAL).width().in(LengthUnit.INCH))
                .isCloseTo(13.0987, within(0.0001));
    }

    @Test
    void aShapeHasItsEdgeAmongItsTurns() {
        assertThatThrownBy(() -> new TrimShape(
                        "strip",
                        List.of(Length.inches(1), Length.inches(1)),
                        List.of(Turn.OF_EDGE),
                        1,
                        Length.ZERO,
                        Optional.empty(),
                        Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("turn 1");
        assertThat(new Turn(Angle.degrees(-90), true).at(Angle.degrees(-120)).inDegrees())
                .as("never further than back on itself")
                .isCloseTo(-180, within(NOTHING));
    }

    private static Optional<TrimShape> shape(EdgeKind kind, double bendDeg, double seam) {
        return UsualShapes.of(kind, Angle.degrees(bendDeg), Length.inches(seam), false);
    }

    private static List<Point2> section(EdgeKind kind, double bendDeg, double seam) {
        TrimShape shape = shape(kind, bendDeg, seam).orElseThrow();
        return shape.section(
                Angle.degrees(bendDeg),
                fold(kind, bendDeg, inches(shape.height().metres())));
    }

    /** Where a trim folds, from the picture: over both planes alike, or up the face of the fascia or the wall. */
    private static Point2 fold(EdgeKind kind, double bendDeg, double heightInches) {
        double height = Length.inches(heightInches).metres();
        double bend = Math.toRadians(bendDeg);
        boolean two = kind == EdgeKind.RIDGE || kind == EdgeKind.HIP || kind == EdgeKind.PITCH_BREAK;
        return height == 0
                ? new Point2(0, 0)
                : new Point2(two ? -height * Math.tan(bend / 2) : height / Math.tan(bend), height);
    }

    /** How far off the second plane, inches. */
    private static double offSecond(Point2 line, double bendDeg) {
        double bend = Math.toRadians(bendDeg);
        return inches(-line.across() * Math.sin(bend) + line.up() * Math.cos(bend));
    }

    private static Point2 between(List<Point2> lines, int leg) {
        Point2 from = lines.get(leg);
        Point2 to = lines.get(leg + 1);
        return new Point2(inches(to.across() - from.across()), inches(to.up() - from.up()));
    }

    private static double inches(double metres) {
        return Length.metres(metres).in(LengthUnit.INCH);
    }
}
