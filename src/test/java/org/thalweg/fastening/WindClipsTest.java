package org.thalweg.fastening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.fastening.FasteningRules.ClipRule;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Tolerance;
import org.thalweg.panel.Lead;
import org.thalweg.roof.Building;
import org.thalweg.roof.EdgeTreatments;
import org.thalweg.roof.PlaneOutline;
import org.thalweg.roof.Roof;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.roof.Roofs;
import org.thalweg.units.ForceUnit;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Pitch;
import org.thalweg.units.PressureUnit;
import org.thalweg.wind.Uplift;
import org.thalweg.wind.UpliftStretch;
import org.thalweg.wind.WindZone;
import org.thalweg.wind.WindZones;
import org.thalweg.wind.ZonePressures;

/** Clips of 150 lbf on panels of 18 in: 60 in apart at most in the field, 30 elsewhere [UFC 3-110-03 (2006) 4-8]. */
class WindClipsTest {

    private static final Path KEPT = Path.of("src/test/resources/buildings/buildings.jsonl");

    private static Point3 p(double x, double y, double z) {
        return new Point3(x * 0.0254, y * 0.0254, z * 0.0254);
    }

    private static PlaneOutline plane(String id, Point3... corners) {
        return new PlaneOutline(id, List.of(corners), List.of(), Origin.REQUEST, Origin.REQUEST);
    }

    private static Roof read(List<PlaneOutline> planes) {
        return Roofs.read(
                new RoofSurvey(planes, List.of(), Tolerance.DEFAULT, new Pitch(0.25, 12), Source.COMMON_PRACTICE));
    }

    /** 3-4-5: 192 level from eave to ridge are 240 up the slope, and 36 are 45. 540 long. */
    private static List<PlaneOutline> gable() {
        return List.of(
                plane("south", p(0, 0, 0), p(540, 0, 0), p(540, 192, 144), p(0, 192, 144)),
                plane("north", p(540, 384, 0), p(0, 384, 0), p(0, 192, 144), p(540, 192, 144)));
    }

    private static WindClips clips(Roof roof, double field, double edge, double corner) {
        PressureUnit psf = PressureUnit.POUND_FORCE_PER_SQUARE_FOOT;
        WindZones zones = WindZones.of(roof, Length.inches(36));
        ZonePressures pressures = new ZonePressures(psf.of(field), psf.of(edge), psf.of(corner));
        return WindClips.of(Uplift.given(roof, zones, pressures), ForceUnit.POUND_FORCE.of(150));
    }

    private static FasteningCase asked(Roof roof, double field, double edge, double corner) {
        return Fastened.of(roof)
                .treated(EdgeTreatments.PLAIN)
                .asked(FasteningRules.INCHES)
                .with(clips(roof, field, edge, corner));
    }

    private static Seam seam(FasteningCase asked, int strip) {
        return Seams.of(asked).seams().stream()
                .filter(seam -> seam.plane() == 0 && seam.strip() == strip)
                .findFirst()
                .orElseThrow();
    }

    private static List<Double> places(Seam seam) {
        return seam.places().stream()
                .map(place -> Math.rint(place.up() / 0.0254 * 1e6) / 1e6)
                .toList();
    }

    /**
     * By hand. Edge 50 psf: 150 / (50 · 1.5) = 2 ft. Field 20 psf: 5 ft. From 6 to 45 two gaps of 19.5, to 195 three of 50, to 234
     * two of 19.5.
     */
    @Test
    void clipsStandCloserAlongEdges() {
        Seam seam = seam(asked(read(gable()), 20, 50, 100), 15);
        assertThat(places(seam)).containsExactly(6.0, 25.5, 45.0, 95.0, 145.0, 195.0, 214.5, 234.0);
        assertThat(seam.count()).isEqualTo(8);
        assertThat(seam.runs())
                .extracting(run -> run.zone().orElseThrow())
                .containsExactly(WindZone.EDGE, WindZone.FIELD, WindZone.EDGE);
        assertThat(seam.spacing().in(LengthUnit.INCH)).isCloseTo(50, within(1e-6));
    }

