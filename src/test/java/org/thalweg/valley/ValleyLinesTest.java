package org.thalweg.valley;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.PanelHold;
import org.thalweg.roof.Roof;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/** What a crew chalks on both planes of a valley, found again in the world. */
class ValleyLinesTest {

    private static final double NOTHING = 1e-9;

    private static List<OffsetLine> lines(ValleySide side) {
        List<OffsetLine> lines = new ArrayList<>();
        List.of(side.chalkLine(), side.fastenerLine(), side.panEdge(), side.panScrewLine())
                .forEach(line -> line.ifPresent(lines::add));
        return lines;
    }

    /** Distances off the low, in inches: hold-back 12 3/4, screws 2 further, the pan's edge at 18 3/4, its screws 1 inside. */
    private static final double[] OUT = {12.75, 14.75, 18.75, 17.75};

    @ParameterizedTest
    @CsvSource({"6, 6, 90", "6, 8, 90", "6, 12, 90", "10, 8.5, 135", "6, 6, 60", "3, 24, 120"})
    void everyLineRunsParallelToTheValleyFromTheEaveToTheRidge(double rise1, double rise2, double corner) {
        Roof roof = Pans.corner(rise1, rise2, corner, 300);
        ValleyLayout laid = Pans.fixed(roof, Pans.pan());
        Edge valley = laid.edge().edge();
        double head = Math.max(valley.from().z(), valley.to().z());
        for (ValleySide side : laid.sides()) {
            List<OffsetLine> lines = lines(side);
            assertThat(lines).hasSize(4);
            for (int i = 0; i < 4; i++) {
                double out = Length.inches(OUT[i]).metres();
                Point3 from = world(roof, side, lines.get(i).from());
                Point3 to = world(roof, side, lines.get(i).to());
                assertThat(Bent.fromLine(from, valley.from(), valley.to())).isCloseTo(out, within(NOTHING));
                assertThat(Bent.fromLine(to, valley.from(), valley.to())).isCloseTo(out, within(NOTHING));
                assertThat(from.z()).isCloseTo(0, within(NOTHING));
                assertThat(to.z()).isCloseTo(head, within(NOTHING));
                assertThat(lines.get(i).length().metres()).isCloseTo(from.distance(to), within(NOTHING));
            }
        }
    }

    /** The point a square measures up the low and out from it is the point a tape measures along the eave or the ridge. */
    @ParameterizedTest
    @CsvSource({"6, 6, 90", "6, 8, 90", "10, 8.5, 135", "6, 6, 60", "3, 24, 120"})
    void bothWaysToMarkAnEndLeadToTheSamePlace(double rise1, double rise2, double corner) {
        Roof roof = Pans.corner(rise1, rise2, corner, 300);
        ValleyLayout laid = Pans.fixed(roof, Pans.pan());
        for (ValleySide side : laid.sides()) {
            for (OffsetLine line : lines(side)) {
                marked(roof, side, line.lower(), line.from(), side.seen().foot());
                marked(roof, side, line.upper(), line.to(), side.seen().head());
            }
        }
    }

    private static void marked(Roof roof, ValleySide side, OffsetLine.Mark mark, Point2 end, Point2 start) {
        Point2 squared = side.seen().at(mark.out().metres(), mark.up().metres());
        assertThat(apart(squared, end)).isLessThan(NOTHING);
        Edge edge = roof.edges().stream()
                .filter(e -> e.id().equals(mark.edge()))
                .findFirst()
                .orElseThrow();
        Point3 corner = world(roof, side, start);
        Point3 other = corner.distance(edge.from()) < corner.distance(edge.to()) ? edge.to() : edge.from();
        double along = mark.along().orElseThrow().metres();
        Point3 taped = corner.plus(other.minus(corner).unit().times(along));
        assertThat(taped.distance(world(roof, side, end))).isLessThan(NOTHING);
    }

