package org.thalweg.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Vector3;

/** How planes are laid flat: across to the right, up the slope, seen from outside. */
class PlaneFrameTest {

    private static final String SHED = """
            D-----------C
            |           |
            |  N--M     |
            |  |  |     |
            |  K--L     |
            |           |
            A-----------B
            """;

    /** Rises 3 in 4: a slope length of 7.5 over a run of 6. */
    private static Drawn shed() {
        return Drawn.plan(SHED).height(4.5, "CD").height(3, "MN").height(1.5, "KL");
    }

    @Test
    void aPlaneThatRisesTowardsYHasItsAcrossAlongX() {
        Plane plane = shed().planes("ABCD").read().plane("ABCD");
        assertThat(plane.frame().across()).isEqualTo(new Vector3(1, 0, 0));
        assertThat(plane.frame().up()).isEqualTo(new Vector3(0, 0.8, 0.6));
        assertThat(plane.frame().outward()).isEqualTo(new Vector3(0, -0.6, 0.8));
        assertThat(plane.frame().origin()).isEqualTo(new Point3(0, 0, 0));
    }

    @Test
    void theShapeIsThePlaneLaidFlat() {
        Plane plane = shed().planes("ABCD").read().plane("ABCD");
        Ring outer = plane.shape().outer();
        assertThat(outer.corner(0)).isEqualTo(new Point2(0, 0));
        assertThat(outer.corner(1)).isEqualTo(new Point2(12, 0));
        assertThat(outer.corner(2).distance(new Point2(12, 7.5))).isLessThan(1e-12);
        assertThat(plane.area().squareMetres()).isCloseTo(90, within(1e-12));
        assertThat(plane.planArea().squareMetres()).isCloseTo(72, within(1e-12));
        assertThat(plane.slope().inDegrees()).isCloseTo(36.8699, within(0.00005));
    }

    @Test
    void outerRingsRunCounterClockwiseAndOpeningsClockwiseHoweverTheyAreDrawn() {
        for (String drawn : new String[] {"ABCD KLMN", "DCBA KLMN", "ABCD NMLK", "DCBA NMLK"}) {
            Plane plane = shed().planes(drawn).read().roof().planes().get(0);
            assertThat(plane.shape().outer().signedArea()).isCloseTo(90, within(1e-12));
            assertThat(plane.shape().openings().get(0).signedArea()).isCloseTo(-7.5, within(1e-12));
            assertThat(plane.area().squareMetres()).isCloseTo(82.5, within(1e-12));
        }
    }

    @Test
    void everySideIsTaggedWithItsEdge() {
        Roof roof = shed().planes("DCBA NMLK").read().roof();
        Plane plane = roof.planes().get(0);
        for (Ring ring :
                new Ring[] {plane.shape().outer(), plane.shape().openings().get(0)}) {
            for (int side = 0; side < ring.size(); side++) {
                Edge edge = roof.edges().get(ring.tag(side));
                Point3 from = plane.frame().inWorld(ring.corner(side));
                Point3 to = plane.frame().inWorld(ring.corner(ring.next(side)));
                assertThat(from.distance(edge.from())).isLessThan(1e-9);
                assertThat(to.distance(edge.to())).isLessThan(1e-9);
            }
        }
    }

    @Test
    void everyCoordinateIsZeroOrMore() {
        Plane plane = Drawn.plan(SHED)
                .move("ABCD", p -> new Point3(p.x() * 0.7 - p.y() * 0.7, p.x() * 0.7 + p.y() * 0.7, 0.31 * p.x()))
                .planes("ABCD")
                .read()
                .plane("ABCD");
        Ring outer = plane.shape().outer();
        assertThat(outer.leastAcross()).isZero();
        assertThat(outer.leastUp()).isZero();
    }

    @Test
    void aLevelPlaneHasItsAcrossAlongX() {
        Plane level = Drawn.plan(SHED).planes("BCDA").read().plane("BCDA");
        assertThat(level.frame().across()).isEqualTo(new Vector3(1, 0, 0));
        assertThat(level.frame().up()).isEqualTo(new Vector3(0, 1, 0));
        Plane almost = Drawn.plan(SHED).height(0.02, "CD").planes("ABCD").read().plane("ABCD");
        assertThat(almost.level()).isTrue();
        assertThat(almost.frame().across()).isEqualTo(new Vector3(1, 0, 0));
    }

    /** A step of 4 mm where two surveys meet: C and E stand over each other on a level plane. */
    @Test
    void cornersOverEachOtherAreOneCornerOfTheirPlane() {
        Drawn.Read roof =
                Drawn.plan(SHED).corner('E', 12, 6, 0.004).planes("ABCED").read();
        Plane plane = roof.plane("ABCED");
        assertThat(plane.shape().outer().size()).isEqualTo(4);
        assertThat(plane.area().squareMetres()).isCloseTo(72, within(1e-4));
        assertThat(roof.edge("CD").at()).hasToString("#/planes/0/outline/2");
        assertThat(roof.edge("DA").at()).hasToString("#/planes/0/outline/4");
    }

    @Test
    void aPlaneFarFromTheOriginIsAsExactAsOneNearby() {
        Plane plane = shed().move("ABCD", p -> new Point3(p.x() + 3_400_000, p.y() + 5_700_000, p.z() + 500))
                .planes("ABCD")
                .read()
                .plane("ABCD");
        assertThat(plane.area().squareMetres()).isCloseTo(90, within(1e-9));
        assertThat(plane.frame().origin()).isEqualTo(new Point3(3_400_000, 5_700_000, 500));
    }
}
