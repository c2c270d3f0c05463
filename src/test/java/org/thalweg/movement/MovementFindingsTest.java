package org.thalweg.movement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Place;
import org.thalweg.finding.Source;
import org.thalweg.movement.MovementFindings.Clips;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;

/** What is told of many panels, movements typed in. */
class MovementFindingsTest {

    private static final Place SOUTH = new Place(Place.Kind.PLANE, "south", Origin.REQUEST);
    private static final Place NORTH = new Place(Place.Kind.PLANE, "north", Origin.REQUEST);
    private static final Place EAVE = new Place(Place.Kind.EDGE, "E1", Origin.REQUEST);
    private static final Place RIDGE = new Place(Place.Kind.EDGE, "R1", Origin.REQUEST);
    private static final Length HAIR = Length.metres(1e-8);

    private static Growth moves(double longer, double shorter) {
        return new Growth(Length.millimetres(longer), Length.millimetres(shorter));
    }

    private static Play play(double millimetres) {
        return new Play(Length.millimetres(millimetres), Source.REQUEST);
    }

    private static HeldEnd screwed(Place edge, boolean lower, double longer) {
        return HeldEnd.screwed(edge, lower, moves(longer, longer / 2), play(2));
    }

    private static HeldEnd hooked(double longer, double shorter, double engaged, double gap) {
        HemHook hem = new HemHook(Length.millimetres(engaged), Length.millimetres(gap), Source.REQUEST);
        return HeldEnd.hooked(EAVE, true, moves(longer, shorter), Angle.ZERO, hem);
    }

    private static MovingPanel panel(Place plane, int strip, double above, HeldEnd... ends) {
        return new MovingPanel(
                plane.id() + "-" + strip, plane, moves(0, 0), moves(above, above / 2), true, List.of(ends));
    }

    private static List<Finding> told(Optional<Clips> clips, MovingPanel... panels) {
        return MovementFindings.of(List.of(panels), clips, HAIR);
    }

    private static Optional<Clips> clips(double travel) {
        return Optional.of(new Clips(play(travel), Optional.of(Length.metres(9))));
    }

    @Test
    void aHundredPanelsAtOneEdgeAreOneFindingThatNamesTheWorst() {
        List<MovingPanel> panels = new ArrayList<>();
        for (int strip = 1; strip <= 100; strip++) {
            panels.add(panel(SOUTH, strip, 9, screwed(RIDGE, false, strip == 37 ? 5 : 4)));
        }
        panels.add(panel(SOUTH, 101, 9, screwed(RIDGE, false, 1)));
        assertThat(MovementFindings.of(panels, Optional.empty(), HAIR))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.code()).isEqualTo(FindingCode.FIXED_PANEL_MOVES);
                    assertThat(finding.place()).isEqualTo(RIDGE);
                    assertThat(finding.panels()).contains(new Finding.Panels("south-37", 100));
                    assertThat(finding.actual()).contains(Length.millimetres(5));
                    assertThat(finding.limit()).contains(Length.millimetres(2));
                    assertThat(finding.source()).isEqualTo(Source.REQUEST);
                });
    }

    @Test
    void ofPanelsThatAreEquallyBadTheFirstIsNamedHoweverTheComputerRounds() {
        List<Finding> told = told(
                Optional.empty(),
                panel(SOUTH, 1, 9, screwed(RIDGE, false, 4)),
                panel(SOUTH, 2, 9, screwed(RIDGE, false, 4 + 1e-9)));
        assertThat(told.get(0).panels()).contains(new Finding.Panels("south-1", 2));
    }

    @Test
    void aPanelThatMeetsAnEdgeTwiceCountsOnce() {
        List<Finding> told =
                told(Optional.empty(), panel(SOUTH, 1, 9, screwed(RIDGE, true, 4), screwed(RIDGE, false, 5)));
        assertThat(told)
                .singleElement()
                .extracting(Finding::panels)
                .isEqualTo(Optional.of(new Finding.Panels("south-1", 1)));
    }

    @Test
    void clipsAreToldPlaneByPlaneWithTheLongestPanelTheyAllow() {
        List<Finding> told = told(
                clips(8),
                panel(SOUTH, 1, 9),
                panel(SOUTH, 2, 10),
                panel(SOUTH, 3, 7),
                panel(NORTH, 1, 8.5),
                panel(NORTH, 2, 8));
        assertThat(told).extracting(Finding::code).containsOnly(FindingCode.CLIP_TRAVEL_TOO_SMALL);
        assertThat(told).extracting(Finding::place).containsExactly(SOUTH, NORTH);
        assertThat(told.get(0).panels()).contains(new Finding.Panels("south-2", 2));
        assertThat(told.get(0).actual()).contains(Length.millimetres(10));
        assertThat(told.get(0).needed()).containsExactly(new Finding.Needed("longestPanel", Length.metres(9)));
        assertThat(told.get(1).panels()).contains(new Finding.Panels("north-1", 1));
    }

    @Test
    void clipsWhoseTravelNobodyKnowsAreNotChecked() {
        assertThat(told(Optional.empty(), panel(SOUTH, 1, 90))).isEmpty();
    }

    @Test
    void aPanelWithoutClipsNeedsNoTravel() {
        MovingPanel lone = new MovingPanel("south-1", SOUTH, moves(0, 0), moves(9, 4), false, List.of());
        assertThat(told(clips(1), lone)).isEmpty();
    }

    @Test
    void screwsBelowAndAboveAreToldAsWhatTheyAre() {
        String twice = told(Optional.empty(), panel(SOUTH, 1, 9, screwed(EAVE, true, 0), screwed(RIDGE, false, 9)))
                .get(0)
                .message();
        assertThat(twice).contains("at its lower end and at its upper end").contains("hold their lower ends by cleats");
        String once = told(Optional.empty(), panel(SOUTH, 1, 9, screwed(EAVE, true, 9)))
                .get(0)
                .message();
        assertThat(once).contains("away from where it is fixed").contains("Hold the panels there by a cleat");
    }

    @Test
    void aHemThatSlipsOffAsksForOneThatTakesBothWays() {
        Finding slips =
                told(Optional.empty(), panel(SOUTH, 1, 9, hooked(7, 3, 6, 6))).get(0);
        assertThat(slips.code()).isEqualTo(FindingCode.HEM_TOO_SHORT);
        assertThat(slips.message()).startsWith("Growing");
        assertThat(slips.actual()).contains(Length.millimetres(7));
        assertThat(slips.limit()).contains(Length.millimetres(6));
        assertThat(slips.needed()).containsExactly(new Finding.Needed("hem", Length.millimetres(10)));
    }

    @Test
    void aHemThatBearsOnItsCleatIsToldWithWhatItHas() {
        Finding bears =
                told(Optional.empty(), panel(SOUTH, 1, 9, hooked(7, 3, 9, 1))).get(0);
        assertThat(bears.message()).startsWith("Shrinking");
        assertThat(bears.actual()).contains(Length.millimetres(3));
        assertThat(bears.limit()).contains(Length.millimetres(1));
    }

    @Test
    void whatMovesAsFarAsItMayIsNotTold() {
        assertThat(told(
                        clips(9),
                        panel(SOUTH, 1, 9, hooked(7, 3, 8, 3), screwed(RIDGE, false, 2)),
                        panel(SOUTH, 2, 9, HeldEnd.free(RIDGE, false, moves(50, 50)))))
                .isEmpty();
    }
}