    /** The seam at 18 in is within 36 of the rake: corner 100 psf, 1 ft: four gaps of 9.75; edge to 195 seven of 21.43. */
    @Test
    void clipsStandClosestAtCorners() {
        Seam seam = seam(asked(read(gable()), 20, 50, 100), 1);
        assertThat(seam.runs())
                .extracting(run -> run.zone().orElseThrow())
                .containsExactly(WindZone.CORNER, WindZone.EDGE, WindZone.CORNER);
        assertThat(seam.runs()).extracting(run -> run.row().count()).containsExactly(5, 7, 4);
        assertThat(seam.runs().get(1).row().spacing().in(LengthUnit.INCH)).isCloseTo(150.0 / 7, within(1e-6));
    }

    /** 5 psf would let them stand 20 ft apart: 60 in the field (three gaps of 50), 30 along the edges (two of 19.5). */
    @Test
    void howeverLittleTheWindClipsStandNoFurtherApartThanIsPublished() {
        assertThat(places(seam(asked(read(gable()), 5, 5, 5), 15)))
                .containsExactly(6.0, 25.5, 45.0, 95.0, 145.0, 195.0, 214.5, 234.0);
        Roof roof = read(gable());
        FasteningCase closer = Fastened.of(roof)
                .treated(EdgeTreatments.PLAIN)
                .asked(FasteningRules.INCHES)
                .with(clips(roof, 5, 5, 5).atMost(Length.inches(24)));
        // 228 from the first to the last: ten gaps of 22.8, one run, for the same is asked for everywhere.
        assertThat(seam(closer, 15).runs()).hasSize(1);
        assertThat(seam(closer, 15).count()).isEqualTo(11);
    }

    @Test
    void withoutWindTheTableOfRulesSaysHowFarApart() {
        Roof roof = read(gable());
        FasteningCase plain = Fastened.of(roof).treated(EdgeTreatments.PLAIN).asked(FasteningRules.INCHES);
        Uplift unknown = new Uplift(
                WindZones.of(roof, Length.inches(36)),
                List.of(Optional.empty(), Optional.empty()),
                Source.REQUEST,
                false,
                List.of());
        assertThat(Seams.of(plain.with(WindClips.of(unknown, ForceUnit.POUND_FORCE.of(150)))))
                .isEqualTo(Seams.of(plain));
    }

    private static ClipRuns.Part part(double from, double to, double most) {
        return new ClipRuns.Part(from * 0.0254, to * 0.0254, Length.inches(most), Optional.empty());
    }

    /** A seam of 240 in whose clips stand 6 from its ends: where parts begin and end, and how many clips each has. */
    @ParameterizedTest(name = "{0}: {3}")
    @CsvSource({
        // 4 in that ask for closer clips take 2 in of what is above.
        "40, 44, 12, 0 40 46 240 = 2 1 4",
        // 4 in that ask for wider ones go with their neighbours, which ask for the same.
        "40, 44, 90, 0 240 = 6",
        // Two inches of closer clips lie within the end distance but for one, and take five more.
        "0, 7, 12, 0 12 240 = 2 5",
    })
    void aShortPartIsNoPart(double from, double to, double most, String runs) {
        ClipRule rule = new ClipRule(Length.inches(50), Length.inches(6), 1, Source.REQUEST);
        List<ClipRuns.Part> asked = new ArrayList<>();
        if (from > 0) {
            asked.add(part(0, from, 50));
        }
        asked.add(part(from, to, most));
        asked.add(part(to, 240, 50));
        List<ClipRun> made = new ClipRuns(240 * 0.0254, rule, Tolerance.DEFAULT).of(asked);
        StringBuilder told = new StringBuilder("0");
        made.forEach(run -> told.append(' ').append(Math.round(run.to().in(LengthUnit.INCH))));
        told.append(" =");
        made.forEach(run -> told.append(' ').append(run.row().count()));
        assertThat(told).hasToString(runs);
    }

