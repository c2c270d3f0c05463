package org.thalweg.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * Rules of thumb, bar after bar. {@link #longestFirst} puts the longest piece that still fits: the same plan as
 * first-fit-decreasing makes, for as many equal bars at a time as there are. {@link #fullest} takes the longest piece left and
 * fills up the bar as far as it can be (minimum bin slack).
 */
final class GreedyFill {

    /** Of making a pattern and throwing it away, for each kind. */
    private static final long STEPS_A_KIND = 2;

    private final CuttingProblem problem;
    private final Work work;
    private final int[] wanted;
    private final int[] available;
    private final List<Lot> lots = new ArrayList<>();

    private GreedyFill(CuttingProblem problem, Work work) {
        this.problem = problem;
        this.work = work;
        this.wanted = problem.wanted();
        this.available = problem.available();
    }

    /** The longest piece that fits, bar after bar. */
    static List<Lot> longestFirst(CuttingProblem problem, Work work) {
        GreedyFill fill = new GreedyFill(problem, work);
        return fill.run(fill::longest);
    }

    /** The fullest bar that holds the longest piece left. */
    static List<Lot> fullest(CuttingProblem problem, Work work) {
        GreedyFill fill = new GreedyFill(problem, work);
        SubsetSum sums = new SubsetSum(problem, work);
        return fill.run((type, longest) -> sums.fill(type, longest, fill.wanted));
    }

    private interface Filling {
        int[] fill(int type, int longest);
    }

    private List<Lot> run(Filling filling) {
        int longest = nextWanted(0);
        while (longest < problem.kinds()) {
            Pattern cheapest = cheapest(filling, longest);
            int times = cheapest.times(wanted, available);
            cheapest.take(times, wanted, available);
            lots.add(new Lot(cheapest, times));
            longest = nextWanted(longest);
        }
        return lots;
    }

    private int nextWanted(int from) {
        int kind = from;
        while (kind < problem.kinds() && wanted[kind] == 0) {
            kind++;
        }
        return kind;
    }

    /** Among the sorts of bar, the one whose filling costs least for what is cut from it. */
    private Pattern cheapest(Filling filling, int longest) {
        Optional<Pattern> found = Optional.empty();
        double least = Double.MAX_VALUE;
        for (int type = 0; type < problem.barTypes(); type++) {
            CuttingProblem.BarType bar = problem.bar(type);
            if (available[type] > 0 && problem.length(longest) <= bar.room()) {
                Pattern pattern = Pattern.of(type, filling.fill(type, longest));
                work.spend(STEPS_A_KIND * problem.kinds());
                double pays = (double) bar.cost() / pattern.used(problem);
                if (pays < least) {
                    least = pays;
                    found = Optional.of(pattern);
                }
            }
        }
        return found.orElseThrow();
    }

    private int[] longest(int type, int longest) {
        int[] counts = new int[problem.kinds()];
        BitSet held = new BitSet();
        long room = problem.bar(type).room();
        for (int kind = longest; kind < problem.kinds(); kind++) {
            if (wanted[kind] > 0 && problem.length(kind) <= room && !problem.clashes(kind, held)) {
                counts[kind] = Math.min(wanted[kind], problem.mostIn(kind, room));
                room -= counts[kind] * problem.length(kind);
                held.set(kind);
            }
        }
        return counts;
    }

    /** The fullest bar, by a search that tries long pieces first and stops at a full one. */
    private static final class SubsetSum {

        private static final int MOST_CHOICES = 2_000;

        /** Once the work is spent, bars are filled in a hurry. */
        private static final int CHOICES_IN_A_HURRY = 50;

        /** Kinds may be passed by, because there are none left or they must be apart; so many for each choice. */
        private static final int LOOKS_A_CHOICE = 20;

        private final CuttingProblem problem;
        private final Work work;
        private final long[] shortestFrom;
        private int[] wanted = {};
        private int[] taken = {};
        private final BitSet held = new BitSet();
        private int[] best = {};
        private long least;
        private int choices;
        private int looks;
        private int improvements;
        private int mostChoices;

        SubsetSum(CuttingProblem problem, Work work) {
            this.problem = problem;
            this.work = work;
            this.shortestFrom = new long[problem.kinds() + 1];
        }

        int[] fill(int type, int longest, int[] stillWanted) {
            wanted = stillWanted;
            shortestFrom[problem.kinds()] = Long.MAX_VALUE;
            for (int kind = problem.kinds() - 1; kind >= longest; kind--) {
                shortestFrom[kind] = wanted[kind] > 0 ? problem.length(kind) : shortestFrom[kind + 1];
            }
            taken = new int[problem.kinds()];
            taken[longest] = 1;
            held.clear();
            held.set(longest);
            best = taken;
            least = Long.MAX_VALUE;
            choices = 0;
            looks = 0;
            improvements = 0;
            mostChoices = work.over() ? CHOICES_IN_A_HURRY : MOST_CHOICES;
            choose(longest, problem.bar(type).room() - problem.length(longest));
            work.spend(6L * choices + 3L * looks + (1 + improvements / 8) * (long) problem.kinds());
            return best;
        }

        private void choose(int from, long room) {
            if (room < least) {
                least = room;
                improvements++;
                best = Arrays.copyOf(taken, taken.length);
            }
            for (int kind = from; least > 0 && room >= shortestFrom[kind] && !enough(); kind++) {
                looks++;
                int had = taken[kind];
                int most = Math.min(wanted[kind], problem.mostIn(kind, room + had * problem.length(kind))) - had;
                if (most <= 0 || problem.clashes(kind, held)) {
                    continue;
                }
                held.set(kind);
                for (int count = most; count > 0 && least > 0; count--) {
                    choices++;
                    taken[kind] = had + count;
                    choose(kind + 1, room - count * problem.length(kind));
                }
                taken[kind] = had;
                held.set(kind, had > 0);
            }
        }

        private boolean enough() {
            return choices >= mostChoices || looks >= LOOKS_A_CHOICE * mostChoices;
        }
    }
}
