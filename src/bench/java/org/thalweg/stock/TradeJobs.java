package org.thalweg.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Made-up cutting jobs of trade size, always the same ones: 10 to 500 pieces of 3 to 60 lengths out of one stock length, half in
 * sixteenths of an inch, half in millimetres, half with a kerf. Lengths are between a fortieth and nine tenths of the stock
 * length; a third of the jobs have short pieces only, a third have lengths on whole inches or centimetres.
 */
final class TradeJobs {

    private static final int[] SIXTEENTHS = {120 * 16, 126 * 16, 144 * 16, 240 * 16};
    private static final int[] MILLIMETRES = {2500, 3000, 6000, 6500};

    private TradeJobs() {}

    static List<CuttingProblem> frozen(int count) {
        return IntStream.range(0, count).mapToObj(TradeJobs::job).toList();
    }

    private static CuttingProblem job(int number) {
        Random random = new Random(20_260_101L + number);
        boolean inches = number % 2 == 0;
        long stock = inches ? SIXTEENTHS[random.nextInt(4)] : MILLIMETRES[random.nextInt(4)];
        long kerf = number / 2 % 2 == 0 ? 0 : inches ? 2 : 3;
        long step = random.nextInt(3) > 0 ? 1 : inches ? 16 : 10;
        double longest = random.nextInt(3) > 0 ? 0.9 : 0.4;
        int pieces = 10 + random.nextInt(491);
        int kinds = Math.min(pieces, 3 + random.nextInt(58));
        TreeMap<Long, Integer> counts = new TreeMap<>(Comparator.reverseOrder());
        long[] lengths = new long[kinds];
        for (int i = 0; i < kinds; i++) {
            long length = (long) (stock * (0.025 + random.nextDouble() * (longest - 0.025)));
            lengths[i] = Math.max(step, length / step * step) + kerf;
        }
        for (int i = 0; i < pieces; i++) {
            counts.merge(lengths[i < kinds ? i : random.nextInt(kinds)], 1, Integer::sum);
        }
        return new CuttingProblem(
                counts.keySet().stream().mapToLong(length -> length).toArray(),
                counts.values().stream().mapToInt(count -> count).toArray(),
                new CuttingProblem.BarType(stock + kerf, 1, CuttingProblem.UNLIMITED));
    }

    /** Four stock lengths with free costs in cents; every other job also has five sorts of off-cuts on the rack. */
    static List<CuttingCase> racks(int count, Budget budget) {
        return IntStream.range(0, count).mapToObj(number -> rack(number, budget)).toList();
    }

    private static CuttingCase rack(int number, Budget budget) {
        Random random = new Random(20_260_201L + number);
        List<StockBar> stock = new ArrayList<>();
        for (int length : new int[] {2000, 3000, 4000, 6000}) {
            stock.add(StockBar.of("new" + length, length, length * (800L + random.nextInt(400)) / 1000));
        }
        for (int i = 0; i < 5 * (number % 2); i++) {
            stock.add(StockBar.onRack("rest" + i, 600 + random.nextInt(3000), 1 + random.nextInt(3)));
        }
        List<CutPiece> pieces = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            pieces.add(CutPiece.of("p" + i, 150 + random.nextInt(1800), 1 + random.nextInt(12)));
        }
        return new CuttingCase(stock, pieces, 3, 300, budget);
    }
}