    /** Between two clips no place lies that asks for less; each run is even; every seam begins and ends as it would without. */
    private static int hold(FasteningCase asked, String what) {
        int looked = 0;
        WindClips wind = asked.wind().orElseThrow();
        double end = asked.rules().clips().endDistance().metres();
        for (Seam seam : Seams.of(asked).seams()) {
            List<Double> ups = seam.places().stream()
                    .map(place -> place.up() - seam.from().up())
                    .toList();
            double length = seam.to().up() - seam.from().up();
            assertThat(ups).as(what).hasSize(seam.count()).isNotEmpty();
            List<UpliftStretch> asks = wind.uplift()
                    .along(seam.plane(), Fastened.laid(asked, seam.plane()).frame(), seam.from(), seam.to());
            for (int i = 1; i < ups.size(); i++) {
                double most = most(asks, wind, ups.get(i - 1), ups.get(i));
                assertThat(ups.get(i) - ups.get(i - 1)).as(what).isPositive().isLessThanOrEqualTo(most + 1e-7);
            }
            assertThat(ups.get(0)).as(what).isCloseTo(ups.size() == 1 ? length / 2 : end, within(1e-9));
            assertThat(length - ups.get(ups.size() - 1))
                    .as(what)
                    .isCloseTo(ups.size() == 1 ? length / 2 : end, within(1e-9));
            looked += ups.size();
        }
        return looked;
    }

    private static double most(List<UpliftStretch> asks, WindClips wind, double from, double to) {
        return asks.stream()
                .filter(part -> part.from().metres() < to - 1e-6 && part.to().metres() > from + 1e-6)
                .mapToDouble(part -> Math.min(
                        part.zone() == WindZone.FIELD ? 1.524 : 0.762,
                        wind.allowable().newtons() / (part.uplift().pascals() * Fastened.COVER.metres())))
                .min()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"20, 50, 100", "30, 60, 60", "5, 5, 5", "40, 200, 400"})
    void noTwoClipsStandFurtherApartThanAnyPlaceBetweenThemAllows(double field, double edge, double corner) {
        assertThat(hold(asked(read(gable()), field, edge, corner), "gable")).isGreaterThan(300);
        int[] looked = {0};
        Building.in(KEPT, "").forEach(building -> {
            Roof roof = Roofs.read(building.survey());
            FasteningCase laid = Fastened.of(roof)
                    .from(Lead.LEFT, 7)
                    .asked(FasteningRules.INCHES)
                    .with(clips(roof, field, edge, corner));
            looked[0] += hold(laid, building.id());
        });
        assertThat(looked[0]).isGreaterThan(5_000);
    }

    @Test
    void aMirroredRoofHasMirroredClips() {
        UnaryOperator<Point3> mirror = place -> new Point3(-place.x(), place.y(), place.z());
        List<PlaneOutline> planes = List.of(
                plane("south", p(0, 0, 0), p(540, 0, 0), p(348, 192, 96), p(0, 192, 96)),
                plane("north", p(540, 384, 0), p(0, 384, 0), p(0, 192, 96), p(348, 192, 96)),
                plane("east", p(540, 0, 0), p(540, 384, 0), p(348, 192, 96)));
        Roof plain = read(planes);
        Roof mirrored = read(planes.stream()
                .map(plane ->
                        plane(plane.id(), plane.outline().stream().map(mirror).toArray(Point3[]::new)))
                .toList());
        List<Point3> left = new ArrayList<>(Fastened.clipsInWorld(Fastened.of(mirrored)
                .from(Lead.RIGHT, 5)
                .asked(FasteningRules.INCHES)
                .with(clips(mirrored, 20, 50, 100))));
        List<Point3> places = Fastened.clipsInWorld(Fastened.of(plain)
                .from(Lead.LEFT, 5)
                .asked(FasteningRules.INCHES)
                .with(clips(plain, 20, 50, 100)));
        assertThat(places).hasSameSizeAs(left).hasSizeGreaterThan(300);
        for (Point3 place : places) {
            Point3 there = mirror.apply(place);
            Point3 nearest = left.stream()
                    .min((a, b) -> Double.compare(a.distance(there), b.distance(there)))
                    .orElseThrow();
            assertThat(nearest.distance(there)).isLessThan(1e-6);
            left.remove(nearest);
        }
    }
}
