package org.thalweg.footprint;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.footprint.RoofOver.CrossGable;
import org.thalweg.footprint.RoofOver.Part;
import org.thalweg.footprint.RoofOver.Rises;
import org.thalweg.footprint.WallPlan.Form;
import org.thalweg.footprint.WallPlan.Wall;
import org.thalweg.footprint.WallPlan.WallLine;
import org.thalweg.footprint.WallSide.Change;
import org.thalweg.units.Pitch;

/**
 * What may rise from the walls: for each the slopes and gables one above the other, numbered through. Where a gable stands
 * in line with a wall that is no gable, two slopes square to the wall rise from the corner between them: the cross gable.
 */
final class Faces {

    /**
     * @param wall  which wall it stands on
     * @param part  which of the slopes over it
     * @param pitch none: it stands upright
     * @param plane its plane
     * @param from  the height it begins at, metres
     */
    record Face(int wall, Part part, Optional<Pitch> pitch, EavePlane plane, double from) {
        boolean upright() {
            return pitch.isEmpty();
        }
    }

    /**
     * An eave at the start.
     *
     * @param face   the lowest face it draws
     * @param corner the number of the wall whose first corner is its first
     */
    record Eave(int face, int corner) {}

    /**
     * At a height a plane hands over to another.
     *
     * @param height steps above the lowest eaves
     * @param at     when that is
     */
    record Turn(EavePlane from, EavePlane to, long height, Meeting at) {}

    private record Level(BigInteger weight, long height) {}

    private record Chain(WallLine line, List<Level> levels) {}

    private final List<Wall> walls = new ArrayList<>();
    private final List<Face> faces = new ArrayList<>();
    private final List<Boolean> last = new ArrayList<>();
    private final List<List<Eave>> rings = new ArrayList<>();
    private final List<EavePlane> planes = new ArrayList<>();
    private final Map<Chain, List<EavePlane>> chains = new HashMap<>();
    private final double base;
    private final BigInteger unit;

    Faces(WallPlan plan) {
        plan.rings().forEach(walls::addAll);
        base = walls.stream()
                .map(Wall::form)
                .map(Form::changes)
                .filter(changes -> !changes.isEmpty())
                .mapToDouble(changes -> changes.get(0).height())
                .min()
                .orElse(0);
        unit = Cotangent.unit(walls.stream()
                .map(Wall::form)
                .flatMap(form -> form.pitches().stream())
                .distinct()
                .map(Cotangent::of)
                .distinct()
                .toList());
        int first = 0;
        for (int ring = 0; ring < plan.rings().size(); ring++) {
            rings.add(eaves(plan.rings().get(ring), plan.lines(ring), first, plan.turned(ring)));
            first += plan.rings().get(ring).size();
        }
        rings.forEach(this::refuseInLine);
    }

    private List<Eave> eaves(List<Wall> ring, List<WallLine> lines, int first, boolean turned) {
        List<Eave> eaves = new ArrayList<>();
        int n = ring.size();
        for (int i = 0; i < n; i++) {
            Wall wall = ring.get(i);
            int before = (i + n - 1) % n;
            int after = (i + 1) % n;
            Optional<Pitch> cross = wall.form().cross();
            if (cross.isPresent() && lines.get(before).equals(lines.get(i))) {
                WallLine line = lines.get(i).across(wall, true);
                double eave = ring.get(before).form().eave();
                List<Change> slope = List.of(new Change(eave, cross));
                eaves.add(new Eave(add(first + i, new CrossGable(!turned), line, slope), first + i));
            }
            List<Change> changes = wall.form().changes();
            eaves.add(new Eave(add(first + i, new Rises(0), lines.get(i), changes), first + i));
            if (cross.isPresent() && lines.get(after).equals(lines.get(i))) {
                WallLine line = lines.get(i).across(ring.get(after), false);
                double eave = ring.get(after).form().eave();
                List<Change> slope = List.of(new Change(eave, cross));
                eaves.add(new Eave(add(first + i, new CrossGable(turned), line, slope), first + after));
            }
        }
        return eaves;
    }

