package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.thalweg.footprint.WallPlan.Wall;
import org.thalweg.footprint.WallSide.Change;

/**
 * Roofs somebody has spoilt so that one check notices and all the others are content: without that check they would be answered.
 * Each is drawn by hand, corner by corner. Of the courtyard and of the gable that leans the areas would tell too. What
 * {@link RoofCheck} says of the areas follows from its other checks: lines with a surface on both sides cancel out, so slopes
 * cover what the walls go round. It is asked all the same, because it is what a roof is for.
 */
class SpoiltRoofsTest {

    /** A drawing: corners of walls are the first nodes, then come those told one by one. */
    private static final class Drawing {
        private final WallPlan plan;
        private final Faces faces;
        private final Nodes nodes;
        private final SlopeLines lines;

        Drawing(List<WallSide> outline) {
            this(Footprint.of(outline));
        }

        Drawing(Footprint footprint) {
            plan = WallPlan.of(footprint);
            faces = new Faces(plan);
            nodes = new Nodes(plan.box());
            lines = new SlopeLines(faces);
            for (Wall wall : faces.walls()) {
                nodes.addWallCorner((double) wall.x(), (double) wall.y());
            }
        }

        /** A corner in metres: where two upright planes and one that rises meet. */
        Drawing corner(double x, double y, double height) {
            long alongX = Math.round(x * WallPlan.STEPS);
            long alongY = Math.round(y * WallPlan.STEPS);
            long time = Math.round(height / faces.height(1.0));
            Meeting meeting = Meeting.of(
                    new EavePlane(101, 1, 0, alongX, BigInteger.ZERO),
                    new EavePlane(102, 0, 1, alongY, BigInteger.ZERO),
                    new EavePlane(103, 1, 0, alongX - time, BigInteger.ONE),
                    new Tally(1_000_000));
            assertThat(meeting).isNotNull();
            nodes.add(meeting);
            return this;
        }

        Drawing ring(int face, int... corners) {
            for (int i = 0; i < corners.length; i++) {
                lines.add(face, face, corners[i], corners[(i + 1) % corners.length]);
            }
            return this;
        }

        void check() {
            RoofCheck.check(plan, faces, new FoundRoof(plan, faces, nodes, lines));
        }

        String noticed() {
            NoRoof.Stop stop = catchThrowableOfType(NoRoof.Stop.class, this::check);
            assertThat(stop).isNotNull();
            return stop.why().detail();
        }
    }

    private static List<WallSide> house() {
        return Plans.ring(0, 0, 10, 0, 10, 4, 0, 4);
    }

    /** The hip roof over the house, drawn right: corners 4 and 5 are the ends of its ridge. */
    private static Drawing hipRoof() {
        return new Drawing(house()).corner(2, 2, 1).corner(8, 2, 1);
    }

    @Test
    void theGoodOnePasses() {
        Drawing good = hipRoof()
                .ring(0, 0, 1, 5, 4)
                .ring(1, 1, 2, 5)
                .ring(2, 2, 3, 4, 5)
                .ring(3, 3, 0, 4);
        assertThatCode(good::check).doesNotThrowAnyException();
    }

    /** The ends of two wings lie in one line: each has the slope of the other. */
    @Test
    void slopesThatStandOnEachOthersWalls() {
        Drawing spoilt = new Drawing(Plans.ring(0, 0, 12, 0, 12, 10, 8, 10, 8, 4, 4, 4, 4, 10, 0, 10))
                .corner(2, 2, 1)
                .corner(10, 2, 1)
                .corner(10, 8, 1)
                .corner(2, 8, 1)
                .ring(0, 0, 1, 9, 8)
                .ring(1, 1, 2, 10, 9)
                .ring(6, 2, 3, 10)
                .ring(3, 3, 4, 9, 10)
                .ring(4, 4, 5, 8, 9)
                .ring(5, 5, 6, 11, 8)
                .ring(2, 6, 7, 11)
                .ring(7, 7, 0, 8, 11);
        assertThat(spoilt.noticed()).contains("does not begin where it should");
    }

    /** Over 10 m by 8 m the long slopes meet first, at 2 m. Here the ends met, at 2.5 m, and the ridge runs backwards. */
    @Test
    void slopesThatMetInTheWrongOrder() {
        Drawing spoilt = new Drawing(Plans.ring(0, 0, 10, 0, 10, 8, 0, 8))
                .corner(5, 5, 2.5)
                .corner(5, 3, 2.5)
                .ring(0, 0, 1, 4)
                .ring(1, 1, 2, 5, 4)
                .ring(2, 2, 3, 5)
                .ring(3, 3, 0, 4, 5);
        assertThat(spoilt.noticed()).contains("it crosses itself");
    }

    /** Too little for any area. */
    @Test
    void aRidgeThreeMicrometresTooHigh() {
        Drawing spoilt = new Drawing(house())
                .corner(2, 2, 1.000003)
                .corner(8, 2, 1.000003)
                .ring(0, 0, 1, 5, 4)
                .ring(1, 1, 2, 5)
                .ring(2, 2, 3, 4, 5)
                .ring(3, 3, 0, 4);
        assertThat(spoilt.noticed()).contains("is 1.000002861 m high where its pitch makes 1.000000000 m");
    }

