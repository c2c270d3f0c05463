package org.thalweg.roof;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.RingChecks;
import org.thalweg.geometry.Tolerance;
import org.thalweg.geometry.Vector3;
import org.thalweg.units.Angle;
import org.thalweg.units.Count;
import org.thalweg.units.Length;

/**
 * Turns rings the right way round, lays every plane flat and refuses what can't be roofed, all planes' faults at once.
 */
final class PlaneReader {

    /** Steeper than this is a wall: on a wall no corner says which side is out. [common practice] */
    static final Angle UPRIGHT = Angle.degrees(89);

    /**
     * A plane whose corners stand off it by more than this many tolerances (5 cm by default), and by more than
     * {@link #OFF_PER_SIZE} of its size, is two planes or a slip of the tape: panels laid on it would not lie. Below that
     * battens even it out, and a finding says so. [common practice]
     */
    static final double OFF_IN_TOLERANCES = 50;

    /** See {@link #OFF_IN_TOLERANCES}; the size of a plane is the side of a square as large. [common practice] */
    static final double OFF_PER_SIZE = 0.01;

    private final List<PlaneOutline> planes;
    private final Corners corners;
    private final Outlines outlines;
    private final Tolerance tolerance;
    private final List<Refusal> refusals = new ArrayList<>();

    /** How each plane lies. */
    final PlaneFit[] fits;

    /** How far the furthest corner of each plane stands off it, metres. */
    final double[] off;

    /** Least {@code across} and {@code up} of each plane's outer ring, from the datum; metres. */
    final double[] leastAcross;

    final double[] leastUp;

    /** Each slot in its plane's frame, 0 or more; metres. */
    final double[] across;

    final double[] up;

    PlaneReader(List<PlaneOutline> planes, Corners corners, Outlines outlines, Tolerance tolerance) {
        this.planes = planes;
        this.corners = corners;
        this.outlines = outlines;
        this.tolerance = tolerance;
        fits = new PlaneFit[planes.size()];
        off = new double[planes.size()];
        leastAcross = new double[planes.size()];
        leastUp = new double[planes.size()];
        across = new double[outlines.corner.length];
        up = new double[outlines.corner.length];
    }

    /** @throws Refused with every fault of every plane */
    void read() {
        refuseDoubles();
        for (int p = 0; p < planes.size(); p++) {
            read(p);
        }
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
    }

    private void refuseDoubles() {
        Set<String> seen = new HashSet<>();
        for (PlaneOutline plane : planes) {
            if (!seen.add(plane.id())) {
                refuse(RefusalCode.DUPLICATE_ID, plane.at(), "Another plane has the same id. Give each its own.");
            }
            if (plane.openings().size() > 1) {
                refuseDoubleOpenings(plane);
            }
        }
    }

    private void refuseDoubleOpenings(PlaneOutline plane) {
        Set<String> seen = new HashSet<>();
        for (PlaneOutline.OpeningOutline opening : plane.openings()) {
            if (!seen.add(opening.id())) {
                refuse(
                        RefusalCode.DUPLICATE_ID,
                        opening.outlineAt(),
                        "Another opening of this plane has the same id. Give each its own.");
            }
        }
    }

    private void read(int plane) {
        boolean laid = layFlat(plane);
        boolean enough = enoughCorners(plane);
        if (laid && enough) {
            place(plane);
            if (openingsTurned(plane) && simple(plane)) {
                refuseUneven(plane);
            }
        }
    }

    /** Finds how a plane lies and turns its outer ring; false if it can't be told or is no roof. */
    private boolean layFlat(int plane) {
        int outer = outlines.firstRing[plane];
        if (outlines.corners(outer) < 3) {
            return false;
        }
        Vector3 normal = PlaneFit.newell(corners, outlines, outer);
        if (thin(normal.length() / 2, outer)) {
            refuseThin(plane, outer, spreadOut(outer));
            return false;
        }
        if (normal.z() < 0) {
            outlines.reverse(outer);
            normal = normal.times(-1);
        }
        fits[plane] = PlaneFit.of(normal, corners, outlines, outer);
        if (fits[plane].slope().compareTo(UPRIGHT) > 0) {
            refusals.add(Refusal.of(
                    RefusalCode.PLANE_UPRIGHT,
                    outlines.origin(outer),
                    "The plane stands at {actual}; over {limit} it is a wall. Leave walls out, or check the heights.",
                    fits[plane].slope(),
                    UPRIGHT));
            return false;
        }
        for (int r = outer; r < outlines.firstRing[plane + 1]; r++) {
            dropFolded(r, fits[plane].outward());
        }
        return true;
    }

