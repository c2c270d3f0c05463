package org.thalweg.packet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.PlaneOutline;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;
import org.thalweg.valley.PanSpec;
import org.thalweg.valley.ValleySide;

/** A valley of two planes at 45°, whose right plane is drawn in two halves, so that the valley is two edges in one line. */
class ValleyRunsTest {

    private static final Point3 FOOT = new Point3(0, 0, 0);
    private static final Point3 HALF = new Point3(2, 2, 2);
    private static final Point3 HEAD = new Point3(4, 4, 4);

    private static PlaneOutline plane(String id, Point3... corners) {
        return new PlaneOutline(id, List.of(corners), List.of(), Origin.REQUEST, Origin.REQUEST);
    }

    private static ValleyJobs.ValleyJob laid(Pitch widening) {
        RoofSurvey survey = new RoofSurvey(
                List.of(
                        plane("left", new Point3(-3, 0, 0), FOOT, HEAD, new Point3(-3, 4, 4)),
                        plane("low", FOOT, new Point3(0, -3, 0), new Point3(2, -3, 2), HALF),
                        plane("high", HALF, new Point3(2, -3, 2), new Point3(4, -3, 4), HEAD)),
                List.of(),
                Tolerance.DEFAULT,
                new Pitch(0.25, 12),
                Source.REQUEST);
        return ValleyJobs.layOut(new ValleyCase(
                survey,
                new EdgeName.Between(FOOT, HEAD),
                Origin.REQUEST,
                Map.of(),
                List.of(),
                Terms.usual(Length.metres(0.5), widening),
                Optional.empty()));
    }

    @Test
    void aWideningGoesOnWhereTheValleyDoes() {
        List<LaidValley> valleys = laid(new Pitch(0.125, 12)).valleys();
        assertThat(valleys).hasSize(2);
        ValleySide lower = valleys.get(0).layout().left();
        ValleySide upper = valleys.get(1).layout().left();
        assertThat(lower.heldBackAtTop().metres()).isCloseTo(upper.heldBack().metres(), within(1e-12));
        // Half of 1/96 over √12 = 3.4641 m of valley, and the pan's hold-back of 0.475 − 0.1524 at the foot.
        assertThat(lower.heldBack().metres()).isCloseTo(0.3226, within(1e-9));
        assertThat(upper.heldBackAtTop().metres()).isCloseTo(0.3226 - 2 * 3.4641016 / 192, within(1e-7));
    }

    @Test
    void withoutAWideningEveryPartIsHeldBackAlike() {
        for (LaidValley valley : laid(new Pitch(0, 12)).valleys()) {
            PanSpec pan = valley.layout().spec();
            assertThat(pan.holdBack()).isEqualTo(Optional.empty());
            assertThat(pan.heldBack().metres()).isCloseTo(0.3226, within(1e-9));
        }
    }
}
