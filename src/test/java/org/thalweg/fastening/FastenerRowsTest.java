package org.thalweg.fastening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Jts;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Shapes;
import org.thalweg.panel.Flat;
import org.thalweg.panel.Panel;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.EdgeTreatments;
import org.thalweg.roof.Roof;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/**
 * Rows on single planes, in inches: panels of 18 in, 3/4 in clear of ribs and 1 in from ends, spacings of the usual table. Every
 * side of these planes that the test does not name is an eave, so what comes to it decides: lower ends are screwed down, upper
 * ends get a closure, sides a rake.
 */
class FastenerRowsTest {

    private static final double IN = 0.0254;
    private static final double PRECISE = 1e-9;

    /** Corners across, up, across, up … in inches. */
    private static Region inches(double... corners) {
        double[] metres = new double[corners.length];
        for (int i = 0; i < corners.length; i++) {
            metres[i] = corners[i] * IN;
        }
        return Shapes.region(metres);
    }

    private static Fastened plain(Region shape, Map<Integer, EdgeKind> kinds) {
        Roof flat = Flat.roof(shape);
        List<Edge> edges = new ArrayList<>(flat.edges());
        kinds.forEach((side, kind) -> edges.set(side, kind(edges.get(side), kind)));
        return Fastened.of(new Roof(flat.planes(), edges, List.of(), flat.tolerance()))
                .treated(EdgeTreatments.PLAIN);
    }

    private static Edge kind(Edge edge, EdgeKind kind) {
        return new Edge(
                edge.id(),
                kind,
                edge.sides(),
                edge.from(),
                edge.to(),
                edge.length(),
                edge.slope(),
                edge.bend(),
                edge.convex(),
                edge.at());
    }

    private static Fastened plain(Region shape) {
        return plain(shape, Map.of());
    }

    /** Ten panels, 240 in long. */
    private static Fastened tenPanels() {
        return plain(inches(0, 0, 180, 0, 180, 240, 0, 240));
    }

    private static List<FastenerRow> rows(FastenerRows all, FastenerKind kind) {
        return all.rows().stream().filter(row -> row.kind() == kind).toList();
    }

    private static double in(Length length) {
        return length.in(LengthUnit.INCH);
    }

    private static double across(Point2 place) {
        return place.across() / IN;
    }

    private static double up(Point2 place) {
        return place.up() / IN;
    }

    /** 16 1/2 in between the clearances at two ribs, at most 4 apart: five intervals of 3.3, about 3 1/2 [common practice]. */
    @Test
    void aFixedEaveIsScrewedPanelByPanelBetweenTheRibs() {
        List<FastenerRow> eave = rows(tenPanels().rows(), FastenerKind.EAVE);
        assertThat(eave).hasSize(10);
        FastenerRow third = eave.get(2);
        assertThat(third.panel()).map(Panel::mark).contains("p-3");
        assertThat(third.count()).isEqualTo(6);
        assertThat(in(third.row().spacing())).isCloseTo(3.3, within(PRECISE));
        assertThat(third.places()).allSatisfy(place -> assertThat(up(place)).isCloseTo(2, within(PRECISE)));
        assertThat(third.places())
                .extracting(FastenerRowsTest::across)
                .usingElementComparator(FastenerRowsTest::nearly)
                .containsExactly(36.75, 40.05, 43.35, 46.65, 49.95, 53.25);
        assertThat(third.placesOnPanel())
                .extracting(FastenerRowsTest::across)
                .usingElementComparator(FastenerRowsTest::nearly)
                .containsExactly(0.75, 4.05, 7.35, 10.65, 13.95, 17.25);
    }

    private static int nearly(double a, double b) {
        return Math.abs(a - b) < PRECISE ? 0 : Double.compare(a, b);
    }

    /** 16 1/2 in at most 6 apart take three intervals; 238 in of rake at most 12 apart take twenty. */
    @Test
    void upperEndsGetAClosureAndSidesARakeThatNoRibBreaks() {
        FastenerRows all = tenPanels().rows();
        assertThat(rows(all, FastenerKind.CLOSURE)).hasSize(10).allSatisfy(row -> {
            assertThat(row.count()).isEqualTo(4);
            assertThat(up(row.from())).isCloseTo(239, within(PRECISE));
        });
        List<FastenerRow> rakes = rows(all, FastenerKind.RAKE);
        assertThat(rakes).hasSize(2).allSatisfy(row -> {
            assertThat(row.panel()).isEmpty();
            assertThat(row.placesOnPanel()).isEmpty();
            assertThat(row.count()).isEqualTo(21);
            assertThat(in(row.row().spacing())).isCloseTo(11.9, within(PRECISE));
            assertThat(up(row.from())).isCloseTo(1, within(PRECISE));
        });
        assertThat(rakes).extracting(row -> Math.rint(across(row.from()))).containsExactly(179.0, 1.0);
        assertThat(all.count(FastenerKind.EAVE)).isEqualTo(60);
        assertThat(all.findings()).isEmpty();
    }

