package org.thalweg.valley;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Jts;
import org.thalweg.geometry.Point2;
import org.thalweg.roof.Building;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.PanelHold;
import org.thalweg.roof.Roof;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Length;
import org.thalweg.valley.PanBlank.Fold;

/**
 * Valleys and hips of roofs that nobody here drew, out of open city models. Sources: see {@code ATTRIBUTION.md} beside the file.
 */
class RealValleysTest {

    private static final Path KEPT = Path.of("src/test/resources/buildings/buildings.jsonl");
    private static final double NOTHING = 1e-9;

    /** What was seen on a run over many buildings. */
    private static final class Tally {

        private int buildings;
        private int valleys;
        private int hips;
        private int pieces;
        private int lines;
        private int withoutTwoSides;
        private double longestPiece;
        private final Map<String, Integer> findings = new TreeMap<>();
        private final Map<String, Integer> ends = new TreeMap<>();

        void hold(Building building) {
            Roof roof;
            try {
                roof = Roofs.read(building.survey());
            } catch (Refused e) {
                return;
            }
            buildings++;
            for (int i = 0; i < roof.edges().size(); i++) {
                EdgeKind kind = roof.edges().get(i).kind();
                if (kind == EdgeKind.VALLEY || kind == EdgeKind.HIP) {
                    Optional<SlopedEdge> edge = SlopedEdge.of(roof, i);
                    if (edge.isEmpty()) {
                        withoutTwoSides++;
                    } else if (kind == EdgeKind.VALLEY) {
                        valley(
                                edge.get(),
                                building.id() + " " + edge.get().edge().id());
                    } else {
                        hip(edge.get(), building.id() + " " + edge.get().edge().id());
                    }
                }
            }
        }

        private void valley(SlopedEdge edge, String what) {
            valleys++;
            PanSpec pan = Pans.pan();
            ValleyLayout laid = Valleys.layOut(edge, pan, PanelHold.CLEATED, Pans.asked(), Pans.TOLERANCE);
            laid.findings().forEach(f -> findings.merge(f.code().name(), 1, Integer::sum));
            for (ValleySide side : laid.sides()) {
                ends.merge("foot " + side.seen().bottom().kind(), 1, Integer::sum);
                ends.merge("head " + side.seen().top().kind(), 1, Integer::sum);
                double holdBack = Length.inches(12.75).metres();
                side.chalkLine().ifPresent(line -> parallel(side.seen(), line, holdBack, what));
                side.panEdge()
                        .ifPresent(
                                line -> parallel(side.seen(), line, pan.flat().metres(), what));
            }
            covers(laid, what);
        }

        private void hip(SlopedEdge edge, String what) {
            hips++;
            Length setback = Length.inches(1);
            HipLayout laid = HipLayout.of(
                    edge,
                    new HipLayout.HipCap(Length.inches(6), Length.inches(1)),
                    setback,
                    Pans.COVER,
                    Pans.TOLERANCE);
            assertThat(laid.findings()).isEmpty();
            for (HipLayout.HipSide side : laid.sides()) {
                side.panelLine().ifPresent(line -> parallel(side.seen(), line, setback.metres(), what));
                side.capLine()
                        .ifPresent(line ->
                                parallel(side.seen(), line, Length.inches(6).metres(), what));
            }
        }

        private void parallel(SlopedEdge.Side side, OffsetLine line, double out, String what) {
            lines++;
            double dx = side.head().across() - side.foot().across();
            double dy = side.head().up() - side.foot().up();
            double length = Math.hypot(dx, dy);
            int sign = side.onLeft() ? 1 : -1;
            for (Point2 end : List.of(line.from(), line.to())) {
                double off = ((end.up() - side.foot().up()) * dx
                                - (end.across() - side.foot().across()) * dy)
                        / length;
                assertThat(sign * off).as(what).isCloseTo(out, within(NOTHING));
            }
        }

        /** The pieces follow each other without a gap, each over the one below by the lap, and reach past both ends. */
        private void covers(ValleyLayout laid, String what) {
            double reached = laid.pieces().get(0).from().metres();
            assertThat(reached).as(what).isLessThanOrEqualTo(0);
            for (PanPiece piece : laid.pieces()) {
                pieces++;
                longestPiece = Math.max(longestPiece, piece.length().metres());
                assertThat(piece.from().metres() + piece.lap().metres())
                        .as(what)
                        .isCloseTo(reached, within(NOTHING));
                reached = piece.from().metres() + piece.length().metres();
                Polygon blank = AnyPan.placed(piece);
                assertThat(blank.isValid()).as("%s %s", what, blank).isTrue();
                for (Fold fold : piece.blank().folds()) {
                    for (Point2 end : List.of(fold.from(), fold.to())) {
                        assertThat(blank.distance(Jts.FACTORY.createPoint(new Coordinate(
                                        end.across(), end.up() + piece.from().metres()))))
                                .as("%s %s", what, fold)
                                .isLessThan(1e-7);
                    }
                }
            }
            assertThat(reached)
                    .as(what)
                    .isGreaterThanOrEqualTo(laid.edge().length().metres());
        }

        @Override
        public String toString() {
            return "buildings %d, valleys %d, hips %d, without two sides %d, pieces %d (longest %.2f m), lines %d, findings %s, ends %s"
                    .formatted(buildings, valleys, hips, withoutTwoSides, pieces, longestPiece, lines, findings, ends);
        }
    }

    @Test
    void theValleysAndHipsOfTheBuildingsKeptHereAreLaidOut() {
        Tally tally = new Tally();
        Building.in(KEPT, "").forEach(tally::hold);
        assertThat(tally.buildings).isEqualTo(36);
        assertThat(tally.valleys).isEqualTo(29);
        assertThat(tally.hips).isEqualTo(82);
        assertThat(tally.withoutTwoSides).isZero();
    }

    /** Every building of a folder of folders: run with {@code -Dthalweg.buildings=FOLDER}. Prints the counts. */
    @Test
    @EnabledIfSystemProperty(named = "thalweg.buildings", matches = ".+")
    void theValleysAndHipsOfEveryBuildingOfAFolderAreLaidOut() {
        Tally tally = new Tally();
        Building.inFolder().forEach(tally::hold);
        System.out.println(tally);
        assertThat(tally.valleys).isPositive();
    }
}
