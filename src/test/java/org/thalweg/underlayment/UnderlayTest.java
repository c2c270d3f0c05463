package org.thalweg.underlayment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.finding.Origin;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Shapes;
import org.thalweg.geometry.Tolerance;
import org.thalweg.panel.Flat;
import org.thalweg.roof.Drawn;
import org.thalweg.roof.Roof;
import org.thalweg.underlayment.Course.Run;
import org.thalweg.underlayment.Underlay.RollOrder;
import org.thalweg.units.Length;

/** Sums done by hand, in metres: a roll 1 m wide and 20 m long, laps of 0.1 m and 0.15 m, end laps 2 m apart. */
class UnderlayTest {

    private static final double PRECISE = 1e-9;

    private static final Roll ROLL = roll(1, 20, 0.1, 0.15, 2);

    private static Roll roll(double width, double length, double sideLap, double endLap, double apart) {
        return new Roll(
                Length.metres(width),
                Length.metres(length),
                Length.metres(sideLap),
                Length.metres(endLap),
                Length.metres(apart));
    }

    /** One plane, as wide as said and 5 m up the slope: 4 m level, 3 m of rise. */
    private static Roof shed(double width) {
        return Drawn.plan("")
                .corner('A', 0, 0, 0)
                .corner('B', width, 0, 0)
                .corner('C', width, 4, 3)
                .corner('D', 0, 4, 3)
                .planes("ABCD")
                .read()
                .roof();
    }

    private static List<Course> courses(Region shape) {
        return Underlay.of(Flat.roof(shape), ROLL).planes().get(0).courses();
    }

    private static List<Double> ends(Course course) {
        return course.runs().stream()
                .flatMap(run -> List.of(run.from().metres(), run.to().metres()).stream())
                .map(end -> Math.rint(end * 1e6) / 1e6)
                .toList();
    }

    /** (5 − 0.1) / 0.9 = 5.44, so six courses, the top one up to 5.5. */
    @Test
    void coursesFollowEachOtherByTheWidthLessTheSideLap() {
        List<Course> courses = Underlay.of(shed(12), ROLL).planes().get(0).courses();
        assertThat(courses).hasSize(6);
        assertThat(courses.get(1).from().metres()).isCloseTo(0.9, within(PRECISE));
        assertThat(courses.get(5).to().metres()).isCloseTo(5.5, within(PRECISE));
        assertThat(courses).allSatisfy(course -> assertThat(ends(course)).containsExactly(0.0, 12.0));
    }

    /** Up to 5.5 m five and four tenths of 0.9 are six courses still; a nanometre over is rounding, a millimetre is not. */
    @ParameterizedTest
    @CsvSource({"0.5, 1", "1, 1", "1.000000001, 1", "1.001, 2", "1.9, 2", "1.9000000001, 2", "5.5, 6", "5.501, 7"})
    void aPlaneTakesAsManyCoursesAsReachItsTop(double height, int courses) {
        assertThat(Underlay.count(ROLL, height, Tolerance.DEFAULT)).isEqualTo(courses);
        assertThat(courses(Shapes.region(0, 0, 3, 0, 3, height, 0, height))).hasSize(courses);
    }

    /**
     * Six courses of 12 m. Roll 1: course 1, 8 m left. Course 2: 8 m, then 4.15 m of roll 2 (it laps from 7.85 on), 15.85 m
     * left. Course 3: 12 m, 3.85 m left. Course 4: 3.85 m, then 8.3 m of roll 3, 11.7 m left. Course 5: 11.7 m, then 0.45 m
     * of roll 4, 19.55 m left. Course 6: 12 m, 7.55 m left. Three end laps: 72.45 m.
     */
    @Test
    void whatIsLeftOfARollBeginsTheNextCourse() {
        Underlay laid = Underlay.of(shed(12), ROLL);
        RollOrder order = laid.order();
        assertThat(order.rolls()).isEqualTo(4);
        assertThat(order.rolledOut().metres()).isCloseTo(72.45, within(PRECISE));
        assertThat(order.area().squareMetres()).isCloseTo(72.45, within(PRECISE));
        assertThat(order.setAside().metres()).isZero();
        assertThat(order.rest().metres()).isCloseTo(7.55, within(PRECISE));
        assertThat(laid.net().squareMetres()).isCloseTo(60, within(PRECISE));
        Run second = laid.planes().get(0).courses().get(1).runs().get(0);
        assertThat(second.sheets()).extracting(sheet -> sheet.from().metres()).containsExactly(0.0, 7.85);
        assertThat(second.sheets().get(1).length().metres()).isCloseTo(4.15, within(PRECISE));
        assertThat(order.nearest().orElseThrow().metres())
                .as("laps at 3.85 and 11.7")
                .isCloseTo(7.85, within(PRECISE));
    }

    /**
     * Courses of 21.5 m. Course 1 laps at 20. Of roll 2 18.35 m are left for course 2: its lap would be 1.65 m from that
     * below, so it is cut to 18 m and 0.35 m are set aside.
     */
    @Test
    void aSheetIsCutShortWhereItsLapWouldComeTooNearToTheLapBelow() {
        Underlay laid = Underlay.of(shed(21.5), ROLL);
        List<Course> courses = laid.planes().get(0).courses();
        assertThat(courses.get(0).laps()).containsExactly(20);
        assertThat(courses.get(1).laps()).hasSize(1);
        assertThat(courses.get(1).laps()[0]).isCloseTo(18, within(PRECISE));
        assertThat(laid.order().setAside().metres()).isGreaterThan(0.35 - PRECISE);
        assertThat(laid.order().nearest().orElseThrow().metres()).isCloseTo(2, within(PRECISE));
    }

