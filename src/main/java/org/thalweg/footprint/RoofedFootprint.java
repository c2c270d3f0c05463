package org.thalweg.footprint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.footprint.FootprintSurvey.Side;
import org.thalweg.footprint.RoofOver.Bound;
import org.thalweg.footprint.RoofOver.BoundKind;
import org.thalweg.footprint.RoofOver.Corner;
import org.thalweg.footprint.RoofOver.Slope;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.NamedEdge;
import org.thalweg.roof.PlaneOutline;
import org.thalweg.roof.PlaneOutline.OpeningOutline;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Length;

/**
 * Finds the roof over a plan of walls and makes a survey of it, which is read like any other. A slope is called as the side it
 * rises from. Its line along a wall came from that wall and is called as it; all its other lines came from its own side.
 */
public final class RoofedFootprint {

    private final FootprintSurvey survey;
    private final RoofOver roof;
    private final List<WallSide> sides;
    private final List<Point3> corners = new ArrayList<>();
    private final List<NamedEdge> walls = new ArrayList<>();
    /** By the side whose eave stands out over a slope. */
    private final Map<Integer, Refusal> overRoofs = new TreeMap<>();
    /** How many planes have been called by a name. */
    private final Map<String, Integer> called = new HashMap<>();

    private RoofedFootprint(FootprintSurvey survey, Footprint eaves, RoofOver roof) {
        this.survey = survey;
        this.roof = roof;
        sides = survey.walls().rings().stream().flatMap(List::stream).toList();
        for (Corner corner : SharpCorners.of(eaves, roof)) {
            corners.add(new Point3(corner.x(), corner.y(), survey.eaveHeight().metres() + corner.height()));
        }
    }

    /**
     * The survey of the roof over walls.
     *
     * @throws Refused when there is none
     */
    public static RoofSurvey of(FootprintSurvey survey) {
        List<Refusal> refusals = SideChecks.refusals(survey);
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        try {
            Footprint eaves = EaveLines.of(survey.walls());
            Rise rise = Footprints.roofOver(eaves);
            if (rise instanceof RoofOver roof) {
                return new RoofedFootprint(survey, eaves, roof).survey();
            }
            throw ((NoRoof) rise).stop();
        } catch (NoRoof.Stop stop) {
            throw new Refused(SideChecks.refusal(stop.why(), survey));
        }
    }

    private RoofSurvey survey() {
        List<List<OpeningOutline>> openings = new OpeningsInSlopes(survey, rings()).bySlope();
        List<PlaneOutline> planes = new ArrayList<>();
        for (int number : inOrder()) {
            Slope slope = roof.slopes().get(number);
            if (!isLine(ring(slope))) {
                planes.add(plane(slope, openings.get(number)));
            }
        }
        if (!overRoofs.isEmpty()) {
            throw new Refused(List.copyOf(overRoofs.values()));
        }
        RoofSurvey found =
                new RoofSurvey(planes, walls, survey.tolerance(), survey.leastSlope(), survey.leastSlopeSource());
        refuseTooFine(found);
        return found;
    }

    /** The slopes by their first side, and over one side from the eave up, however they were found. */
    private List<Integer> inOrder() {
        Comparator<Slope> order = Comparator.<Slope>comparingInt(
                        slope -> slope.sides().get(0))
                .thenComparingInt(slope -> rank(slope.part()));
        return IntStream.range(0, roof.slopes().size())
                .boxed()
                .sorted(Comparator.comparing(roof.slopes()::get, order))
                .toList();
    }

    /**
     * Whether a slope is narrower, on average over its length, than corners may stand apart and be one: a mansard whose ridge
     * closes where its upper slopes begin has such. Those beside it meet in a line then, and it is left out.
     */
    private boolean isLine(List<Point3> ring) {
        double girth = 0;
        for (int i = 0; i < ring.size(); i++) {
            girth += ring.get(i).distance(ring.get((i + 1) % ring.size()));
        }
        return OpeningsInSlopes.normal(ring).length() <= survey.tolerance().metres() * girth / 2;
    }

