package org.thalweg.packet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Jts;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Region;
import org.thalweg.panel.Lead;
import org.thalweg.panel.Panel;
import org.thalweg.panel.PanelSpec;
import org.thalweg.panel.PlaneLaying;
import org.thalweg.panel.PlanePanels;
import org.thalweg.panel.Start;
import org.thalweg.reference.Gauges;
import org.thalweg.reference.Metal;
import org.thalweg.reference.Metals;
import org.thalweg.roof.Building;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.PlaneOutline;
import org.thalweg.roof.PlaneOutline.OpeningOutline;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.sealing.SealingRules;
import org.thalweg.takeoff.Ordering;
import org.thalweg.takeoff.PanelSheet;
import org.thalweg.units.Length;

/**
 * Panels on roofs that nobody here drew: what holds of every layout, held on real buildings. Sources: see
 * {@code ATTRIBUTION.md} beside the file.
 */
class RealLayoutsTest {

    private static final Path KEPT = Path.of("src/test/resources/buildings/buildings.jsonl");

    private static final PanelSpec SPEC = new PanelSpec(
            Length.metres(0.45),
            Length.metres(12),
            Length.ZERO,
            Length.metres(0.005),
            Length.ZERO,
            Length.metres(0.15),
            Length.metres(0.6));

    private static final PanelSpec SHORT = new PanelSpec(
            Length.metres(0.6),
            Length.metres(2.5),
            Length.ZERO,
            Length.metres(0.005),
            Length.ZERO,
            Length.metres(0.1),
            Length.metres(0.4));

    /** Panels end on every line; at valleys that has to be said, or the pan would hold them back. */
    private static final Map<EdgeKind, PanelEnd> PLAIN = Map.of(EdgeKind.VALLEY, treatment(0, 0));

    private static final Map<EdgeKind, PanelEnd> TREATED = treated();

    private static Map<EdgeKind, PanelEnd> treated() {
        Map<EdgeKind, PanelEnd> treated = new EnumMap<>(EdgeKind.class);
        treated.put(EdgeKind.EAVE, treatment(-0.025, 0.025));
        treated.put(EdgeKind.VALLEY, treatment(0.3, 0.025));
        treated.put(EdgeKind.RIDGE, treatment(0.025, 0.025));
        treated.put(EdgeKind.HIP, treatment(0.025, 0.025));
        treated.put(EdgeKind.OPENING, treatment(0.01, 0.04));
        return treated;
    }

    private static PanelEnd treatment(double setback, double hem) {
        return new PanelEnd(
                Optional.of(Length.metres(setback)),
                Optional.of(Length.metres(hem)),
                Optional.empty(),
                Optional.empty());
    }

    private static LayoutCase asked(RoofSurvey survey, Map<EdgeKind, PanelEnd> byKind, Lead lead) {
        Metal metal = Metals.all().get(0);
        Length thickness = Length.metres(0.0007);
        PanelSheet sheet = new PanelSheet(
                metal, thickness, Length.metres(0.52), Optional.empty(), Gauges.massPerArea(metal, thickness));
        PlaneLaying laying = new PlaneLaying(lead, new Start.Offset(Length.metres(0.17)), Optional.empty());
        return new LayoutCase(
                survey,
                SPEC,
                sheet,
                byKind,
                List.of(),
                laying,
                List.of(),
                Terms.usual(SPEC.cover()),
                Terms.trims(),
                Terms.UNDERLAY,
                SealingRules.METRIC,
                Optional.empty(),
                Ordering.plain(Length.metres(0.001)));
    }

    private static void everyPanelMovesOnce(Layout layout, String id) {
        List<String> moving = layout.movement().panels().stream()
                .flatMap(panel -> panel.held().pieces().stream())
                .map(Panel::mark)
                .toList();
        List<String> laid = layout.panels().planes().stream()
                .flatMap(plane -> plane.panels().stream())
                .map(Panel::mark)
                .toList();
        assertThat(moving).as(id).containsExactlyInAnyOrderElementsOf(laid);
    }

    /** Counting alone orders what laying out orders. */
    private static void countsAlike(Layout layout, TakenOff counted, String id) {
        assertThat(counted.order()).as(id).isEqualTo(layout.order());
        assertThat(counted.takeoff()).as(id).isEqualTo(layout.takeoff());
        assertThat(counted.fasteners().counts())
                .as(id)
                .isEqualTo(layout.fasteners().counts());
        assertThat(counted.seams()).as(id).isEqualTo(layout.seams());
        assertThat(counted.underlay()).as(id).isEqualTo(layout.underlay());
    }