    /** 1 in 96 for both sides: over 288 in 3 in, 1 1/2 in a side. */
    @Test
    void aValleyThatWidensLiesOpenLessAtItsHead() {
        Roof roof = Pans.corner(6, 8, 90, 288);
        ValleyLayout laid = Pans.fixed(roof, widening(1 / 96.0));
        for (ValleySide side : laid.sides()) {
            assertThat(Pans.inches(side.heldBack())).isCloseTo(12.75, within(NOTHING));
            assertThat(Pans.inches(side.heldBackAtTop())).isCloseTo(11.25, within(NOTHING));
            OffsetLine chalk = side.chalkLine().orElseThrow();
            assertThat(offAt(side, chalk, side.seen().foot()))
                    .isCloseTo(Length.inches(12.75).metres(), within(NOTHING));
            assertThat(offAt(side, chalk, side.seen().head()))
                    .isCloseTo(Length.inches(11.25).metres(), within(NOTHING));
            assertThat(offAt(
                            side, side.fastenerLine().orElseThrow(), side.seen().head()))
                    .isCloseTo(Length.inches(13.25).metres(), within(NOTHING));
            assertThat(world(roof, side, chalk.from()).z()).isCloseTo(0, within(NOTHING));
            assertThat(world(roof, side, chalk.to()).z())
                    .isCloseTo(
                            Math.max(
                                    laid.edge().edge().from().z(),
                                    laid.edge().edge().to().z()),
                            within(NOTHING));
        }
    }

    /** How far a line, run on, lies off the low where the square stands at a place of it. */
    private static double offAt(ValleySide side, OffsetLine line, Point2 low) {
        Point2 foot = side.seen().foot();
        Point2 head = side.seen().head();
        double outX = -(head.up() - foot.up());
        double outY = head.across() - foot.across();
        double dx = line.to().across() - line.from().across();
        double dy = line.to().up() - line.from().up();
        double bx = line.from().across() - low.across();
        double by = line.from().up() - low.up();
        double along = (bx * dy - by * dx) / (outX * dy - outY * dx);
        return Math.abs(along) * Math.hypot(outX, outY);
    }

    private static PanSpec widening(double widening) {
        PanSpec pan = Pans.pan();
        return new PanSpec(
                pan.coilWidth(),
                pan.ribLeg(),
                pan.edgeReturn(),
                pan.holdBack(),
                pan.cover(),
                new Pitch(widening, 1),
                pan.pieceLength(),
                pan.shortestPiece(),
                pan.lap(),
                pan.pastEave(),
                pan.wallTurnUp(),
                pan.ribPastEave(),
                pan.ribPastTop(),
                pan.ribPastValley(),
                pan.cleatLength());
    }

    /** The main plane's two chalk lines meet on the fall line above the dormer's ridge, at x = 312. */
    @Test
    void chalkLinesOfTwoValleysOnOnePlaneMeetHalfWay() {
        Sketch boathouse = Sketch.boathouse(p -> p);
        Roof roof = boathouse.read();
        ValleyLayout west = laid(boathouse.edge(roof, "UT"));
        ValleyLayout east = laid(boathouse.edge(roof, "TS"));
        Point3 fromWest =
                world(roof, west.left(), west.left().chalkLine().orElseThrow().to());
        Point3 fromEast =
                world(roof, east.right(), east.right().chalkLine().orElseThrow().to());
        assertThat(Pans.inches(Length.metres(fromWest.x()))).isCloseTo(312, within(1e-9));
        assertThat(fromWest.distance(fromEast)).isLessThan(NOTHING);
        assertThat(west.left().chalkLine().orElseThrow().upper().along()).isEmpty();
        assertThat(west.right().chalkLine().orElseThrow().upper().along()).isPresent();
    }

    /** At U the main plane turns back, so its lines end square and no tape along the cheek finds them. */
    @Test
    void whereAPlaneTurnsBackItsLinesEndSquare() {
        Sketch boathouse = Sketch.boathouse(p -> p);
        Roof roof = boathouse.read();
        OffsetLine.Mark mark = laid(boathouse.edge(roof, "UT"))
                .left()
                .chalkLine()
                .orElseThrow()
                .lower();
        assertThat(mark.up().metres()).isZero();
        assertThat(mark.along()).isEmpty();
    }

    /** A plane that ends within half a degree of in line with its valley has no place along its edge to measure to. */
    @Test
    void whereAPlaneEndsInLineWithTheValleyNoTapeAlongItFindsItsLines() {
        AnyPan any = AnyPan.of(1);
        SlopedEdge.Side side = any.edge().left();
        SlopedEdge.End inLine = new SlopedEdge.End(1, "E1", EdgeKind.EAVE, Angle.degrees(179.5), Length.metres(1_000));
        SlopedEdge.Side ends = new SlopedEdge.Side(
                side.plane(),
                side.id(),
                side.pitch(),
                side.mitre(),
                side.onLeft(),
                side.foot(),
                side.head(),
                inLine,
                inLine,
                side.run());
        ValleyLayout laid =
                Pans.laid(new SlopedEdge(0, any.edge().edge(), ends, any.edge().right()), Pans.pan());
        OffsetLine chalk = laid.left().chalkLine().orElseThrow();
        assertThat(chalk.lower().along()).isEmpty();
        assertThat(chalk.upper().along()).isEmpty();
    }

