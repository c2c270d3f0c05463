package org.thalweg.trim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.Drawn;
import org.thalweg.roof.EdgeKind;
import org.thalweg.trim.CutEnds.Arm;
import org.thalweg.units.Length;

/** Pieces lying flat, their ends cut. */
class TrimBlankTest {

    private static final double NOTHING = 1e-9;

    /** Metal without thickness, bent sharp: across the flat a girth is as long as it is in section. */
    private static final TrimSpec.Sheet FOIL =
            new TrimSpec.Sheet(Length.ZERO, Length.ZERO, BendAllowance.USUAL, Length.inches(48));

    private static TrimSpec foil() {
        TrimSpec usual = TrimJobs.usual();
        return new TrimSpec(
                usual.seamHeight(),
                usual.ventedRidge(),
                usual.hipLeg(),
                FOIL,
                usual.stock(),
                usual.past(),
                usual.laidFrom(),
                usual.orders());
    }

    /**
     * A curb a metre square, 39 3/8 in: the flashing drops 1 3/4 in to the pan, lies 4 in on it and stands 4 in up the curb. Round
     * the corner it runs on 4 in along the outer line of the leg that lies, and not at all along the curb.
     */
    @Test
    void theBlankOfAKerbFlashingIsMitredLikeAPictureFrame() {
        Drawn.Read read = TrimJobs.gabled(TrimJobs::still).read();
        Trim low = TrimJobs.of(Trims.on(read.roof(), foil()).layOut(), read, "PQ");
        double edge = 100 / 2.54;
        double[][] corners = {
            {0, 0}, {1.75, 0}, {5.75, 4}, {9.75, 4}, {9.75, edge + 4}, {5.75, edge + 4}, {1.75, edge + 8}, {0, edge + 8}
        };
        assertThat(low.pieces()).hasSize(1);
        assertOutline(low.pieces().get(0).blank(), corners);
    }

    @Test
    void aPieceBetweenOthersIsARectangle() {
        Trim eave = TrimJobs.laid(TrimJobs.hipped(TrimJobs::still), "AB");
        double width = TrimJobs.inches(eave.flat().width());
        assertThat(eave.pieces()).hasSizeGreaterThan(2);
        TrimPiece second = eave.pieces().get(1);
        double length = TrimJobs.inches(second.length());
        assertOutline(second.blank(), new double[][] {{0, 0}, {width, 0}, {width, length}, {0, length}});
    }

    /** Bent along its lines and set up at its edge in the world, the blank's cut ends meet those of the next trim's. */
    @ParameterizedTest
    @ValueSource(strings = {"hipped", "winged", "gabled"})
    void bentBackTheCutEndsOfTwoBlanksMeet(String which) {
        Drawn drawn =
                switch (which) {
                    case "hipped" -> TrimJobs.hipped(TrimJobs::still);
                    case "winged" -> TrimJobs.winged(TrimJobs::still);
                    default -> TrimJobs.gabled(TrimJobs::still);
                };
        EdgeKind kind = which.equals("gabled") ? EdgeKind.OPENING : EdgeKind.EAVE;
        List<Trim> trims = Trims.on(TrimJobs.roof(drawn), foil()).layOut();
        int met = 0;
        for (Trim trim : trims) {
            for (Arm arm : CutEnds.arms(trim)) {
                if (trim.edge().kind() == kind && arm.beyond()) {
                    Arm other = CutEnds.met(arm, trims).orElseThrow();
                    List<Point3> here = bentBack(arm);
                    List<Point3> there = bentBack(other);
                    for (int i = 0; i < here.size(); i++) {
                        assertThat(here.get(i).distance(there.get(i)))
                                .as("%s %s, place %d", trim.edge().id(), arm.meeting(), i)
                                .isLessThan(NOTHING);
                    }
                    met++;
                }
            }
        }
        assertThat(met).isEqualTo(which.equals("winged") ? 12 : 8);
    }

    /** Places on the cut across every leg, and across hems, folded under: bent back along the lines and set up at the edge. */
    private static List<Point3> bentBack(Arm arm) {
        Trim trim = arm.trim();
        List<Point3> places = new ArrayList<>();
        double across = trim.profile().first().map(hem -> hem.girth().metres()).orElse(0.0);
        for (int leg = 0; leg < trim.profile().girths().size(); leg++) {
            double girth = trim.profile().girths().get(leg).metres();
            for (double part : new double[] {0.01, 0.5, 0.99}) {
                places.add(inWorld(arm, leg, part, across + part * girth));
            }
            across += girth;
        }
        int last = trim.profile().girths().size() - 1;
        Optional<Hem> hem = trim.profile().last();
        if (hem.isPresent()) {
            double girth = trim.profile().girths().get(last).metres();
            double on = hem.get().girth().metres();
            for (double part : new double[] {0.01, 0.5, 0.99}) {
                places.add(inWorld(arm, last, 1 - part * on / girth, across + part * on));
            }
        }
        return places;
    }

    private static Point3 inWorld(Arm arm, int leg, double part, double across) {
        Trim trim = arm.trim();
        Point2 inner = trim.section().get(leg);
        Point2 outer = trim.section().get(leg + 1);
        Point2 line = new Point2(
                inner.across() + part * (outer.across() - inner.across()),
                inner.up() + part * (outer.up() - inner.up()));
        return trim.seat().inWorld(line, Length.metres(end(trim, arm.atStart(), across)));
    }

