package org.thalweg.footprint;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.footprint.NoRoof.Reason;
import org.thalweg.units.Count;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/**
 * The walls on a grid of whole numbers, from the least x and y of the outline on, rings wound with the roof to their left. A
 * corner within a step of the line between its neighbours, with one pitch on both sides, is no corner: the sides are one
 * wall. A side shorter than a step is none.
 */
final class WallPlan {

    /** Steps of the grid in a metre: one is about 1 µm, and a binary fraction, so that 0.25 m stays what it is. */
    static final int STEPS = 1 << 20;

    static final int MOST_SIDES = 2_000;
    /** 2^30 steps: what {@link EavePlane} can hold. Metres. */
    static final double LARGEST = 1024;
    /** Our own bounds: nobody roofs at less than 1 in 100, and steeper than 50 to 1 is a wall. */
    static final double LEAST_TAN = 0.01;

    static final double MOST_TAN = 50;

    /**
     * @param sides  numbers of the sides that are this wall, in order
     * @param x      of its first corner, steps
     * @param y      of its first corner, steps
     * @param pitch  none: a gable
     */
    record Wall(List<Integer> sides, long x, long y, Optional<Pitch> pitch, Cotangent cotangent) {
        private Wall with(List<Integer> more) {
            List<Integer> all = new ArrayList<>(sides);
            all.addAll(more);
            return new Wall(all, x, y, pitch, cotangent);
        }

        private boolean at(Wall other) {
            return x == other.x && y == other.y;
        }
    }

    private final double originX;
    private final double originY;
    private final List<List<Wall>> rings = new ArrayList<>();
    private final BigInteger unit;

    private WallPlan(Footprint footprint) {
        originX = footprint.outline().stream().mapToDouble(WallSide::x).min().orElseThrow();
        originY = footprint.outline().stream().mapToDouble(WallSide::y).min().orElseThrow();
        int first = 0;
        for (List<WallSide> ring : footprint.rings()) {
            rings.add(snapped(ring, first, rings.isEmpty()));
            first += ring.size();
        }
        PlanChecks.check(rings);
        unit = Cotangent.unit(rings.stream()
                .flatMap(List::stream)
                .map(Wall::cotangent)
                .distinct()
                .toList());
    }

    static WallPlan of(Footprint footprint) {
        if (footprint.sides() > MOST_SIDES) {
            throw NoRoof.because(
                            Reason.TOO_MANY_SIDES,
                            "{actual} sides in all, {limit} at most. Leave out corners in line, or ask for"
                                    + " parts of the roof by themselves.")
                    .with(new Count(footprint.sides()), new Count(MOST_SIDES))
                    .stop();
        }
        int number = 0;
        for (List<WallSide> ring : footprint.rings()) {
            if (ring.size() < 3) {
                throw tooFew(number);
            }
            for (WallSide side : ring) {
                check(side, footprint.outline().get(0), number++);
            }
        }
        return new WallPlan(footprint);
    }

    private static void check(WallSide side, WallSide first, int number) {
        double far = Math.max(Math.abs(side.x() - first.x()), Math.abs(side.y() - first.y()));
        if (far > LARGEST / 2) {
            throw NoRoof.because(
                            Reason.TOO_LARGE,
                            number,
                            "{side} starts {actual} from the first corner along x or y, {limit} at most. Check the unit.")
                    .with(Length.metres(far), Length.metres(LARGEST / 2))
                    .stop();
        }
        double tan = side.pitch().map(Pitch::tan).orElse(1.0);
        if (!(tan >= LEAST_TAN && tan <= MOST_TAN)) {
            throw NoRoof.because(
                            Reason.PITCH_EXTREME,
                            number,
                            "{side} has a pitch of {actual}, {limit} at %s. A side whose wall goes straight up is a gable."
                                    .formatted(tan > 1 ? "most" : "least"))
                    .with(side.pitch().orElseThrow(), new Pitch(12 * (tan > 1 ? MOST_TAN : LEAST_TAN), 12))
                    .stop();
        }
    }

