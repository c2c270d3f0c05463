package org.thalweg.sealing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.fastening.EvenRow;
import org.thalweg.fastening.Fastened;
import org.thalweg.fastening.FastenerKind;
import org.thalweg.fastening.FastenerRow;
import org.thalweg.fastening.FastenerRows;
import org.thalweg.fastening.FasteningCase;
import org.thalweg.fastening.FasteningRules;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Tolerance;
import org.thalweg.panel.Panel;
import org.thalweg.roof.Drawn;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Roof;
import org.thalweg.trim.BendAllowance;
import org.thalweg.trim.Hand;
import org.thalweg.trim.Trim;
import org.thalweg.trim.TrimOrder;
import org.thalweg.trim.TrimSpec;
import org.thalweg.trim.TrimStock;
import org.thalweg.trim.Trims;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.valley.ValleyLayout;

/** Sums done by hand, in inches: panels of 18 in, closures and tape an inch inside their upper ends. */
class SealingTest {

    private static final double PRECISE = 1e-6;

    private static Drawn corner(Drawn drawn, char letter, double x, double y, double z) {
        return drawn.corner(letter, x * 0.0254, y * 0.0254, z * 0.0254);
    }

    /** A single slope of 6:12, 96 in up the level. */
    private static Drawn shed(double wide) {
        Drawn drawn = corner(Drawn.plan(""), 'A', 0, 0, 0);
        corner(drawn, 'B', wide, 0, 0);
        corner(drawn, 'C', wide, 96, 48);
        return corner(drawn, 'D', 0, 96, 48).planes("ABCD");
    }

    /** Two planes of 6:12 that rise 120 from eaves that meet at a square inner corner. */
    private static Roof innerCorner() {
        Drawn drawn = corner(Drawn.plan(""), 'O', 0, 0, 0);
        corner(drawn, 'E', 360, 0, 0);
        corner(drawn, 'N', 360, 240, 120);
        corner(drawn, 'P', -240, 240, 120);
        corner(drawn, 'S', 0, -360, 0);
        corner(drawn, 'W', -240, -360, 120);
        return drawn.planes("OENP", "SOPW").read().roof();
    }

    private static Sealing sealing(FasteningCase asked, SealingRules rules) {
        return Sealing.of(
                new SealingCase(FastenerRows.of(asked), asked.valleys(), List.of(), rules, Tolerance.DEFAULT));
    }

    private static Sealing sealing(Fastened laid) {
        return sealing(laid.asked(FasteningRules.INCHES), SealingRules.INCHES);
    }

    private static SealingRules with(SealKind kind, int lines) {
        Map<SealKind, Integer> changed = new EnumMap<>(SealingRules.INCHES.lines());
        changed.put(kind, lines);
        return new SealingRules(changed, Length.inches(2), Length.inches(1), Length.feet(24));
    }

    private static List<SealRun> runs(Sealing sealing, SealKind kind, SealItem item) {
        return sealing.runs().stream()
                .filter(run -> run.kind() == kind && run.item() == item)
                .toList();
    }

    private static double in(Length length) {
        return length.in(LengthUnit.INCH);
    }

    /** Three panels end at the peak: three closures of 18 in, and two lines of tape along each, 108 in. */
    @Test
    void everyPanelEndAtAPeakHasAClosureBetweenTwoLinesOfTape() {
        Sealing sealing = sealing(Fastened.of(shed(54).read().roof()));
        List<SealRun> closures = runs(sealing, SealKind.CLOSURE, SealItem.CLOSURE);
        assertThat(closures).hasSize(3).allSatisfy(run -> {
            assertThat(in(run.length())).isCloseTo(18, within(PRECISE));
            assertThat(run.count()).isEqualTo(1);
        });
        assertThat(closures.get(1).panel().map(Panel::mark)).contains("ABCD-2");
        assertThat(sealing.count(SealItem.CLOSURE)).isEqualTo(3);
        assertThat(in(sealing.length(SealItem.CLOSURE))).isCloseTo(54, within(PRECISE));
        assertThat(in(sealing.length(SealItem.TAPE))).isCloseTo(108, within(PRECISE));
        assertThat(sealing.runs()).as("and nothing else").hasSize(6);
    }

    /** 45 in: two whole panels and one ripped to 9. */
    @Test
    void theClosureOfARippedPanelEndsWhereItsMetalDoes() {
        Sealing sealing = sealing(Fastened.of(shed(45).read().roof()));
        assertThat(runs(sealing, SealKind.CLOSURE, SealItem.CLOSURE))
                .extracting(run -> Math.rint(in(run.length()) * 1e6) / 1e6)
                .containsExactly(18.0, 18.0, 9.0);
    }

