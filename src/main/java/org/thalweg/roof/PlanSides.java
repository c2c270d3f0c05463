package org.thalweg.roof;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.PlanSurvey.NamedSide;
import org.thalweg.roof.PlaneOutline.OpeningOutline;

/** The named sides of a plan, found in its rings. */
final class PlanSides {

    private static final int NONE = -1;

    private final List<NamedSide> names;
    private final List<PlaneOutline> drawn;
    private final Corners corners;
    private final Outlines outlines;
    private final List<Refusal> refusals;

    /** The slot of each named side, or {@link #NONE}. */
    private final int[] slot;

    /** Notes names that name no side. */
    PlanSides(
            List<NamedSide> names,
            List<PlaneOutline> drawn,
            Map<String, Integer> numbers,
            Corners corners,
            Outlines outlines,
            List<Refusal> refusals) {
        this.names = names;
        this.drawn = drawn;
        this.corners = corners;
        this.outlines = outlines;
        this.refusals = refusals;
        slot = names.stream()
                .mapToInt(name -> slot(name, plane(name.plane(), name.at(), numbers, refusals)))
                .toArray();
    }

    /** The number of the plane that is called {@code id}; −1 and a refusal if there is none. */
    static int plane(String id, Origin at, Map<String, Integer> numbers, List<Refusal> refusals) {
        int plane = numbers.getOrDefault(id, NONE);
        if (plane == NONE) {
            refusals.add(Refusal.of(
                    RefusalCode.NO_SUCH_PLANE, at.at("plane"), "No plane of the plan has this id. Mend the id."));
        }
        return plane;
    }

    private int slot(NamedSide name, int plane) {
        int ring = plane == NONE ? NONE : ring(name, plane);
        if (ring == NONE) {
            return NONE;
        }
        List<Point3> ends = ends(ring(drawn, ring), name);
        if (ends.isEmpty()) {
            return refused(
                    name,
                    "side",
                    "There is no such side. Side 0 runs from corner 0 to corner 1, the last one back to 0.");
        }
        if (Math.hypot(
                        ends.get(1).x() - ends.get(0).x(),
                        ends.get(1).y() - ends.get(0).y())
                <= corners.reach) {
            return refused(name, "side", "This side has no length: its two corners are one within the tolerance.");
        }
        int found = outlines.firstSlot[ring];
        while (found + 1 < outlines.firstSlot[ring + 1] && outlines.drawn[found + 1] <= name.side()) {
            found++;
        }
        return found;
    }

    private int ring(NamedSide name, int plane) {
        if (name.opening().isEmpty()) {
            return outlines.firstRing[plane];
        }
        List<OpeningOutline> openings = drawn.get(plane).openings();
        for (int o = 0; o < openings.size(); o++) {
            if (openings.get(o).id().equals(name.opening().get())) {
                return outlines.firstRing[plane] + 1 + o;
            }
        }
        return refused(name, "opening", "The plane has no opening of this id. Mend the id.");
    }

    private int refused(NamedSide name, String member, String detail) {
        refusals.add(Refusal.of(RefusalCode.NO_SUCH_EDGE, name.at().at(member), detail));
        return NONE;
    }

    private List<Point3> ring(List<PlaneOutline> planes, int ring) {
        int plane = outlines.plane[ring];
        int opening = ring - outlines.firstRing[plane] - 1;
        return opening < 0
                ? planes.get(plane).outline()
                : planes.get(plane).openings().get(opening).outline();
    }

    /** The two ends of a side; none if the ring has no such side. */
    private static List<Point3> ends(List<Point3> ring, NamedSide name) {
        return name.side() < ring.size()
                ? List.of(ring.get(name.side()), ring.get((name.side() + 1) % ring.size()))
                : List.of();
    }

    /** Whether the side of each slot is a wall. */
    boolean[] walls() {
        boolean[] wall = new boolean[outlines.slots()];
        for (int n = 0; n < slot.length; n++) {
            wall[slot[n]] |= names.get(n).wall();
        }
        return wall;
    }

    /** The names on the planes as raised. */
    List<NamedEdge> named(List<PlaneOutline> raised) {
        List<NamedEdge> named = new ArrayList<>(names.size());
        for (int n = 0; n < slot.length; n++) {
            NamedSide name = names.get(n);
            List<Point3> ends = ends(ring(raised, outlines.ring[slot[n]]), name);
            named.add(new NamedEdge(ends.get(0), ends.get(1), name.kind(), name.at()));
        }
        return named;
    }
}
