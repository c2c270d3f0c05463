package org.thalweg.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Hips and valleys of two-plane roofs, read as any roof is, against published tables. Sources stand at the head of each
 * file and in its rows. Tolerance: half of the last digit a figure is printed with, unless a test says otherwise.
 */
class PublishedAnglesTest {

    /** The figures of the equal-pitch table, all for a square corner. */
    private static final Map<String, ToDoubleFunction<CornerRoof>> TABLE = Map.ofEntries(
            Map.entry("pitch_deg", r -> r.pitchDeg(1)),
            Map.entry("common_in_per_ft_run", r -> 12 * r.slopeFactor(1)),
            Map.entry("common_printed", r -> 12 * r.slopeFactor(1)),
            Map.entry("hip_valley_in_per_ft_common_run", r -> 12 * r.lengthPerRun()),
            Map.entry("hip_valley_printed", r -> 12 * r.lengthPerRun()),
            Map.entry("jack_diff_16in", r -> r.step(1, 16)),
            Map.entry("jack_diff_16in_printed", r -> r.step(2, 16)),
            Map.entry("jack_diff_24in", r -> r.step(1, 24)),
            Map.entry("jack_side_cut_on_12_in", r -> 12 / r.step(1, 1)),
            Map.entry("hip_side_cut_on_12_in", r -> 12 * r.levelLength() / r.length()),
            Map.entry("slope_factor_common", r -> r.slopeFactor(2)),
            Map.entry("slope_factor_hip_vs_plan", r -> r.length() / r.levelLength()),
            Map.entry("hip_valley_pitch_deg", CornerRoof::slopeDeg),
            Map.entry("angle_valley_to_eave_in_roof_plane_deg", r -> r.mitreDeg(1)),
            Map.entry("angle_valley_to_slope_line_in_roof_plane_deg", r -> 90 - r.mitreDeg(2)),
            Map.entry("backing_deg_each_side", r -> r.backingDeg(1)),
            Map.entry("dihedral_deg", r -> 180 - r.bendDeg()));

    private static final Map<String, ToDoubleFunction<CornerRoof>> UNEQUAL = Map.ofEntries(
            Map.entry("plan_angle_from_eave1_deg", r -> r.planDeg(1)),
            Map.entry("plan_angle_from_eave2_deg", r -> r.planDeg(2)),
            Map.entry("hip_valley_pitch_deg", CornerRoof::slopeDeg),
            Map.entry("in_plane_angle_to_eave1_deg", r -> r.mitreDeg(1)),
            Map.entry("in_plane_angle_to_eave2_deg", r -> r.mitreDeg(2)),
            Map.entry("in_plane_angle_to_slope_line1_deg", r -> 90 - r.mitreDeg(1)),
            Map.entry("in_plane_angle_to_slope_line2_deg", r -> 90 - r.mitreDeg(2)),
            Map.entry("backing1_deg", r -> r.backingDeg(1)),
            Map.entry("backing2_deg", r -> r.backingDeg(2)),
            Map.entry("dihedral_deg", r -> 180 - r.bendDeg()),
            Map.entry("hip_valley_in_per_12in_run_side1", r -> 12 * r.lengthPerRun()),
            Map.entry("panel_length_step_per_unit_cover_side1", r -> r.step(1, 1)),
            Map.entry("panel_length_step_per_unit_cover_side2", r -> r.step(2, 1)));

