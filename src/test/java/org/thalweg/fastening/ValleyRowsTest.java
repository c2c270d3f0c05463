package org.thalweg.fastening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.thalweg.fastening.ValleyRows.Row;
import org.thalweg.fastening.ValleyRows.RowKind;
import org.thalweg.fastening.ValleyRows.Spacings;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.InnerCorner;
import org.thalweg.roof.PanelHold;
import org.thalweg.roof.Roof;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Pitch;
import org.thalweg.valley.PanSpec;
import org.thalweg.valley.SlopedEdge;
import org.thalweg.valley.ValleyLayout;
import org.thalweg.valley.Valleys;

/** Rows at the valley of a square corner, 300 in long, in a pan of 48 in coil. */
class ValleyRowsTest {

    private static final Length COVER = Length.inches(18);
    private static final Spacings SPACINGS =
            new Spacings(Length.inches(12), Length.inches(4), Length.inches(8), Length.inches(3), Length.inches(0.75));

    private static ValleyLayout laid(double rise1, double rise2, PanelHold hold) {
        InnerCorner corner = new InnerCorner(
                new Pitch(rise1, 12),
                new Pitch(rise2, 12),
                Angle.degrees(90),
                Optional.empty(),
                Optional.of(Length.inches(300)),
                EdgeKind.RIDGE,
                Origin.REQUEST);
        Roof roof = Roofs.read(corner.survey(Tolerance.DEFAULT, new Pitch(0.25, 12), Source.REQUEST));
        int valley = 0;
        while (roof.edges().get(valley).kind() != EdgeKind.VALLEY) {
            valley++;
        }
        PanSpec pan = new PanSpec(
                Length.inches(48),
                Length.inches(4.25),
                Length.inches(1),
                Optional.empty(),
                Optional.empty(),
                new Pitch(0, 12),
                Length.inches(120),
                Length.inches(12),
                Length.inches(8),
                Length.ZERO,
                Length.inches(4),
                Length.inches(2),
                Length.inches(2),
                Length.inches(24),
                Length.inches(120));
        return Valleys.layOut(
                SlopedEdge.of(roof, valley).orElseThrow(),
                pan,
                hold,
                new Valleys.ValleyAsked(COVER, Length.inches(2), Length.inches(1), new Pitch(0.25, 12), Source.REQUEST),
                Tolerance.DEFAULT);
    }

    private static List<Row> rows(ValleyLayout laid) {
        return ValleyRows.of(laid, SPACINGS, COVER, Tolerance.DEFAULT);
    }

    private static double inches(Length length) {
        return length.in(LengthUnit.INCH);
    }

    @Test
    void theLeftSidesRowsComeFirstAndThePansEdgeBeforeThePanels() {
        List<Row> fixed = rows(laid(6, 8, PanelHold.FIXED));
        assertThat(fixed)
                .extracting(Row::kind)
                .containsExactly(RowKind.PAN_EDGE, RowKind.VALLEY, RowKind.PAN_EDGE, RowKind.VALLEY);
        assertThat(fixed).extracting(Row::onLeft).containsExactly(true, true, false, false);
        assertThat(rows(laid(6, 8, PanelHold.CLEATED)))
                .extracting(Row::kind)
                .containsExactly(RowKind.PAN_EDGE, RowKind.CLEAT, RowKind.PAN_EDGE, RowKind.CLEAT);
    }

    /** 300 in less 3 in at each end: 25 intervals of 11.76 in at most 12 in apart, common practice, no source. */
    @Test
    void thePansEdgesAreFastenedEvenlyAlongTheirScrewLine() {
        ValleyLayout laid = laid(6, 6, PanelHold.FIXED);
        Row row = rows(laid).get(0);
        assertThat(row.from())
                .isEqualTo(laid.left().panScrewLine().orElseThrow().from());
        assertThat(row.to()).isEqualTo(laid.left().panScrewLine().orElseThrow().to());
        assertThat(row.row().count()).isEqualTo(26);
        assertThat(inches(row.row().first())).isCloseTo(3, within(1e-9));
        assertThat(inches(row.row().spacing())).isCloseTo(11.76, within(1e-9));
    }

    @Test
    void aCleatIsFastenedAlongTheChalkLine() {
        ValleyLayout laid = laid(6, 6, PanelHold.CLEATED);
        Row row = rows(laid).get(3);
        assertThat(row.from()).isEqualTo(laid.right().chalkLine().orElseThrow().from());
        assertThat(inches(row.row().spacing())).isCloseTo(294 / 37.0, within(1e-9));
    }

    /**
     * A whole panel of 18 in cover at 6:12, cut at φ = 48.1897° with cos φ = 2/3: 27 in along the slant, 1.125 in of it at each
     * rib, so 24.75 in in seven intervals. At 6:12 against 12:12, cos 65.9052° = 1/√6: 44.0908 in, 40.4166 in free, eleven.
     */
    @Test
    void aSteeperMitreTakesMoreScrews() {
        Row square = rows(laid(6, 6, PanelHold.FIXED)).get(1);
        assertThat(square.row().count()).isEqualTo(8);
        assertThat(inches(square.row().first())).isCloseTo(1.125, within(1e-9));
        assertThat(inches(square.row().spacing())).isCloseTo(24.75 / 7, within(1e-9));

        List<Row> unequal = rows(laid(6, 12, PanelHold.FIXED));
        assertThat(unequal.get(1).row().count()).isEqualTo(12);
        assertThat(inches(unequal.get(1).row().spacing())).isCloseTo(16.5 * Math.sqrt(6) / 11, within(1e-9));
        assertThat(unequal.get(3).row().count()).isLessThan(8);
    }

    @Test
    void theScrewsOfThePanelsStandOnTheFastenerLine() {
        ValleyLayout laid = laid(6, 8, PanelHold.FIXED);
        Row row = rows(laid).get(1);
        assertThat(row.from())
                .isEqualTo(laid.left().fastenerLine().orElseThrow().from());
        assertThat(row.to()).isEqualTo(laid.left().fastenerLine().orElseThrow().to());
    }
}
