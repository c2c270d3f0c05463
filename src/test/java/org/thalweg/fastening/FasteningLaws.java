package org.thalweg.fastening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.geometry.Jts;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Side;
import org.thalweg.panel.Cut;
import org.thalweg.panel.Panel;
import org.thalweg.panel.PlanePanels;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.Plane;

/** What holds of the fasteners and clips of every roof, held by looking at every single one with JTS. */
final class FasteningLaws {

    private static final double NOTHING = 1e-7;

    private final FasteningCase asked;
    private final FastenerRows rows;
    private final Seams seams;
    private final String what;
    private final Map<Integer, Geometry> decks = new HashMap<>();
    private int lone;

    private FasteningLaws(FasteningCase asked, String what) {
        this.asked = asked;
        this.rows = FastenerRows.of(asked);
        this.seams = Seams.of(asked);
        this.what = what;
    }

    /** Holds them all; tells how many fasteners and clips were looked at. */
    static int hold(FasteningCase asked, String what) {
        FasteningLaws laws = new FasteningLaws(asked, what);
        int looked = 0;
        for (FastenerRow row : laws.rows.rows()) {
            laws.standsEvenly(row);
            for (Point2 place : row.places()) {
                laws.standsOnItsPlane(row, place);
                laws.standsOutOfTheWater(row, place);
                row.panel().ifPresent(panel -> laws.standsOnItsPanel(panel, place, row));
                looked++;
            }
        }
        laws.everyLoneFastenerTooNearIsAFinding();
        laws.everyEndOfAPanelIsFastenedOrAFinding();
        laws.everySeamHasItsClips();
        return looked + laws.seams.clipCount();
    }

    private void standsEvenly(FastenerRow row) {
        List<Point2> places = row.places();
        assertThat(places).as(what).hasSize(row.count()).isNotEmpty();
        double most = asked.rules().of(row.kind()).maxSpacing().metres();
        for (int i = 1; i < places.size(); i++) {
            double apart = places.get(i).distance(places.get(i - 1));
            assertThat(apart).as(what).isCloseTo(row.row().spacing().metres(), within(1e-9));
            assertThat(apart).as(what).isLessThanOrEqualTo(most + 1e-7);
        }
        if (row.count() > 1) {
            double length = row.from().distance(row.to());
            assertThat(places.get(0).distance(row.from())).as(what).isLessThan(1e-9);
            assertThat(places.get(places.size() - 1).distance(row.to()))
                    .as(what)
                    .isLessThan(1e-9);
            if (row.count() > 2) {
                assertThat(length / (row.count() - 2))
                        .as("%s: one too many", what)
                        .isGreaterThan(most);
            }
        }
    }

    private void standsOnItsPlane(FastenerRow row, Point2 place) {
        Geometry deck = decks.computeIfAbsent(row.plane(), plane -> {
            PlanePanels laid = Fastened.laid(asked, plane);
            return fixed(deck(asked.roof().planes().get(plane), laid));
        });
        assertThat(deck.distance(point(place)))
                .as("%s: %s off the plane", what, row)
                .isLessThan(NOTHING);
    }

    /** Beside every valley panels are held back at, as far as they are. */
    private void standsOutOfTheWater(FastenerRow row, Point2 place) {
        PlanePanels laid = Fastened.laid(asked, row.plane());
        Region deck = deck(asked.roof().planes().get(row.plane()), laid);
        List<Ring> rings = new ArrayList<>(deck.openings());
        rings.add(deck.outer());
        for (Ring ring : rings) {
            for (int side = 0; side < ring.size(); side++) {
                if (asked.roof().edges().get(ring.tag(side)).kind() == EdgeKind.VALLEY) {
                    standsOutOfTheWater(row, place, ring, side);
                }
            }
        }
    }

