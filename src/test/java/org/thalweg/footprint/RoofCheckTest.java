package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigInteger;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.thalweg.footprint.NoRoof.Reason;
import org.thalweg.footprint.WallPlan.Wall;
import org.thalweg.units.Pitch;

/** Roofs over a plan of 10 m by 4 m that somebody has spoilt, line by line: each is noticed. */
class RoofCheckTest {

    private static final WallPlan PLAN = WallPlan.of(Footprint.of(Plans.ring(0, 0, 10, 0, 10, 4, 0, 4)));
    private static final List<Wall> WALLS = PLAN.rings().get(0);
    private static final Faces FACES = new Faces(PLAN);
    private static final Tally TALLY = new Tally(1_000_000);

    private final Nodes nodes = new Nodes(PLAN.box());
    private final SlopeLines lines = new SlopeLines(FACES);

    /** Corners of the walls, then the ridge's ends where these planes meet. */
    private void corners(EavePlane south, EavePlane east, EavePlane north, EavePlane west) {
        WALLS.forEach(wall -> nodes.addWallCorner(wall.onX(), wall.onY()));
        nodes.add(meeting(south, north, west));
        nodes.add(meeting(south, north, east));
    }

    private static Meeting meeting(EavePlane one, EavePlane two, EavePlane three) {
        Meeting meeting = Meeting.of(one, two, three, TALLY);
        assertThat(meeting).isNotNull();
        return meeting;
    }

    private static EavePlane plane(int side) {
        return FACES.planes().get(side);
    }

    private void ring(int slope, int... ring) {
        for (int i = 0; i < ring.length; i++) {
            lines.add(slope, slope, ring[i], ring[(i + 1) % ring.length]);
        }
    }

    private void check() {
        RoofCheck.check(PLAN, FACES, new FoundRoof(PLAN, FACES, nodes, lines));
    }

    private NoRoof why() {
        NoRoof.Stop stop = catchThrowableOfType(NoRoof.Stop.class, this::check);
        assertThat(stop).isNotNull();
        return stop.why();
    }

    @Test
    void theGoodOnePasses() {
        corners(plane(0), plane(1), plane(2), plane(3));
        ring(0, 0, 1, 5, 4);
        ring(1, 1, 2, 5);
        ring(2, 2, 3, 4, 5);
        ring(3, 3, 0, 4);
        assertThatCode(this::check).doesNotThrowAnyException();
    }

    @Test
    void aRidgeAtTheHeightOfAnotherPitchIsNoticed() {
        EavePlane steeper = new EavePlane(9, plane(3).a(), plane(3).b(), plane(3).c(), BigInteger.ONE);
        corners(plane(0), plane(1), plane(2), steeper);
        ring(0, 0, 1, 5, 4);
        ring(1, 1, 2, 5);
        ring(2, 2, 3, 4, 5);
        ring(3, 3, 0, 4);
        assertThat(why().reason()).isEqualTo(Reason.CHECK_FAILED);
        assertThat(why().detail()).contains("where its pitch makes");
    }

    @Test
    void aHoleInTheRoofIsNoticed() {
        corners(plane(0), plane(1), plane(2), plane(3));
        ring(0, 0, 1, 5, 4);
        ring(1, 1, 2, 5);
        ring(2, 2, 3, 4, 5);
        assertThat(why().detail()).contains("ends neither at a wall nor at another slope");
    }

    @Test
    void aSlopeThatCrossesItselfIsNoticed() {
        corners(plane(0), plane(1), plane(2), plane(3));
        ring(0, 0, 1, 4, 5);
        assertThat(why().reason()).isEqualTo(Reason.SLOPE_NOT_SIMPLE);
    }

    @Test
    void aSlopeOffItsWallIsNoticed() {
        corners(plane(0), plane(1), plane(2), plane(3));
        ring(0, 0, 5, 4);
        assertThat(why().detail()).contains("does not begin where it should");
    }

    @Test
    void slopesOverEachOtherAreNoticed() {
        corners(plane(0), plane(1), plane(2), plane(3));
        ring(0, 0, 1, 5, 4);
        ring(1, 0, 1, 5);
        assertThat(why().detail()).contains("the same side of a line");
    }

    @Test
    void aRingThatIsNotClosedIsNoticed() {
        corners(plane(0), plane(1), plane(2), plane(3));
        lines.add(0, 0, 0, 1);
        lines.add(0, 0, 1, 5);
        assertThat(why().reason()).isEqualTo(Reason.SLOPE_NOT_SIMPLE);
        assertThat(why().detail()).contains("no simple surface: it is not closed. Give");
    }

    @Test
    void workIsBounded() {
        Tally little = new Tally(10);
        NoRoof.Stop stop = catchThrowableOfType(NoRoof.Stop.class, () -> little.steps(11));
        assertThat(stop.why().reason()).isEqualTo(Reason.TOO_MUCH_WORK);
        List<WallSide> many = Plans.star(new java.util.Random(1), WallPlan.MOST_SIDES + 1, 30, 50, new Pitch(6, 12));
        assertThat(Plans.refused(many, List.of())).isEqualTo(Reason.TOO_MANY_SIDES);
    }
}