    private List<Wall> snapped(List<WallSide> ring, int first, boolean outline) {
        List<Wall> walls = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            WallSide side = ring.get(i);
            walls.add(new Wall(
                    List.of(first + i),
                    Math.round((side.x() - originX) * STEPS),
                    Math.round((side.y() - originY) * STEPS),
                    side.pitch(),
                    side.pitch().map(Cotangent::of).orElse(Cotangent.UPRIGHT)));
        }
        for (int i = walls.size() - 1; i >= 0 && walls.size() > 1; i--) {
            if (walls.get(i).at(walls.get((i + 1) % walls.size()))) {
                walls.remove(i);
            }
        }
        if (walls.size() < 3) {
            throw tooFew(first);
        }
        if (PlanChecks.turnsLeft(walls) != outline) {
            walls = reversed(walls);
        }
        walls = straightened(walls);
        if (walls.size() < 3) {
            throw tooFew(first);
        }
        return walls;
    }

    /** The same ring the other way round: a wall starts at what was its end. */
    private static List<Wall> reversed(List<Wall> walls) {
        List<Wall> reversed = new ArrayList<>();
        int n = walls.size();
        for (int i = n - 1; i >= 0; i--) {
            Wall wall = walls.get(i);
            Wall end = walls.get((i + 1) % n);
            reversed.add(new Wall(wall.sides, end.x, end.y, wall.pitch, wall.cotangent));
        }
        return reversed;
    }

    private static List<Wall> straightened(List<Wall> corners) {
        List<Wall> walls = new ArrayList<>(corners);
        List<List<Wall>> passed = new ArrayList<>();
        corners.forEach(corner -> passed.add(new ArrayList<>()));
        boolean again = true;
        while (again) {
            again = false;
            for (int i = 0; i < walls.size() && walls.size() > 2; ) {
                int before = (i + walls.size() - 1) % walls.size();
                Wall wall = walls.get(i);
                List<Wall> between = new ArrayList<>(passed.get(before));
                between.add(wall);
                between.addAll(passed.get(i));
                if (PlanChecks.inLine(walls.get(before), between, walls.get((i + 1) % walls.size()))) {
                    passed.set(before, between);
                    walls.set(before, walls.get(before).with(wall.sides));
                    walls.remove(i);
                    passed.remove(i);
                    again = true;
                } else {
                    i++;
                }
            }
        }
        return walls;
    }

    List<List<Wall>> rings() {
        return rings;
    }

    /** The wall that starts where this one ends; walls are numbered through, ring by ring. */
    Wall after(int wall) {
        int left = wall;
        for (List<Wall> ring : rings) {
            if (left < ring.size()) {
                return ring.get((left + 1) % ring.size());
            }
            left -= ring.size();
        }
        throw new IllegalArgumentException("no wall " + wall);
    }

    double originX() {
        return originX;
    }

    double originY() {
        return originY;
    }

    /** How many steps high a plane is at time 1: the unit of all weights. */
    double heightOfTime() {
        return unit.doubleValue();
    }

    /** Least x, least y, most x, most y of the outline, steps. */
    double[] box() {
        double[] box = {Double.MAX_VALUE, Double.MAX_VALUE, 0, 0};
        for (Wall wall : rings.get(0)) {
            box[0] = Math.min(box[0], (double) wall.x);
            box[1] = Math.min(box[1], (double) wall.y);
            box[2] = Math.max(box[2], (double) wall.x);
            box[3] = Math.max(box[3], (double) wall.y);
        }
        return box;
    }

    /** The plane of every wall, ring by ring; walls in one line with one pitch share one. */
    List<List<EavePlane>> planes() {
        Map<List<Object>, EavePlane> known = new LinkedHashMap<>();
        List<List<EavePlane>> all = new ArrayList<>();
        for (List<Wall> ring : rings) {
            List<EavePlane> planes = new ArrayList<>();
            for (int i = 0; i < ring.size(); i++) {
                Wall wall = ring.get(i);
                Wall next = ring.get((i + 1) % ring.size());
                long dx = next.x - wall.x;
                long dy = next.y - wall.y;
                long factor = BigInteger.valueOf(dx).gcd(BigInteger.valueOf(dy)).longValue();
                long a = -dy / factor;
                long b = dx / factor;
                long c = a * wall.x + b * wall.y;
                BigInteger weight = wall.cotangent.times(unit);
                planes.add(known.computeIfAbsent(
                        List.of(a, b, c, weight), key -> new EavePlane(known.size(), a, b, c, weight)));
            }
            for (int i = 0; i < planes.size(); i++) {
                EavePlane next = planes.get((i + 1) % planes.size());
                if (planes.get(i).turnTo(next) == 0) {
                    int side = ring.get((i + 1) % planes.size()).sides.get(0);
                    throw NoRoof.because(
                                    Reason.PITCHES_IN_LINE,
                                    side,
                                    "{side} runs in line with {other} and rises in another way: the steeper slope would be"
                                            + " covered by the flatter. Give both one pitch, or set one of them back.")
                            .with(ring.get(i).sides.get(0))
                            .stop();
                }
            }
            all.add(planes);
        }
        return all;
    }

    private static NoRoof.Stop tooFew(int side) {
        return NoRoof.because(
                        Reason.TOO_FEW_CORNERS,
                        side,
                        "This ring has {actual} corners that are apart and not in line, {limit} at least.")
                .with(new Count(2), new Count(3))
                .stop();
    }
}