    /**
     * Neighbours that stand apart but over each other, seen square to the plane, are one corner of it: the first kept of
     * them. Measured roofs have such steps of a few millimetres; laid flat, the side between them has no length.
     */
    private void dropFolded(int ring, Vector3 outward) {
        int slot = outlines.firstSlot[ring];
        while (slot < outlines.firstSlot[ring + 1] && outlines.corners(ring) > 1) {
            int next = outlines.next(slot);
            Vector3 step = corners.step(outlines.corner[slot], outlines.corner[next]);
            double off = step.dot(outward);
            if (step.dot(step) - off * off > corners.reach * corners.reach) {
                slot++;
            } else if (outlines.corner[slot] < outlines.corner[next]) {
                outlines.drop(next);
                slot -= next < slot ? 1 : 0;
            } else {
                outlines.drop(slot);
                slot = Math.max(outlines.firstSlot[ring], slot - 1);
            }
        }
    }

    private boolean enoughCorners(int plane) {
        boolean enough = true;
        for (int r = outlines.firstRing[plane]; r < outlines.firstRing[plane + 1]; r++) {
            int left = outlines.corners(r);
            if (left < 3) {
                enough = false;
                refusals.add(Refusal.of(
                        RefusalCode.TOO_FEW_CORNERS,
                        outlines.origin(r),
                        "{actual} corners are left once corners within the tolerance are one; {limit} are needed. "
                                + "Give the missing corners, or check the unit of length.",
                        new Count(left),
                        new Count(3)));
            }
        }
        return enough;
    }

    /** Whether a ring is narrower, on average over its length, than corners may stand apart and be one. */
    private boolean thin(double area, int ring) {
        double girth = 0;
        for (int slot = outlines.firstSlot[ring]; slot < outlines.firstSlot[ring + 1]; slot++) {
            girth += corners.distance(outlines.corner[slot], outlines.corner[outlines.next(slot)]);
        }
        return area <= tolerance.metres() * girth / 4;
    }

    /** A ring that encloses nothing goes back along itself, or round as much one way as the other. */
    private void refuseThin(int plane, int ring, Ring flat) {
        int number = ring - outlines.firstRing[plane];
        List<RingChecks.Conflict> conflicts = RingChecks.of(new Region(flat, List.of()), tolerance);
        if (conflicts.isEmpty()) {
            refuse(
                    RefusalCode.RING_CROSSES_ITSELF,
                    outlines.origin(ring),
                    "The ring encloses nothing: its sides run along each other within the tolerance. "
                            + "Leave it out, or check the unit of length.");
        }
        for (RingChecks.Conflict found : conflicts) {
            RingChecks.Conflict here =
                    new RingChecks.Conflict(found.fault(), number, found.side(), number, found.otherSide());
            refusals.add(new RingRefusal(outlines, plane, here).refusal());
        }
    }

    /** A ring that has no plane of its own laid on the plane of three of its corners, as far apart as can be. */
    private Ring spreadOut(int ring) {
        int first = outlines.firstSlot[ring];
        int size = outlines.corners(ring);
        Vector3 longest = new Vector3(0, 0, 0);
        for (int i = 1; i < size; i++) {
            Vector3 step = corners.step(outlines.corner[first], outlines.corner[first + i]);
            longest = step.length() > longest.length() ? step : longest;
        }
        Vector3 aside = new Vector3(0, 0, 0);
        for (int i = 1; i < size; i++) {
            Vector3 step = corners.step(outlines.corner[first], outlines.corner[first + i]);
            Vector3 square = step.plus(longest.times(-step.dot(longest) / longest.dot(longest)));
            aside = square.length() > aside.length() ? square : aside;
        }
        double[] ringAcross = new double[size];
        double[] ringUp = new double[size];
        for (int i = 0; i < size; i++) {
            Vector3 step = corners.step(outlines.corner[first], outlines.corner[first + i]);
            ringAcross[i] = step.dot(longest) / longest.length();
            ringUp[i] = aside.length() > tolerance.hair() ? step.dot(aside) / aside.length() : 0;
        }
        return new Ring(ringAcross, ringUp, new int[size]);
    }

