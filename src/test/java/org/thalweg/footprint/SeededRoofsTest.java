package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.thalweg.footprint.NoRoof.Reason;
import org.thalweg.units.Pitch;

/**
 * Plans made up by the thousand: each has a roof that passes every check, or is refused with a reason. {@code
 * -Dthalweg.skeletons=100000} makes up more.
 */
class SeededRoofsTest {

    private static final int COUNT = Integer.getInteger("thalweg.skeletons", 2_000);
    private static final List<String> TRADE = List.of("3:12", "4:12", "6:12", "7:12", "8:12", "9:12", "12:12", "14:12");

    /** What is made up, and what may come of it besides a roof. */
    private enum Kind {
        /** Simple outlines of one pitch: none may be refused. */
        ONE_PITCH,
        /** Outlines and courtyards of whole metres, square, of one pitch: much happens at once; none may be refused. */
        SQUARES,
        SQUARES_OF_PITCHES,
        PITCHES,
        GABLES
    }

    @Test
    void everyPlanHasARoofOrAReason() {
        Map<Kind, Map<Reason, Integer>> refused = new TreeMap<>();
        int corners = 0;
        for (int seed = 0; seed < COUNT; seed++) {
            Kind kind = Kind.values()[seed % Kind.values().length];
            Footprint plan = madeUp(kind, new Random(seed));
            Rise rise = Footprints.roofOver(plan);
            Map<Reason, Integer> counts = refused.computeIfAbsent(kind, key -> new EnumMap<>(Reason.class));
            if (rise instanceof NoRoof none) {
                if (none.reason() == Reason.NEVER_CLOSES) {
                    assertThat(plan.outline()).as("seed %d", seed).allMatch(side -> side.pitch()
                            .isEmpty());
                }
                if (counts.merge(none.reason(), 1, Integer::sum) < 5) {
                    System.out.println(kind + " " + seed + " " + none);
                }
            } else if (kind == Kind.ONE_PITCH || kind == Kind.SQUARES) {
                corners += OnePitchTruths.hold(plan, (RoofOver) rise).corners();
            }
        }
        assertThat(corners).isGreaterThan(5 * 2 * COUNT / Kind.values().length);
        System.out.println("refused of " + COUNT + " plans: " + refused);
        assertThat(refused.get(Kind.ONE_PITCH)).isEmpty();
        assertThat(refused.get(Kind.SQUARES)).isEmpty();
        assertThat(refused.get(Kind.SQUARES_OF_PITCHES)).isEmpty();
    }

    private static Footprint madeUp(Kind kind, Random random) {
        Pitch one = Pitch.read(TRADE.get(random.nextInt(TRADE.size()))).orElseThrow();
        switch (kind) {
            case ONE_PITCH:
                return Footprint.of(Plans.star(random, 3 + random.nextInt(30), 3, 12, one));
            case PITCHES:
                return Footprint.of(varied(Plans.star(random, 3 + random.nextInt(30), 3, 12, one), random));
            case GABLES:
                return Footprint.of(gabled(Plans.star(random, 3 + random.nextInt(12), 3, 12, one), random));
            default:
                List<List<WallSide>> rings = new ArrayList<>();
                for (List<int[]> ring :
                        Plans.squares(random, 3 + random.nextInt(6), 3 + random.nextInt(6), 4 + random.nextInt(30))) {
                    double[] xy = ring.stream()
                            .flatMapToDouble(corner -> DoubleStream.of(corner[0], corner[1]))
                            .toArray();
                    List<WallSide> walls = Plans.ring(one, xy);
                    rings.add(kind == Kind.SQUARES ? walls : varied(walls, random));
                }
                return new Footprint(rings.get(0), rings.subList(1, rings.size()));
        }
    }

    private static List<WallSide> varied(List<WallSide> ring, Random random) {
        return ring.stream()
                .map(side -> WallSide.of(side.x(), side.y(), Pitch.read(TRADE.get(random.nextInt(TRADE.size())))))
                .toList();
    }

    /** Some sides between two outer corners are gables. */
    private static List<WallSide> gabled(List<WallSide> ring, Random random) {
        List<WallSide> gabled = new ArrayList<>();
        int n = ring.size();
        for (int i = 0; i < n; i++) {
            WallSide end = ring.get((i + 1) % n);
            boolean outer = Plans.inward(ring, (i + n - 1) % n, end.x(), end.y()) > 0
                    && Plans.inward(
                                    ring,
                                    i,
                                    ring.get((i + 2) % n).x(),
                                    ring.get((i + 2) % n).y())
                            > 0;
            WallSide side = ring.get(i);
            gabled.add(outer && random.nextInt(3) == 0 ? WallSide.of(side.x(), side.y(), Optional.empty()) : side);
        }
        return gabled;
    }
}
