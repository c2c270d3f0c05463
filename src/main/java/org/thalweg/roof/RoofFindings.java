package org.thalweg.roof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Place;
import org.thalweg.finding.Source;
import org.thalweg.geometry.PlanGrid;
import org.thalweg.units.Count;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/**
 * What a crew should know of a roof that can be read: planes in their order, then edges in theirs, then corners that
 * nearly meet.
 *
 * <p>A level plane gets two findings: that no fall line can be relied on, which is about the layout, and that it is below
 * the least slope, which is about water. A crew needs both, for a fall given by hand settles only the first.
 */
final class RoofFindings {

    /**
     * Corners of different planes that come this many tolerances close (25 mm by default) and are not one are more likely
     * a slip of the tape than a step in the roof. [common practice]
     */
    static final double NEAR_IN_TOLERANCES = 25;

    private final RoofSurvey survey;
    private final List<Finding> findings = new ArrayList<>();

    RoofFindings(RoofSurvey survey) {
        this.survey = survey;
    }

    List<Finding> findings() {
        return findings;
    }

    void ofPlane(Plane plane) {
        if (plane.level()) {
            findings.add(Finding.of(
                    FindingCode.LEVEL_PLANE,
                    place(plane),
                    "Plane {place} slopes {actual}; under {limit} no fall line can be relied on. Give the direction water "
                            + "is to run, or check the heights of its corners.",
                    plane.slope(),
                    PlaneFit.LEVEL,
                    Source.COMMON_PRACTICE));
        }
        if (belowLeastSlope(plane)) {
            findings.add(Finding.of(
                    FindingCode.SLOPE_BELOW_MINIMUM,
                    place(plane),
                    "Plane {place} has a pitch of {actual}; the panel system needs {limit}. Use a system that is approved "
                            + "for the slope, or raise the roof.",
                    Pitch.ofSlope(plane.slope()),
                    survey.leastSlope(),
                    survey.leastSlopeSource()));
        }
        if (plane.off().metres()
                > survey.tolerance().metres() + survey.tolerance().hair()) {
            findings.add(Finding.of(
                    FindingCode.PLANE_NOT_FLAT,
                    place(plane),
                    "A corner of plane {place} stands {actual} off the plane of the others, over the tolerance of {limit}. "
                            + "Panels are laid out on the mean plane: check the heights, or even the deck out.",
                    plane.off(),
                    Length.metres(survey.tolerance().metres()),
                    Source.REQUEST));
        }
    }

    /** Whether over its own run the plane rises less than it should, by more than rounding. */
    private boolean belowLeastSlope(Plane plane) {
        double run = plane.shape().outer().mostUp() * plane.slope().cos();
        double shortfall = (survey.leastSlope().tan() - plane.slope().tan()) * run;
        return shortfall > survey.tolerance().hair();
    }

    private static Place place(Plane plane) {
        return new Place(Place.Kind.PLANE, plane.id(), plane.at());
    }

    /** @param crowd how many planes meet here; 0 where no more than two do, −1 for those that found no neighbour there */
    void ofEdge(Edge edge, int crowd) {
        Place place = new Place(Place.Kind.EDGE, edge.id(), edge.at());
        if (crowd > 0) {
            findings.add(Finding.of(
                    FindingCode.CROWDED_EDGE,
                    place,
                    "{actual} planes meet at edge {place}; more than {limit} can't without lying over each other. Two that lie "
                            + "apart are taken as neighbours, the others as stacked. Leave out planes that lie under the "
                            + "roof or are given twice.",
                    new Count(crowd),
                    new Count(2),
                    Source.GEOMETRY));
        }
        if (edge.kind() == EdgeKind.STACKED && crowd == 0) {
            findings.add(Finding.of(
                    FindingCode.STACKED_PLANES,
                    place,
                    "The planes at edge {place} lie on the same side of it, one over the other. Flash the upper one as a "
                            + "roof of its own, or leave the covered one out.",
                    Source.GEOMETRY));
        }
        if (edge.kind() == EdgeKind.LEVEL_VALLEY) {
            findings.add(Finding.of(
                    FindingCode.LEVEL_VALLEY,
                    place,
                    "Both planes fall to edge {place}, which slopes {actual}: water stands there. Build a drained gutter, "
                            + "or give the valley more than {limit} of fall.",
                    edge.slope(),
                    EdgeKinds.LEVEL_SLOPE,
                    Source.COMMON_PRACTICE));
        }
    }

    /** Corners of different planes that come close and do not meet: each with the nearest such corner. */
    void ofCorners(Corners corners, Outlines outlines, Carriers carriers, PlanGrid grid) {
        double reach = NEAR_IN_TOLERANCES * survey.tolerance().metres();
        int[] found = new int[corners.count];
        int[] nearest = new int[corners.count];
        Arrays.fill(nearest, -2);
        for (int slot = 0; slot < outlines.slots(); slot++) {
            int corner = outlines.corner[slot];
            if (nearest[corner] != -2) {
                continue;
            }
            int near = grid.along(
                    corners.x[corner], corners.y[corner], corners.x[corner], corners.y[corner], reach, found);
            nearest[corner] = nearest(corner, found, near, reach, corners, carriers);
            if (nearest[corner] >= 0 && nearest[nearest[corner]] != corner) {
                nearMiss(outlines, slot, corners.distance(corner, nearest[corner]), reach);
            }
        }
    }

    private static int nearest(int corner, int[] found, int near, double reach, Corners corners, Carriers carriers) {
        int nearest = -1;
        double least = reach;
        for (int i = 0; i < near; i++) {
            int other = found[i];
            if (other == corner || Math.abs(corners.x[other] - corners.x[corner]) > least) {
                continue;
            }
            double distance = corners.distance(corner, other);
            if (distance <= least && (distance < least || nearest < 0) && !carriers.shared(corner, other)) {
                nearest = other;
                least = distance;
            }
        }
        return nearest;
    }

    private void nearMiss(Outlines outlines, int slot, double distance, double reach) {
        PlaneOutline plane = survey.planes().get(outlines.plane[outlines.ring[slot]]);
        findings.add(Finding.of(
                FindingCode.NEAR_MISS,
                new Place(Place.Kind.PLANE, plane.id(), outlines.cornerOrigin(slot)),
                "A corner of plane {place} comes within {actual} of a corner of another plane and does not meet it. If they "
                        + "are one corner, give them one place or a tolerance above {actual}. Corners further apart than "
                        + "{limit} are not looked at.",
                Length.metres(distance),
                Length.metres(reach),
                Source.COMMON_PRACTICE));
    }
}