    /** An eave of 20 in is shorter than the 17.1 / sin φ a pan's edge would take along it. */
    @Test
    void noTapeRunsFurtherThanTheEdgeIsLong() {
        Sketch small = Sketch.start()
                .corner('A', -20, 0, 0)
                .corner('F', 0, 0, 0)
                .corner('T', 100, 100, 50)
                .corner('D', -20, 100, 50)
                .corner('G', 0, -200, 0)
                .corner('Q', 100, -200, 50)
                .plane("AFTD")
                .plane("FGQT");
        Roof roof = small.read();
        ValleyLayout laid = laid(small.edge(roof, "FT"));
        double perOut = 1 / Math.sin(Math.toRadians(48.1897));
        assertThat(Pans.inches(
                        laid.left().chalkLine().orElseThrow().lower().along().orElseThrow()))
                .isCloseTo(12.75 * perOut, within(0.0001));
        assertThat(laid.left().panEdge().orElseThrow().lower().along()).isEmpty();
        assertThat(laid.right().panEdge().orElseThrow().lower().along()).isPresent();
    }

    @Test
    void aValleyTooShortForALineHasNone() {
        Sketch pointed = Sketch.start()
                .corner('F', 0, 0, 0)
                .corner('T', 10, 10, 5)
                .corner('S', -10, 10, 5)
                .corner('G', 0, -100, 0)
                .corner('P', 10, -100, 5)
                .corner('Q', -10, -100, 5)
                .plane("FTS")
                .plane("FGPT")
                .plane("FSQG");
        Roof roof = pointed.read();
        ValleyLayout laid = laid(pointed.edge(roof, "FT"));
        assertThat(laid.left().chalkLine()).isEmpty();
        assertThat(laid.left().panEdge()).isEmpty();
        assertThat(laid.right().chalkLine()).isPresent();
    }

    @Test
    void aCoilTooNarrowToScrewInsideItsFoldHasNoScrewLine() {
        ValleyLayout laid = Pans.fixed(Pans.corner(6, 6, 90, 200), Pans.pan(12, Optional.empty()));
        assertThat(Pans.inches(laid.spec().flat())).isCloseTo(0.75, within(NOTHING));
        assertThat(laid.left().panScrewLine()).isEmpty();
    }

    /** 120 in pieces along the chalk line of a 300 in valley; ribs of 18 in cover cross it every 18 / cos 48.1897° = 27 in. */
    @Test
    void aCleatRunsAlongTheWholeChalkLineInPieces() {
        Roof roof = Pans.corner(6, 6, 90, 300);
        ValleyLayout laid =
                Valleys.layOut(Pans.valley(roof), Pans.pan(), PanelHold.CLEATED, Pans.asked(), Pans.TOLERANCE);
        for (ValleySide side : laid.sides()) {
            CleatRun cleat = side.cleat().orElseThrow();
            assertThat(cleat.length()).isEqualTo(side.chalkLine().orElseThrow().length());
            assertThat(Pans.inches(cleat.length())).isCloseTo(300, within(NOTHING));
            assertThat(cleat.count()).isEqualTo(3);
            assertThat(Pans.inches(cleat.piece())).isCloseTo(120, within(NOTHING));
            assertThat(Pans.inches(cleat.last())).isCloseTo(60, within(NOTHING));
            assertThat(Pans.inches(cleat.notchSpacing().orElseThrow())).isCloseTo(27, within(0.0001));
        }
        assertThat(Pans.fixed(roof, Pans.pan()).left().cleat()).isEmpty();
    }

    private static ValleyLayout laid(SlopedEdge edge) {
        return Pans.laid(edge, Pans.pan());
    }

    private static Point3 world(Roof roof, ValleySide side, Point2 place) {
        return roof.planes().get(side.seen().plane()).frame().inWorld(place);
    }

    private static double apart(Point2 a, Point2 b) {
        return Math.hypot(a.across() - b.across(), a.up() - b.up());
    }
}
