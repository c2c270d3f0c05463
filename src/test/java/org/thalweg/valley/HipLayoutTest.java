package org.thalweg.valley;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.Edge;
import org.thalweg.roof.Roof;
import org.thalweg.units.Length;
import org.thalweg.valley.HipLayout.HipCap;
import org.thalweg.valley.HipLayout.HipSide;

/** Hips of the boathouse ({@code demo/boathouse.md}), in inches. */
class HipLayoutTest {

    private static final HipCap CAP = new HipCap(Length.inches(6), Length.inches(1));
    private static final Sketch BOATHOUSE = Sketch.boathouse(p -> p);
    private static final Roof ROOF = BOATHOUSE.read();

    private static HipLayout laid(String ends, double setback) {
        return HipLayout.of(BOATHOUSE.edge(ROOF, ends), CAP, Length.inches(setback), Pans.COVER, Pans.TOLERANCE);
    }

    /** AK joins two planes of 6:12 at a square corner: the angles and the rise of such a valley, turned over. */
    @Test
    void aHipHasTheAnglesOfTheValleyOfTheSamePitches() {
        HipLayout laid = laid("AK", 1);
        assertThat(laid.edge().edge().bend().inDegrees()).isCloseTo(36.8699, within(0.00005));
        for (HipSide side : laid.sides()) {
            assertThat(side.seen().mitre().inDegrees()).isCloseTo(48.1897, within(0.00005));
            assertThat(Pans.inches(side.riseAcrossCover().orElseThrow())).isCloseTo(20.1246, within(0.00005));
        }
        assertThat(laid.left().seen().id()).isEqualTo("JAK");
        assertThat(laid.right().seen().id()).isEqualTo("ABMLK");
    }

    @Test
    void panelsClosureAndCapRunParallelToTheHipFromTheEaveUp() {
        HipLayout laid = laid("AK", 1);
        Edge hip = laid.edge().edge();
        for (HipSide side : laid.sides()) {
            List<OffsetLine> lines = List.of(
                    side.panelLine().orElseThrow(),
                    side.closureLine().orElseThrow(),
                    side.capLine().orElseThrow());
            double[] out = {1, 5, 6};
            for (int i = 0; i < 3; i++) {
                Point3 from = ROOF.planes()
                        .get(side.seen().plane())
                        .frame()
                        .inWorld(lines.get(i).from());
                Point3 to = ROOF.planes()
                        .get(side.seen().plane())
                        .frame()
                        .inWorld(lines.get(i).to());
                assertThat(Pans.inches(Length.metres(from.z()))).isCloseTo(108, within(1e-9));
                assertThat(Pans.inches(Length.metres(Bent.fromLine(from, hip.from(), hip.to()))))
                        .isCloseTo(out[i], within(1e-9));
                assertThat(Pans.inches(Length.metres(Bent.fromLine(to, hip.from(), hip.to()))))
                        .isCloseTo(out[i], within(1e-9));
            }
        }
    }

    /** Hips AK and KJ of the west end meet at K, y = 192: their lines end half-way. */
    @Test
    void theLinesOfTwoHipsOnOnePlaneMeetHalfWay() {
        OffsetLine south = laid("AK", 1).left().capLine().orElseThrow();
        OffsetLine north = laid("JK", 1).right().capLine().orElseThrow();
        int plane = laid("AK", 1).left().seen().plane();
        Point3 end = ROOF.planes().get(plane).frame().inWorld(south.to());
        assertThat(Pans.inches(Length.metres(end.y()))).isCloseTo(192, within(1e-9));
        assertThat(end.distance(ROOF.planes().get(plane).frame().inWorld(north.to())))
                .isLessThan(1e-9);
        assertThat(south.upper().along()).isEmpty();
    }

    @Test
    void aClosureBeyondTheEndOfThePanelsIsFoundWithTheCapThatWouldDo() {
        assertThat(laid("AK", 5).findings()).isEmpty();
        Finding finding = laid("AK", 5.5).findings().get(0);
        assertThat(finding.code()).isEqualTo(FindingCode.CLOSURE_OFF_PANEL);
        assertThat(finding.actual()).isEqualTo(Optional.of(Length.inches(5.5)));
        Length leg = (Length) finding.needed().get(0).figure();
        assertThat(Pans.inches(leg)).isCloseTo(6.5, within(1e-9));
        HipCap wider = new HipCap(leg, CAP.closureInset());
        assertThat(HipLayout.of(BOATHOUSE.edge(ROOF, "AK"), wider, Length.inches(5.5), Pans.COVER, Pans.TOLERANCE)
                        .findings())
                .isEmpty();
    }
}