    /** Courses of 19 m: 1 m is left, the shortest rest to begin with. After course 2 1.85 m are left, and 1.85 − 1 is below 2. */
    @Test
    void aRestThatFindsNoPlaceForItsLapIsSetAside() {
        List<Course> courses = Underlay.of(shed(19), ROLL).planes().get(0).courses();
        assertThat(courses.get(0).laps()).isEmpty();
        assertThat(courses.get(1).laps()).hasSize(1);
        assertThat(courses.get(1).laps()[0]).isCloseTo(1, within(PRECISE));
        assertThat(courses.get(2).laps()).isEmpty();
        assertThat(Underlay.of(shed(19), ROLL).order().setAside().metres())
                .as("after courses 2, 4 and not 6")
                .isCloseTo(2 * 1.85, within(PRECISE));
    }

    /** Where laps must be further apart than rolls allow they lie where the roll ends, and the order says how near. */
    @Test
    void rollsTooShortForTheDistanceOfLapsAreLaidAllTheSame() {
        Underlay laid = Underlay.of(shed(12), roll(1, 2, 0.1, 0.15, 2));
        assertThat(laid.order().nearest().orElseThrow().metres()).isLessThan(2);
        assertThat(laid.order().rolls()).isGreaterThan(36);
    }

    /** A hip's end, 8 m wide and 5 m up: it narrows by 8/5 for each metre up, and courses begin at 0, 0.9, 1.8 … */
    @Test
    void aCourseIsAsLongAsItsPlaneIsAnywhereInIt() {
        List<Course> courses = courses(Shapes.region(0, 0, 8, 0, 4, 5));
        assertThat(courses).hasSize(6);
        assertThat(ends(courses.get(0))).containsExactly(0.0, 8.0);
        assertThat(ends(courses.get(1))).containsExactly(0.72, 7.28);
        assertThat(ends(courses.get(5))).containsExactly(3.6, 4.4);
    }

    /** Widest in the middle of a course: at 1.3 up. */
    @Test
    void theWidestPlaceMayLieInsideACourse() {
        List<Course> courses = courses(Shapes.region(2, 0, 5, 0, 7, 1.3, 5, 3, 2, 3, 0, 1.3));
        assertThat(ends(courses.get(1))).containsExactly(0.0, 7.0);
    }

    /** From 1.5 to 3.5: it parts the course from 1.8 to 2.8 alone. */
    @Test
    void anOpeningPartsOnlyTheCoursesItGoesRightThrough() {
        Region shape = new Region(
                Shapes.ring(0, 0, 0, 10, 0, 10, 5, 0, 5), List.of(Shapes.ring(10, 4, 1.5, 4, 3.5, 6, 3.5, 6, 1.5)));
        List<Course> courses = courses(shape);
        assertThat(ends(courses.get(1))).containsExactly(0.0, 10.0);
        assertThat(ends(courses.get(2))).containsExactly(0.0, 4.0, 6.0, 10.0);
        assertThat(ends(courses.get(3))).containsExactly(0.0, 10.0);
        assertThat(Underlay.of(Flat.roof(shape), ROLL).net().squareMetres()).isCloseTo(46, within(PRECISE));
    }

    /** Above 2 m only two horns are left. */
    @Test
    void aNotchPartsTheCoursesAboveItsFoot() {
        List<Course> courses = courses(Shapes.region(0, 0, 9, 0, 9, 5, 6, 5, 6, 2, 3, 2, 3, 5, 0, 5));
        assertThat(ends(courses.get(2))).containsExactly(0.0, 9.0);
        assertThat(ends(courses.get(3))).containsExactly(0.0, 3.0, 6.0, 9.0);
    }

    /** Double rows, 0.5 m of each showing: courses lie over the next but one exactly. */
    @ParameterizedTest
    @CsvSource({"0.5, 9", "0.53, 10", "0.75, 17", "0, 5"})
    void sideLapsMayBeHalfTheRollAndMore(double sideLap, int count) {
        Roof roof = Flat.roof(Shapes.region(0, 0, 8, 0, 4, 5));
        List<Course> courses =
                Underlay.of(roof, roll(1, 20, sideLap, 0.15, 2)).planes().get(0).courses();
        assertThat(courses).hasSize(count);
        for (Course course : courses) {
            double inward = course.from().metres() * 4 / 5;
            assertThat(course.runs().get(0).from().metres()).isCloseTo(inward, within(PRECISE));
            assertThat(course.runs().get(0).length().metres()).isCloseTo(8 - 2 * inward, within(PRECISE));
        }
    }

    @Test
    void aRollIsLongerThanItsLapsAndWiderThanItsSideLap() {
        assertThatThrownBy(() -> roll(1, 0.3, 0, 0.15, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> roll(1, 20, 1, 0.15, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** A plane of 200 m by 900 km takes 222 courses of 45 thousand rolls each. */
    @Test
    void moreSheetsThanOneRequestMayHaveAreRefusedBeforeAnyIsLaid() {
        Roof roof = Flat.roof(Shapes.region(0, 0, 900_000, 0, 900_000, 200, 0, 200));
        assertThatThrownBy(() -> UnderlayWork.check(roof, new UnderlayCase(ROLL, Optional.empty()), Origin.REQUEST))
                .isInstanceOfSatisfying(Refused.class, refused -> assertThat(refused.refusals())
                        .extracting(refusal -> refusal.code())
                        .containsExactly(RefusalCode.TOO_MANY_SHEETS));
        UnderlayWork.check(shed(12), new UnderlayCase(ROLL, Optional.empty()), Origin.REQUEST);
    }
}
