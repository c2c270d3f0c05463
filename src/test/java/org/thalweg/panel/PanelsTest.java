package org.thalweg.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.thalweg.panel.Flat.cover;
import static org.thalweg.panel.Flat.lay;
import static org.thalweg.panel.Flat.layOut;
import static org.thalweg.panel.Flat.offset;
import static org.thalweg.panel.Flat.spec;
import static org.thalweg.panel.Flat.tapered;
import static org.thalweg.panel.Flat.treated;
import static org.thalweg.panel.Flat.treatment;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Shapes;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.EdgeTreatments;

class PanelsTest {

    /** Side tags: 0 bottom, 1 right, 2 top, 3 left. */
    private static final Region RECTANGLE = Shapes.region(0, 0, 5, 0, 5, 3, 0, 3);

    private static final EdgeTreatments PLAIN = EdgeTreatments.PLAIN;

    @Test
    void panelsAreNumberedFromTheSideThatLeads() {
        List<Panel> left = lay(RECTANGLE, cover(2), PLAIN, Lead.LEFT, offset(0)).panels();
        List<Panel> right =
                lay(RECTANGLE, cover(2), PLAIN, Lead.RIGHT, offset(0)).panels();

        assertThat(left).extracting(Panel::mark).containsExactly("p-1", "p-2", "p-3");
        assertThat(left).extracting(p -> p.place().across()).containsExactly(0.0, 2.0, 4.0);
        assertThat(right).extracting(p -> p.place().across()).containsExactly(3.0, 1.0, -1.0);
        assertThat(right).extracting(p -> p.width().metres()).containsExactly(2.0, 2.0, 1.0);
    }

    @Test
    void anOffsetIsTheWidthOfTheFirstPanel() {
        assertThat(lay(RECTANGLE, cover(2), PLAIN, Lead.LEFT, offset(0.5)).panels())
                .extracting(p -> p.width().metres())
                .containsExactly(0.5, 2.0, 2.0, 0.5);
    }

    @ParameterizedTest(name = "{0} wide: first panel {1} wide")
    @CsvSource({"5, 1.5", "4, 0", "5.5, 1.75", "4.2, 1.1", "1.2, 1.2"})
    void centredEndPanelsAreEqualAndAtLeastHalfACover(double width, double first) {
        Region plane = Shapes.region(0, 0, width, 0, width, 3, 0, 3);

        PlanePanels laid = lay(plane, cover(2), PLAIN, Lead.LEFT, new Start.Centred());

        assertThat(laid.start().metres()).isCloseTo(first, within(1e-9));
        List<Panel> panels = laid.panels();
        assertThat(panels.get(0).width().metres())
                .isCloseTo(panels.get(panels.size() - 1).width().metres(), within(1e-9));
    }

    /** Trade figure: at a square corner of two 6:12 planes a valley rises 20.1246 in across an 18 in panel. */
    @Test
    void aValleyCutIsMarkedWhereItCrossesEachRib() {
        double inch = 0.0254;
        double rise = 20.1246118 * inch;
        Region plane = Shapes.region(
                0,
                0,
                180 * inch,
                0,
                180 * inch,
                10 * rise + 100 * inch,
                90 * inch,
                5 * rise + 100 * inch,
                90 * inch,
                5 * rise);

        Panel second = lay(plane, cover(18 * inch), PLAIN, Lead.LEFT, offset(0))
                .panels()
                .get(1);

        assertThat(second.cuts()).hasSize(2);
        Cut upper = second.cuts().get(1);
        assertThat(upper.end()).isEqualTo(Cut.End.UPPER);
        assertThat(upper.left(Tolerance.DEFAULT).orElseThrow() / inch).isCloseTo(20.1246, within(5e-5));
        assertThat(upper.right(18 * inch, Tolerance.DEFAULT).orElseThrow() / inch)
                .isCloseTo(40.2492, within(5e-5));
        assertThat(Math.toDegrees(upper.mitre())).isCloseTo(48.1897, within(5e-5));
        assertThat(second.blankLength().metres()).isCloseTo(1.023, within(1e-9));
    }

    /** The valley runs into the first panel's corner half way across: one crossing on the rib, one on the square end. */
    @Test
    void aCornerTriangleHasOneCrossingOnTheEnd() {
        Region plane = Shapes.region(1, 0, 4, 0, 4, 4, 0, 4, 0, 1);

        Panel first = lay(plane, cover(2), PLAIN, Lead.LEFT, offset(0)).panels().get(0);

        Cut corner = first.cuts().get(0);
        assertThat(corner.end()).isEqualTo(Cut.End.LOWER);
        assertThat(corner.from()).isEqualTo(new Point2(0, 1));
        assertThat(corner.to()).isEqualTo(new Point2(1, 0));
        assertThat(corner.left(Tolerance.DEFAULT)).hasValue(1);
        assertThat(corner.right(2, Tolerance.DEFAULT)).isEmpty();
    }