    /** The hip runs on down over the corner of the walls and back: as high as it should be there, below the eaves. */
    @Test
    void aSlopeThatReachesBelowItsEave() {
        Drawing spoilt = hipRoof()
                .corner(11, -1, -0.5)
                .ring(0, 0, 1, 6, 5, 4)
                .ring(1, 1, 2, 5, 6)
                .ring(2, 2, 3, 4, 5)
                .ring(3, 3, 0, 4);
        assertThat(spoilt.noticed()).contains("reaches below its eave");
    }

    /** The roof of a house without a courtyard, over one that has one. */
    @Test
    void aCourtyardThatIsRoofedOver() {
        Drawing spoilt = new Drawing(new Footprint(house(), List.of(Plans.ring(3, 1.5, 3, 2.5, 7, 2.5, 7, 1.5))))
                .corner(2, 2, 1)
                .corner(8, 2, 1)
                .ring(0, 0, 1, 9, 8)
                .ring(1, 1, 2, 9)
                .ring(2, 2, 3, 8, 9)
                .ring(3, 3, 0, 8);
        assertThat(spoilt.noticed()).contains("4 of its lines end at walls, of which there are 8");
    }

    /** The ridge of a gable roof ends half a metre before the gable, which leans in. */
    @Test
    void aGableThatLeans() {
        Drawing spoilt = new Drawing(Plans.pitched(house(), "6:12", "gable", "6:12", "gable"))
                .corner(0, 2, 1)
                .corner(9.5, 2, 1)
                .ring(0, 0, 1, 5, 4)
                .ring(1, 1, 2, 5)
                .ring(2, 2, 3, 4, 5)
                .ring(3, 3, 0, 4);
        assertThat(spoilt.noticed()).contains("m off its line");
    }

    /**
     * Left of a wing the eave is steep and set back so that it is in line with the flat one to the right when both are 1 m high;
     * what goes on over both should be the flat one.
     */
    @Test
    void aSteepSlopeThatGoesOnOverAFlatOne() {
        List<WallSide> plan = Plans.pitched(
                Plans.ring(0, 0, 12, 0, 12, 6, 8, 6, 8, 11, 4, 11, 4, 5, 0, 5),
                "6:12",
                "gable",
                "6:12",
                "6:12",
                "gable",
                "6:12",
                "12:12",
                "gable");
        // Over both from y = 4 on the slope to the left goes on, 1 + (4 - y), and meets the front, y/2, at y = 10/3.
        double ridge = 10 / 3.0;
        Drawing spoilt = new Drawing(plan)
                .corner(6, 4, 1)
                .corner(12, 4, 1)
                .corner(6, 11, 1)
                .corner(0, ridge, ridge / 2)
                .corner(12, ridge, ridge / 2)
                .ring(0, 0, 1, 12, 11)
                .ring(1, 1, 2, 9, 12)
                .ring(2, 2, 3, 8, 9)
                .ring(3, 3, 4, 10, 8)
                .ring(4, 4, 5, 10)
                .ring(5, 5, 6, 8, 10)
                .ring(6, 6, 7, 11, 12, 9, 8)
                .ring(7, 7, 0, 11);
        assertThat(spoilt.noticed()).contains("goes on over a flatter one");
    }

    /** A hip that should go up as a gable from half a metre on, and goes on as if nothing had been said. */
    @Test
    void aSlopeThatDoesNotChange() {
        List<WallSide> plan = Plans.ring(0, 0, 10, 0, 10, 4, 0, 4);
        plan.set(1, plan.get(1).then(new Change(0.5, Optional.empty())));
        // The second face of the east side is the third of all.
        Drawing spoilt = new Drawing(plan)
                .corner(2, 2, 1)
                .corner(8, 2, 1)
                .ring(0, 0, 1, 5, 4)
                .ring(1, 1, 2, 5)
                .ring(3, 2, 3, 4, 5)
                .ring(4, 3, 0, 4);
        assertThat(spoilt.noticed()).contains("goes on where it should change");
    }

    /** Two gables back on back above the ridge, on nothing: no area, nothing on one side only. */
    @Test
    void gablesThatStandOnNothing() {
        List<WallSide> plan = Plans.ring(0, 0, 10, 0, 10, 4, 0, 4);
        plan.set(0, plan.get(0).then(new Change(1, Optional.empty())));
        plan.set(2, plan.get(2).then(new Change(1, Optional.empty())));
        // Both gables would stand where the slopes end, along y = 2.
        Drawing spoilt = new Drawing(plan)
                .corner(2, 2, 1)
                .corner(8, 2, 1)
                .corner(4, 2, 1)
                .corner(6, 2, 1)
                .corner(5, 2, 2)
                .ring(0, 0, 1, 5, 4)
                .ring(2, 1, 2, 5)
                .ring(3, 2, 3, 4, 5)
                .ring(5, 3, 0, 4)
                .ring(1, 6, 7, 8)
                .ring(4, 7, 6, 8);
        assertThat(spoilt.noticed()).contains("do not add up");
    }
}
