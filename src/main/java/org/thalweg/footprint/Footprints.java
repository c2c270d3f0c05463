package org.thalweg.footprint;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.units.Length;

/** Finds the roof over a plan of walls, checks it, or says why there is none. */
public final class Footprints {

    /** A comb of 2,000 sides, all teeth alike, takes half of it, 1 to 5 seconds; anything else measured far less. */
    private static final long MOST_STEPS = 1_000_000_000L;

    /** Most sides of a plan, with those of its courtyards. */
    public static final int MOST_SIDES = WallPlan.MOST_SIDES;

    /** How far corners may lie from the first one along x or y. */
    public static final Length FURTHEST = Length.metres(WallPlan.LARGEST / 2);

    private Footprints() {}

    public static Rise roofOver(Footprint footprint) {
        try {
            return rise(WallPlan.of(footprint));
        } catch (NoRoof.Stop stop) {
            return stop.why();
        }
    }

    private static RoofOver rise(WallPlan plan) {
        List<WallPlan.Wall> walls = new ArrayList<>();
        plan.rings().forEach(walls::addAll);
        boolean[] upright = new boolean[walls.size()];
        int[] sides = new int[walls.size()];
        for (int i = 0; i < upright.length; i++) {
            upright[i] = walls.get(i).pitch().isEmpty();
            sides[i] = walls.get(i).sides().get(0);
        }
        List<List<EavePlane>> planes = plan.planes();
        Nodes nodes = new Nodes(plan.box());
        SlopeLines lines = new SlopeLines(upright, sides);
        Tally tally = new Tally(MOST_STEPS);
        Front front = new Front(planes.stream().flatMap(List::stream).distinct().toList(), nodes, lines, tally);
        int wall = 0;
        for (List<EavePlane> ring : planes) {
            int[] numbers = new int[ring.size()];
            for (int i = 0; i < numbers.length; i++) {
                numbers[i] = wall++;
                nodes.addWallCorner(
                        walls.get(numbers[i]).x(), walls.get(numbers[i]).y());
            }
            // Corners of walls are the first nodes: they have the number of the wall that starts there.
            front.add(ring, numbers, numbers);
        }
        front.rise();
        FoundRoof found = new FoundRoof(plan, walls, nodes, lines);
        RoofCheck.check(plan, walls, found);
        return found.placed(new RoofOver.Ways(nodes.size() - walls.size(), tally.exactSigns()));
    }
}
