package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.thalweg.footprint.NoRoof.Reason;
import org.thalweg.footprint.WallSide.Change;
import org.thalweg.units.Pitch;

/**
 * Plans made up by the thousand whose sides change further up, stand at heights of their own, or carry cross gables: each has
 * a roof that passes every check, or is refused with a reason. {@code -Dthalweg.skeletons=100000} makes up more.
 */
class SeededRisingTest {

    private static final int COUNT = Integer.getInteger("thalweg.skeletons", 2_000) / 4;
    private static final List<String> TRADE = List.of("3:12", "4:12", "6:12", "7:12", "8:12", "9:12", "12:12", "14:12");

    enum Kind {
        /** All sides change to another pitch at one height. */
        MANSARDS,
        /** Each side may change to another pitch or to a gable, at a height of its own. */
        CHANGES,
        /** Eaves at several heights. */
        EAVES,
        /** Parts of sides are gables. */
        CROSS_GABLES
    }

    @ParameterizedTest
    @EnumSource
    void everyPlanHasARoofOrAReason(Kind kind) {
        Map<Reason, Integer> refused = new EnumMap<>(Reason.class);
        for (int seed = 0; seed < COUNT; seed++) {
            Rise rise = Footprints.roofOver(Footprint.of(madeUp(kind, new Random(seed), seed % 2 == 0)));
            if (rise instanceof NoRoof none && refused.merge(none.reason(), 1, Integer::sum) < 4) {
                System.out.println(kind + " " + seed + " " + none);
            }
        }
        System.out.println("refused of " + COUNT + " " + kind + ": " + refused);
        assertThat(refused).doesNotContainKey(Reason.CHECK_FAILED);
    }

    private static List<WallSide> madeUp(Kind kind, Random random, boolean square) {
        List<WallSide> ring = square
                ? Plans.ring(
                        pitch(random),
                        Plans.squares(random, 6, 6, 4 + random.nextInt(20)).get(0).stream()
                                .flatMapToDouble(corner -> DoubleStream.of(2 * corner[0], 2 * corner[1]))
                                .toArray())
                : Plans.star(random, 4 + random.nextInt(16), 4, 12, pitch(random));
        double height = 0.1 + random.nextInt(10) / 10.0;
        Pitch upper = pitch(random);
        return switch (kind) {
            case MANSARDS ->
                ring.stream()
                        .map(side -> side.then(new Change(height, Optional.of(upper))))
                        .toList();
            case CHANGES ->
                ring.stream()
                        .map(side -> random.nextInt(3) > 0
                                ? side
                                : side.then(new Change(
                                        0.1 + random.nextInt(10) / 10.0,
                                        random.nextInt(2) == 0 ? Optional.empty() : Optional.of(pitch(random)))))
                        .toList();
            case EAVES -> {
                List<WallSide> raised = new ArrayList<>();
                for (int i = 0; i < ring.size(); i++) {
                    raised.add(random.nextInt(4) > 0 ? ring.get(i) : ring.get(i).eaveAt(random.nextInt(10) / 10.0));
                }
                yield raised;
            }
            case CROSS_GABLES -> crossed(ring, random);
        };
    }

    private static List<WallSide> crossed(List<WallSide> ring, Random random) {
        List<WallSide> crossed = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            WallSide side = ring.get(i);
            WallSide end = ring.get((i + 1) % ring.size());
            crossed.add(side);
            if (random.nextInt(3) == 0) {
                double from = 0.1 + 0.4 * random.nextDouble();
                double to = from + 0.1 + 0.3 * random.nextDouble();
                crossed.add(
                        WallSide.gable(side.x() + from * (end.x() - side.x()), side.y() + from * (end.y() - side.y()))
                                .crossing(pitch(random)));
                crossed.add(side.from(side.x() + to * (end.x() - side.x()), side.y() + to * (end.y() - side.y())));
            }
        }
        return crossed;
    }

    private static Pitch pitch(Random random) {
        return Pitch.read(TRADE.get(random.nextInt(TRADE.size()))).orElseThrow();
    }
}
