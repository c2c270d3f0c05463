package org.thalweg.footprint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.footprint.NoRoof.Reason;
import org.thalweg.units.Length;

/**
 * The plan of the eaves: every side of the walls moved out by its overhang, level and square to the wall, and each corner
 * where the two lines beside it now meet. In a courtyard out of the building is into the yard.
 */
final class EaveLines {

    /**
     * Sides that turn less, as a sine, run on in one line: with different overhangs their corner would lie a thousand times
     * the difference away. Our own bound.
     */
    private static final double IN_LINE = 1e-3;

    private EaveLines() {}

    /**
     * A plan without overhangs stays as it is.
     *
     * @throws NoRoof.Stop when the walls are no plan, or leave no room for their eaves
     */
    static Footprint of(Footprint walls) {
        if (walls.rings().stream().flatMap(List::stream).allMatch(side -> side.overhang() == 0)) {
            return walls;
        }
        // What is wrong with the walls themselves is told first.
        WallPlan.of(walls);
        List<List<WallSide>> moved = new ArrayList<>();
        int first = 0;
        for (List<WallSide> ring : walls.rings()) {
            moved.add(new Ring(ring, first, moved.isEmpty(), walls.tolerance().metres()).moved());
            first += ring.size();
        }
        Footprint eaves = new Footprint(moved.get(0), moved.subList(1, moved.size()), walls.tolerance());
        refuseCrossing(walls, eaves);
        return eaves;
    }

    private static void refuseCrossing(Footprint walls, Footprint eaves) {
        try {
            WallPlan.of(eaves);
        } catch (NoRoof.Stop stop) {
            NoRoof why = stop.why();
            if (why.reason() != Reason.RINGS_CROSS && why.reason() != Reason.COURTYARD_OUTSIDE) {
                throw stop;
            }
            throw crossing(walls, why).stop();
        }
    }

    private static NoRoof crossing(Footprint walls, NoRoof why) {
        double widest = walls.rings().stream()
                .flatMap(List::stream)
                .mapToDouble(WallSide::overhang)
                .max()
                .orElse(0);
        return new NoRoof(
                Reason.OVERHANG_TOO_WIDE,
                why.side(),
                why.other(),
                "The eaves of {side}"
                        + (why.other().isPresent() ? " and {other}" : "")
                        + " cross once they are moved out; the widest overhang of this plan is {actual}. Give less"
                        + " overhang there.",
                Optional.of(Length.metres(widest)),
                Optional.empty());
    }

    /** One ring and which way is out of the building. */
    private static final class Ring {

        private final List<WallSide> sides;
        private final int first;
        /** The sides that have a length, by their place in the ring. */
        private final List<Integer> real = new ArrayList<>();
        /** For each of those its direction, one long. */
        private final List<double[]> ways = new ArrayList<>();
        /** 1 if out is to the right of a side, −1 if to its left. */
        private final int right;
        /** Corners this close are one, metres. */
        private final double close;

        Ring(List<WallSide> sides, int first, boolean outline, double close) {
            this.sides = sides;
            this.first = first;
            this.close = close;
            for (int i = 0; i < sides.size(); i++) {
                double[] run = run(sides.get(i), sides.get((i + 1) % sides.size()));
                double length = Math.hypot(run[0], run[1]);
                if (length > close) {
                    real.add(i);
                    ways.add(new double[] {run[0] / length, run[1] / length});
                }
            }
            right = Footprint.turnsLeft(sides) == outline ? 1 : -1;
        }

        private static double[] run(WallSide from, WallSide to) {
            return new double[] {to.x() - from.x(), to.y() - from.y()};
        }

        List<WallSide> moved() {
            int n = real.size();
            double[][] corners = new double[n][];
            for (int k = 0; k < n; k++) {
                corners[k] = corner(k);
            }
            for (int k = 0; k < n; k++) {
                refuseTurned(k, corners[k], corners[(k + 1) % n]);
            }
            List<WallSide> moved = new ArrayList<>();
            int next = 0;
            for (int i = 0; i < sides.size(); i++) {
                // A side without length starts where the next real one does.
                while (next < n && real.get(next) < i) {
                    next++;
                }
                double[] at = corners[next % n];
                moved.add(sides.get(i).from(at[0], at[1]).overhanging(0));
            }
            return moved;
        }

        private WallSide side(int k) {
            return sides.get(real.get(k));
        }

        private int before(int k) {
            return (k + real.size() - 1) % real.size();
        }

        /** Where the moved line of a side meets that of the side before it. */
        private double[] corner(int k) {
            double[] in = ways.get(before(k));
            double[] on = ways.get(k);
            double wide = side(before(k)).overhang();
            double own = side(k).overhang();
            double turn = cross(in, on);
            double straight = in[0] * on[0] + in[1] * on[1];
            // Out by the side's own overhang, and along it as far as the mitre of both runs on.
            double along;
            if (wide == own) {
                along = -own * right * turn / (1 + straight);
            } else if (Math.abs(turn) > IN_LINE) {
                along = right * (own * straight - wide) / turn;
            } else {
                throw NoRoof.because(
                                Reason.OVERHANGS_IN_LINE,
                                number(k),
                                "{side} runs on in line with {other} and stands out {actual}, the other {limit}: their eaves"
                                        + " do not meet. Give both one overhang, or set one of them back.")
                        .with(number(before(k)))
                        .with(Length.metres(own), Length.metres(wide))
                        .stop();
            }
            return new double[] {
                side(k).x() + own * right * on[1] + along * on[0], side(k).y() - own * right * on[0] + along * on[1]
            };
        }

        private void refuseTurned(int k, double[] from, double[] to) {
            double[] way = ways.get(k);
            int after = (k + 1) % real.size();
            double before =
                    (side(after).x() - side(k).x()) * way[0] + (side(after).y() - side(k).y()) * way[1];
            double left = (to[0] - from[0]) * way[0] + (to[1] - from[1]) * way[1];
            if (left > close) {
                return;
            }
            double widest = Math.max(
                    side(k).overhang(),
                    Math.max(side(before(k)).overhang(), side(after).overhang()));
            throw NoRoof.because(
                            Reason.OVERHANG_TOO_WIDE,
                            number(k),
                            "The eaves beside {side} meet before there is room for its own: {actual} is the widest of the"
                                    + " three overhangs, and if all three shrink alike {limit} is the most. Give less.")
                    // What is left of the side shrinks evenly with the overhangs.
                    .with(Length.metres(widest), Length.metres(widest * before / (before - left)))
                    .stop();
        }

        private int number(int k) {
            return first + real.get(k);
        }

        private static double cross(double[] one, double[] other) {
            return one[0] * other[1] - one[1] * other[0];
        }
    }
}