    @Test
    void aHemLengthensTheCutOutlineAndMovesNoRib() {
        Panel panel = lay(
                        RECTANGLE,
                        cover(2),
                        treated(Map.of(0, treatment(-0.02, 0.03, 0), 2, treatment(0.05, 0, 0.04))),
                        Lead.LEFT,
                        offset(0))
                .panels()
                .get(1);

        assertThat(panel.finished().outer().mostUp() - panel.finished().outer().leastUp())
                .isCloseTo(2.97, within(1e-12));
        assertThat(panel.cut().outer().mostUp()).isCloseTo(3.04, within(1e-12));
        assertThat(panel.cut().outer().leastUp()).isZero();
        assertThat(panel.place().up()).isCloseTo(-0.05, within(1e-12));
        assertThat(panel.cut().outer().mostAcross()).isEqualTo(2.0);
        assertThat(panel.blankLength().metres()).isCloseTo(3.04, within(1e-9));
    }

    /**
     * A 3-4-5 valley on the right: from (4 0) up to (8 3), (0.6 -0.8) to its right. Held back 0.5 at the foot and 0.25 at
     * the top it runs from (3.7 0.4) to (7.85 3.2). The foot is cut off where that line, which climbs 2.8 in 4.15, meets
     * the eave: at 3.7 - 0.4 · 4.15 / 2.8; the rib at 6 crosses it at 0.4 + 2.3 · 2.8 / 4.15.
     */
    @Test
    void aValleyThatLiesOpenWiderTowardTheEaveTurnsItsCut() {
        Region plane = Shapes.region(0, 0, 4, 0, 8, 3, 0, 3);

        Panel panel = lay(plane, cover(2), treated(Map.of(1, tapered(0.5, 0.25))), Lead.LEFT, offset(0))
                .panels()
                .get(2);

        Cut cut = panel.cuts().get(0);
        assertThat(cut.edge()).isEqualTo(1);
        assertThat(cut.left(Tolerance.DEFAULT).orElseThrow() + panel.place().up())
                .isCloseTo(0.4 + 0.3 * 2.8 / 4.15, within(1e-12));
        assertThat(cut.right(2, Tolerance.DEFAULT).orElseThrow() + panel.place().up())
                .isCloseTo(0.4 + 2.3 * 2.8 / 4.15, within(1e-12));
    }

    @Test
    void theUpperEndOfAnEdgeIsTheSameWhicheverWayItsRingRuns() {
        Region leaning = Shapes.region(0, 0, 10, 0, 12, 6, 2, 6);

        PlanePanels laid = lay(
                leaning, cover(2), treated(Map.of(1, tapered(0.5, 0.25), 3, tapered(0.5, 0.25))), Lead.LEFT, offset(0));

        assertThat(laid.finished()).hasSize(1);
        Region finished = laid.finished().get(0);
        double root = Math.sqrt(40);
        assertThat(offLine(finished, new Point2(10 - 0.5 * 6 / root, 0.5 * 2 / root)))
                .isLessThan(1e-12);
        assertThat(offLine(finished, new Point2(12 - 0.25 * 6 / root, 6 + 0.25 * 2 / root)))
                .isLessThan(1e-12);
        assertThat(offLine(finished, new Point2(0.5 * 6 / root, -0.5 * 2 / root)))
                .isLessThan(1e-12);
        assertThat(offLine(finished, new Point2(2 + 0.25 * 6 / root, 6 - 0.25 * 2 / root)))
                .isLessThan(1e-12);
    }

