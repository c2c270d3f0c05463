package org.thalweg.roof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.PlanGrid;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.PlanSurvey.Given;
import org.thalweg.units.Count;
import org.thalweg.units.Length;

/**
 * Raises a plan: gives every corner its height and makes a survey of it, which is read like any other.
 *
 * <p>The planes whose heights are given come first, in the order of the heights. From them one goes breadth first over the
 * planes that meet ({@link PlanMeetings}): corner by corner of a plane, in the order of its outline and then its openings,
 * and at each corner plane by plane in the caller's order. A plane is raised by the first plane that reaches it, at the
 * corner where it does; all the others that meet there must agree ({@link HeightCheck}), and then share that one height.
 */
public final class RaisedPlan {

    /** No corner stands higher or lower; metres. As far as corners may lie from 0 in plan. */
    public static final double FURTHEST_HEIGHT = 1e7;

    private final PlanSurvey survey;
    private final List<PlaneOutline> drawn;
    private final Corners corners;
    private final Outlines outlines;
    private final List<Refusal> refusals = new ArrayList<>();

    private RaisedPlan(PlanSurvey survey) {
        this.survey = survey;
        drawn = survey.drawn();
        corners = new Corners(drawn, survey.tolerance());
        outlines = new Outlines(drawn, corners);
    }

    /**
     * The survey of a plan, every plane at its pitch and as high as the given heights say.
     *
     * @throws Refused when heights are missing or do not fit
     */
    public static RoofSurvey of(PlanSurvey survey) {
        return new RaisedPlan(survey).raise();
    }

    private RoofSurvey raise() {
        SlopedPlanes sloped = new SlopedPlanes(survey.planes(), corners, refusals);
        Map<String, Integer> numbers = numbers();
        int[] first = survey.heights().stream()
                .mapToInt(given -> plane(given, numbers))
                .toArray();
        PlanSides sides = new PlanSides(survey.named(), drawn, numbers, corners, outlines, refusals);
        stopIfRefused();
        Pieces pieces = new Pieces(drawn, corners, outlines, new PlanGrid(corners.x, corners.y, corners.count));
        List<List<PlanMeetings.Meeting>> meetings = meetings(pieces, sides);
        for (int i = 0; i < first.length; i++) {
            give(sloped, first[i], survey.heights().get(i));
        }
        spread(sloped, meetings);
        refuseUnreached(sloped);
        HeightCheck check = new HeightCheck(survey, corners, outlines, sloped, meetings);
        refusals.addAll(check.refusals());
        stopIfRefused();
        return survey(sloped, meetings, sides);
    }

    private void stopIfRefused() {
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
    }

    /** Of two planes with one id the first; the roof reader refuses the second. */
    private Map<String, Integer> numbers() {
        Map<String, Integer> numbers = new HashMap<>();
        for (int p = 0; p < drawn.size(); p++) {
            numbers.putIfAbsent(drawn.get(p).id(), p);
        }
        return numbers;
    }

    private int plane(Given given, Map<String, Integer> numbers) {
        int plane = PlanSides.plane(given.plane(), given.at(), numbers, refusals);
        if (plane >= 0 && given.corner() >= drawn.get(plane).outline().size()) {
            refusals.add(Refusal.of(
                    RefusalCode.NO_SUCH_CORNER,
                    given.at().at("corner"),
                    "Corner {actual} is not in the plane's outline; the last one is {limit}. Corners are counted from 0.",
                    new Count(given.corner()),
                    new Count(drawn.get(plane).outline().size() - 1L)));
        }
        return plane;
    }

    private List<List<PlanMeetings.Meeting>> meetings(Pieces pieces, PlanSides sides) {
        PlanMeetings meetings = new PlanMeetings(corners, pieces, sides.walls());
        List<List<PlanMeetings.Meeting>> of = new ArrayList<>();
        for (int p = 0; p < drawn.size(); p++) {
            int slot = outlines.firstSlot[outlines.firstRing[p]];
            int end = outlines.firstSlot[outlines.firstRing[p + 1]];
            of.add(meetings.of(p, pieces.first[slot], pieces.first[end]));
        }
        return of;
    }

