package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.thalweg.footprint.RoofOver.Corner;
import org.thalweg.units.Pitch;

/** Inner corners that others have published; source and licence stand beside the file. */
class PublishedSkeletonsTest {

    private static final double PUBLISHED = 1e-4;

    static List<JsonNode> cases() {
        return Plans.read(Path.of("src/test/resources/skeletons/cases.jsonl")).stream()
                .filter(one -> !one.get("expected_skeleton_nodes").isNull())
                .toList();
    }

    @Test
    void thereAreEighteen() {
        assertThat(cases()).hasSize(18);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void innerCornersAreWhereTheyWerePublished(JsonNode published) {
        RoofOver roof = Plans.roof(Plans.footprint(published, new Pitch(12, 12)));
        List<double[]> expected = new ArrayList<>();
        published
                .get("expected_skeleton_nodes")
                .forEach(node -> expected.add(
                        new double[] {node.get(0).asDouble(), node.get(1).asDouble()}));
        List<Corner> inner = Plans.inner(roof);
        assertThat(expected).allSatisfy(node -> assertThat(inner)
                .as("%f, %f", node[0], node[1])
                .anyMatch(corner -> Math.hypot(corner.x() - node[0], corner.y() - node[1]) < PUBLISHED));
        assertThat(inner).allSatisfy(corner -> assertThat(expected)
                .as("%s", corner)
                .anyMatch(node -> Math.hypot(corner.x() - node[0], corner.y() - node[1]) < PUBLISHED));
    }

    /** A courtyard with a corner that points inward; nobody has published its inner corners. Its area is the plan's. */
    @Test
    void theOneWithoutPublishedCornersHasARoof() {
        JsonNode plan = Plans.read(Path.of("src/test/resources/skeletons/cases.jsonl")).stream()
                .filter(one -> one.get("expected_skeleton_nodes").isNull())
                .findFirst()
                .orElseThrow();
        RoofOver roof = Plans.roof(Plans.footprint(plan, new Pitch(12, 12)));
        assertThat(roof.slopes().stream()
                        .mapToDouble(slope -> KnownRoofsTest.planArea(roof, slope))
                        .sum())
                .isCloseTo(plan.get("area").asDouble(), within(1e-3));
    }
}
