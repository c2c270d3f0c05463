package org.thalweg.underlayment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Jts;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Shapes;
import org.thalweg.panel.Flat;
import org.thalweg.roof.Building;
import org.thalweg.roof.PlaneOutline;
import org.thalweg.roof.PlaneOutline.OpeningOutline;
import org.thalweg.roof.Roof;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.roof.Roofs;
import org.thalweg.underlayment.Course.Run;
import org.thalweg.underlayment.Course.Sheet;
import org.thalweg.underlayment.Underlay.PlaneUnderlay;
import org.thalweg.underlayment.Underlay.RollOrder;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/** What holds of every underlayment, on crooked planes made from seeds and on buildings that nobody here drew. */
class UnderlayLawsTest {

    private static final Path KEPT = Path.of("src/test/resources/buildings/buildings.jsonl");

    private static Roll roll(double width, double length, double sideLap, double endLap, double apart) {
        return new Roll(
                Length.metres(width),
                Length.metres(length),
                Length.metres(sideLap),
                Length.metres(endLap),
                Length.metres(apart));
    }

    private static final Roll USUAL = roll(1, 25, 0.05, 0.1, 1.8);

    private static Geometry rectangle(Run run, Course course) {
        return Jts.FACTORY.toGeometry(new Envelope(
                run.from().metres(),
                run.to().metres(),
                course.from().metres(),
                course.to().metres()));
    }

    /** JTS says what a course must reach: every connected part of the plane within it, and nothing else. */
    private static void assertReaches(Course course, Geometry plane, double up) {
        Geometry band = Jts.FACTORY.toGeometry(new Envelope(
                plane.getEnvelopeInternal().getMinX() - 1,
                plane.getEnvelopeInternal().getMaxX() + 1,
                course.from().metres(),
                course.to().metres()));
        Geometry within = Jts.areas(OverlayNGRobust.overlay(plane, band, OverlayNG.INTERSECTION));
        List<Envelope> parts = new ArrayList<>();
        for (int i = 0; i < within.getNumGeometries(); i++) {
            parts.add(within.getGeometryN(i).getEnvelopeInternal());
        }
        for (Run run : course.runs()) {
            assertThat(parts)
                    .as("starts at a part")
                    .anyMatch(p -> Math.abs(p.getMinX() - run.from().metres()) < 1e-6);
            assertThat(parts)
                    .as("ends at a part")
                    .anyMatch(p -> Math.abs(p.getMaxX() - run.to().metres()) < 1e-6);
        }
        for (Envelope part : parts) {
            assertThat(course.runs())
                    .as("part of %s up to %s", part, up)
                    .anyMatch(run -> part.getWidth() < 1e-6
                            || (run.from().metres() < part.getMinX() + 1e-6
                                    && run.to().metres() > part.getMaxX() - 1e-6));
        }
    }

    private static void assertSheets(Run run, Roll roll) {
        List<Sheet> sheets = run.sheets();
        assertThat(sheets.get(0).from()).isEqualTo(run.from());
        assertThat(sheets.get(sheets.size() - 1).end()).isCloseTo(run.to().metres(), within(1e-9));
        for (int i = 0; i < sheets.size(); i++) {
            assertThat(sheets.get(i).length().metres())
                    .isBetween(0.0, roll.length().metres() + 1e-9);
            if (i > 0) {
                assertThat(sheets.get(i - 1).end() - sheets.get(i).from().metres())
                        .as("end lap")
                        .isCloseTo(roll.endLap().metres(), within(1e-9));
            }
        }
    }

    private static void assertHolds(Underlay laid, Roof roof) {
        Roll roll = laid.roll();
        for (PlaneUnderlay plane : laid.planes()) {
            Region shape = roof.planes().get(plane.plane()).shape();
            Geometry known = GeometryFixer.fix(Jts.polygon(shape));
            List<Geometry> sheets = new ArrayList<>();
            for (int i = 0; i < plane.courses().size(); i++) {
                Course course = plane.courses().get(i);
                assertThat(course.from().metres()).isCloseTo(i * roll.exposure(), within(1e-9));
                assertReaches(course, known, shape.outer().mostUp());
                for (Run run : course.runs()) {
                    assertSheets(run, roll);
                    sheets.add(rectangle(run, course));
                }
            }
            Geometry bare = OverlayNGRobust.overlay(known, OverlayNGRobust.union(sheets), OverlayNG.DIFFERENCE);
            assertThat(bare.getArea()).as("bare of " + plane.plane()).isLessThan(1e-6);
        }
        RollOrder order = laid.order();
        assertThat(order.rolls() * roll.length().metres())
                .isCloseTo(
                        order.rolledOut().metres()
                                + order.setAside().metres()
                                + order.rest().metres(),
                        within(1e-6));
        assertThat(order.area().squareMetres())
                .isGreaterThanOrEqualTo(laid.net().squareMetres() - 1e-6);
    }

