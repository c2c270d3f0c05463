package org.thalweg.stock;

import java.util.List;

/**
 * Bars that are cut alike.
 *
 * @param pattern what is cut from each
 * @param times   how many bars; 1 or more
 */
record Lot(Pattern pattern, int times) {

    static long cost(List<Lot> lots, CuttingProblem problem) {
        long cost = 0;
        for (Lot lot : lots) {
            cost = Math.min(
                    CuttingProblem.DEAREST_PLAN,
                    cost + problem.bar(lot.pattern().type()).cost(lot.times()));
        }
        return cost;
    }
}