    @Test
    void belowAWallClosuresAreNamedForIt() {
        Drawn drawn = shed(54).named("CD", EdgeKind.HEAD_WALL);
        Sealing sealing = sealing(Fastened.of(drawn.read().roof()));
        assertThat(runs(sealing, SealKind.HEAD_WALL, SealItem.CLOSURE)).hasSize(3);
        assertThat(runs(sealing, SealKind.HEAD_WALL, SealItem.TAPE)).hasSize(3);
        assertThat(runs(sealing, SealKind.CLOSURE, SealItem.CLOSURE)).isEmpty();
    }

    /**
     * Panels of 60 in at most on 109.33 in of metal: two pieces each, so one lap across each of three panels.
     */
    @Test
    void everyEndLapHasOneLineOfTapeAcrossIt() {
        Sealing sealing = sealing(Fastened.of(shed(54).read().roof()).longest(96));
        assertThat(runs(sealing, SealKind.END_LAP, SealItem.TAPE))
                .hasSize(3)
                .allSatisfy(run -> assertThat(in(run.length())).isCloseTo(18, within(PRECISE)));
    }

    /**
     * At 6:12 a whole panel is cut at φ with cos φ = 2/3: 27 in of tape. The tape of a side runs from the end of the metal an
     * inch below the eave to that an inch below the ridge, 120 √5 in up the slope, and sin φ = √5/3: 360 in. On the west plane
     * ribs stand at 342 and every 18 in. The cut meets the metal's end at 360 − 12.75 / sin φ − 1 / tan φ = 342.0002, so the
     * panel left of 342 has none; the line would go on over its corner to 360 − 14.75 / sin φ − 1 / tan φ = 339.3164, 2.6836 in
     * across and 4.0254 along, and ends at the rib.
     */
    @Test
    void tapeAtAFixedValleyRunsOnUnderTheRibs() {
        FasteningCase asked = Fastened.of(innerCorner()).asked(FasteningRules.INCHES);
        Sealing sealing = sealing(asked, SealingRules.INCHES);
        List<SealRun> valley = runs(sealing, SealKind.VALLEY, SealItem.TAPE);
        assertThat(valley).anySatisfy(run -> assertThat(in(run.length())).isCloseTo(27, within(PRECISE)));
        assertThat(onPlane(valley, 0)).isCloseTo(360, within(PRECISE));
        assertThat(onPlane(valley, 1)).isCloseTo(360 - 4.0254, within(1e-4));
        assertThat(runs(sealing, SealKind.CLEAT, SealItem.TAPE)).isEmpty();
    }

    private static double onPlane(List<SealRun> runs, int plane) {
        return runs.stream()
                .filter(run -> run.plane().getAsInt() == plane)
                .mapToDouble(run -> in(run.length()))
                .sum();
    }

    @Test
    void atACleatedValleyTheCleatLiesOnTapeAndThePanelsOnNone() {
        Fastened laid = Fastened.of(innerCorner()).cleated();
        Sealing sealing = sealing(laid);
        ValleyLayout valley = laid.asked(FasteningRules.INCHES).valleys().get(0);
        List<SealRun> cleats = runs(sealing, SealKind.CLEAT, SealItem.TAPE);
        assertThat(cleats)
                .extracting(SealRun::length)
                .containsExactly(
                        valley.left().cleat().orElseThrow().length(),
                        valley.right().cleat().orElseThrow().length());
        assertThat(cleats).extracting(run -> run.plane().getAsInt()).containsExactlyInAnyOrder(0, 1);
        assertThat(runs(sealing, SealKind.VALLEY, SealItem.TAPE)).isEmpty();
    }

    /**
     * The valley is 360 in long, its pieces 120: at least three laps, and pieces 8 in longer than what shows. Away from the
     * ends a pan is the whole coil wide, 48 in.
     */
    @Test
    void everyLapOfAPanHasTwoBeadsAcrossItsCoil() {
        Sealing sealing = sealing(Fastened.of(innerCorner()));
        List<SealRun> laps = runs(sealing, SealKind.PAN_LAP, SealItem.SEALANT);
        assertThat(laps).extracting(run -> run.piece().orElseThrow()).startsWith("V1-2", "V1-3");
        assertThat(laps).allSatisfy(run -> assertThat(run.count()).isEqualTo(2));
        assertThat(in(laps.get(0).length())).isCloseTo(48, within(PRECISE));
        assertThat(in(laps.get(0).total())).isCloseTo(96, within(PRECISE));
    }

    @Test
    void solderedLapsTakeNoSealant() {
        FasteningCase asked = Fastened.of(innerCorner()).asked(FasteningRules.INCHES);
        Sealing soldered = sealing(asked, with(SealKind.PAN_LAP, 0));
        assertThat(soldered.count(SealItem.SEALANT)).isZero();
        assertThat(soldered.length(SealItem.TAPE))
                .isEqualTo(sealing(asked, SealingRules.INCHES).length(SealItem.TAPE));
    }

