package org.thalweg.valley;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;
import org.thalweg.valley.PanBlank.Fold;
import org.thalweg.valley.PanBlank.FoldKind;

/** The pan in section; a coil of 48 in, legs of 4 1/4 in and returns of 1 in leave flats of 18 3/4 in. */
class PanSpecTest {

    private static PanSpec pan(Optional<Length> holdBack, Optional<Length> cover, double widening) {
        PanSpec pan = Pans.pan();
        return new PanSpec(
                pan.coilWidth(),
                pan.ribLeg(),
                pan.edgeReturn(),
                holdBack,
                cover,
                new Pitch(widening, 1),
                pan.pieceLength(),
                pan.shortestPiece(),
                pan.lap(),
                pan.pastEave(),
                pan.wallTurnUp(),
                pan.ribPastEave(),
                pan.ribPastTop(),
                pan.ribPastValley(),
                pan.cleatLength());
    }

    private static Optional<Length> inches(double inches) {
        return Optional.of(Length.inches(inches));
    }

    @Test
    void theCoilLessRibAndReturnsIsTheFlats() {
        assertThat(Pans.inches(Pans.pan().flat())).isCloseTo(18.75, within(1e-9));
    }

    @Test
    void theHoldBackIsGivenOrWhatTheCoverOrTheLeastCoverLeaves() {
        assertThat(Pans.inches(pan(inches(9), Optional.empty(), 0).heldBack())).isCloseTo(9, within(1e-9));
        assertThat(Pans.inches(pan(inches(9), inches(8), 0).heldBack())).isCloseTo(9, within(1e-9));
        assertThat(Pans.inches(pan(Optional.empty(), inches(8), 0).heldBack())).isCloseTo(10.75, within(1e-9));
        assertThat(Pans.inches(pan(Optional.empty(), Optional.empty(), 0).heldBack()))
                .isCloseTo(12.75, within(1e-9));
        assertThat(pan(Optional.empty(), inches(30), 0).heldBack()).isEqualTo(Length.ZERO);
    }

    /** 1 in 96 over both sides; a hold-back of 1 in is used up after 192 in. */
    @Test
    void aWideningValleyIsNarrowerAtItsHeadButNeverLessThanShut() {
        PanSpec pan = pan(inches(1), Optional.empty(), 1 / 96.0);
        assertThat(Pans.inches(pan.heldBackAtTop(Length.inches(96)))).isCloseTo(0.5, within(1e-9));
        assertThat(pan.heldBackAtTop(Length.inches(500))).isEqualTo(Length.ZERO);
    }

    /** Held back 14 in: 2 (14 + 6 + 4 1/4 + 1). */
    @Test
    void theCoilForAHoldBackReachesItsLeastCover() {
        assertThat(Pans.inches(Pans.pan().coilFor(Length.inches(14)))).isCloseTo(50.5, within(1e-9));
        assertThat(Pans.inches(pan(Optional.empty(), inches(8), 0).coilFor(Length.inches(14))))
                .isCloseTo(54.5, within(1e-9));
        assertThat(Pans.inches(Pans.pan().heldBack(Length.inches(14)).heldBack()))
                .isCloseTo(14, within(1e-9));
    }

    @Test
    void aCoilThatIsAllRibAndReturnsIsNoPan() {
        assertThatThrownBy(() -> Pans.pan(10.5, Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("coil");
    }

    /**
     * Flats that turn by δ, the bend of the valley, towards each other leave 180° − δ between them over the low;
     * the doubled rib stands in the middle of that, so each low is bent by 90° + δ/2.
     */
    @ParameterizedTest
    @CsvSource({"6, 6, 108.4349", "12, 12, 120", "6, 8, 110.9544", "6, 12, 115.3843"})
    void theRibStandsHalfWayBetweenTheFlats(double rise1, double rise2, double bendDeg) {
        ValleyLayout laid = Pans.fixed(Pans.corner(rise1, rise2, 90, 100), Pans.pan());
        assertThat(laid.bendAtLow().inDegrees()).isCloseTo(bendDeg, within(0.0001));
        List<Fold> folds = laid.pieces().get(0).blank().folds();
        assertThat(folds)
                .extracting(Fold::kind)
                .containsExactly(FoldKind.RETURN, FoldKind.LOW, FoldKind.CROWN, FoldKind.LOW, FoldKind.RETURN);
        assertThat(folds.get(1).angle()).isEqualTo(laid.bendAtLow());
        assertThat(folds.get(3).angle()).isEqualTo(laid.bendAtLow());
        assertThat(folds.get(2).angle().inDegrees()).isCloseTo(180, within(1e-9));
        assertThat(folds).extracting(Fold::up).containsExactly(true, true, false, true, true);
    }
}
