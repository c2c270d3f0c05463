package org.thalweg.fastening;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Shapes;
import org.thalweg.panel.Flat;
import org.thalweg.panel.Lead;
import org.thalweg.roof.Building;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.EdgeTreatments;
import org.thalweg.roof.PanelHold;
import org.thalweg.roof.Roof;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Length;

/** What holds of the fasteners of every roof, on crooked planes made from seeds and on buildings that nobody here drew. */
class FasteningLawsTest {

    private static final Path KEPT = Path.of("src/test/resources/buildings/buildings.jsonl");

    /** A plane of edges of every kind, set back and run past at random. */
    private static Fastened crooked(long seed, Region shape) {
        Random random = new Random(seed);
        Roof flat = Flat.roof(shape);
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : flat.edges()) {
            EdgeKind kind = EdgeKind.values()[random.nextInt(EdgeKind.values().length)];
            edges.add(new Edge(
                    edge.id(),
                    kind,
                    edge.sides(),
                    edge.from(),
                    edge.to(),
                    edge.length(),
                    edge.slope(),
                    edge.bend(),
                    edge.convex(),
                    edge.at()));
        }
        Map<Integer, EdgeTreatment> bySide = new HashMap<>();
        treat(shape.outer(), random, bySide);
        shape.openings().forEach(opening -> treat(opening, random, bySide));
        return new Fastened(
                new Roof(flat.planes(), edges, List.of(), flat.tolerance()),
                Fastened.panels(random.nextInt(3) == 0 ? 120 : 1000),
                new EdgeTreatments(Map.of(), bySide),
                random.nextBoolean() ? PanelHold.FIXED : PanelHold.CLEATED,
                random.nextBoolean() ? Lead.LEFT : Lead.RIGHT,
                Length.metres(random.nextDouble() * 0.4));
    }

    private static void treat(Ring ring, Random random, Map<Integer, EdgeTreatment> bySide) {
        for (int i = 0; i < ring.size(); i++) {
            double setback = random.nextInt(4) * 0.05 - 0.05;
            double atTop = random.nextInt(3) == 0 ? setback - 0.1 * random.nextDouble() : setback;
            Length hem = Length.metres(random.nextInt(2) * 0.03);
            bySide.put(ring.tag(i), new EdgeTreatment(Length.metres(setback), Length.metres(atTop), hem, Length.ZERO));
        }
    }

    @ParameterizedTest(name = "seeds from {0}")
    @ValueSource(longs = {110_000, 120_000})
    void fastenersOfCrookedPlanesKeepTheLaws(long firstSeed) {
        int looked = 0;
        for (long seed = firstSeed; seed < firstSeed + 150; seed++) {
            for (Region shape : Shapes.crooked(seed)) {
                looked += FasteningLaws.hold(crooked(seed, shape).asked(FasteningRules.INCHES), "seed " + seed);
            }
        }
        assertThat(looked).isGreaterThan(50_000);
    }

    @Test
    void fastenersOfTheBuildingsKeptHereKeepTheLaws() {
        int[] looked = {0};
        Building.in(KEPT, "").forEach(building -> {
            Fastened laid = Fastened.of(Roofs.read(building.survey())).from(Lead.LEFT, 7);
            looked[0] += FasteningLaws.hold(laid.asked(FasteningRules.INCHES), building.id());
            looked[0] += FasteningLaws.hold(laid.cleated().longest(90).asked(FasteningRules.METRIC), building.id());
        });
        assertThat(looked[0]).isGreaterThan(50_000);
    }

    /** Every building of a folder of folders: run with {@code -Dthalweg.buildings=FOLDER}. Prints the counts. */
    @Test
    @EnabledIfSystemProperty(named = "thalweg.buildings", matches = ".+")
    void fastenersOfEveryBuildingOfAFolderKeepTheLaws() throws IOException {
        int[] seen = {0, 0};
        Path folder = Path.of(System.getProperty("thalweg.buildings", ""));
        try (Stream<Path> sets = Files.list(folder)) {
            for (Path set : sets.sorted().toList()) {
                Path file = set.resolve("roofs.jsonl");
                if (Files.exists(file)) {
                    Building.in(file, folder.relativize(set).toString()).forEach(building -> hold(building, seen));
                }
            }
        }
        System.out.printf("buildings %d, fasteners and clips %d%n", seen[0], seen[1]);
        assertThat(seen[0]).isPositive();
    }

    private static void hold(Building building, int[] seen) {
        try {
            Fastened laid = Fastened.of(Roofs.read(building.survey())).from(Lead.LEFT, 7);
            seen[1] += FasteningLaws.hold(laid.asked(FasteningRules.INCHES), building.id());
            seen[0]++;
        } catch (Refused e) {
            // No roof, or too large a one.
        }
    }
}