    /** Where the metal of a trim ends at this place across its flat, from the corner its edge starts at. */
    private static double end(Trim trim, boolean atStart, double across) {
        double end = atStart ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
        for (TrimPiece piece : trim.pieces()) {
            for (double at : crossings(piece.blank().outline(), across)) {
                double along = piece.from().metres() + at;
                end = atStart ? Math.min(end, along) : Math.max(end, along);
            }
        }
        return end;
    }

    private static List<Double> crossings(List<Point2> outline, double across) {
        List<Double> found = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            Point2 one = outline.get(i);
            Point2 other = outline.get((i + 1) % outline.size());
            if ((one.across() < across) != (other.across() < across)) {
                double part = (across - one.across()) / (other.across() - one.across());
                found.add(one.up() + part * (other.up() - one.up()));
            }
        }
        return found;
    }

    /** Of real metal: from bend to bend the cut of one blank is as long as that of the other. */
    @Test
    void theCutsOfAMitreAreAsLongOnBothBlanks() {
        List<Trim> trims = Trims.on(TrimJobs.roof(TrimJobs.winged(TrimJobs::still)), TrimJobs.usual())
                .layOut();
        for (Trim trim : trims) {
            for (Arm arm : CutEnds.arms(trim)) {
                if (trim.edge().kind() == EdgeKind.EAVE && arm.beyond()) {
                    List<Double> here = cutLengths(arm);
                    List<Double> there = cutLengths(CutEnds.met(arm, trims).orElseThrow());
                    assertThat(here).hasSize(4);
                    for (int i = 0; i < here.size(); i++) {
                        assertThat(there.get(i)).isCloseTo(here.get(i), within(NOTHING));
                    }
                }
            }
        }
    }

    private static List<Double> cutLengths(Arm arm) {
        List<Double> lines = new ArrayList<>(List.of(0.0));
        arm.trim().flat().folds().forEach(fold -> lines.add(fold.at().metres()));
        lines.add(arm.trim().flat().width().metres());
        List<Double> lengths = new ArrayList<>();
        for (int i = 0; i + 1 < lines.size(); i++) {
            // Just inside both lines, where the outline is crossed and not touched.
            double from = lines.get(i) + 1e-12;
            double to = lines.get(i + 1) - 1e-12;
            double along = end(arm.trim(), arm.atStart(), to) - end(arm.trim(), arm.atStart(), from);
            lengths.add(Math.hypot(to - from, along));
        }
        return lengths;
    }

    /** Whatever the roof: outlines run counter-clockwise from the lowest corner on the left and lie within their piece. */
    @Test
    void blanksLieWithinTheirPieces() {
        int cut = 0;
        for (Drawn drawn : TrimJobs.all(TrimJobs::still)) {
            for (Trim trim : Trims.on(TrimJobs.roof(drawn), TrimJobs.usual()).layOut()) {
                double width = trim.flat().width().metres();
                for (TrimPiece piece : trim.pieces()) {
                    List<Point2> outline = piece.blank().outline();
                    double area = area(outline);
                    assertThat(area)
                            .isPositive()
                            .isLessThanOrEqualTo(width * piece.length().metres() + NOTHING);
                    cut += area < width * piece.length().metres() - NOTHING ? 1 : 0;
                    assertSpans(outline, Point2::across, width);
                    assertSpans(outline, Point2::up, piece.length().metres());
                    assertThat(outline.get(0).across()).isCloseTo(0, within(NOTHING));
                }
            }
        }
        assertThat(cut).isGreaterThan(40);
    }

    /** Every blank lies within its piece, and there is metal to it. */
    static void assertHolds(Trim trim) {
        double width = trim.flat().width().metres();
        for (TrimPiece piece : trim.pieces()) {
            double length = piece.length().metres();
            assertThat(area(piece.blank().outline()))
                    .as(piece.toString())
                    .isPositive()
                    .isLessThanOrEqualTo(width * length + NOTHING);
            assertThat(piece.blank().outline()).allSatisfy(corner -> {
                assertThat(corner.across()).isBetween(-NOTHING, width + NOTHING);
                assertThat(corner.up()).isBetween(-NOTHING, length + NOTHING);
            });
        }
    }

    private static void assertSpans(List<Point2> outline, ToDoubleFunction<Point2> way, double length) {
        assertThat(outline.stream().mapToDouble(way).min().orElseThrow()).isCloseTo(0, within(NOTHING));
        assertThat(outline.stream().mapToDouble(way).max().orElseThrow()).isCloseTo(length, within(NOTHING));
    }

    private static double area(List<Point2> outline) {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            Point2 one = outline.get(i);
            Point2 other = outline.get((i + 1) % outline.size());
            twice += one.across() * other.up() - other.across() * one.up();
        }
        return twice / 2;
    }

    private static void assertOutline(TrimBlank blank, double[][] inches) {
        assertThat(blank.outline()).hasSize(inches.length);
        for (int i = 0; i < inches.length; i++) {
            Point2 corner = blank.outline().get(i);
            assertThat(TrimJobs.inches(Length.metres(corner.across()))).isCloseTo(inches[i][0], within(1e-7));
            assertThat(TrimJobs.inches(Length.metres(corner.up()))).isCloseTo(inches[i][1], within(1e-7));
        }
    }
}
