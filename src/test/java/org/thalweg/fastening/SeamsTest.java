package org.thalweg.fastening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.fastening.FasteningRules.ClipRule;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Shapes;
import org.thalweg.panel.Flat;
import org.thalweg.panel.Lead;
import org.thalweg.reference.Rules;
import org.thalweg.roof.EdgeTreatments;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/** Clips along the seams of single planes, in inches: 24 apart at most, 6 from the ends. */
class SeamsTest {

    private static final double IN = 0.0254;
    private static final double PRECISE = 1e-9;

    private static Ring ring(int firstTag, double... corners) {
        double[] metres = new double[corners.length];
        for (int i = 0; i < corners.length; i++) {
            metres[i] = corners[i] * IN;
        }
        return Shapes.ring(firstTag, metres);
    }

    private static Fastened plane(Region shape) {
        return Fastened.of(Flat.roof(shape)).treated(EdgeTreatments.PLAIN);
    }

    private static Fastened rectangle(double width, double length) {
        return plane(new Region(ring(0, 0, 0, width, 0, width, length, 0, length), List.of()));
    }

    private static double in(Length length) {
        return length.in(LengthUnit.INCH);
    }

    /** 240 in less 6 at either end: ten intervals of 22.8. Ten panels have nine seams; the outer ribs are no seams. */
    @Test
    void everySeamBetweenTwoPanelsHasEvenClips() {
        Seams seams = rectangle(180, 240).seams();
        assertThat(seams.seams()).hasSize(9).allSatisfy(seam -> {
            assertThat(seam.count()).isEqualTo(11);
            assertThat(in(seam.spacing())).isCloseTo(22.8, within(PRECISE));
            assertThat(seam.places().get(0).up() / IN).isCloseTo(6, within(PRECISE));
            assertThat(seam.places().get(10).up() / IN).isCloseTo(234, within(PRECISE));
        });
        assertThat(seams.clipCount()).isEqualTo(99);
        for (int i = 0; i < 9; i++) {
            assertThat(seams.seams().get(i).strip()).isEqualTo(i + 1);
            assertThat(seams.seams().get(i).from().across() / IN).isCloseTo(18 * (i + 1), within(PRECISE));
        }
    }

    @Test
    void stripsLaidFromTheRightHaveTheSeamOnTheirLeft() {
        List<Seam> seams = rectangle(100, 240).from(Lead.RIGHT, 0).seams().seams();
        assertThat(seams).hasSize(5);
        assertThat(seams.get(0).strip()).isEqualTo(1);
        assertThat(seams.get(0).from().across() / IN).isCloseTo(82, within(PRECISE));
    }

    /** The seam goes from the lowest to the highest place where both neighbours exist: of a triangle, what is right of it. */
    @Test
    void aSeamIsAsLongAsTheShorterOfItsNeighbours() {
        List<Seam> seams = plane(new Region(ring(0, 0, 0, 90, 0, 0, 180), List.of()))
                .seams()
                .seams();
        assertThat(seams).hasSize(4);
        for (int i = 0; i < 4; i++) {
            assertThat(seams.get(i).from().up()).isZero();
            assertThat(seams.get(i).to().up() / IN).isCloseTo(180 - 36 * (i + 1), within(PRECISE));
        }
    }

    /** A chimney from 78 to 102 across breaks the seam at 90 and no other. */
    @Test
    void anOpeningBreaksASeamInTwo() {
        Region shape = new Region(
                ring(0, 0, 0, 180, 0, 180, 240, 0, 240), List.of(ring(4, 78, 100, 78, 130, 102, 130, 102, 100)));
        List<Seam> seams = plane(shape).seams().seams();
        assertThat(seams).hasSize(10);
        assertThat(seams)
                .filteredOn(seam -> seam.strip() == 5)
                .extracting(
                        seam -> Math.rint(seam.from().up() / IN),
                        seam -> Math.rint(seam.to().up() / IN))
                .containsExactly(Tuple.tuple(0.0, 100.0), Tuple.tuple(130.0, 240.0));
    }

    @Test
    void aSeamGoesOnPastEndLaps() {
        assertThat(rectangle(180, 240).longest(100).seams())
                .isEqualTo(rectangle(180, 240).seams());
    }

    /** Two end distances are 12 in: less free than one end distance is no room for two clips. */
    @ParameterizedTest
    @CsvSource({"4, 1, 2", "12, 1, 6", "17.9, 1, 8.95", "18.1, 2, 6", "36, 2, 6", "36.1, 3, 6"})
    void aShortSeamHasOneClipInItsMiddle(double length, int clips, double first) {
        Seam seam = rectangle(36, length).seams().seams().get(0);
        assertThat(seam.count()).isEqualTo(clips);
        assertThat(in(seam.first())).isCloseTo(first, within(PRECISE));
    }

    @Test
    void theCallersClipsWin() {
        ClipRule rule = new ClipRule(Length.inches(12), Length.inches(3), 1, Source.REQUEST);
        Seams seams = Seams.of(rectangle(36, 240).asked(FasteningRules.INCHES.with(rule)));
        assertThat(seams.seams().get(0).count()).isEqualTo(21);
        assertThat(in(seams.seams().get(0).spacing())).isCloseTo(11.7, within(PRECISE));
    }

    /** UFC 3-110-03 (2006) 4-8: along edges clips stand at most 30 in apart. */
    @Test
    void theUsualClipsStandNoFurtherApartThanIsPublishedForEdges() {
        for (FasteningRules rules : List.of(FasteningRules.INCHES, FasteningRules.METRIC)) {
            assertThat(rules.clips().maxSpacing())
                    .isLessThan(Rules.clipEdgeSpacing().value());
        }
    }
}