    /** What was seen on a run over many buildings. */
    private static final class Tally {

        private int buildings;
        private int panels;
        private double worstArea;
        private int compared;
        private final List<String> unlikePlain = new ArrayList<>();
        private final List<String> unlikeTreated = new ArrayList<>();
        private final Map<String, Integer> refused = new TreeMap<>();
        private final Map<String, Integer> findings = new TreeMap<>();

        /** Lays one building plainly and treated, holds both against the laws, and its mirror and its copies beside it. */
        void hold(Building building) {
            Layout plain;
            try {
                plain = Layouts.layOut(asked(building.survey(), PLAIN, Lead.LEFT));
            } catch (Refused e) {
                assertThatThrownBy(() -> Layouts.takeOff(asked(building.survey(), PLAIN, Lead.LEFT)))
                        .as(building.id())
                        .isInstanceOfSatisfying(Refused.class, counted -> assertThat(counted.refusals())
                                .isEqualTo(e.refusals()));
                e.refusals().forEach(refusal -> refused.merge(refusal.code().name(), 1, Integer::sum));
                return;
            }
            buildings++;
            panels += plain.takeoff().panelCount();
            plain.panels().findings().forEach(f -> findings.merge(f.code().name(), 1, Integer::sum));
            String id = building.id();
            everyPanelMovesOnce(plain, id);
            for (PlanePanels plane : plain.panels().planes()) {
                double area = plain.roof().planes().get(plane.plane()).area().squareMetres();
                hold(plane, area, id);
            }
            Layout treated = Layouts.layOut(asked(building.survey(), TREATED, Lead.LEFT));
            for (PlanePanels plane : treated.panels().planes()) {
                hold(plane, plane.finished().stream().mapToDouble(Region::area).sum(), id);
            }
            for (Map<EdgeKind, PanelEnd> byKind : List.of(PLAIN, TREATED)) {
                Layout here = byKind == PLAIN ? plain : treated;
                countsAlike(here, Layouts.takeOff(asked(building.survey(), byKind, Lead.LEFT)), id);
                List<Layout> copies = List.of(
                        moved(building, byKind, Lead.RIGHT, p -> new Point3(-p.x(), p.y(), p.z())),
                        moved(building, byKind, Lead.LEFT, RealLayoutsTest::turnedAndMoved));
                for (Layout there : copies) {
                    compared++;
                    String difference = difference(here, there);
                    if (!difference.isEmpty()) {
                        (byKind == PLAIN ? unlikePlain : unlikeTreated).add(id + ": " + difference);
                    }
                }
            }
        }

        private void hold(PlanePanels plane, double area, String id) {
            double pieces = plane.panels().stream()
                    .mapToDouble(p -> p.finished().area())
                    .sum();
            worstArea = Math.max(worstArea, area > 0 ? Math.abs(pieces / area - 1) : 0);
            assertThat(pieces).as(id).isCloseTo(area, within(1e-9 * Math.max(area, 1)));
            var union = OverlayNGRobust.union(plane.panels().stream()
                    .map(p -> GeometryFixer.fix(Jts.polygon(
                            p.finished().moved(p.place().across(), p.place().up()))))
                    .toList());
            assertThat(union == null ? 0 : union.getArea()).as(id).isCloseTo(area, within(1e-7 * Math.max(area, 1)));
            for (Panel panel : plane.panels()) {
                assertThat(panel.width()).as(id).isLessThanOrEqualTo(Length.metres(0.45 + 1e-9));
                assertThat(panel.blankLength()).as(id).isLessThanOrEqualTo(SPEC.longest());
            }
        }

        @Override
        public String toString() {
            return "buildings laid %d, refused %s, panels %d, worst area error %.1e, findings %s%n"
                            .formatted(buildings, refused, panels, worstArea, findings)
                    + "copies compared %d, unlike when plain %s, when treated %s"
                            .formatted(compared, unlikePlain, unlikeTreated);
        }
    }

