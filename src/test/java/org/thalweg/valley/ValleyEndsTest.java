package org.thalweg.valley;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.InnerCorner;
import org.thalweg.roof.Roof;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;
import org.thalweg.valley.PanBlank.Fold;
import org.thalweg.valley.PanBlank.FoldKind;

/**
 * What a pan ends on: eaves and ridges stand in {@code PansInTheWorldTest}, here the rest. The boathouse's corners stand in
 * {@code demo/boathouse.md}; lengths in inches.
 */
class ValleyEndsTest {

    private static final Sketch BOATHOUSE = Sketch.boathouse(p -> p);
    private static final Roof ROOF = BOATHOUSE.read();
    private static final PanSpec LONG = Pans.pan(1_000, 0);

    private static ValleyLayout laid(SlopedEdge edge) {
        return Pans.laid(edge, LONG);
    }

    private static ValleyLayout boathouse(String ends) {
        return laid(BOATHOUSE.edge(ROOF, ends));
    }

    private static double in(double metres) {
        return Pans.inches(Length.metres(metres));
    }

    /** T, where both valleys of the dormer and its ridge meet, stands at x = 312. */
    @Test
    void theFlatsOfTwoValleysOnTheMainPlaneEndHalfWayBetweenThemAndLapPast() {
        ValleyLayout west = boathouse("UT");
        ValleyLayout east = boathouse("TS");
        List<Bent> mainWest = Bent.flats(ROOF, west, west.edge().left());
        List<Bent> mainEast = Bent.flats(ROOF, east, east.edge().right());
        assertThat(west.edge().left().id()).isEqualTo("ABMLK");
        assertThat(east.edge().right().id()).isEqualTo("ABMLK");
        assertThat(in(Bent.outermostHighest(mainWest).world().x())).isCloseTo(312 + 8, within(1e-9));
        assertThat(in(Bent.outermostHighest(mainEast).world().x())).isCloseTo(312 - 8, within(1e-9));
        assertThat(mainWest).anySatisfy(b -> {
            assertThat(b.out()).isCloseTo(0, within(Bent.NOTHING));
            assertThat(in(b.world().x())).isCloseTo(320, within(1e-9));
        });
    }

    @Test
    void theFlatsOfADormersOwnPlanesEndOnItsRidge() {
        ValleyLayout west = boathouse("UT");
        Bent top = Bent.outermostHighest(Bent.flats(ROOF, west, west.edge().right()));
        assertThat(in(top.world().z())).isCloseTo(186, within(1e-9));
        assertThat(in(top.world().x())).isCloseTo(312, within(1e-9));
    }

    @Test
    void theRibRunsTwoFeetPastWhereValleysMeetAndIsNotSlitThere() {
        ValleyLayout west = boathouse("UT");
        PanBlank blank = only(west).blank();
        double from = only(west).from().metres();
        double length = west.edge().length().metres();
        double leg = west.spec().ribLeg().metres();
        double crownTop = fold(blank, FoldKind.CROWN).to().up() + from;
        assertThat(in(crownTop - length)).isCloseTo(24, within(1e-9));
        assertThat(blank.outline())
                .contains(new Point2(leg, length + Length.inches(24).metres() - from));
        assertThat(blank.slits()).hasSize(1);
        assertThat(blank.slits().get(0).to().up() + from).isCloseTo(0, within(1e-12));
    }

    /** At U the main plane turns back: it goes on beside and below the dormer's cheek. */
    @Test
    void whereAPlaneTurnsBackAtTheFootThePanEndsSquareWithALap() {
        ValleyLayout west = boathouse("UT");
        assertThat(west.edge().left().bottom().kind()).isEqualTo(EdgeKind.SIDE_WALL);
        assertThat(west.edge().left().bottom().corner().inDegrees()).isCloseTo(90 + 180 - 48.1897, within(0.0001));
        List<Bent> main = Bent.flats(ROOF, west, west.edge().left());
        assertThat(in(Bent.outermostLowest(main).up())).isCloseTo(-8, within(1e-9));
        assertThat(in(main.stream().mapToDouble(Bent::up).min().orElseThrow())).isCloseTo(-8, within(1e-9));
    }

    /** M: the south plane goes on along hip ML, the wing along its ridge. */
    @Test
    void theFlatsOfAValleyThatMeetsAHipEndOnTheHip() {
        ValleyLayout laid = boathouse("BM");
        assertThat(laid.edge().left().top().kind()).isEqualTo(EdgeKind.HIP);
        assertThat(laid.edge().right().top().kind()).isEqualTo(EdgeKind.RIDGE);
        Bent south = Bent.outermostHighest(Bent.flats(ROOF, laid, laid.edge().left()));
        assertThat(Bent.fromLine(south.world(), BOATHOUSE.at('M'), BOATHOUSE.at('L')))
                .isCloseTo(0, within(Bent.NOTHING));
        assertThat(in(south.world().z())).isGreaterThan(188);
        Bent wing = Bent.outermostHighest(Bent.flats(ROOF, laid, laid.edge().right()));
        assertThat(in(wing.world().z())).isCloseTo(188, within(1e-9));
    }