    private void standsOutOfTheWater(FastenerRow row, Point2 place, Ring ring, int side) {
        Point2 a = ring.corner(side);
        Point2 b = ring.corner(ring.next(side));
        double length = a.distance(b);
        double along =
                ((place.across() - a.across()) * (b.across() - a.across()) + (place.up() - a.up()) * (b.up() - a.up()))
                        / length;
        double past = Math.max(-along, along - length);
        int beyond = -along > along - length ? (side == 0 ? ring.size() : side) - 1 : ring.next(ring.next(side));
        Point2 corner = -along > along - length ? a : b;
        Point2 next = ring.corner(beyond);
        if (past < -NOTHING
                || (past > NOTHING
                        && Orientation.index(coordinate(a), coordinate(b), coordinate(next)) > 0
                        && between(corner, next, corner == a ? b : a, place))) {
            EdgeTreatment treatment = asked.treatments().get(ring.tag(side));
            double atA = (a.up() <= b.up() ? treatment.setback() : treatment.setbackAtTop()).metres();
            double atB = (a.up() <= b.up() ? treatment.setbackAtTop() : treatment.setback()).metres();
            // No valley widens by more than an inch to the foot; the crooked ones of the seeds do, and end as wide as
            // they are.
            boolean goesOn = Math.abs(atB - atA) < length / 12;
            double share = goesOn ? along / length : Math.max(0, Math.min(1, along / length));
            double open = atA + (atB - atA) * share;
            // Metal lies to the left of a side, and so does its water way.
            boolean left = Orientation.index(coordinate(a), coordinate(b), coordinate(place)) >= 0;
            double off = Distance.pointToLinePerpendicular(coordinate(place), coordinate(a), coordinate(b));
            assertThat(left ? off : Double.POSITIVE_INFINITY)
                    .as("%s: %s in the water way", what, row)
                    .isGreaterThan(open - 1e-6);
        }
    }

    /** Past the end of a low but no further than the next side of an obtuse corner, and less than a valley's width away. */
    private static boolean between(Point2 corner, Point2 next, Point2 low, Point2 place) {
        double turn = angle(corner, low, next);
        return turn < Math.toRadians(178)
                && place.distance(corner) < 1
                && angle(corner, low, place) < turn - NOTHING
                && angle(corner, place, next) < turn;
    }

    private static double angle(Point2 at, Point2 one, Point2 other) {
        return Angle.angleBetween(coordinate(one), coordinate(at), coordinate(other));
    }

    private void standsOnItsPanel(Panel panel, Point2 place, FastenerRow row) {
        double across = place.across() - panel.place().across();
        double clearance = asked.rules().ribClearance().metres();
        assertThat(across)
                .as("%s: %s", what, row)
                .isBetween(clearance - 1e-9, asked.spec().cover().metres() - clearance + 1e-9);
        Region shown =
                panel.finished().moved(panel.place().across(), panel.place().up());
        assertThat(fixed(shown).distance(point(place)))
                .as("%s: %s off its panel", what, row)
                .isLessThan(NOTHING);
        double edge = asked.rules().edgeDistance().metres();
        if (nearestOther(shown, place, row) < edge - 1e-6) {
            assertThat(row.count()).as("%s: %s too near an edge", what, row).isEqualTo(1);
            lone++;
        }
    }

    /** How far the nearest side is that is neither a rib nor in line with the row's own. */
    private double nearestOther(Region shown, Point2 place, FastenerRow row) {
        double nearest = Double.POSITIVE_INFINITY;
        List<Ring> rings = new ArrayList<>(shown.openings());
        rings.add(shown.outer());
        for (Ring ring : rings) {
            for (int side = 0; side < ring.size(); side++) {
                if (ring.tag(side) != Side.RIB && ring.tag(side) != row.edge()) {
                    nearest = Math.min(
                            nearest,
                            Distance.pointToSegment(
                                    coordinate(place),
                                    coordinate(ring.corner(side)),
                                    coordinate(ring.corner(ring.next(side)))));
                }
            }
        }
        return nearest;
    }

    private void everyLoneFastenerTooNearIsAFinding() {
        long told = rows.findings().stream()
                .map(Finding::code)
                .filter(FindingCode.ROW_TOO_SHORT::equals)
                .count();
        assertThat(told).as(what).isGreaterThanOrEqualTo(lone);
    }

    private void everyEndOfAPanelIsFastenedOrAFinding() {
        Set<String> told = new HashSet<>();
        rows.findings().forEach(finding -> told.add(finding.place().id()));
        Set<String> fastened = new HashSet<>();
        for (FastenerRow row : rows.rows()) {
            row.panel().ifPresent(panel -> fastened.add(panel.mark() + " " + row.edge()));
        }
        for (PlanePanels laid : asked.panels().planes()) {
            for (Panel panel : laid.panels()) {
                List<Ring> rings = new ArrayList<>(panel.finished().openings());
                rings.add(panel.finished().outer());
                for (Ring ring : rings) {
                    for (int side = 0; side < ring.size(); side++) {
                        if (piercedAt(ring, side) && !told.contains(panel.mark())) {
                            assertThat(fastened)
                                    .as("%s: %s", what, panel)
                                    .contains(panel.mark() + " " + ring.tag(side));
                        }
                    }
                }
            }
        }
    }

