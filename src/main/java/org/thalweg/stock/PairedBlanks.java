package org.thalweg.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Mitred panels out of square-ended blanks, at most two from one blank, head to head. Two panels whose meeting ends lean the
 * same way save the lesser of the two offsets; which panels go together is a matching of greatest weight.
 *
 * @param blanks in the order of the first panel of each
 * @param length of all blanks together, grid steps
 * @param proven whether no other pairs take less; false for more panels than {@link #MOST_MATCHED}, which are paired by greed
 */
public record PairedBlanks(List<Blank> blanks, long length, boolean proven) {

    /** Most panels that are matched exactly; the table of pairs grows with their square, the time with their cube. */
    public static final int MOST_MATCHED = 400;

    /** One blank and the run on it: one panel or two. */
    public record Blank(CoilRun run) {}

    public PairedBlanks {
        blanks = List.copyOf(blanks);
    }

    public static PairedBlanks of(List<MitredPanel> panels, Turning turning) {
        if (panels.size() > MOST_MATCHED) {
            return paired(panels, turning, greedy(panels, turning), false);
        }
        long[][] saved = new long[panels.size()][panels.size()];
        for (int i = 0; i < panels.size(); i++) {
            for (int j = 0; j < i; j++) {
                saved[i][j] = saved(panels.get(i), panels.get(j), turning);
                saved[j][i] = saved[i][j];
            }
        }
        return paired(panels, turning, Matching.heaviest(saved), true);
    }

    private static PairedBlanks paired(List<MitredPanel> panels, Turning turning, int[] mates, boolean proven) {
        List<Blank> blanks = new ArrayList<>();
        long length = 0;
        for (int i = 0; i < panels.size(); i++) {
            if (mates[i] < 0 || mates[i] > i) {
                List<MitredPanel> on =
                        mates[i] < 0 ? List.of(panels.get(i)) : List.of(panels.get(i), panels.get(mates[i]));
                CoilRun run = CoilPlan.of(on, turning).best();
                blanks.add(new Blank(run));
                length += run.length();
            }
        }
        return new PairedBlanks(blanks, length, proven);
    }

    /** Coil that one blank for both saves, best way round. */
    static long saved(MitredPanel panel, MitredPanel other, Turning turning) {
        long asLying = Math.max(saved(panel.right(), other.left()), saved(other.right(), panel.left()));
        if (turning == Turning.FORBIDDEN) {
            return asLying;
        }
        return Math.max(asLying, Math.max(saved(panel.right(), other.right()), saved(panel.left(), other.left())));
    }

    /** Ends that lean the same way save the lesser offset, others nothing. [geometry] */
    private static long saved(long end, long next) {
        return Long.signum(end) == Long.signum(next) ? Math.min(Math.abs(end), Math.abs(next)) : 0;
    }

    /** Each panel in turn with the one left that saves most beside it. */
    private static int[] greedy(List<MitredPanel> panels, Turning turning) {
        int[] mates = new int[panels.size()];
        Arrays.fill(mates, -1);
        for (int i = 0; i < mates.length; i++) {
            int best = -1;
            long most = 0;
            for (int j = i + 1; j < mates.length && mates[i] < 0; j++) {
                long saved = mates[j] < 0 ? saved(panels.get(i), panels.get(j), turning) : 0;
                if (saved > most) {
                    most = saved;
                    best = j;
                }
            }
            if (best >= 0) {
                mates[i] = best;
                mates[best] = i;
            }
        }
        return mates;
    }
}
