package org.thalweg.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.thalweg.geometry.Jts;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Shapes;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.EdgeTreatments;
import org.thalweg.units.Length;

/** What holds of every layout, on a few thousand crooked planes made from seeds. */
class PanelLawsTest {

    private static final double COVER = 1.7;

    private record Case(long seed, Region plane, EdgeTreatments treatments, PanelSpec spec, double offset) {}

    private static List<Case> cases(long firstSeed, int count) {
        return java.util.stream.LongStream.range(firstSeed, firstSeed + count)
                .boxed()
                .flatMap(seed -> Shapes.crooked(seed).stream().map(plane -> someCase(seed, plane)))
                .toList();
    }

    private static Case someCase(long seed, Region plane) {
        Random random = new Random(seed);
        Map<Integer, EdgeTreatment> bySide = new HashMap<>();
        if (seed % 3 != 0) {
            addTreatments(plane.outer(), random, bySide);
            plane.openings().forEach(opening -> addTreatments(opening, random, bySide));
        }
        double longest = seed % 5 == 0 ? 5 : 100;
        PanelSpec spec = Flat.spec(COVER, longest, 0.01, 0);
        return new Case(seed, plane, Flat.treated(bySide), spec, random.nextInt(3) * random.nextDouble() * 0.8);
    }

    private static void addTreatments(Ring ring, Random random, Map<Integer, EdgeTreatment> bySide) {
        for (int i = 0; i < ring.size(); i++) {
            double setback = random.nextInt(4) * 0.05 - 0.05;
            double atTop = random.nextInt(3) == 0 ? setback - 0.1 * random.nextDouble() : setback;
            Length hem = Length.metres(random.nextInt(2) * 0.03);
            bySide.put(ring.tag(i), new EdgeTreatment(Length.metres(setback), Length.metres(atTop), hem, Length.ZERO));
        }
    }

    private static PlanePanels lay(Case c, Region plane, EdgeTreatments treatments, Lead lead) {
        return Flat.lay(plane, c.spec, treatments, lead, Flat.offset(c.offset));
    }

    @ParameterizedTest(name = "seeds from {0}")
    @ValueSource(longs = {10_000, 20_000})
    void finishedPiecesAreDisjointAndCoverTheFinishedOutline(long firstSeed) {
        for (Case c : cases(firstSeed, 700)) {
            PlanePanels laid = lay(c, c.plane, c.treatments, Lead.LEFT);
            double finished = laid.finished().stream().mapToDouble(Region::area).sum();
            double pieces =
                    laid.panels().stream().mapToDouble(p -> p.finished().area()).sum();
            assertThat(pieces).as("seed %d", c.seed).isCloseTo(finished, within(1e-9 * c.plane.area()));
            Geometry union = OverlayNGRobust.union(laid.panels().stream()
                    .map(p -> p.finished().moved(p.place().across(), p.place().up()))
                    .map(region -> GeometryFixer.fix(Jts.polygon(region)))
                    .toList());
            double covered = union == null ? 0 : union.getArea();
            assertThat(covered).as("seed %d", c.seed).isCloseTo(finished, within(1e-7));
        }
    }

    @Test
    void noFinishedPieceIsWiderThanTheCoverAndNoBlankLongerThanTheLongest() {
        for (Case c : cases(30_000, 1_000)) {
            for (Panel panel : lay(c, c.plane, c.treatments, Lead.RIGHT).panels()) {
                assertThat(panel.width().metres()).as("seed %d", c.seed).isLessThanOrEqualTo(COVER + 1e-9);
                assertThat(panel.blankLength()).as("seed %d", c.seed).isLessThanOrEqualTo(c.spec.longest());
                assertThat(panel.cut().outer().leastUp()).as("seed %d", c.seed).isEqualTo(0);
            }
        }
    }

    @Test
    void aMirroredPlaneIsLaidAsTheMirrorOfThePlane() {
        for (Case c : cases(40_000, 1_000)) {
            PlanePanels plain = lay(c, c.plane, c.treatments, Lead.LEFT);
            PlanePanels mirrored = lay(c, mirrored(c.plane), c.treatments, Lead.RIGHT);
            assertThat(mirrored.panels()).as("seed %d", c.seed).hasSameSizeAs(plain.panels());
            for (int i = 0; i < plain.panels().size(); i++) {
                Panel a = plain.panels().get(i);
                Panel b = mirrored.panels().get(i);
                assertThat(b.strip()).as("seed %d", c.seed).isEqualTo(a.strip());
                assertThat(b.place().across() + COVER)
                        .as("seed %d", c.seed)
                        .isCloseTo(-a.place().across(), within(1e-6));
            }
            assertThat(sizes(mirrored)).as("seed %d", c.seed).hasSameSizeAs(sizes(plain));
            for (int i = 0; i < plain.panels().size(); i++) {
                assertThat(sizes(mirrored).get(i))
                        .as("seed %d", c.seed)
                        .isCloseTo(sizes(plain).get(i), within(1e-6));
            }
        }
    }

