package org.thalweg.sealing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.thalweg.fastening.Fastened;
import org.thalweg.fastening.FastenerKind;
import org.thalweg.fastening.FastenerRow;
import org.thalweg.fastening.FastenerRows;
import org.thalweg.fastening.FasteningCase;
import org.thalweg.fastening.FasteningRules;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Jts;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Tolerance;
import org.thalweg.panel.Panel;
import org.thalweg.roof.Building;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Length;

/** Counted again by JTS, on roofs that nobody here drew. Sources: see {@code ATTRIBUTION.md} beside the file. */
class RealSealingTest {

    private static final Path KEPT = Path.of("src/test/resources/buildings/buildings.jsonl");

    private final Map<String, Integer> seen = new TreeMap<>();

    private int buildings;

    /** Roofs that can't be read, or take more panels than are laid, are left out. */
    private void hold(Building building) {
        FasteningCase fixed;
        FasteningCase cleated;
        try {
            Fastened plain = Fastened.of(Roofs.read(building.survey())).longest(240);
            fixed = plain.asked(FasteningRules.INCHES);
            cleated = plain.cleated().asked(FasteningRules.INCHES);
        } catch (Refused e) {
            return;
        }
        buildings++;
        for (FasteningCase asked : List.of(fixed, cleated)) {
            FastenerRows rows = FastenerRows.of(asked);
            Sealing sealing = Sealing.of(
                    new SealingCase(rows, asked.valleys(), List.of(), SealingRules.INCHES, Tolerance.DEFAULT));
            sealing.runs().forEach(run -> seen.merge(run.kind() + " " + run.item(), 1, Integer::sum));
            assertRows(rows, sealing, building.id());
            long laps = asked.valleys().stream()
                    .flatMap(valley -> valley.pieces().stream())
                    .filter(piece -> piece.lap().metres() > 0)
                    .count();
            List<SealRun> sealed = sealing.runs().stream()
                    .filter(run -> run.kind() == SealKind.PAN_LAP)
                    .toList();
            assertThat(sealed).as(building.id()).hasSize((int) laps).allSatisfy(run -> assertThat(run.length())
                    .isBetween(Length.inches(1), Length.inches(48 + 1e-6)));
        }
    }

    /** Every row has its stretch of metal among the runs of its panel, and every run along a row is such a stretch. */
    private static void assertRows(FastenerRows rows, Sealing sealing, String id) {
        double expected = 0;
        Point2[] last = {};
        FastenerRow before = null;
        for (FastenerRow row : rows.rows()) {
            if (SealKind.along(row.kind()).isEmpty()) {
                continue;
            }
            Coordinate[] ends = stretch(row, row.panel().orElseThrow());
            Point2[] now = {new Point2(ends[0].x, ends[0].y), new Point2(ends[1].x, ends[1].y)};
            boolean again = before != null
                    && before.panel().equals(row.panel())
                    && before.edge() == row.edge()
                    && before.kind() == row.kind()
                    && last[0].distance(now[0]) < 0.001
                    && last[1].distance(now[1]) < 0.001;
            expected += again ? 0 : now[0].distance(now[1]);
            last = now;
            before = row;
        }
        double laid = sealing.runs().stream()
                .filter(run -> run.panel().isPresent() && run.item() == SealItem.TAPE)
                .mapToDouble(run -> run.length().metres())
                .sum();
        assertThat(laid).as(id).isCloseTo(expected, within(1e-6 * Math.max(1, expected)));
        long closures = rows.rows().stream()
                .filter(row -> row.kind() == FastenerKind.CLOSURE || row.kind() == FastenerKind.HEAD_WALL)
                .map(row -> row.panel().orElseThrow().mark() + " " + row.edge())
                .distinct()
                .count();
        assertThat((long) sealing.count(SealItem.CLOSURE)).as(id).isGreaterThanOrEqualTo(closures);
    }

    /** Of a row's line, made long, what JTS finds on the panel nearest to the row's middle. */
    private static Coordinate[] stretch(FastenerRow row, Panel panel) {
        double length = row.from().distance(row.to());
        double across = (row.to().across() - row.from().across()) / length;
        double up = (row.to().up() - row.from().up()) / length;
        Coordinate middle = new Coordinate(
                (row.from().across() + row.to().across()) / 2,
                (row.from().up() + row.to().up()) / 2);
        Geometry line = Jts.FACTORY.createLineString(new Coordinate[] {
            new Coordinate(middle.x - 100 * across, middle.y - 100 * up),
            new Coordinate(middle.x + 100 * across, middle.y + 100 * up)
        });
        Polygon metal = Jts.polygon(
                panel.finished().moved(panel.place().across(), panel.place().up()));
        Geometry on = metal.intersection(line);
        Geometry nearest = on.getGeometryN(0);
        for (int i = 1; i < on.getNumGeometries(); i++) {
            Geometry next = on.getGeometryN(i);
            if (next.distance(Jts.FACTORY.createPoint(middle)) < nearest.distance(Jts.FACTORY.createPoint(middle))) {
                nearest = next;
            }
        }
        Coordinate[] ends = nearest.getCoordinates();
        return new Coordinate[] {ends[0], ends[ends.length - 1]};
    }

    @Test
    void theBuildingsKeptHereAreSealed() {
        Building.in(KEPT, "").forEach(this::hold);
        assertThat(buildings).isEqualTo(36);
        assertThat(seen)
                .containsKeys(
                        "VALLEY TAPE",
                        "CLEAT TAPE",
                        "CLOSURE TAPE",
                        "CLOSURE CLOSURE",
                        "END_LAP TAPE",
                        "PAN_LAP SEALANT");
    }

    /** Every clean building of a folder of folders: run with {@code -Dthalweg.buildings=FOLDER}. */
    @Test
    @EnabledIfSystemProperty(named = "thalweg.buildings", matches = ".+")
    void everyCleanBuildingOfAFolderIsSealed() {
        Building.inFolder().filter(Building::clean).forEach(this::hold);
        System.out.println("buildings sealed " + buildings + ", runs " + seen);
        assertThat(buildings).isPositive();
    }
}