    /** An inch of panel past the roof line holds nothing: the line stays 2 in inside it, the ends an inch off the rakes. */
    @Test
    void wherePanelsRunPastThePlaneTheyAreFastenedOnIt() {
        FastenerRows all = tenPanels().treated(Fastened.USUAL).rows();
        List<FastenerRow> eave = rows(all, FastenerKind.EAVE);
        assertThat(eave).allSatisfy(row -> assertThat(up(row.from())).isCloseTo(2, within(PRECISE)));
        assertThat(rows(all, FastenerKind.RAKE))
                .allSatisfy(row -> assertThat(up(row.to())).isCloseTo(239, within(PRECISE)));
    }

    /** A panel ripped to 10 in: from 3/4 in off its rib to 1 in off its rip is 8 1/4, three intervals of 2 3/4. */
    @Test
    void aRippedPanelKeepsTheEdgeDistanceFromItsRip() {
        FastenerRow ripped = rows(plain(inches(0, 0, 100, 0, 100, 240, 0, 240)).rows(), FastenerKind.EAVE)
                .get(5);
        assertThat(ripped.count()).isEqualTo(4);
        assertThat(in(ripped.row().spacing())).isCloseTo(2.75, within(PRECISE));
        assertThat(across(ripped.to())).isCloseTo(99, within(PRECISE));
    }

    @Test
    void cleatedEavesHaveOneRowThatHoldsTheCleatAndNoPanelIsPierced() {
        FastenerRows all = tenPanels().cleated().rows();
        assertThat(rows(all, FastenerKind.EAVE)).isEmpty();
        List<FastenerRow> cleat = rows(all, FastenerKind.CLEAT);
        assertThat(cleat).hasSize(1);
        assertThat(cleat.get(0).panel()).isEmpty();
        assertThat(cleat.get(0).count()).isEqualTo(16);
        assertThat(in(cleat.get(0).row().spacing())).isCloseTo(178.0 / 15, within(PRECISE));
    }

    /** Both pieces of a lap are pierced, 2 in up the upper one. */
    @Test
    void anEndLapIsFastenedThroughBothPieces() {
        Fastened lapped = tenPanels().longest(150);
        FasteningCase asked = lapped.asked(FasteningRules.INCHES);
        List<FastenerRow> laps = rows(FastenerRows.of(asked), FastenerKind.END_LAP);
        assertThat(laps).hasSize(10);
        List<Panel> panels = Fastened.laid(asked, 0).panels();
        for (int i = 0; i < 10; i++) {
            FastenerRow lap = laps.get(i);
            assertThat(lap.panel()).contains(panels.get(2 * i + 1));
            assertThat(lap.count()).isEqualTo(6);
            assertThat(lap.placesOnPanel())
                    .allSatisfy(place -> assertThat(up(place)).isCloseTo(2, within(PRECISE)));
            Panel under = panels.get(2 * i);
            Region lower =
                    under.cut().moved(under.place().across(), under.place().up());
            assertThat(lap.places()).allSatisfy(place -> assertThat(Jts.polygon(lower)
                            .contains(Jts.FACTORY.createPoint(new Coordinate(place.across(), place.up()))))
                    .isTrue());
        }
    }