    private boolean piercedAt(Ring ring, int side) {
        Point2 from = ring.corner(side);
        Point2 to = ring.corner(ring.next(side));
        if (ring.tag(side) < 0 || from.distance(to) <= asked.roof().tolerance().metres()) {
            return false;
        }
        boolean beside = asked.roof().tolerance().same(from.across(), to.across());
        Cut.End end = beside ? Cut.End.LEFT : to.across() > from.across() ? Cut.End.LOWER : Cut.End.UPPER;
        return FastenerKind.at(
                        asked.roof().edges().get(ring.tag(side)).kind(),
                        end,
                        asked.holds().get(ring.tag(side)))
                .filter(FastenerKind::throughPanel)
                .isPresent();
    }

    /** Where finished metal lies on both hands of a rib line, found by slicing the plane beside it with JTS, there are clips. */
    private void everySeamHasItsClips() {
        double most = asked.rules().clips().maxSpacing().metres();
        for (Seam seam : seams.seams()) {
            List<Point2> places = seam.places();
            assertThat(places).as(what).isNotEmpty();
            assertThat(places.get(0).up()).as(what).isGreaterThan(seam.from().up());
            assertThat(places.get(places.size() - 1).up())
                    .as(what)
                    .isLessThan(seam.to().up());
            for (int i = 1; i < places.size(); i++) {
                assertThat(places.get(i).up() - places.get(i - 1).up())
                        .as(what)
                        .isCloseTo(seam.spacing().metres(), within(1e-9))
                        .isLessThanOrEqualTo(most + 1e-7);
            }
        }
        for (PlanePanels laid : asked.panels().planes()) {
            double listed = seams.seams().stream()
                    .filter(seam -> seam.plane() == laid.plane())
                    .mapToDouble(seam -> seam.to().up() - seam.from().up())
                    .sum();
            assertThat(listed)
                    .as("%s: seams of plane %d", what, laid.plane())
                    .isCloseTo(sliced(laid), within(1e-3 * (1 + laid.panels().size())));
        }
    }

    private double sliced(PlanePanels laid) {
        double cover = asked.spec().cover().metres();
        List<Double> lines = laid.panels().stream()
                .map(panel -> panel.place().across() + cover)
                .sorted()
                .toList();
        double sum = 0;
        double last = Double.NEGATIVE_INFINITY;
        for (double across : lines) {
            if (across > last + 1e-6) {
                for (Region finished : laid.finished()) {
                    sum += slice(fixed(finished), across);
                }
                last = across;
            }
        }
        return sum;
    }

    private static double slice(Geometry metal, double across) {
        double beside = 1e-6;
        double low = metal.getEnvelopeInternal().getMinY() - 1;
        double high = metal.getEnvelopeInternal().getMaxY() + 1;
        Geometry left = slice(metal, across - beside, low, high);
        Geometry right = slice(metal, across + beside, low, high);
        return OverlayNGRobust.overlay(
                        AffineTransformation.translationInstance(beside, 0).transform(left),
                        AffineTransformation.translationInstance(-beside, 0).transform(right),
                        OverlayNG.INTERSECTION)
                .getLength();
    }

    private static Geometry slice(Geometry metal, double across, double low, double high) {
        return OverlayNGRobust.overlay(
                metal,
                Jts.FACTORY.createLineString(
                        new Coordinate[] {new Coordinate(across, low), new Coordinate(across, high)}),
                OverlayNG.INTERSECTION);
    }

    private static Geometry fixed(Region region) {
        Polygon polygon = Jts.polygon(region);
        return polygon.isValid() ? polygon : GeometryFixer.fix(polygon);
    }

    private static Geometry point(Point2 place) {
        return Jts.FACTORY.createPoint(coordinate(place));
    }

    private static Coordinate coordinate(Point2 place) {
        return new Coordinate(place.across(), place.up());
    }

    /** A plane in the frame its panels are placed in. */
    private static Region deck(Plane plane, PlanePanels laid) {
        return laid.frame().from(plane.frame(), plane.shape());
    }
}