    private static List<Double> sizes(PlanePanels laid) {
        return laid.panels().stream()
                .sorted(Comparator.comparingInt(Panel::strip)
                        .thenComparingDouble(p -> p.finished().area()))
                .map(p -> p.finished().area())
                .toList();
    }

    @Test
    void aMovedPlaneIsLaidTheSame() {
        for (Case c : cases(50_000, 500)) {
            PlanePanels plain = lay(c, c.plane, c.treatments, Lead.LEFT);
            PlanePanels moved = lay(c, c.plane.moved(17.3, -4.9), c.treatments, Lead.LEFT);
            assertThat(moved.panels()).as("seed %d", c.seed).hasSameSizeAs(plain.panels());
            for (int i = 0; i < plain.panels().size(); i++) {
                assertThat(moved.panels().get(i).finished().area())
                        .as("seed %d", c.seed)
                        .isCloseTo(plain.panels().get(i).finished().area(), within(1e-6));
            }
        }
    }

    /**
     * The clever search against a slow one that tries a thousand offsets. No hems here: on planes this crooked those of
     * one piece run into the next, which is a known limit of the search.
     */
    @ParameterizedTest(name = "seeds from {0}")
    @ValueSource(longs = {60_000, 70_000})
    void noOffsetOnAFineGridOrdersLessThanTheLeastWaste(long firstSeed) {
        for (Case c : cases(firstSeed, 40)) {
            double narrow = c.seed % 2 == 0 ? 0.2 : 0;
            PanelSpec spec = Flat.spec(COVER, 100, c.seed % 3 == 0 ? 0.25 : 0.02, narrow);
            noneBetter(c.seed, c.plane, unhemmed(c), spec);
        }
    }

    /** Convex planes, so that no lap parts a panel; lengths of up to four blanks. */
    @Test
    void noOffsetOnAFineGridOrdersLessThanTheLeastWasteWhenPanelsAreLapped() {
        for (long seed = 80_000; seed < 80_060; seed++) {
            Random random = new Random(seed);
            Region plane = Shapes.region(
                    0, 0, 9 + random.nextDouble(), random.nextDouble() * 2, 5 + random.nextDouble() * 3, 19, 2, 17);
            Map<Integer, EdgeTreatment> bySide = new HashMap<>();
            addTreatments(plane.outer(), random, bySide);
            noneBetter(seed, plane, Flat.treated(bySide), Flat.spec(COVER, 5, seed % 2 == 0 ? 0.25 : 0.02, 0));
        }
    }

    private static EdgeTreatments unhemmed(Case c) {
        Map<Integer, EdgeTreatment> bySide = new HashMap<>();
        List<EdgeTreatment> all = c.treatments.of(Flat.roof(c.plane));
        for (int side = 0; side < all.size(); side++) {
            EdgeTreatment treatment = all.get(side);
            bySide.put(
                    side,
                    Flat.tapered(
                            treatment.setback().metres(),
                            treatment.setbackAtTop().metres()));
        }
        return Flat.treated(bySide);
    }

    private static void noneBetter(long seed, Region plane, EdgeTreatments treatments, PanelSpec spec) {
        PlanePanels best = Flat.lay(plane, spec, treatments, Lead.LEFT, new Start.LeastWaste());
        boolean sliver = sliver(best, spec);
        for (int step = 0; step < 1_000; step++) {
            PlanePanels other = Flat.lay(plane, spec, treatments, Lead.LEFT, Flat.offset(COVER * step / 1_000));
            if (sliver(other, spec) == sliver) {
                assertThat(ordered(best))
                        .as("seed %d: best at %s, other at %s", seed, best.start(), other.start())
                        .isLessThanOrEqualTo(ordered(other) + 1e-6);
            } else {
                assertThat(sliver(other, spec))
                        .as("seed %d: a sliver at %s, none at %s", seed, best.start(), other.start())
                        .isTrue();
            }
        }
    }

    private static double ordered(PlanePanels laid) {
        return laid.panels().stream().mapToDouble(p -> p.blankLength().metres()).sum();
    }

    private static boolean sliver(PlanePanels laid, PanelSpec spec) {
        return laid.panels().stream()
                .anyMatch(p -> p.width().metres() < spec.narrowestRip().metres() - Tolerance.DEFAULT.hair());
    }

    private static Region mirrored(Region region) {
        return new Region(
                mirrored(region.outer()),
                region.openings().stream().map(PanelLawsTest::mirrored).toList());
    }

    private static Ring mirrored(Ring ring) {
        int n = ring.size();
        double[] across = new double[n];
        double[] up = new double[n];
        int[] tag = new int[n];
        for (int i = 0; i < n; i++) {
            across[i] = -ring.across(n - 1 - i);
            up[i] = ring.up(n - 1 - i);
            tag[i] = ring.tag(i == n - 1 ? n - 1 : n - 2 - i);
        }
        return new Ring(across, up, tag);
    }
}
