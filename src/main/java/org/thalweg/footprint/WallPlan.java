package org.thalweg.footprint;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.footprint.NoRoof.Reason;
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
    static final int MOST_COURTYARDS = 100;
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
        if (footprint.sides() > MOST_SIDES || footprint.courtyards().size() > MOST_COURTYARDS) {
            throw stop(
                    Reason.TOO_MANY_SIDES,
                    "%d sides and %d courtyards, more than the %d and %d that are worked on"
                            .formatted(footprint.sides(), footprint.courtyards().size(), MOST_SIDES, MOST_COURTYARDS));
        }
        int number = 0;
        for (List<WallSide> ring : footprint.rings()) {
            if (ring.size() < 3) {
                throw stop(Reason.TOO_FEW_CORNERS, "a ring of %d corners".formatted(ring.size()));
            }
            for (WallSide side : ring) {
                check(side, footprint.outline().get(0), number++);
            }
        }
        return new WallPlan(footprint);
    }

    private static void check(WallSide side, WallSide first, int number) {
        // Not (a <= b), so that what is no number is caught as well.
        if (!(Math.abs(side.x() - first.x()) <= LARGEST / 2 && Math.abs(side.y() - first.y()) <= LARGEST / 2)) {
            throw new NoRoof.Stop(NoRoof.because(
                    Reason.TOO_LARGE,
                    number,
                    "side %d starts more than %.0f m from the first corner".formatted(number, LARGEST / 2)));
        }
        double tan = side.pitch().map(Pitch::tan).orElse(1.0);
        if (!(tan >= LEAST_TAN && tan <= MOST_TAN)) {
            throw new NoRoof.Stop(NoRoof.because(
                    Reason.PITCH_EXTREME,
                    number,
                    "side %d rises %.4f per run of 1, outside %.2f to %.0f; a side that goes up as a wall is a gable"
                            .formatted(number, tan, LEAST_TAN, MOST_TAN)));
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
            throw stop(Reason.TOO_FEW_CORNERS, "a ring has fewer than three corners that are apart");
        }
        if (PlanChecks.turnsLeft(walls) != outline) {
            walls = reversed(walls);
        }
        walls = straightened(walls);
        if (walls.size() < 3) {
            throw stop(Reason.TOO_FEW_CORNERS, "a ring has fewer than three corners that are not in line");
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
                    throw new NoRoof.Stop(NoRoof.because(
                            Reason.PITCHES_IN_LINE,
                            side,
                            "side %d runs in line with the one before and has another pitch".formatted(side)));
                }
            }
            all.add(planes);
        }
        return all;
    }

    private static NoRoof.Stop stop(Reason reason, String detail) {
        return new NoRoof.Stop(NoRoof.because(reason, detail));
    }
}