    @Test
    void theRibRunsTwoInchesPastFootAndHeadElsewhereAndIsSlitThere() {
        ValleyLayout laid = boathouse("BM");
        PanPiece piece = only(laid);
        double from = piece.from().metres();
        double length = laid.edge().length().metres();
        Fold crown = fold(piece.blank(), FoldKind.CROWN);
        assertThat(in(crown.from().up() + from)).isCloseTo(-2, within(1e-9));
        assertThat(in(crown.to().up() + from - length)).isCloseTo(2, within(1e-9));
        assertThat(piece.blank().slits()).hasSize(2);
        assertThat(piece.blank().slits().get(0).from().up() + from)
                .isCloseTo(-Length.inches(2).metres(), within(1e-12));
        assertThat(piece.blank().slits().get(1).from().up() + from).isCloseTo(length, within(1e-12));
        assertThat(piece.blank().slits().get(1).to().up() + from - length)
                .isCloseTo(Length.inches(2).metres(), within(1e-12));
    }

    /**
     * A gable as high as the main eave, its ridge running into the main plane: the valleys start at the main eave.
     */
    @Test
    void theValleysOfACrossGableMeetAtItsRidge() {
        Sketch gable = Sketch.start()
                .corner('A', -200, 0, 0)
                .corner('G', -60, 0, 0)
                .corner('H', 60, 0, 0)
                .corner('B', 200, 0, 0)
                .corner('C', 200, 150, 75)
                .corner('D', -200, 150, 75)
                .corner('T', 0, 60, 30)
                .corner('P', -60, -100, 0)
                .corner('Q', 0, -100, 30)
                .corner('R', 60, -100, 0)
                .plane("AGTHBCD")
                .plane("GPQT")
                .plane("RHTQ");
        Roof roof = gable.read();
        ValleyLayout west = laid(gable.edge(roof, "GT"));
        ValleyLayout east = laid(gable.edge(roof, "HT"));
        for (ValleyLayout laid : List.of(west, east)) {
            double reach = fold(only(laid).blank(), FoldKind.CROWN).to().up()
                    + only(laid).from().metres()
                    - laid.edge().length().metres();
            assertThat(in(reach)).isCloseTo(24, within(1e-9));
            assertThat(only(laid).blank().slits()).hasSize(1);
        }
        assertThat(in(Bent.outermostHighest(Bent.flats(roof, west, west.edge().left()))
                        .world()
                        .x()))
                .isCloseTo(8, within(1e-9));
        assertThat(in(Bent.outermostHighest(Bent.flats(roof, east, east.edge().right()))
                        .world()
                        .x()))
                .isCloseTo(-8, within(1e-9));
        assertThat(in(Bent.outermostLowest(Bent.flats(roof, west, west.edge().left()))
                        .world()
                        .z()))
                .isCloseTo(0, within(1e-9));
    }

    /** A plane that comes to a point at the bottom, between two others: both its valleys start there. */
    private static Sketch pointed() {
        return Sketch.start()
                .corner('F', 0, 0, 0)
                .corner('T', 200, 200, 100)
                .corner('S', -200, 200, 100)
                .corner('G', 0, -100, 0)
                .corner('P', 200, -100, 100)
                .corner('Q', -200, -100, 100)
                .plane("FTS")
                .plane("FGPT")
                .plane("FSQG");
    }

    @Test
    void theFlatsOfTwoValleysThatMeetAtTheirFeetEndHalfWayBetweenThemAndLapPast() {
        Sketch pointed = pointed();
        Roof roof = pointed.read();
        ValleyLayout east = laid(pointed.edge(roof, "FT"));
        assertThat(east.edge().left().bottom().kind()).isEqualTo(EdgeKind.VALLEY);
        Bent lowest = Bent.outermostLowest(Bent.flats(roof, east, east.edge().left()));
        assertThat(in(lowest.world().x())).isCloseTo(-8, within(1e-9));
        assertThat(lowest.up()).isPositive();
        double crown = fold(only(east).blank(), FoldKind.CROWN).from().up()
                + only(east).from().metres();
        assertThat(in(crown)).isCloseTo(-24, within(1e-9));
        assertThat(only(east).blank().slits()).hasSize(1);
    }

    private static Roof againstAWall() {
        return Roofs.read(new InnerCorner(
                        new Pitch(6, 12),
                        new Pitch(8, 12),
                        Angle.degrees(90),
                        Optional.empty(),
                        Optional.of(Length.inches(200)),
                        EdgeKind.HEAD_WALL,
                        Origin.REQUEST)
                .survey(Pans.TOLERANCE, new Pitch(0.25, 12), Source.REQUEST));
    }

