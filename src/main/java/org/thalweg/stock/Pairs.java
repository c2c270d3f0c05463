package org.thalweg.stock;

import java.util.List;

/** Which two kinds lie together in fractions: those nearest to half a bar, the longest first where several are. */
final class Pairs {

    private static final double WHOLE = 1e-5;

    private final int kinds;
    private int kind = -1;
    private int other = -1;
    private boolean whole = true;

    Pairs(CuttingProblem problem, List<Simplex.Share> shares) {
        this.kinds = problem.kinds();
        double[] together = new double[kinds * kinds];
        for (Simplex.Share share : shares) {
            boolean broken = Math.abs(share.times() - Math.rint(share.times())) > WHOLE;
            whole &= !broken;
            add(share, together);
        }
        choose(problem, together);
        if (!whole && kind < 0) {
            chooseAny(shares);
        }
        whole = whole || kind < 0;
    }

    private void add(Simplex.Share share, double[] together) {
        Pattern pattern = share.pattern();
        for (int i = 0; i < pattern.size(); i++) {
            if (pattern.count(i) > 1) {
                together[pattern.kind(i) * kinds + pattern.kind(i)] += share.times();
            }
            for (int j = i + 1; j < pattern.size(); j++) {
                together[pattern.kind(i) * kinds + pattern.kind(j)] += share.times();
            }
        }
    }

    private void choose(CuttingProblem problem, double[] together) {
        double best = WHOLE;
        long longest = 0;
        for (int pair = 0; pair < together.length; pair++) {
            double broken = Math.abs(together[pair] - Math.rint(together[pair]));
            long length = problem.length(pair / kinds) + problem.length(pair % kinds);
            if (broken > best + WHOLE || broken > best - WHOLE && broken > WHOLE && length > longest) {
                best = broken;
                longest = length;
                kind = pair / kinds;
                other = pair % kinds;
            }
        }
    }

    /** Every two kinds lie together whole times and yet a bar is cut in fractions: any two on it will do. */
    private void chooseAny(List<Simplex.Share> shares) {
        for (Simplex.Share share : shares) {
            Pattern pattern = share.pattern();
            boolean broken = Math.abs(share.times() - Math.rint(share.times())) > WHOLE;
            if (broken && (pattern.size() > 1 || pattern.count(0) > 1)) {
                kind = pattern.kind(0);
                other = pattern.count(0) > 1 ? kind : pattern.kind(1);
                return;
            }
        }
    }

    /** Nothing is cut in fractions. */
    boolean whole() {
        return whole;
    }

    int kind() {
        return kind;
    }

    int other() {
        return other;
    }

    boolean holdsBoth(Pattern pattern) {
        return kind == other ? pattern.countOf(kind) > 1 : pattern.countOf(kind) > 0 && pattern.countOf(other) > 0;
    }
}