    /** Columns that hold an input, a figure as a fraction (see the tests below) or no figure. */
    private static final Set<String> NO_FIGURE = Set.of(
            "rise_in_per_12",
            "rise1_in_per_12",
            "rise2_in_per_12",
            "eave_corner_plan_deg",
            "jack_side_cut_16ths",
            "hip_side_cut_16ths",
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
    void hipsAndValleysOfOnePitchAgreeWithTheRafterTable(CSVRecord row) {
        double tan = Double.parseDouble(row.get("rise_in_per_12")) / 12;
        assertThat(checked(row, TABLE, new CornerRoof(tan, tan, 90, 4, false), EdgeKind.HIP))
                .isGreaterThanOrEqualTo(14);
        assertThat(checked(row, TABLE, new CornerRoof(tan, tan, 90, 4, true), EdgeKind.VALLEY))
                .isGreaterThanOrEqualTo(14);
    }

    /** To the nearest sixteenth: a thirty-second off at most. */
    @ParameterizedTest(name = "[{index}] {0}")
    @MethodSource("rafterTable")
    void sideCutsAgreeWithTheFractionsOfTheRafterTable(CSVRecord row) {
        double tan = Double.parseDouble(row.get("rise_in_per_12")) / 12;
        CornerRoof roof = new CornerRoof(tan, tan, 90, 4, true);
        assertThat(12 / roof.step(1, 1)).isCloseTo(sixteenths(row.get("jack_side_cut_16ths")), within(1 / 32.0));
        assertThat(12 * roof.levelLength() / roof.length())
                .isCloseTo(sixteenths(row.get("hip_side_cut_16ths")), within(1 / 32.0));
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @MethodSource("unequalTable")
    void hipsAndValleysOfTwoPitchesAgreeWithTheTable(CSVRecord row) {
        double tan1 = Double.parseDouble(row.get("rise1_in_per_12")) / 12;
        double tan2 = Double.parseDouble(row.get("rise2_in_per_12")) / 12;
        double corner = Double.parseDouble(row.get("eave_corner_plan_deg"));
        assertThat(checked(row, UNEQUAL, new CornerRoof(tan1, tan2, corner, 4, false), EdgeKind.HIP))
                .isEqualTo(13);
        assertThat(checked(row, UNEQUAL, new CornerRoof(tan1, tan2, corner, 4, true), EdgeKind.VALLEY))
                .isEqualTo(13);
    }

    /** Holds every figure printed in a row against the roof; says how many there were. */
    private static int checked(
            CSVRecord row, Map<String, ToDoubleFunction<CornerRoof>> figures, CornerRoof roof, EdgeKind kind) {
        assertThat(roof.edge.kind()).isEqualTo(kind);
        int checked = 0;
        for (Map.Entry<String, String> cell : row.toMap().entrySet()) {
            ToDoubleFunction<CornerRoof> figure = figures.get(cell.getKey());
            assertThat(figure != null || NO_FIGURE.contains(cell.getKey()))
                    .as("column %s is known", cell.getKey())
                    .isTrue();
            if (figure != null && !cell.getValue().isEmpty()) {
                assertThat(figure.applyAsDouble(roof))
                        .as("%s", cell.getKey())
                        .isCloseTo(Double.parseDouble(cell.getValue()), within(Printed.halfDigit(cell.getValue())));
                checked++;
            }
        }
        return checked;
    }

    /** The trade's own table for a square corner; it follows from the geometry. */
    @ParameterizedTest
    @CsvSource({
        "6, 6, 45, 48.1897, 48.1897, 19.4712, 36.8699, 20.1246, 20.1246",
        "12, 12, 45, 54.7356, 54.7356, 35.2644, 60.0000, 25.4558, 25.4558",
        "6, 8, 53.1301, 56.1455, 42.0311, 21.8014, 41.9088, 26.8328, 16.2250",
        "6, 12, 63.4349, 65.9052, 35.2644, 24.0948, 50.7685, 40.2492, 12.7279"
    })
    void valleysAtASquareCornerHaveTheAnglesAndMarksOfTheTrade(
            double rise1,
            double rise2,
            double planDeg,
            double mitre1,
            double mitre2,
            double slope,
            double bend,
            double mark1,
            double mark2) {
        CornerRoof roof = new CornerRoof(rise1 / 12, rise2 / 12, 90, 4, true);
        assertThat(roof.edge.kind()).isEqualTo(EdgeKind.VALLEY);
        assertThat(roof.planDeg(1)).isCloseTo(planDeg, within(0.00005));
        assertThat(roof.mitreDeg(1)).isCloseTo(mitre1, within(0.00005));
        assertThat(roof.mitreDeg(2)).isCloseTo(mitre2, within(0.00005));
        assertThat(roof.slopeDeg()).isCloseTo(slope, within(0.00005));
        assertThat(roof.bendDeg()).isCloseTo(bend, within(0.00005));
        assertThat(roof.step(1, 18)).isCloseTo(mark1, within(0.00005));
        assertThat(roof.step(2, 18)).isCloseTo(mark2, within(0.00005));
    }

    /** A mark measured on a roof: common practice, no source. Read to the sixteenth of an inch. */
    @Test
    void aMarkOf19AndSevenEighthsAcross18InchesStandsOnARoofOf562In12() {
        CornerRoof roof = new CornerRoof(5.62 / 12, 5.62 / 12, 90, 4, true);
        assertThat(roof.step(1, 18)).isCloseTo(19 + 7 / 8.0, within(1 / 32.0));
        assertThat(12 * Math.sqrt(Math.pow(19.875 / 18, 2) - 1)).isCloseTo(5.62, within(0.005));
    }

    /** 11 13/16 as a number. */
    private static double sixteenths(String printed) {
        String[] parts = printed.split(" ", -1);
        double inches = Double.parseDouble(parts[0]);
        if (parts.length == 1) {
            return inches;
        }
        String[] fraction = parts[1].split("/", -1);
        return inches + Double.parseDouble(fraction[0]) / Double.parseDouble(fraction[1]);
    }
}