    /**
     * A chimney from 78 to 102 across and 100 to 130 up parts none of the panels and notches two. On each: below it and above
     * it from an inch short of its corner to 3/4 in off the rib, 10 1/4 in; beside it 28 in.
     */
    @Test
    void anOpeningIsFastenedToThePanelsRoundItsRim() {
        Ring hole = Shapes.ring(4, 78 * IN, 100 * IN, 78 * IN, 130 * IN, 102 * IN, 130 * IN, 102 * IN, 100 * IN);
        Region shape = new Region(inches(0, 0, 180, 0, 180, 240, 0, 240).outer(), List.of(hole));
        Map<Integer, EdgeKind> kinds = new TreeMap<>();
        for (int side = 4; side < 8; side++) {
            kinds.put(side, EdgeKind.OPENING);
        }
        FastenerRows all = plain(shape, kinds).rows();
        List<FastenerRow> rim = rows(all, FastenerKind.OPENING);
        assertThat(rim).hasSize(6);
        assertThat(rim).extracting(FastenerRow::count).containsExactlyInAnyOrder(3, 3, 6, 3, 3, 6);
        assertThat(rim).extracting(row -> row.panel().orElseThrow().mark()).containsOnly("p-5", "p-6");
        FastenerRow beside =
                rim.stream().filter(row -> row.count() == 6).findFirst().orElseThrow();
        assertThat(across(beside.from())).isCloseTo(77, within(PRECISE));
        assertThat(up(beside.from())).isCloseTo(101, within(PRECISE));
        assertThat(up(beside.to())).isCloseTo(129, within(PRECISE));
        assertThat(all.findings()).isEmpty();
    }

    /** Two panels, the top of the second cut to {@code top} inches by a slope of 2 in 1. */
    private static FastenerRows cutTo(double top) {
        double high = 30 + 2 * (18 - top);
        return plain(inches(0, 0, 36, 0, 36, 30, 18 + top, high, 0, high)).rows();
    }

    private static FastenerRow topOf(FastenerRows all) {
        return rows(all, FastenerKind.CLOSURE).stream()
                .filter(row -> row.edge() == 3 && row.panel().orElseThrow().strip() == 2)
                .findFirst()
                .orElseThrow();
    }

    /**
     * The corner is 116.5651°, so the row ends cot 58.2825° = 0.6180 in short of it: 3 in leave 0.75 to 2.3820 off the rib, 1 1/2
     * in leave 0.75 to 0.8820, which is no room for two, and 1 in leaves none of its 0.75 to 1.
     */
    @Test
    void aRowTooShortForItsEdgeDistanceHasOneFastenerInTheMiddleAndIsAFinding() {
        assertThat(topOf(cutTo(3)).count()).isEqualTo(2);
        assertThat(across(topOf(cutTo(3)).to()) - 18).isCloseTo(2.3820, within(5e-5));

        FastenerRow one = topOf(cutTo(1.5));
        assertThat(one.count()).isEqualTo(1);
        assertThat(across(one.places().get(0)) - 18).isCloseTo(0.8160, within(5e-5));
        assertThat(cutTo(1.5).findings()).isEmpty();

        FastenerRow near = topOf(cutTo(1));
        assertThat(near.count()).isEqualTo(1);
        assertThat(across(near.places().get(0)) - 18).isCloseTo(0.875, within(PRECISE));
        assertThat(cutTo(1).findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.ROW_TOO_SHORT);
            assertThat(finding.place().id()).isEqualTo("p-2");
            assertThat(in((Length) finding.actual().orElseThrow())).isCloseTo(0.25, within(PRECISE));
            assertThat(finding.limit()).contains(Length.inches(1));
        });
    }

    @Test
    void anEndThatLiesAtARibHasNoFastenerAndIsAFinding() {
        FastenerRows all = cutTo(0.2);
        assertThat(rows(all, FastenerKind.CLOSURE))
                .noneMatch(row -> row.edge() == 3 && row.panel().orElseThrow().strip() == 2);
        assertThat(all.findings()).extracting(Finding::code).containsExactly(FindingCode.ROW_TOO_SHORT);
    }

    @Test
    void theCallersFiguresWin() {
        FasteningRules rules = FasteningRules.INCHES
                .with(
                        FastenerKind.EAVE,
                        new FasteningRules.RowRule(Length.inches(3), Length.inches(1.5), Source.REQUEST))
                .with(Length.inches(0.5), Length.inches(1.5), Source.REQUEST);
        FastenerRows all = FastenerRows.of(tenPanels().asked(rules));
        assertThat(rows(all, FastenerKind.EAVE)).allSatisfy(row -> {
            assertThat(row.count()).isEqualTo(6);
            assertThat(in(row.row().spacing())).isCloseTo(3, within(PRECISE));
            assertThat(up(row.from())).isCloseTo(1.5, within(PRECISE));
        });
        assertThat(rows(all, FastenerKind.RAKE))
                .allSatisfy(row -> assertThat(up(row.from())).isCloseTo(0.5, within(PRECISE)));
    }
}