    /** Adds what rises from one place, from below; answers the number of the lowest. */
    private int add(int wall, Part part, WallLine line, List<Change> changes) {
        int lowest = faces.size();
        List<Level> levels = new ArrayList<>();
        List<Optional<Pitch>> pitches = new ArrayList<>();
        if (changes.isEmpty() || steps(changes.get(0).height()) > 0) {
            levels.add(new Level(BigInteger.ZERO, 0));
            pitches.add(Optional.empty());
        }
        for (Change change : changes) {
            BigInteger weight =
                    change.pitch().map(Cotangent::of).orElse(Cotangent.UPRIGHT).times(unit);
            long height = steps(change.height());
            if (levels.isEmpty() || !levels.get(levels.size() - 1).weight.equals(weight)) {
                levels.add(new Level(weight, height));
                pitches.add(change.pitch());
            }
        }
        List<EavePlane> chain = chains.computeIfAbsent(new Chain(line, levels), this::planes);
        boolean outer = pitches.get(0).isEmpty();
        for (int i = 0; i < levels.size(); i++) {
            Part own = part instanceof Rises ? new Rises(outer ? Math.max(0, i - 1) : i) : part;
            faces.add(new Face(wall, own, pitches.get(i), chain.get(i), heightOf(levels.get(i))));
            last.add(i == levels.size() - 1);
        }
        return lowest;
    }

    private double heightOf(Level level) {
        return base + (double) level.height / WallPlan.STEPS;
    }

    private long steps(double height) {
        return Math.round((height - base) * WallPlan.STEPS);
    }

    private List<EavePlane> planes(Chain chain) {
        List<EavePlane> made = new ArrayList<>();
        BigInteger weight = BigInteger.ZERO;
        BigInteger shift = BigInteger.ZERO;
        for (Level level : chain.levels) {
            // Where it takes over both are at one place: shift + weight · height is the same for both.
            shift = shift.add(weight.subtract(level.weight).multiply(BigInteger.valueOf(level.height)));
            weight = level.weight;
            WallLine line = chain.line;
            made.add(new EavePlane(planes.size(), line.a(), line.b(), line.c(), weight, shift, unit));
            planes.add(made.get(made.size() - 1));
        }
        return made;
    }

    private void refuseInLine(List<Eave> ring) {
        for (int i = 0; i < ring.size(); i++) {
            Face one = faces.get(ring.get(i).face);
            Face other = faces.get(ring.get((i + 1) % ring.size()).face);
            if (one.plane.turnTo(other.plane) == 0) {
                throw InLine.unlike(side(other), side(one)).stop();
            }
        }
    }

    /** When planes hand over to others, in the order of the planes. */
    List<Turn> turns(Tally tally) {
        List<Turn> turns = new ArrayList<>();
        for (Map.Entry<Chain, List<EavePlane>> entry : chains.entrySet()) {
            List<EavePlane> chain = entry.getValue();
            for (int i = 0; i + 1 < chain.size(); i++) {
                EavePlane from = chain.get(i);
                EavePlane across = planes.stream()
                        .filter(plane -> plane.turnTo(from) != 0)
                        .findFirst()
                        .orElseThrow();
                Meeting at = Meeting.ordered(from, chain.get(i + 1), across, tally);
                if (at == null) {
                    throw new IllegalStateException("planes of two pitches meet");
                }
                turns.add(new Turn(from, chain.get(i + 1), entry.getKey().levels.get(i + 1).height, at));
            }
        }
        turns.sort((one, other) -> Integer.compare(one.from.number(), other.from.number()));
        return turns;
    }

    List<Wall> walls() {
        return walls;
    }

    List<Face> all() {
        return faces;
    }

    /** Whether there is a face over this one. */
    boolean changes(int face) {
        return !last.get(face);
    }

    /** Whether there is a face under this one. */
    boolean goesOver(int face) {
        return face > 0 && changes(face - 1);
    }

    /** How far from the wall a face begins, by the pitches under it, metres. */
    double distance(int face) {
        if (!goesOver(face)) {
            return 0;
        }
        Face under = faces.get(face - 1);
        double run = under.pitch
                .map(pitch -> (faces.get(face).from - under.from) / pitch.tan())
                .orElse(0.0);
        return distance(face - 1) + run;
    }

    /** The height of the lowest eaves, metres. */
    double base() {
        return base;
    }

    /** Whether one of two planes hands over to the other. */
    boolean handOver(EavePlane one, EavePlane other) {
        return chains.values().stream().anyMatch(chain -> chain.contains(one) && chain.contains(other));
    }

    /** Whether one face follows another further up. */
    boolean over(int face, int other) {
        return face == other + 1 && changes(other);
    }

    List<List<Eave>> rings() {
        return rings;
    }

    List<EavePlane> planes() {
        return planes;
    }

    /** The first of the caller's sides that are the wall of a face. */
    int side(int face) {
        return side(faces.get(face));
    }

    private int side(Face face) {
        return walls.get(face.wall).sides().get(0);
    }

    /** Metres at a time. */
    double height(double time) {
        return base + time * (unit.doubleValue() / WallPlan.STEPS);
    }
}
