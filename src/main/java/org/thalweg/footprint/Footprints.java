package org.thalweg.footprint;

import java.util.List;
import org.thalweg.units.Length;

/** Finds the roof over a plan of walls, checks it, or says why there is none. */
public final class Footprints {

    /** About a second. A comb of 2,000 sides, all teeth alike, takes half of it; anything else measured far less. */
    public static final long MOST_STEPS = 1_000_000_000L;

    /** Most sides of a plan, with those of its courtyards. */
    public static final int MOST_SIDES = WallPlan.MOST_SIDES;

    /** How far corners may lie from the first one along x or y. */
    public static final Length FURTHEST = Length.metres(WallPlan.LARGEST / 2);

    /** How much the flattest slope rises in a run of one, and the steepest. */
    public static final double FLATTEST = WallPlan.LEAST_TAN;

    public static final double STEEPEST = WallPlan.MOST_TAN;

    private Footprints() {}

    public static Rise roofOver(Footprint footprint) {
        try {
            return rise(WallPlan.of(EaveLines.of(footprint)));
        } catch (NoRoof.Stop stop) {
            return stop.why();
        }
    }

    private static RoofOver rise(WallPlan plan) {
        Faces faces = new Faces(plan);
        Nodes nodes = new Nodes(plan.box());
        SlopeLines lines = new SlopeLines(faces);
        Tally tally = new Tally(MOST_STEPS);
        faces.walls().forEach(wall -> nodes.addWallCorner(wall.onX(), wall.onY()));
        Eaves eaves = new Eaves(faces.planes().size(), nodes, lines, tally);
        for (List<Faces.Eave> ring : faces.rings()) {
            // Corners of walls are the first nodes: they have the number of the wall that starts there.
            eaves.add(
                    ring.stream()
                            .map(eave -> faces.all().get(eave.face()).plane())
                            .toList(),
                    ring.stream().mapToInt(Faces.Eave::face).toArray(),
                    ring.stream().mapToInt(Faces.Eave::corner).toArray());
        }
        new Front(eaves, faces.planes(), faces.turns(tally), nodes, tally).rise();
        FoundRoof found = new FoundRoof(plan, faces, nodes, lines);
        RoofCheck.check(plan, faces, found);
        return found.placed(new RoofOver.Ways(nodes.size() - faces.walls().size(), tally.exactSigns()));
    }
}
