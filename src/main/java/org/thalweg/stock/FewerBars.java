package org.thalweg.stock;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Fewer bars where they are free: what is cut from two bars, or from three, goes on one bar that costs no more than they do,
 * as one of 20 ft for two of 10 ft. Over and over, until no two or three bars of the plan can be one. What lies on the rack and
 * costs nothing is left alone, so that it is used up first.
 */
final class FewerBars {

    /** Three at a time are tried where there are no more different bars than this: their number is the cube. */
    private static final int MOST_FOR_THREE = 100;

    private final CuttingProblem problem;
    private final int[] available;
    private final Map<Pattern, Integer> times = new LinkedHashMap<>();

    private FewerBars(CuttingProblem problem, List<Lot> lots) {
        this.problem = problem;
        this.available = problem.available();
        lots.forEach(lot -> put(lot.pattern(), lot.times()));
    }

    /** The same pieces on as many bars, or fewer, at no more cost. */
    static List<Lot> of(CuttingProblem problem, List<Lot> lots) {
        FewerBars fewer = new FewerBars(problem, lots);
        if (!problem.plain()) {
            boolean again = true;
            while (again) {
                again = fewer.joinAny();
            }
        }
        return fewer.times.entrySet().stream()
                .map(entry -> new Lot(entry.getKey(), entry.getValue()))
                .toList();
    }

    private void put(Pattern pattern, int more) {
        times.merge(pattern, more, Integer::sum);
        times.remove(pattern, 0);
        if (available[pattern.type()] != CuttingProblem.UNLIMITED) {
            available[pattern.type()] -= more;
        }
    }

    /** Once through all twos and threes; whether any were joined. */
    private boolean joinAny() {
        List<Pattern> bars = times.keySet().stream()
                .filter(bar -> problem.bar(bar.type()).cost() > 0)
                .sorted()
                .toList();
        boolean three = bars.size() <= MOST_FOR_THREE;
        boolean joined = false;
        for (int i = 0; i < bars.size(); i++) {
            for (int j = i; j < bars.size(); j++) {
                joined |= join(List.of(bars.get(i), bars.get(j)));
                for (int k = j; k < bars.size() && three; k++) {
                    joined |= join(List.of(bars.get(i), bars.get(j), bars.get(k)));
                }
            }
        }
        return joined;
    }

    /** As often as there are such bars, and one for them. */
    private boolean join(List<Pattern> few) {
        boolean joined = false;
        int sort = sortFor(few);
        while (sort >= 0 && areThere(few)) {
            Pattern one = Pattern.joined(sort, few, problem.kinds());
            if (!problem.allows(one)) {
                return joined;
            }
            few.forEach(bar -> put(bar, -1));
            put(one, 1);
            joined = true;
            sort = sortFor(few);
        }
        return joined;
    }

    private boolean areThere(List<Pattern> few) {
        for (Pattern bar : few) {
            int wanted = 0;
            for (Pattern other : few) {
                wanted += bar.equals(other) ? 1 : 0;
            }
            if (times.getOrDefault(bar, 0) < wanted) {
                return false;
            }
        }
        return true;
    }

    /** The cheapest sort of bar that holds what is on a few and costs no more; -1 if there is none. */
    private int sortFor(List<Pattern> few) {
        long used = 0;
        long least = 0;
        for (Pattern bar : few) {
            used += bar.used(problem);
            least += problem.bar(bar.type()).cost();
        }
        int found = -1;
        for (int sort = 0; sort < problem.barTypes(); sort++) {
            CuttingProblem.BarType bar = problem.bar(sort);
            boolean cheaper = found < 0 ? bar.cost() <= least : bar.cost() < least;
            if (cheaper && bar.room() >= used && isLeft(sort, few)) {
                least = bar.cost();
                found = sort;
            }
        }
        return found;
    }

    private boolean isLeft(int sort, List<Pattern> few) {
        boolean oneOfThem = few.stream().anyMatch(bar -> bar.type() == sort);
        return available[sort] > 0 || oneOfThem;
    }
}