    /** The bend lies on the wall's line, level with the head of the valley, and four inches of metal stand beyond it. */
    @Test
    void aPanThatEndsAtAWallIsTurnedUpThere() {
        Roof roof = againstAWall();
        ValleyLayout laid = Pans.fixed(roof, LONG);
        PanPiece piece = only(laid);
        double head =
                Math.max(laid.edge().edge().from().z(), laid.edge().edge().to().z());
        List<Fold> walls = piece.blank().folds().stream()
                .filter(f -> f.kind() == FoldKind.WALL)
                .toList();
        assertThat(walls).hasSize(2);
        for (SlopedEdge.Side side : List.of(laid.edge().left(), laid.edge().right())) {
            Fold wall = walls.get(side.onLeft() ? 0 : 1);
            assertThat(wall.angle().inDegrees()).isCloseTo(90, within(1e-9));
            for (Point2 end : List.of(wall.from(), wall.to())) {
                double out = Math.abs(end.across()) - laid.spec().ribLeg().metres();
                Point2 onPlane = side.at(out, end.up() + piece.from().metres());
                Point3 world = roof.planes().get(side.plane()).frame().inWorld(onPlane);
                assertThat(world.z()).isCloseTo(head, within(1e-9));
            }
            assertThat(Math.abs(wall.from().across() - wall.to().across()))
                    .isCloseTo(laid.spec().flat().metres(), within(1e-9));
            double beyond =
                    Bent.outermostHighest(Bent.flats(roof, laid, side)).world().z() - head;
            assertThat(in(beyond)).isCloseTo(4 * side.pitch().sin(), within(1e-9));
        }
    }

    /**
     * One plane on the left, its eave along x; on the right the wing's plane in two parts, with a joint along the level
     * line from the middle of the valley: 6:12 all round, a square corner.
     */
    @Test
    void aValleySplitAtAJointIsLappedOnBothSidesThere() {
        Sketch split = Sketch.start()
                .corner('A', -200, 0, 0)
                .corner('F', 0, 0, 0)
                .corner('N', 50, 50, 25)
                .corner('T', 100, 100, 50)
                .corner('D', -200, 100, 50)
                .corner('G', 0, -200, 0)
                .corner('P', 50, -200, 25)
                .corner('Q', 100, -200, 50)
                .plane("AFTD")
                .plane("FGPN")
                .plane("NPQT");
        Roof roof = split.read();
        SlopedEdge below = split.edge(roof, "FN");
        SlopedEdge above = split.edge(roof, "NT");
        assertThat(below.right().top().kind()).isEqualTo(EdgeKind.FLUSH);
        assertThat(below.left().top().corner().inDegrees()).isCloseTo(180, within(1e-6));
        ValleyLayout lower = laid(below);
        ValleyLayout upper = laid(above);
        assertThat(Pans.inches(lower.edge().length())).isCloseTo(75, within(1e-9));
        assertThat(in(Bent.outermostHighest(Bent.flats(roof, lower, below.left()))
                                .up()
                        - below.length().metres()))
                .isCloseTo(8, within(1e-9));
        assertThat(in(Bent.outermostLowest(Bent.flats(roof, upper, above.left()))
                        .up()))
                .isCloseTo(-8, within(1e-9));
        Point3 joint = split.at('N');
        double rise = Length.inches(8).metres() * below.right().pitch().sin();
        assertThat(Bent.outermostHighest(Bent.flats(roof, lower, below.right()))
                                .world()
                                .z()
                        - joint.z())
                .isCloseTo(rise, within(1e-9));
        assertThat(Bent.outermostLowest(Bent.flats(roof, upper, above.right()))
                                .world()
                                .z()
                        - joint.z())
                .isCloseTo(-rise, within(1e-9));
        for (ValleyLayout laid : List.of(lower, upper)) {
            assertThat(only(laid).blank().slits()).hasSize(1);
        }
    }

    /** The wing is steeper above: the valley bends, and what is one plane on the left is two on the right. */
    @Test
    void aValleyThatBendsAtAPitchBreakIsLappedOnBothSidesThere() {
        Sketch bent = Sketch.start()
                .corner('A', -200, 0, 0)
                .corner('F', 0, 0, 0)
                .corner('N', 50, 50, 25)
                .corner('T', 75, 100, 50)
                .corner('D', -200, 100, 50)
                .corner('G', 0, -200, 0)
                .corner('P', 50, -200, 25)
                .corner('Q', 75, -200, 50)
                .plane("AFNTD")
                .plane("FGPN")
                .plane("NPQT");
        Roof roof = bent.read();
        SlopedEdge below = bent.edge(roof, "FN");
        assertThat(below.right().top().kind()).isEqualTo(EdgeKind.PITCH_BREAK);
        assertThat(below.left().top().kind()).isEqualTo(EdgeKind.VALLEY);
        Bent right = Bent.outermostHighest(Bent.flats(roof, laid(below), below.right()));
        assertThat(right.world().z() - bent.at('N').z())
                .isCloseTo(Length.inches(8).metres() * below.right().pitch().sin(), within(1e-9));
    }

    private static PanPiece only(ValleyLayout laid) {
        assertThat(laid.pieces()).hasSize(1);
        return laid.pieces().get(0);
    }

    private static Fold fold(PanBlank blank, FoldKind kind) {
        return blank.folds().stream().filter(f -> f.kind() == kind).findFirst().orElseThrow();
    }
}