    @ParameterizedTest(name = "seeds from {0}")
    @ValueSource(longs = {710_000, 720_000})
    void coursesCoverPlanesAsCrookedAsTheyCome(long seeds) {
        for (long seed = seeds; seed < seeds + 150; seed++) {
            Random random = new Random(seed);
            double width = 0.3 + random.nextDouble() * 2;
            Roll roll = roll(
                    width,
                    3 + random.nextDouble() * 20,
                    width * random.nextInt(4) / 5,
                    random.nextDouble() * 0.3,
                    random.nextDouble());
            for (Region shape : Shapes.crooked(seed)) {
                Region low =
                        shape.moved(-shape.outer().leastAcross(), -shape.outer().leastUp());
                Roof roof = Flat.roof(low);
                assertHolds(Underlay.of(roof, roll), roof);
            }
        }
    }

    /** Laps keep their distance wherever rolls are long enough for it. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void endLapsOfLongRollsKeepTheirDistance(long seed) {
        Random random = new Random(seed);
        Roll roll = roll(1, 24 + random.nextDouble() * 12, 0.05, 0.1, 1.8);
        double wide = 40 + random.nextDouble() * 90;
        Underlay laid = Underlay.of(Flat.roof(Shapes.region(0, 0, wide, 0, wide * 0.8, 30, wide * 0.3, 30)), roll);
        assertThat(laid.order().nearest()).isPresent();
        assertThat(laid.order().nearest().orElseThrow().metres()).isGreaterThan(1.8 - 1e-6);
    }

    private static RoofSurvey mirrored(RoofSurvey here) {
        List<PlaneOutline> planes = here.planes().stream()
                .map(plane -> new PlaneOutline(
                        plane.id(),
                        mirrored(plane.outline()),
                        plane.openings().stream()
                                .map(o -> new OpeningOutline(o.id(), mirrored(o.outline()), o.outlineAt()))
                                .toList(),
                        plane.at(),
                        plane.outlineAt()))
                .toList();
        return new RoofSurvey(planes, here.named(), here.tolerance(), here.leastSlope(), here.leastSlopeSource());
    }

    private static List<Point3> mirrored(List<Point3> corners) {
        return corners.stream().map(p -> new Point3(-p.x(), p.y(), p.z())).toList();
    }

    private static int count;

    private static void hold(Building building) {
        Roof roof;
        try {
            roof = Roofs.read(building.survey());
        } catch (Refused e) {
            return;
        }
        count++;
        Underlay laid = Underlay.of(roof, USUAL);
        assertHolds(laid, roof);
        IceBarrier barrier = IceBarrier.of(
                roof,
                new IceSpec(
                        Length.metres(0.4),
                        Length.metres(0.61),
                        new Pitch(8, 12),
                        Length.metres(0.914),
                        Length.metres(0.914),
                        USUAL));
        barrier.strips().forEach(strip -> assertThat(strip.courses())
                .as(building.id())
                .isNotEmpty()
                .allSatisfy(course -> course.runs().forEach(run -> assertSheets(run, USUAL))));
        Underlay other = Underlay.of(Roofs.read(mirrored(building.survey())), USUAL);
        for (int i = 0; i < laid.planes().size(); i++) {
            if (!roof.planes().get(i).level()) {
                assertThat(lengths(other.planes().get(i)))
                        .as(building.id())
                        .isCloseTo(lengths(laid.planes().get(i)), within(1e-5));
            }
        }
    }

    private static double lengths(PlaneUnderlay plane) {
        return plane.courses().stream()
                .flatMap(course -> course.runs().stream())
                .mapToDouble(run -> run.length().metres())
                .sum();
    }

    @Test
    void theBuildingsKeptHereAreCovered() {
        count = 0;
        Building.in(KEPT, "").forEach(UnderlayLawsTest::hold);
        assertThat(count).isEqualTo(36);
    }

    /** Every clean building of a folder of folders: run with {@code -Dthalweg.buildings=FOLDER}. */
    @Test
    @EnabledIfSystemProperty(named = "thalweg.buildings", matches = ".+")
    void everyCleanBuildingOfAFolderIsCovered() {
        count = 0;
        Building.inFolder().filter(Building::clean).forEach(UnderlayLawsTest::hold);
        System.out.println("buildings covered " + count);
        assertThat(count).isPositive();
    }
}
