package org.thalweg.fastening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.fastening.HeldPanel.FreeEnd;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Shapes;
import org.thalweg.panel.Flat;
import org.thalweg.panel.Panel;
import org.thalweg.panel.PlanePanels;
import org.thalweg.roof.EdgeTreatments;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/** Where panels are fixed, on single planes, in inches. */
class HeldPanelsTest {

    private static final double IN = 0.0254;
    private static final double PRECISE = 1e-9;

    private static Ring ring(int firstTag, double... corners) {
        double[] metres = new double[corners.length];
        for (int i = 0; i < corners.length; i++) {
            metres[i] = corners[i] * IN;
        }
        return Shapes.ring(firstTag, metres);
    }

    private static List<HeldPanel> held(Region shape, double longest, FixedPoint fixed) {
        FasteningCase asked = Fastened.of(Flat.roof(shape))
                .treated(EdgeTreatments.PLAIN)
                .longest(longest)
                .asked(FasteningRules.INCHES);
        return HeldPanels.of(fixed(asked, fixed)).panels();
    }

    private static FasteningCase fixed(FasteningCase asked, FixedPoint fixed) {
        return new FasteningCase(
                asked.roof(),
                asked.spec(),
                asked.panels(),
                asked.treatments(),
                asked.holds(),
                asked.valleys(),
                asked.rules(),
                fixed);
    }

    private static Region rectangle() {
        return new Region(ring(0, 0, 0, 36, 0, 36, 240, 0, 240), List.of());
    }

    private static double in(Length length) {
        return length.in(LengthUnit.INCH);
    }

    @ParameterizedTest
    @CsvSource({"EAVE, 0, 240", "RIDGE, 240, 0", "MIDDLE, 120, 120"})
    void aPanelIsFreeFromWhereItIsFixed(FixedPoint fixed, double below, double above) {
        HeldPanel second = held(rectangle(), 1000, fixed).get(1);
        assertThat(second.mark()).isEqualTo("p-2");
        assertThat(second.fixed().across() / IN).isCloseTo(27, within(PRECISE));
        assertThat(second.fixed().up() / IN).isCloseTo(below, within(PRECISE));
        assertThat(in(second.below())).isCloseTo(below, within(PRECISE));
        assertThat(in(second.above())).isCloseTo(above, within(PRECISE));
        assertThat(in(second.free())).isCloseTo(Math.max(below, above), within(PRECISE));
        assertThat(second.ends()).extracting(FreeEnd::lower).containsExactly(true, false);
        assertThat(in(second.ends().get(0).free())).isCloseTo(below, within(PRECISE));
        assertThat(in(second.ends().get(1).free())).isCloseTo(above, within(PRECISE));
    }

    @ParameterizedTest
    @CsvSource({"EAVE, 100", "RIDGE, 100", "MIDDLE, 200"})
    void fixedHalfWayUpAPanelMayBeTwiceAsLong(FixedPoint fixed, double longest) {
        assertThat(in(fixed.longest(Length.inches(100)))).isCloseTo(longest, within(PRECISE));
    }

    /** A lap is fastened metal to metal. */
    @Test
    void lappedPiecesMoveAsOnePanel() {
        List<HeldPanel> held = held(rectangle(), 100, FixedPoint.EAVE);
        assertThat(held).hasSize(2).allSatisfy(panel -> {
            assertThat(panel.pieces()).hasSizeGreaterThan(2);
            assertThat(in(panel.length())).isCloseTo(240, within(PRECISE));
            assertThat(panel.ends()).hasSize(2);
        });
    }

    /** The second strip of three is parted by an opening from 100 to 130; its neighbours are only notched. */
    @Test
    void anOpeningWiderThanAStripPartsItIntoTwoPanels() {
        Region parted =
                new Region(ring(0, 0, 0, 54, 0, 54, 240, 0, 240), List.of(ring(4, 10, 100, 10, 130, 44, 130, 44, 100)));
        List<HeldPanel> held = held(parted, 1000, FixedPoint.RIDGE);
        assertThat(held).extracting(HeldPanel::mark).containsExactly("p-1", "p-2.1", "p-2.2", "p-3");
        assertThat(held.get(1).fixed().up() / IN).isCloseTo(100, within(PRECISE));
        assertThat(held.get(2).fixed().up() / IN).isCloseTo(240, within(PRECISE));
        assertThat(held.get(0).ends().stream().map(end -> Math.rint(in(end.free()))))
                .containsExactlyInAnyOrder(240.0, 140.0, 110.0, 0.0);
    }

    /** Cut at tan φ = 2: the end moves square to itself by cos φ = 1 / √5 of what it grows. */
    @Test
    void aMitredEndKnowsItsMitreAndItsFurthestPlace() {
        HeldPanel first = held(new Region(ring(0, 0, 0, 18, 36, 18, 240, 0, 240), List.of()), 1000, FixedPoint.RIDGE)
                .get(0);
        FreeEnd lower = first.ends().stream().filter(FreeEnd::lower).findFirst().orElseThrow();
        assertThat(lower.mitre().tan()).isCloseTo(2, within(PRECISE));
        assertThat(in(lower.free())).isCloseTo(240, within(PRECISE));
    }

    @Test
    void everyPieceOfACrookedPlaneBelongsToOnePanelThatIsFixedWithinIt() {
        for (long seed = 130_000; seed < 130_300; seed++) {
            for (Region shape : Shapes.crooked(seed)) {
                FixedPoint fixed = FixedPoint.values()[(int) (seed % 3)];
                FasteningCase asked = fixed(
                        Fastened.of(Flat.roof(shape))
                                .treated(EdgeTreatments.PLAIN)
                                .longest(seed % 2 == 0 ? 90 : 1000)
                                .asked(FasteningRules.INCHES),
                        fixed);
                List<HeldPanel> held = HeldPanels.of(asked).panels();
                Set<String> marks = new HashSet<>();
                for (HeldPanel panel : held) {
                    panel.pieces().forEach(piece -> assertThat(marks.add(piece.mark()))
                            .as("seed %d", panel.plane())
                            .isTrue());
                    assertThat(panel.ends()).as("seed %d", seed).isNotEmpty().allSatisfy(end -> assertThat(
                                    end.free().metres())
                            .isLessThanOrEqualTo(panel.free().metres() + PRECISE));
                }
                PlanePanels laid = asked.panels().planes().get(0);
                assertThat(marks).as("seed %d", seed).hasSize(laid.panels().size());
                assertThat(laid.panels().stream().map(Panel::mark)).allMatch(marks::contains);
            }
        }
    }
}
