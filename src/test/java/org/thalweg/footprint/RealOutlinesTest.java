package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.thalweg.footprint.NoRoof.Reason;
import org.thalweg.units.Pitch;

/**
 * Outlines of real buildings and polygons known to be hard, all at one pitch: what JTS calls simple has a roof of which every
 * truth of {@link OnePitchTruths} holds, and what has none is told so by what is wrong with the outline. {@code
 * -Dthalweg.ground=FOLDER} reads the ground polygons of every building of a folder of city models, {@code
 * -Dthalweg.footprints=FILE} the outlines of a file.
 */
class RealOutlinesTest {

    private static final Pitch PITCH = new Pitch(7, 12);
    private static final ObjectMapper JSON = new ObjectMapper();

    /** What an outline itself may be refused for. */
    private static final Set<Reason> OF_THE_OUTLINE =
            EnumSet.of(Reason.TOO_FEW_CORNERS, Reason.TOO_MANY_SIDES, Reason.RINGS_CROSS, Reason.COURTYARD_OUTSIDE);

    private final Map<Reason, Integer> refused = new EnumMap<>(Reason.class);
    private int roofs;
    private int corners;
    private int seams;

    @Test
    void groundPolygonsOfCityModels() {
        Plans.read(Path.of("src/test/resources/footprints/grounds.jsonl"))
                .forEach(plan -> hold(plan.get("id").asText(), Plans.footprint(plan, PITCH)));
        tell();
        assertThat(roofs).isEqualTo(47);
        assertThat(refused).containsExactly(Map.entry(Reason.RINGS_CROSS, 1));
    }

    @Test
    @EnabledIfSystemProperty(named = "thalweg.ground", matches = ".+")
    void allGroundPolygonsOfCityModels() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of(System.getProperty("thalweg.ground")))) {
            for (Path file :
                    files.filter(path -> path.endsWith("roofs.jsonl")).sorted().toList()) {
                for (JsonNode building : Plans.read(file)) {
                    for (JsonNode polygon : building.get("ground")) {
                        hold(building.get("id").asText(), Plans.footprint(polygon, PITCH, 1));
                    }
                }
            }
        }
        tell();
        assertThat(roofs).isPositive();
    }

    @Test
    @EnabledIfSystemProperty(named = "thalweg.footprints", matches = ".+")
    void outlinesOfAFile() {
        List<JsonNode> plans = Plans.read(Path.of(System.getProperty("thalweg.footprints")));
        plans.forEach(plan -> hold(plan.path("id").asText(), Plans.footprint(plan, PITCH)));
        tell();
        assertThat(plans).isNotEmpty();
    }

    static List<Path> polygons() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/test/resources/polygons"))) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }

    /** Lakes, signs and knots, none of them a building: shrunk to what a plan may measure. */
    @ParameterizedTest
    @MethodSource("polygons")
    void polygonsKnownToBeHard(Path file) throws IOException {
        JsonNode rings = JSON.readTree(file.toFile());
        double largest = 1;
        for (JsonNode corner : rings.get(0)) {
            for (int i = 0; i < 2; i++) {
                largest = Math.max(
                        largest,
                        Math.abs(corner.get(i).asDouble()
                                - rings.get(0).get(0).get(i).asDouble()));
            }
        }
        hold(file.getFileName().toString(), Plans.footprint(rings, PITCH, Math.min(1, 500 / largest)));
        tell();
    }

    private void hold(String name, Footprint plan) {
        Rise rise = Footprints.roofOver(plan);
        boolean simple = isSimple(plan) && plan.sides() <= Footprints.MOST_SIDES;
        assertThat(rise instanceof RoofOver).as("%s: %s", name, rise).isEqualTo(simple);
        if (rise instanceof RoofOver roof) {
            roofs++;
            OnePitchTruths.Looked looked = OnePitchTruths.hold(plan, roof);
            corners += looked.corners();
            seams += looked.seams();
        } else {
            Reason reason = ((NoRoof) rise).reason();
            assertThat(reason).as(name).isIn(OF_THE_OUTLINE);
            refused.merge(reason, 1, Integer::sum);
        }
    }

    private void tell() {
        System.out.printf("%d roofs, %d corners, %d seams; refused %s%n", roofs, corners, seams, refused);
    }

    /** By JTS: rings that neither cross nor touch, holes inside. */
    private static boolean isSimple(Footprint plan) {
        GeometryFactory factory = new GeometryFactory();
        List<LinearRing> rings = new ArrayList<>();
        for (List<WallSide> ring : plan.rings()) {
            if (ring.size() < 3) {
                return false;
            }
            List<Coordinate> corners = new ArrayList<>();
            ring.forEach(side -> corners.add(new Coordinate(side.x(), side.y())));
            corners.add(corners.get(0));
            rings.add(factory.createLinearRing(corners.toArray(Coordinate[]::new)));
        }
        Polygon polygon = factory.createPolygon(
                rings.get(0), rings.subList(1, rings.size()).toArray(LinearRing[]::new));
        return polygon.isValid() && polygon.getBoundary().isSimple();
    }
}