    private void give(SlopedPlanes sloped, int plane, Given given) {
        Point3 corner = drawn.get(plane).outline().get(given.corner());
        double x = corner.x() - corners.datum().x();
        double y = corner.y() - corners.datum().y();
        double z = given.z().metres();
        if (!sloped.isRaised(plane)) {
            sloped.raise(plane, x, y, z, -1);
            return;
        }
        double stands = sloped.height(plane, x, y);
        if (Math.abs(stands - z) > corners.reach) {
            refusals.add(Refusal.of(
                            RefusalCode.HEIGHTS_DISAGREE,
                            given.at(),
                            "This corner stands {height} high by this height and {other} by an earlier one of the same"
                                    + " plane: {actual} apart, {limit} at most. Give the plane one height, or mend its pitch.",
                            Length.metres(Math.abs(stands - z)),
                            Length.metres(survey.tolerance().metres()))
                    .tells("height", given.z())
                    .tells("other", Length.metres(stands)));
        }
    }

    private static void spread(SlopedPlanes sloped, List<List<PlanMeetings.Meeting>> meetings) {
        for (int i = 0; i < sloped.raisedCount(); i++) {
            int plane = sloped.raised(i);
            for (PlanMeetings.Meeting meeting : meetings.get(plane)) {
                for (int other : meeting.planes()) {
                    if (!sloped.isRaised(other)) {
                        sloped.raiseBy(other, plane, meeting.corner());
                    }
                }
            }
        }
    }

    private void refuseUnreached(SlopedPlanes sloped) {
        for (int p = 0; p < drawn.size(); p++) {
            if (!sloped.isRaised(p)) {
                refusals.add(Refusal.of(
                        RefusalCode.PLANE_WITHOUT_HEIGHT,
                        drawn.get(p).at(),
                        "No height reaches this plane: seen from above it shares no corner with a plane that has one, or walls"
                                + " stand between. Draw it so that it meets another, or give it a height of its own in"
                                + " \"heights\"; one is enough for all planes that meet."));
            }
        }
    }

    private RoofSurvey survey(SlopedPlanes sloped, List<List<PlanMeetings.Meeting>> meetings, PlanSides sides) {
        List<PlaneOutline> raised = new ArrayList<>();
        int corner = 0;
        for (int p = 0; p < drawn.size(); p++) {
            Map<Integer, Double> shared = sharedHeights(sloped, meetings.get(p));
            PlaneOutline flat = drawn.get(p);
            List<Point3> outline = raise(flat.outline(), sloped, p, corner, shared);
            corner += outline.size();
            List<PlaneOutline.OpeningOutline> openings = new ArrayList<>();
            for (PlaneOutline.OpeningOutline opening : flat.openings()) {
                List<Point3> rim = raise(opening.outline(), sloped, p, corner, shared);
                corner += rim.size();
                openings.add(new PlaneOutline.OpeningOutline(opening.id(), rim, opening.outlineAt()));
            }
            refuseFar(flat, outline);
            raised.add(new PlaneOutline(flat.id(), outline, openings, flat.at(), flat.outlineAt()));
        }
        stopIfRefused();
        return new RoofSurvey(
                raised, sides.named(raised), survey.tolerance(), survey.leastSlope(), survey.leastSlopeSource());
    }

    /** The heights of the corners where a plane meets others: those of the plane that was raised first. */
    private static Map<Integer, Double> sharedHeights(SlopedPlanes sloped, List<PlanMeetings.Meeting> meetings) {
        Map<Integer, Double> heights = new HashMap<>();
        meetings.forEach(
                meeting -> heights.put(meeting.corner(), sloped.height(sloped.earliest(meeting), meeting.corner())));
        return heights;
    }

    private List<Point3> raise(
            List<Point3> ring, SlopedPlanes sloped, int plane, int firstDrawn, Map<Integer, Double> shared) {
        Point3 datum = corners.datum();
        List<Point3> raised = new ArrayList<>(ring.size());
        for (int i = 0; i < ring.size(); i++) {
            Point3 flat = ring.get(i);
            Double met = shared.get(corners.joined[firstDrawn + i]);
            double z = met == null ? sloped.height(plane, flat.x() - datum.x(), flat.y() - datum.y()) : met;
            raised.add(new Point3(flat.x(), flat.y(), z));
        }
        return raised;
    }

    private void refuseFar(PlaneOutline plane, List<Point3> outline) {
        double furthest = outline.stream()
                .mapToDouble(corner -> Math.abs(corner.z()))
                .max()
                .orElse(0);
        if (furthest > FURTHEST_HEIGHT) {
            refusals.add(Refusal.of(
                    RefusalCode.HEIGHT_OUT_OF_REACH,
                    plane.at(),
                    "The plane reaches {actual} above or below 0; {limit} is the most. Check its pitch and the unit of length.",
                    Length.metres(furthest),
                    Length.metres(FURTHEST_HEIGHT)));
        }
    }
}