    private static Layout moved(
            Building building, Map<EdgeKind, PanelEnd> byKind, Lead lead, UnaryOperator<Point3> to) {
        RoofSurvey here = building.survey();
        List<PlaneOutline> planes = here.planes().stream()
                .map(plane -> new PlaneOutline(
                        plane.id(),
                        plane.outline().stream().map(to).toList(),
                        plane.openings().stream()
                                .map(o -> new OpeningOutline(
                                        o.id(), o.outline().stream().map(to).toList(), o.outlineAt()))
                                .toList(),
                        plane.at(),
                        plane.outlineAt()))
                .toList();
        return Layouts.layOut(asked(
                new RoofSurvey(planes, here.named(), here.tolerance(), here.leastSlope(), here.leastSlopeSource()),
                byKind,
                lead));
    }

    /** A turn of about 36.87° (3-4-5) and a long way off. */
    private static Point3 turnedAndMoved(Point3 p) {
        return new Point3(0.8 * p.x() - 0.6 * p.y() + 1000, 0.6 * p.x() + 0.8 * p.y() - 2000, p.z() + 50);
    }

    /** Moved, turned or mirrored, a roof orders the same blanks; but for one that stands on the edge of an increment. */
    private static String difference(Layout here, Layout there) {
        double ordered = there.takeoff().orderedLength().metres()
                - here.takeoff().orderedLength().metres();
        double shown = there.takeoff().finishedArea().squareMetres()
                - here.takeoff().finishedArea().squareMetres();
        int panels = there.takeoff().panelCount() - here.takeoff().panelCount();
        boolean same = panels == 0 && Math.abs(ordered) <= 0.005 + 1e-9 && Math.abs(shown) <= 1e-5;
        return same ? "" : "%d panels, %.3f m ordered, %.1e m2 shown".formatted(panels, ordered, shown);
    }

    @Test
    void theBuildingsKeptHereAreLaidByTheLaws() {
        Tally tally = new Tally();
        Building.in(KEPT, "").forEach(tally::hold);
        assertThat(tally.buildings).isEqualTo(36);
        assertThat(tally.refused).isEmpty();
        assertThat(tally.panels).isGreaterThan(3_000);
        assertThat(tally.unlikePlain).isEmpty();
        assertThat(tally.unlikeTreated).isEmpty();
    }

    /**
     * Set-backs of either sign up to half a metre, hems, turn-ups and short blanks at random, on roofs with sides far shorter
     * than that: whatever is left is covered, and every blank holds what shows of it.
     */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24})
    void harshTreatmentsLeaveNothingUncovered(long seed) {
        Random random = new Random(seed);
        Building.in(KEPT, "").forEach(building -> {
            Map<EdgeKind, PanelEnd> harsh = new EnumMap<>(EdgeKind.class);
            for (EdgeKind kind : EdgeKind.values()) {
                harsh.put(kind, treatment(random.nextDouble() * 0.9 - 0.3, random.nextInt(4) * 0.03));
            }
            LayoutCase mild = asked(building.survey(), harsh, random.nextBoolean() ? Lead.LEFT : Lead.RIGHT);
            Start start = random.nextBoolean() ? new Start.LeastWaste() : new Start.Centred();
            Layout layout = Layouts.layOut(new LayoutCase(
                    mild.survey(),
                    random.nextInt(3) == 0 ? SHORT : SPEC,
                    mild.sheet(),
                    mild.byKind(),
                    List.of(),
                    new PlaneLaying(mild.laying().lead(), start, Optional.empty()),
                    List.of(),
                    mild.valleys(),
                    mild.trims(),
                    mild.underlay(),
                    mild.sealing(),
                    mild.wind(),
                    mild.ordering()));
            for (PlanePanels plane : layout.panels().planes()) {
                double left =
                        plane.finished().stream().mapToDouble(Region::area).sum();
                double shown = plane.panels().stream()
                        .mapToDouble(p -> p.finished().area())
                        .sum();
                assertThat(shown).as(building.id()).isCloseTo(left, within(1e-9 * Math.max(left, 1)));
                for (Panel panel : plane.panels()) {
                    assertThat(panel.cut().area())
                            .as(panel.mark())
                            .isGreaterThanOrEqualTo(panel.finished().area() - 1e-5);
                }
            }
        });
    }

    /** Every clean building of a folder of folders: run with {@code -Dthalweg.buildings=FOLDER}. Prints the counts. */
    @Test
    @EnabledIfSystemProperty(named = "thalweg.buildings", matches = ".+")
    void everyCleanBuildingOfAFolderIsLaidByTheLaws() {
        Tally tally = new Tally();
        Building.inFolder().filter(Building::clean).forEach(tally::hold);
        System.out.println(tally);
        assertThat(tally.buildings).isPositive();
        assertThat(tally.unlikePlain).isEmpty();
    }
}