    /** Fills in the plane's slots in its own frame. */
    private void place(int plane) {
        PlaneFit fit = fits[plane];
        int outerEnd = outlines.firstSlot[outlines.firstRing[plane] + 1];
        double least = Double.POSITIVE_INFINITY;
        double lowest = Double.POSITIVE_INFINITY;
        for (int slot = firstSlot(plane); slot < endSlot(plane); slot++) {
            int corner = outlines.corner[slot];
            across[slot] = PlaneFit.along(fit.across(), corners, corner);
            up[slot] = PlaneFit.along(fit.up(), corners, corner);
            off[plane] = Math.max(off[plane], Math.abs(fit.off(corners, corner)));
            if (slot < outerEnd) {
                least = Math.min(least, across[slot]);
                lowest = Math.min(lowest, up[slot]);
            }
        }
        leastAcross[plane] = least;
        leastUp[plane] = lowest;
        for (int slot = firstSlot(plane); slot < endSlot(plane); slot++) {
            across[slot] = fromLeast(across[slot] - least);
            up[slot] = fromLeast(up[slot] - lowest);
        }
    }

    /** Openings touching the left or low side may come out a hair below 0. */
    private double fromLeast(double value) {
        return Math.abs(value) <= tolerance.hair() ? 0 : value;
    }

    private int firstSlot(int plane) {
        return outlines.firstSlot[outlines.firstRing[plane]];
    }

    private int endSlot(int plane) {
        return outlines.firstSlot[outlines.firstRing[plane + 1]];
    }

    /** Turns openings clockwise; false if one encloses nothing. */
    private boolean openingsTurned(int plane) {
        boolean good = true;
        for (int r = outlines.firstRing[plane] + 1; r < outlines.firstRing[plane + 1]; r++) {
            double area = ring(r).signedArea();
            if (thin(Math.abs(area), r)) {
                refuseThin(plane, r, ring(r));
                good = false;
            } else if (area > 0) {
                outlines.reverse(r);
                reverse(across, r);
                reverse(up, r);
            }
        }
        return good;
    }

    private void reverse(double[] values, int ring) {
        for (int i = outlines.firstSlot[ring], j = outlines.firstSlot[ring + 1] - 1; i < j; i++, j--) {
            double value = values[i];
            values[i] = values[j];
            values[j] = value;
        }
    }

    /** A ring as it lies in its plane, before its sides are cut where other planes touch them. */
    private Ring ring(int ring) {
        int from = outlines.firstSlot[ring];
        int size = outlines.corners(ring);
        double[] ringAcross = new double[size];
        double[] ringUp = new double[size];
        System.arraycopy(across, from, ringAcross, 0, size);
        System.arraycopy(up, from, ringUp, 0, size);
        return new Ring(ringAcross, ringUp, new int[size]);
    }

    private boolean simple(int plane) {
        int outer = outlines.firstRing[plane];
        List<Ring> openings = List.of();
        if (outlines.firstRing[plane + 1] > outer + 1) {
            openings = new ArrayList<>();
            for (int r = outer + 1; r < outlines.firstRing[plane + 1]; r++) {
                openings.add(ring(r));
            }
        }
        List<RingChecks.Conflict> conflicts = RingChecks.of(new Region(ring(outer), openings), tolerance);
        for (RingChecks.Conflict conflict : conflicts) {
            refusals.add(new RingRefusal(outlines, plane, conflict).refusal());
        }
        return conflicts.isEmpty();
    }

    private void refuseUneven(int plane) {
        double area = ring(outlines.firstRing[plane]).signedArea();
        double limit = Math.max(OFF_IN_TOLERANCES * tolerance.metres(), OFF_PER_SIZE * Math.sqrt(area));
        if (off[plane] <= limit) {
            return;
        }
        refusals.add(Refusal.of(
                RefusalCode.PLANE_NOT_FLAT,
                outlines.cornerOrigin(furthestOff(plane)),
                "This corner stands {actual} off the plane of the others; {limit} can be evened out. "
                        + "Check its height, or split the plane in two.",
                Length.metres(off[plane]),
                Length.metres(limit)));
    }

    private int furthestOff(int plane) {
        int furthest = firstSlot(plane);
        for (int slot = furthest; slot < endSlot(plane); slot++) {
            if (Math.abs(fits[plane].off(corners, outlines.corner[slot])) == off[plane]) {
                furthest = slot;
                break;
            }
        }
        return furthest;
    }

    private void refuse(RefusalCode code, Origin at, String detail) {
        refusals.add(Refusal.of(code, at, detail));
    }
}