    /** Trims of no thickness: 4 + 2 + 3/4 + 1/2 in of eave drip are 7 1/4 in flat. [geometry] */
    private static List<Trim> trims(Roof roof) {
        return Trims.on(
                        roof,
                        new TrimSpec(
                                Length.ZERO,
                                false,
                                Length.inches(6),
                                new TrimSpec.Sheet(Length.ZERO, Length.ZERO, BendAllowance.USUAL, Length.inches(20)),
                                new TrimStock(Length.inches(120), Length.inches(12)),
                                Length.inches(1),
                                Hand.LEFT,
                                Map.of(EdgeKind.EAVE, new TrimOrder(Optional.empty(), Length.inches(3)))))
                .layOut();
    }

    /**
     * Four pieces of 120 with laps of 3 make 471 in, so an eave of 480 and what its ends reach takes five: four laps. Each has a
     * bead of 7 1/4 in, 29 in together, and rivets an inch from its edges and at most 2 in apart: three intervals over 5 1/4
     * in, four rivets, sixteen together.
     */
    @Test
    void everyLapOfATrimHasABeadAndRivetsAcrossItsFlatWidth() {
        Roof roof = shed(480).read().roof();
        Sealing sealing = Sealing.of(new SealingCase(
                new FastenerRows(List.of(), List.of()),
                List.of(),
                trims(roof),
                SealingRules.INCHES,
                Tolerance.DEFAULT));
        List<SealRun> rivets = runs(sealing, SealKind.TRIM_LAP, SealItem.RIVET);
        assertThat(rivets).hasSize(4).allSatisfy(run -> assertThat(run.count()).isEqualTo(4));
        assertThat(rivets.get(0).piece()).contains("E1-2");
        assertThat(sealing.count(SealItem.RIVET)).isEqualTo(16);
        assertThat(in(sealing.length(SealItem.SEALANT))).isCloseTo(29, within(PRECISE));
        assertThat(sealing.length(SealItem.RIVET)).isEqualTo(Length.ZERO);
    }

    @ParameterizedTest
    @CsvSource({"1, 7", "2, 4", "5.25, 2", "6, 2"})
    void rivetsStandNoFurtherApartThanAsked(double spacing, int rivets) {
        SealingRules rules = new SealingRules(
                SealingRules.INCHES.lines(), Length.inches(spacing), Length.inches(1), Length.feet(24));
        Sealing sealing = Sealing.of(new SealingCase(
                new FastenerRows(List.of(), List.of()),
                List.of(),
                trims(shed(200).read().roof()),
                rules,
                Tolerance.DEFAULT));
        assertThat(sealing.count(SealItem.RIVET)).isEqualTo(rivets);
    }

    /** An obstacle parts the screws, not what they hold down. */
    @Test
    void aRowInTwoPartsHasOneClosure() {
        FastenerRows rows = Fastened.of(shed(54).read().roof()).rows();
        List<FastenerRow> parted = new ArrayList<>();
        for (FastenerRow row : rows.rows()) {
            parted.add(part(row, 0, 0.3));
            parted.add(part(row, 0.7, 1));
        }
        Sealing sealing = Sealing.of(new SealingCase(
                new FastenerRows(parted, List.of()), List.of(), List.of(), SealingRules.INCHES, Tolerance.DEFAULT));
        assertThat(sealing.count(SealItem.CLOSURE)).isEqualTo(3);
        assertThat(in(sealing.length(SealItem.CLOSURE))).isCloseTo(54, within(PRECISE));
    }

    private static FastenerRow part(FastenerRow row, double from, double to) {
        EvenRow two = EvenRow.along(
                Length.metres(row.from().distance(row.to()) * (to - from)),
                Length.metres(10),
                Length.ZERO,
                Tolerance.DEFAULT);
        return new FastenerRow(row.kind(), row.plane(), row.panel(), row.edge(), at(row, from), at(row, to), two);
    }

    private static Point2 at(FastenerRow row, double share) {
        return new Point2(
                row.from().across() + share * (row.to().across() - row.from().across()),
                row.from().up() + share * (row.to().up() - row.from().up()));
    }

    @Test
    void onlyEavesAndWhatRunsBesidePanelsGetNothing() {
        assertThat(FastenerKind.values())
                .filteredOn(kind -> SealKind.along(kind).isEmpty())
                .containsExactlyInAnyOrder(
                        FastenerKind.EAVE,
                        FastenerKind.PAN_EDGE,
                        FastenerKind.CLEAT,
                        FastenerKind.RAKE,
                        FastenerKind.SIDE_WALL);
    }

    @Test
    void rulesAreCompleteAndNotBelowNothing() {
        assertThatThrownBy(() -> with(SealKind.CLEAT, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SealingRules(
                        Map.of(SealKind.CLEAT, 1), Length.inches(2), Length.inches(1), Length.feet(24)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() ->
                        new SealingRules(SealingRules.INCHES.lines(), Length.ZERO, Length.inches(1), Length.feet(24)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