    /** A slope that is narrower than the tolerance in a place is a good slope, but may be none once corners that close are one. */
    private static void refuseTooFine(RoofSurvey found) {
        List<PlaneOutline> whole = found.planes().stream()
                .map(plane -> new PlaneOutline(plane.id(), plane.outline(), List.of(), plane.at(), plane.outlineAt()))
                .toList();
        try {
            Roofs.read(
                    new RoofSurvey(whole, List.of(), found.tolerance(), found.leastSlope(), found.leastSlopeSource()));
        } catch (Refused refused) {
            throw new Refused(refused.refusals().stream()
                    .map(refusal -> SideChecks.tooFine(refusal, found.tolerance()))
                    .toList());
        }
    }

    private List<List<Point3>> rings() {
        return roof.slopes().stream().map(this::ring).toList();
    }

    private List<Point3> ring(Slope slope) {
        return slope.corners().stream().map(corners::get).toList();
    }

    private PlaneOutline plane(Slope slope, List<OpeningOutline> openings) {
        Side own = own(slope);
        List<Point3> ring = ring(slope);
        List<Origin> lines = new ArrayList<>();
        for (Bound bound : slope.bounds()) {
            int from = lines.size();
            lines.add(line(bound, own));
            nameWall(bound, own, ring.get(from), ring.get((from + 1) % ring.size()));
            noteOverhang(bound, slope);
        }
        return new PlaneOutline(
                name(own.id() + suffix(slope.part())),
                ring,
                openings,
                own.at(),
                own.at().gathering(lines));
    }

    /** Of several sides in one line the first one that the caller has given a name. */
    private Side own(Slope slope) {
        List<Side> sides = slope.sides().stream().map(survey.sides()::get).toList();
        return sides.stream().filter(Side::own).findFirst().orElse(sides.get(0));
    }

    private static int rank(RoofOver.Part part) {
        if (part instanceof RoofOver.Rises rises) {
            return rises.changes();
        }
        return ((RoofOver.CrossGable) part).atStart() ? 0 : 1;
    }

    private static String suffix(RoofOver.Part part) {
        if (part instanceof RoofOver.CrossGable gable) {
            return gable.atStart() ? ".start" : ".end";
        }
        int changes = ((RoofOver.Rises) part).changes();
        return changes == 0 ? "" : ".above" + changes;
    }

    /** An eave that was parted further down is several slopes further up: the second is called {@code south.above1.2}. */
    private String name(String id) {
        int number = called.merge(id, 1, Integer::sum);
        return number == 1 ? id : id + "." + number;
    }

    private Origin line(Bound bound, Side own) {
        if (bound.side() < 0) {
            return own.at();
        }
        Side side = survey.sides().get(bound.side());
        return side.at().calling(side.id());
    }

    /** A gable that goes up where a slope ends, and a wall that goes on above the roof, stand along the metal. */
    private void nameWall(Bound bound, Side own, Point3 from, Point3 to) {
        if (from.distance(to) <= survey.tolerance().metres()) {
            return; // its ends will be one corner
        }
        Side side = bound.side() < 0 ? own : survey.sides().get(bound.side());
        if (bound.kind() == BoundKind.GABLE_FOOT || (bound.kind() == BoundKind.GABLE && side.walled())) {
            boolean level =
                    Math.abs(to.z() - from.z()) <= FoundRoof.LEVEL * Math.hypot(to.x() - from.x(), to.y() - from.y());
            walls.add(new NamedEdge(from, to, level ? EdgeKind.HEAD_WALL : EdgeKind.SIDE_WALL, side.saidAt()));
        }
    }

    /**
     * Walls stand where their eaves are, and so a slope under the edge of another roof ends there: short of the wall by the
     * other's overhang. Its panels would be cut too short.
     */
    private void noteOverhang(Bound bound, Slope slope) {
        if (bound.kind() != BoundKind.GABLE_FOOT || slope.sides().contains(bound.side())) {
            return; // or it is the gable a side itself turns into further up, which has no overhang
        }
        double overhang = sides.get(bound.side()).overhang();
        if (overhang > 0) {
            Side side = survey.sides().get(bound.side());
            overRoofs.putIfAbsent(
                    bound.side(),
                    Refusal.of(
                            RefusalCode.OVERHANG_OVER_ROOF,
                            side.saidAt(),
                            "The roof stands out by {actual} from %s over a slope that is built against its wall, and that slope would"
                                            .formatted(side.told())
                                    + " end under the edge and not at the wall. Give this side an overhang of {limit}, or ask for both"
                                    + " roofs by themselves, or draw them as points and planes.",
                            Length.metres(overhang),
                            Length.ZERO));
        }
    }
}
