package org.thalweg.valley;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.reference.Rules;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.InnerCorner;
import org.thalweg.roof.Printed;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Pitch;

/**
 * Valleys at the inner corner of a house against published tables. Sources stand at the head of each file and in its rows.
 * Tolerance: half of the last digit a figure is printed with, unless a test says otherwise.
 */
class PublishedValleysTest {

    /** The valley that is laid out for one row. Its left plane is plane 1. */
    private record Row(SlopedEdge valley) {

        static Row of(double rise1, double rise2, double cornerDeg) {
            return new Row(Pans.valley(Pans.corner(rise1, rise2, cornerDeg, 100)));
        }

        double slopeDeg() {
            return valley.edge().slope().inDegrees();
        }

        double levelLength() {
            return Pans.inches(valley.length()) * valley.edge().slope().cos();
        }

        /** Length over the level run of the left plane, square to its eave. */
        double perRun() {
            return Pans.inches(valley.length())
                    / (levelLength() * valley.left().plan().sin());
        }

        double step(SlopedEdge.Side side, double cover) {
            return Pans.inches(side.rise(Length.inches(cover), Pans.TOLERANCE).orElseThrow());
        }
    }

    private static final Map<String, ToDoubleFunction<Row>> TABLE = Map.ofEntries(
            Map.entry("pitch_deg", r -> r.valley().left().pitch().inDegrees()),
            Map.entry("hip_valley_in_per_ft_common_run", r -> 12 * r.perRun()),
            Map.entry("hip_valley_printed", r -> 12 * r.perRun()),
            Map.entry("jack_diff_16in", r -> r.step(r.valley().left(), 16)),
            Map.entry("jack_diff_16in_printed", r -> r.step(r.valley().right(), 16)),
            Map.entry("jack_diff_24in", r -> r.step(r.valley().right(), 24)),
            Map.entry(
                    "hip_side_cut_on_12_in",
                    r -> 12 * r.levelLength() / Pans.inches(r.valley().length())),
            Map.entry("slope_factor_hip_vs_plan", r -> Pans.inches(r.valley().length()) / r.levelLength()),
            Map.entry("hip_valley_pitch_deg", Row::slopeDeg),
            Map.entry(
                    "angle_valley_to_eave_in_roof_plane_deg",
                    r -> r.valley().left().mitre().inDegrees()),
            Map.entry(
                    "angle_valley_to_slope_line_in_roof_plane_deg",
                    r -> 90 - r.valley().right().mitre().inDegrees()),
            Map.entry("dihedral_deg", r -> 180 - r.valley().edge().bend().inDegrees()));

    private static final Map<String, ToDoubleFunction<Row>> UNEQUAL = Map.ofEntries(
            Map.entry("plan_angle_from_eave1_deg", r -> r.valley().left().plan().inDegrees()),
            Map.entry(
                    "plan_angle_from_eave2_deg", r -> r.valley().right().plan().inDegrees()),
            Map.entry("hip_valley_pitch_deg", Row::slopeDeg),
            Map.entry(
                    "in_plane_angle_to_eave1_deg",
                    r -> r.valley().left().mitre().inDegrees()),
            Map.entry(
                    "in_plane_angle_to_eave2_deg",
                    r -> r.valley().right().mitre().inDegrees()),
            Map.entry(
                    "in_plane_angle_to_slope_line1_deg",
                    r -> 90 - r.valley().left().mitre().inDegrees()),
            Map.entry(
                    "in_plane_angle_to_slope_line2_deg",
                    r -> 90 - r.valley().right().mitre().inDegrees()),
            Map.entry("dihedral_deg", r -> 180 - r.valley().edge().bend().inDegrees()),
            Map.entry("hip_valley_in_per_12in_run_side1", r -> 12 * r.perRun()),
            Map.entry(
                    "panel_length_step_per_unit_cover_side1",
                    r -> r.step(r.valley().left(), 1)),
            Map.entry(
                    "panel_length_step_per_unit_cover_side2",
                    r -> r.step(r.valley().right(), 1)));

