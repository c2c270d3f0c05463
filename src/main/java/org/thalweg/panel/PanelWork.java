package org.thalweg.panel;

import java.util.List;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;
import org.thalweg.units.Count;

/** How much work a layout would be, known before it starts. */
public final class PanelWork {

    /** Most places where a side of a roof may cross a rib; two of them make a panel, so about half as many panels. */
    public static final int MOST_CROSSINGS = 40_000;

    /** Most pieces laps may make of the panels. */
    public static final int MOST_PIECES = 20_000;

    /** Most steps of the search for the least waste over all planes; a step is one length of one piece looked at. */
    public static final int MOST_SEARCH_STEPS = 400_000_000;

    /** What cutting a piece anew costs, in steps. */
    private static final int STEPS_A_PIECE = 300;

    private PanelWork() {}

    /**
     * Refuses a roof that takes more panels than are laid in one request, or a search of more steps than it may take.
     *
     * @throws Refused naming the plane at which it is too much
     */
    static void check(Roof roof, PanelSpec spec, List<PlaneLaying> laying) {
        double crossings = 0;
        double steps = 0;
        double pieces = 0;
        for (int i = 0; i < roof.planes().size(); i++) {
            Plane plane = roof.planes().get(i);
            double ofPlane = crossings(plane.shape(), spec);
            crossings += ofPlane;
            pieces += ofPlane / 2 * (1 + size(plane.shape()) / spec.usable());
            if (crossings > MOST_CROSSINGS || pieces > MOST_PIECES) {
                throw new Refused(Refusal.of(
                        RefusalCode.TOO_MANY_PANELS,
                        plane.at(),
                        "Up to this plane the roof would take about {actual} panels; at most {limit} are laid in one"
                                + " request. Check the units and the cover, or lay the roof in parts.",
                        new Count(Math.round(Math.max(crossings / 2, pieces))),
                        new Count(MOST_PIECES)));
            }
            if (laying.get(i).start() instanceof Start.LeastWaste) {
                steps += StartSearch.steps(ofPlane, spec) * ofPlane + STEPS_A_PIECE * corners(plane.shape()) * ofPlane;
            }
            if (steps > MOST_SEARCH_STEPS) {
                throw new Refused(Refusal.of(
                        RefusalCode.SEARCH_TOO_LARGE,
                        plane.at(),
                        "Up to this plane the search for the least waste would take {actual} steps; at most {limit} are"
                                + " taken. Give wide planes and those with many corners another"
                                + " start, or order in larger increments.",
                        new Count(Math.round(steps)),
                        new Count(MOST_SEARCH_STEPS)));
            }
        }
    }

    private static double crossings(Region shape, PanelSpec spec) {
        double crossings = crossings(shape.outer(), spec);
        for (Ring opening : shape.openings()) {
            crossings += crossings(opening, spec);
        }
        return crossings;
    }

    private static double crossings(Ring ring, PanelSpec spec) {
        double crossings = 0;
        for (int i = 0; i < ring.size(); i++) {
            crossings += Math.abs(ring.across(ring.next(i)) - ring.across(i))
                            / spec.cover().metres()
                    + 1;
        }
        return crossings;
    }

    private static double size(Region shape) {
        return shape.outer().mostUp() - shape.outer().leastUp();
    }

    private static int corners(Region shape) {
        return shape.outer().size()
                + shape.openings().stream().mapToInt(Ring::size).sum();
    }
}