    /** How far a place lies off the nearest of the lines a shape's sides run on. */
    private static double offLine(Region shape, Point2 place) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < shape.outer().size(); i++) {
            Point2 a = shape.outer().corner(i);
            Point2 b = shape.outer().corner(shape.outer().next(i));
            double cross = (b.across() - a.across()) * (place.up() - a.up())
                    - (b.up() - a.up()) * (place.across() - a.across());
            least = Math.min(least, Math.abs(cross) / a.distance(b));
        }
        return least;
    }

    @Test
    void aLevelEdgeIsSetBackAlikeAllAlong() {
        PlanePanels laid = lay(RECTANGLE, cover(2), treated(Map.of(0, tapered(0.5, 0.25))), Lead.LEFT, offset(0));

        assertThat(laid.finishedArea().squareMetres()).isCloseTo(5 * 2.5, within(1e-12));
    }

    /** 3.0401 m, ordered to the centimetre, is 3.05 m; 3.04 m made of sums that are a rounding off stays 3.04 m. */
    @Test
    void blanksAreOrderedInWholeIncrements() {
        PanelSpec toTheCentimetre = spec(2, 100, 0.01, 0);
        Region longer = Shapes.region(0, 0, 5, 0, 5, 3.0401, 0, 3.0401);
        Region noisy = Shapes.region(0, 0, 5, 0, 5, 3.04 + 1e-13, 0, 3.04 + 1e-13);

        assertThat(lay(longer, toTheCentimetre, PLAIN, Lead.LEFT, offset(0))
                        .panels()
                        .get(0)
                        .blankLength()
                        .metres())
                .isCloseTo(3.05, within(1e-12));
        assertThat(lay(noisy, toTheCentimetre, PLAIN, Lead.LEFT, offset(0))
                        .panels()
                        .get(0)
                        .blankLength()
                        .metres())
                .isCloseTo(3.04, within(1e-12));
    }

    @Test
    void aSkylightWiderThanAPanelPartsItsStrip() {
        Region plane =
                new Region(Shapes.ring(0, 0, 0, 6, 0, 6, 6, 0, 6), List.of(Shapes.ring(4, 1, 2, 1, 4, 5, 4, 5, 2)));

        assertThat(lay(plane, cover(2), PLAIN, Lead.LEFT, offset(0)).panels())
                .extracting(Panel::mark)
                .containsExactly("p-1", "p-2.1", "p-2.2", "p-3");
    }

    @Test
    void aPanelOverTheLongestIsLappedUpperOverLower() {
        Region plane = Shapes.region(0, 0, 4, 0, 4, 10, 0, 10);

        PanelLayout layout = layOut(plane, spec(2, 6, 0.01, 0), PLAIN, Lead.LEFT, offset(0));
        List<Panel> panels = layout.planes().get(0).panels();

        assertThat(panels).extracting(Panel::mark).containsExactly("p-1.1", "p-1.2", "p-2.1", "p-2.2");
        assertThat(layout.findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.PANEL_TOO_LONG, FindingCode.PANEL_TOO_LONG);
        for (Panel panel : panels) {
            assertThat(panel.blankLength().metres()).isLessThanOrEqualTo(6);
        }
        // Each strip orders its length and one lap; the lower piece shows all but the lap that goes under the upper.
        assertThat(panels.get(0).blankLength().metres()
                        + panels.get(1).blankLength().metres())
                .isCloseTo(10.15, within(1e-9));
        assertThat(panels.get(0).cut().outer().mostUp()
                        - panels.get(0).finished().outer().mostUp())
                .isCloseTo(0.15, within(1e-12));
        assertThat(Math.abs(panels.get(1).place().up() - panels.get(3).place().up()))
                .isCloseTo(0.6, within(1e-9));
    }

    @Test
    void lappedPiecesCoverTheStripExactly() {
        Region trapezoid = Shapes.region(0, 0, 6, 1, 5, 22, 1, 19);

        List<Panel> panels =
                lay(trapezoid, spec(2, 6, 0.01, 0), PLAIN, Lead.LEFT, offset(0)).panels();

        assertThat(panels.stream().mapToDouble(p -> p.finished().area()).sum())
                .isCloseTo(trapezoid.area(), within(1e-9 * trapezoid.area()));
        assertThat(panels).allSatisfy(p -> assertThat(p.blankLength().metres()).isLessThanOrEqualTo(6));
    }

    @Test
    void aRipUnderTheNarrowestIsASliver() {
        PanelLayout layout = layOut(RECTANGLE, spec(2, 100, 0.01, 0.3), PLAIN, Lead.LEFT, offset(0.2));

        assertThat(layout.findings()).hasSize(1);
        assertThat(layout.findings().get(0).code()).isEqualTo(FindingCode.SLIVER);
        assertThat(layout.findings().get(0).place().id()).isEqualTo("p-1");
    }

    @Test
    void setBacksThatLeaveNothingAreAFinding() {
        PanelLayout layout = layOut(
                RECTANGLE,
                cover(2),
                treated(Map.of(0, treatment(2, 0, 0), 2, treatment(2, 0, 0))),
                Lead.LEFT,
                offset(0));

        assertThat(layout.planes().get(0).panels()).isEmpty();
        assertThat(layout.findings()).extracting(Finding::code).containsExactly(FindingCode.NOTHING_LEFT);
    }
}