    /** Columns about rafters and backings, which no pan needs; {@code PublishedAnglesTest} holds them against planes. */
    private static final Set<String> OF_RAFTERS = Set.of(
            "common_in_per_ft_run",
            "common_printed",
            "slope_factor_common",
            "jack_side_cut_on_12_in",
            "jack_side_cut_16ths",
            "hip_side_cut_16ths",
            "backing_deg_each_side",
            "backing1_deg",
            "backing2_deg",
            "rise_in_per_12",
            "rise1_in_per_12",
            "rise2_in_per_12",
            "eave_corner_plan_deg",
            "source",
            "confidence");

    static List<CSVRecord> rafterTable() {
        return Printed.rows("/published/rafter-table.csv");
    }

    static List<CSVRecord> unequalTable() {
        return Printed.rows("/published/unequal-pitch-hip-valley.csv");
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @MethodSource("rafterTable")
    void valleysOfOnePitchAgreeWithTheRafterTable(CSVRecord row) {
        double rise = number(row, "rise_in_per_12");
        assertThat(checked(row, TABLE, Row.of(rise, rise, 90))).isGreaterThanOrEqualTo(9);
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @MethodSource("unequalTable")
    void valleysOfTwoPitchesAgreeWithTheTable(CSVRecord row) {
        Row laid = Row.of(
                number(row, "rise1_in_per_12"), number(row, "rise2_in_per_12"), number(row, "eave_corner_plan_deg"));
        assertThat(checked(row, UNEQUAL, laid)).isEqualTo(11);
    }

    private static int checked(CSVRecord row, Map<String, ToDoubleFunction<Row>> figures, Row laid) {
        int checked = 0;
        for (Map.Entry<String, String> cell : row.toMap().entrySet()) {
            ToDoubleFunction<Row> figure = figures.get(cell.getKey());
            assertThat(figure != null || OF_RAFTERS.contains(cell.getKey()))
                    .as("column %s is known", cell.getKey())
                    .isTrue();
            if (figure != null && !cell.getValue().isEmpty()) {
                assertThat(figure.applyAsDouble(laid))
                        .as("%s", cell.getKey())
                        .isCloseTo(Double.parseDouble(cell.getValue()), within(Printed.halfDigit(cell.getValue())));
                checked++;
            }
        }
        return checked;
    }

    /** At a square corner the run along one eave is the level run of the other plane, so the tables' column tells the length. */
    @ParameterizedTest(name = "[{index}] {0}")
    @MethodSource("rafterTable")
    void aFootOfRunAlongTheEaveGivesThePrintedLength(CSVRecord row) {
        double rise = number(row, "rise_in_per_12");
        String printed = row.get("hip_valley_in_per_ft_common_run");
        assertThat(lengthOverAFoot(rise, rise))
                .isCloseTo(Double.parseDouble(printed), within(Printed.halfDigit(printed)));
    }

    @Test
    void aFootOfRunAlongTheEaveOfTheOtherPlaneGivesThePrintedLengthOfUnequalPitches() {
        List<CSVRecord> square = unequalTable().stream()
                .filter(row -> row.get("eave_corner_plan_deg").equals("90"))
                .toList();
        assertThat(square).hasSize(15);
        for (CSVRecord row : square) {
            String printed = row.get("hip_valley_in_per_12in_run_side1");
            assertThat(lengthOverAFoot(number(row, "rise2_in_per_12"), number(row, "rise1_in_per_12")))
                    .isCloseTo(Double.parseDouble(printed), within(Printed.halfDigit(printed)));
        }
    }

    private static double lengthOverAFoot(double leftRise, double rightRise) {
        InnerCorner corner = new InnerCorner(
                new Pitch(leftRise, 12),
                new Pitch(rightRise, 12),
                Angle.degrees(90),
                Optional.of(Length.inches(12)),
                Optional.empty(),
                EdgeKind.RIDGE,
                Origin.REQUEST);
        return Pans.inches(Pans.valley(Roofs.read(corner.survey(Pans.TOLERANCE, new Pitch(0.25, 12), Source.REQUEST)))
                .length());
    }

    /** The trade's own table for a square corner; it follows from the geometry. */
    @ParameterizedTest
    @CsvSource({
        "6, 6, 45, 48.1897, 48.1897, 19.4712, 36.8699, 20.1246, 20.1246",
        "12, 12, 45, 54.7356, 54.7356, 35.2644, 60.0000, 25.4558, 25.4558",
        "6, 8, 53.1301, 56.1455, 42.0311, 21.8014, 41.9088, 26.8328, 16.2250",
        "6, 12, 63.4349, 65.9052, 35.2644, 24.0948, 50.7685, 40.2492, 12.7279"
    })
    void valleysAtASquareCornerAreLaidOutWithTheFiguresOfTheTrade(
            double rise1,
            double rise2,
            double planDeg,
            double mitre1,
            double mitre2,
            double slope,
            double bend,
            double rise1Across,
            double rise2Across) {
        ValleyLayout laid = Pans.fixed(Pans.corner(rise1, rise2, 90, 100), Pans.pan());
        assertThat(laid.left().seen().plan().inDegrees()).isCloseTo(planDeg, within(0.00005));
        assertThat(laid.left().seen().mitre().inDegrees()).isCloseTo(mitre1, within(0.00005));
        assertThat(laid.right().seen().mitre().inDegrees()).isCloseTo(mitre2, within(0.00005));
        assertThat(laid.edge().edge().slope().inDegrees()).isCloseTo(slope, within(0.00005));
        assertThat(laid.edge().edge().bend().inDegrees()).isCloseTo(bend, within(0.00005));
        assertThat(Pans.inches(laid.left().riseAcrossCover().orElseThrow())).isCloseTo(rise1Across, within(0.00005));
        assertThat(Pans.inches(laid.right().riseAcrossCover().orElseThrow())).isCloseTo(rise2Across, within(0.00005));
    }

    /** A rise measured on a roof: common practice, no source. Read to the sixteenth of an inch. */
    @Test
    void aRiseOf19AndSevenEighthsAcross18InchesStandsOnARoofOf562In12() {
        ValleyLayout laid = Pans.fixed(Pans.corner(5.62, 5.62, 90, 100), Pans.pan());
        assertThat(Pans.inches(laid.left().riseAcrossCover().orElseThrow())).isCloseTo(19.875, within(1 / 32.0));
    }

    /** Coils with legs of 4 1/4 in and returns of 1 in: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"48, 12.75", "43.5, 10.5"})
    void theLeastCoverOfACoilLeavesTheHoldBackOfTheTrade(double coil, double holdBack) {
        ValleyLayout laid = Pans.fixed(Pans.corner(6, 6, 90, 100), Pans.pan(coil, Optional.empty()));
        for (ValleySide side : laid.sides()) {
            assertThat(Pans.inches(side.heldBack())).isCloseTo(holdBack, within(1e-9));
            assertThat(Pans.inches(side.cover())).isCloseTo(6, within(1e-9));
        }
        assertThat(laid.findings()).isEmpty();
    }

    /** UFGS 07 60 00, 3.1.23: the valley reaches 6 in under the covering and laps 6 in; the copper handbook laps 8 in. */
    @Test
    void thePublishedLeastCoverAndLapsAreThoseAPanIsHeldAgainst() {
        assertThat(Rules.valleyLeastCover().value().in(LengthUnit.INCH)).isCloseTo(6, within(1e-12));
        assertThat(Rules.valleyLeastLap().value().in(LengthUnit.INCH)).isCloseTo(6, within(1e-12));
        assertThat(Rules.valleyUsualLap().value().in(LengthUnit.INCH)).isCloseTo(8, within(1e-12));
        assertThat(Rules.valleyLeastExposure().value().in(LengthUnit.INCH)).isCloseTo(4, within(1e-12));
        assertThat(Rules.valleyWideningDownwards().value()).isCloseTo(1 / 96.0, within(1e-12));
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
