package org.thalweg.fastening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Shapes;
import org.thalweg.geometry.Tolerance;
import org.thalweg.panel.Flat;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.units.Length;

/**
 * The water way of a valley that runs straight up the right side of a plane, 2 m from its foot on a slanted eave, panels held
 * back 0.3 m.
 *
 * <pre>
 *        (0 3)------(3 3)
 *          |        :  |
 *          |        :  |  valley; the tail of its way reaches down to the eave, 0.3 m below its foot
 *          |        : (3 1)
 *          |        : /
 *          |        /     eave, at 45°
 *        (0 0)--(2 0)
 * </pre>
 */
class WaterWaysTest {

    private static final Region PLANE = Shapes.region(0, 0, 2, 0, 3, 1, 3, 3, 0, 3);

    private static WaterWays water() {
        List<Edge> edges = new ArrayList<>(Flat.roof(PLANE).edges());
        edges.set(2, kind(edges.get(2), EdgeKind.VALLEY));
        EdgeTreatment heldBack = new EdgeTreatment(Length.metres(0.3), Length.ZERO, Length.ZERO);
        return new WaterWays(PLANE, edges, Collections.nCopies(edges.size(), heldBack), Tolerance.DEFAULT);
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

    /** Beside the valley a line ends where the panels do; in the tail too; below it where the plane does. */
    @ParameterizedTest
    @CsvSource({"2.5, 2.7", "1.5, 2.7", "0.9, 2.7", "0.71, 2.7", "0.7, 2.7", "0.6, 2.6"})
    void aLineAcrossThePlaneEndsAtTheWaterWay(double up, double end) {
        RowLine line = new RowLine(Tolerance.DEFAULT);
        line.lay(0, up, 3, up, 0);
        line.whole(0, 3);
        line.inside(PLANE, 0, 0);
        water().takeOutOf(line);
        assertThat(line.left().count()).isEqualTo(1);
        assertThat(line.left().to(0)).isCloseTo(end, within(1e-6));
    }

    /** Square to the eave, from {@code in} · √2 down it: at 0.29 further from either end of the low than the way is wide. */
    @ParameterizedTest
    @CsvSource({"0.2, 0.1414213562", "0.29, 0.0141421356"})
    void aLineThatOnlyCrossesTheTailIsBrokenThere(double in, double wet) {
        RowLine line = new RowLine(Tolerance.DEFAULT);
        line.lay(3 - in, 1 - in, 2 - in, 2 - in, 0);
        line.whole(0, Math.sqrt(2));
        water().takeOutOf(line);
        assertThat(line.left().from(0)).isCloseTo(wet, within(1e-6));
    }
}
