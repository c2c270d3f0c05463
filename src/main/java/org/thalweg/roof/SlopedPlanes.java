package org.thalweg.roof;

import java.util.Arrays;
import java.util.List;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;

/**
 * The planes of a plan as they stand: how high each is where, and which plane raised it. Places are given in plan, from the
 * datum of the corners; metres.
 */
final class SlopedPlanes {

    private static final int NOT_YET = -2;

    private final Corners corners;
    private final PlanFall[] fall;
    private final double[] tan;

    /** Where each plane was raised, and how high it is there. */
    private final double[] anchorX;

    private final double[] anchorY;
    private final double[] anchorZ;

    /** The plane that raised each; −1 for one whose height is given. */
    private final int[] raisedBy;

    /** The planes in the order they were raised, and the place of each in it. */
    private final int[] order;

    private final int[] rank;
    private int count;

    /** Notes planes whose fall can't be read or that stand upright. */
    SlopedPlanes(List<PlanPlane> planes, Corners corners, List<Refusal> refusals) {
        this.corners = corners;
        int size = planes.size();
        fall = new PlanFall[size];
        tan = new double[size];
        anchorX = new double[size];
        anchorY = new double[size];
        anchorZ = new double[size];
        raisedBy = new int[size];
        order = new int[size];
        rank = new int[size];
        Arrays.fill(raisedBy, NOT_YET);
        for (int p = 0; p < size; p++) {
            PlanPlane plane = planes.get(p);
            fall[p] = PlanFall.of(plane, corners.reach, refusals);
            tan[p] = plane.pitch().tan();
            if (plane.pitch().slope().compareTo(PlaneReader.UPRIGHT) > 0) {
                refusals.add(Refusal.of(
                        RefusalCode.PLANE_UPRIGHT,
                        plane.drawn().at().at("pitch"),
                        "The plane stands at {actual}; over {limit} it is a wall. Leave walls out, or mend the pitch.",
                        plane.pitch().slope(),
                        PlaneReader.UPRIGHT));
            }
        }
    }

    /** Puts a plane at a height in a place. */
    void raise(int plane, double x, double y, double z, int by) {
        anchorX[plane] = x;
        anchorY[plane] = y;
        anchorZ[plane] = z;
        raisedBy[plane] = by;
        rank[plane] = count;
        order[count++] = plane;
    }

    void raiseBy(int plane, int by, int corner) {
        raise(plane, corners.x[corner], corners.y[corner], height(by, corner), by);
    }

    boolean isRaised(int plane) {
        return raisedBy[plane] != NOT_YET;
    }

    int raisedCount() {
        return count;
    }

    /** The plane that was raised as number {@code i}. */
    int raised(int i) {
        return order[i];
    }

    /** The plane that raised another; −1 for one whose height is given. */
    int raisedBy(int plane) {
        return raisedBy[plane];
    }

    /** The plane of a meeting that was raised first. */
    int earliest(PlanMeetings.Meeting meeting) {
        int earliest = meeting.planes()[0];
        for (int plane : meeting.planes()) {
            earliest = rank[plane] < rank[earliest] ? plane : earliest;
        }
        return earliest;
    }

    double height(int plane, int corner) {
        return height(plane, corners.x[corner], corners.y[corner]);
    }

    double height(int plane, double x, double y) {
        return anchorZ[plane] - tan[plane] * fall[plane].along(x - anchorX[plane], y - anchorY[plane]);
    }

    double anchorHeight(int plane) {
        return anchorZ[plane];
    }

    /** How far down the fall a corner lies from where its plane was raised; metres, in plan. */
    double run(int plane, int corner) {
        return fall[plane].along(corners.x[corner] - anchorX[plane], corners.y[corner] - anchorY[plane]);
    }
}
