package org.thalweg.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The revised simplex method for cutting: how often each pattern is cut, in fractions, so that every kind is covered at the
 * least cost. A row for every kind still wanted (at least so many) and for every sort of bar that is limited (at most so
 * many). The inverse of the basis is kept whole; rows are few. Plain doubles: what is proven is proven elsewhere, in whole
 * numbers.
 */
final class Simplex {

    private static final double EPS = 1e-9;

    /** Pivots after which the inverse is worked out anew. */
    private static final int PIVOTS_KEPT = 400;

    private final CuttingProblem problem;
    private final Work work;
    private final double unit;
    private final int[] rowOfKind;
    private final int[] rowOfBar;
    private final int[] kindOfRow;
    private final int rows;
    private final double[] right;

    private final List<Pattern> patterns = new ArrayList<>();
    private final List<int[]> entries = new ArrayList<>();
    private double[] costs = new double[64];

    /** Column in each row: a pattern's number, or -1 - r for the slack of row r. */
    private final int[] basis;

    private final boolean[] isBasic;
    private double[][] inverse;
    private double[] level;
    private double[] duals;

    /** By how much the entering column costs less than it is worth; below 0. */
    private double reducedCost;

    private int pivots;

    Simplex(CuttingProblem problem, Work work) {
        this.problem = problem;
        this.work = work;
        this.unit = problem.cheapest();
        this.rowOfKind = new int[problem.kinds()];
        this.rowOfBar = new int[problem.barTypes()];
        int[] kinds = new int[problem.kinds()];
        int count = 0;
        for (int kind = 0; kind < problem.kinds(); kind++) {
            rowOfKind[kind] = problem.wanted(kind) > 0 ? count : -1;
            if (problem.wanted(kind) > 0) {
                kinds[count++] = kind;
            }
        }
        this.kindOfRow = Arrays.copyOf(kinds, count);
        for (int type = 0; type < problem.barTypes(); type++) {
            rowOfBar[type] = problem.bar(type).limited() && problem.bar(type).available() > 0 ? count++ : -1;
        }
        this.rows = count;
        this.right = new double[rows];
        this.basis = new int[rows];
        this.isBasic = new boolean[rows];
        this.inverse = new double[rows][rows];
        this.level = new double[rows];
        this.duals = new double[rows];
        work.spend((long) rows * rows + 20L * rows);
        start();
    }

    /**
     * Every kind alone on bars of its own. Right sides are moved by next to
     * nothing, each by its own bit, so that no two rows leave at once.
     */
    private void start() {
        for (int row = 0; row < rows; row++) {
            right[row] = wantedIn(row) + 1e-7 * (1 + (row * 7919L) % 1009 / 1009.0);
            if (row < kindOfRow.length) {
                Pattern alone = alone(kindOfRow[row]);
                basis[row] = patterns.size();
                add(alone);
                inverse[row][row] = 1.0 / alone.count(0);
            } else {
                basis[row] = -1 - row;
                mark(basis[row], true);
                inverse[row][row] = 1;
            }
            level[row] = right[row] * inverse[row][row];
        }
        priceAnew();
    }

    /** The cheapest way to cut a kind alone from bars without limit. */
    private Pattern alone(int kind) {
        Optional<Pattern> found = Optional.empty();
        double least = Double.MAX_VALUE;
        for (int type = 0; type < problem.barTypes(); type++) {
            int most = problem.most(kind, type);
            if (!problem.bar(type).limited()
                    && most > 0
                    && (double) problem.bar(type).cost() / most < least) {
                least = (double) problem.bar(type).cost() / most;
                found = Optional.of(Pattern.ofOne(type, kind, most));
            }
        }
        return found.orElseThrow();
    }

    private double wantedIn(int row) {
        if (row < kindOfRow.length) {
            return problem.wanted(kindOfRow[row]);
        }
        for (int type = 0; type < rowOfBar.length; type++) {
            if (rowOfBar[type] == row) {
                return problem.bar(type).available();
            }
        }
        throw new IllegalStateException("row %d belongs to nothing".formatted(row));
    }

    /** A pattern more to choose from; no bar of its kind may be missing and no kind on it unwanted. */
    void add(Pattern pattern) {
        int[] entry = new int[2 * pattern.size() + (rowOfBar[pattern.type()] >= 0 ? 2 : 0)];
        for (int i = 0; i < pattern.size(); i++) {
            entry[2 * i] = rowOfKind[pattern.kind(i)];
            entry[2 * i + 1] = pattern.count(i);
        }
        if (rowOfBar[pattern.type()] >= 0) {
            entry[entry.length - 2] = rowOfBar[pattern.type()];
            entry[entry.length - 1] = 1;
        }
        if (patterns.size() == costs.length) {
            costs = Arrays.copyOf(costs, 2 * costs.length);
        }
        costs[patterns.size()] = problem.bar(pattern.type()).cost() / unit;
        patterns.add(pattern);
        entries.add(entry);
        work.spend(20L + entry.length);
    }

    /** Cheapest fractions of the patterns given so far. */
    void optimise() {
        int entering = cheapest();
        while (entering != NONE && !work.over()) {
            pivot(entering);
            entering = cheapest();
        }
    }

    private static final int NONE = Integer.MIN_VALUE;

    private int cheapest() {
        int found = NONE;
        double least = -EPS;
        for (int column = 0; column < patterns.size(); column++) {
            double reduced = reduced(column);
            if (reduced < least) {
                least = reduced;
                found = column;
            }
        }
        for (int row = 0; row < rows; row++) {
            double reduced = row < kindOfRow.length ? duals[row] : -duals[row];
            if (reduced < least && !isBasic[row]) {
                least = reduced;
                found = -1 - row;
            }
        }
        work.spend(6L * patterns.size());
        reducedCost = least;
        return found;
    }

    private double reduced(int column) {
        int[] entry = entries.get(column);
        double reduced = costs[column];
        for (int i = 0; i < entry.length; i += 2) {
            reduced -= duals[entry[i]] * entry[i + 1];
        }
        return reduced;
    }

    private double cost(int column) {
        return column >= 0 ? costs[column] : 0;
    }

    /** The column in terms of the basis. */
    private double[] turned(int column) {
        double[] turned = new double[rows];
        if (column >= 0) {
            int[] entry = entries.get(column);
            for (int i = 0; i < entry.length; i += 2) {
                addTimes(turned, inverse[entry[i]], entry[i + 1]);
            }
        } else {
            int row = -1 - column;
            addTimes(turned, inverse[row], row < kindOfRow.length ? -1 : 1);
        }
        return turned;
    }

    private static void addTimes(double[] sum, double[] added, double times) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += times * added[i];
        }
    }

    private void pivot(int entering) {
        double[] turned = turned(entering);
        int leaving = leaving(turned);
        double step = level[leaving] / turned[leaving];
        for (int row = 0; row < rows; row++) {
            level[row] -= step * turned[row];
        }
        level[leaving] = step;
        updateDuals(leaving, turned[leaving]);
        int changed = updateInverse(turned, leaving);
        mark(basis[leaving], false);
        basis[leaving] = entering;
        mark(entering, true);
        pivots++;
        work.spend((long) changed * rows / 3 + 12L * rows);
        if (pivots % PIVOTS_KEPT == 0) {
            invertAnew();
            priceAnew();
        }
    }

    /** By as much as makes the entering column cost just what it is worth. */
    private void updateDuals(int leaving, double pivot) {
        double step = reducedCost / pivot;
        for (int k = 0; k < rows; k++) {
            duals[k] += step * inverse[k][leaving];
        }
    }

    private void mark(int column, boolean basic) {
        if (column < 0) {
            isBasic[-1 - column] = basic;
        }
    }

    /** The first level to reach 0; among those that do at once, the one with the safest pivot. */
    private int leaving(double[] turned) {
        double least = Double.MAX_VALUE;
        int found = -1;
        for (int row = 0; row < rows; row++) {
            if (turned[row] > EPS) {
                double step = Math.max(0, level[row]) / turned[row];
                if (step < least - 1e-12 || step <= least + 1e-12 && turned[row] > turned[found]) {
                    least = Math.min(step, least);
                    found = row;
                }
            }
        }
        if (found < 0) {
            throw new IllegalStateException("a cutting programme has a least cost");
        }
        return found;
    }

    /** Tells how many columns changed. */
    private int updateInverse(double[] turned, int leaving) {
        int changed = 0;
        double pivot = turned[leaving];
        for (int k = 0; k < rows; k++) {
            double[] column = inverse[k];
            if (column[leaving] != 0) {
                double times = column[leaving] / pivot;
                for (int row = 0; row < rows; row++) {
                    column[row] -= times * turned[row];
                }
                column[leaving] = times;
                changed++;
            }
        }
        return changed;
    }

    private void priceAnew() {
        for (int k = 0; k < rows; k++) {
            double[] column = inverse[k];
            double dual = 0;
            for (int row = 0; row < rows; row++) {
                dual += cost(basis[row]) * column[row];
            }
            duals[k] = dual;
        }
    }

    /** From the columns of the basis, by elimination; keeps rounding from piling up. Left as it was when the work runs out. */
    private void invertAnew() {
        double[][] kept = inverse;
        int[] columns = basis.clone();
        inverse = new double[rows][rows];
        for (int row = 0; row < rows; row++) {
            inverse[row][row] = 1;
        }
        boolean[] done = new boolean[rows];
        for (int column : columns) {
            double[] turned = turned(column);
            int row = safest(turned, done);
            if (row < 0 || work.over()) {
                inverse = kept;
                System.arraycopy(columns, 0, basis, 0, rows);
                return;
            }
            work.spend((long) updateInverse(turned, row) * rows / 3 + 4L * rows);
            basis[row] = column;
            done[row] = true;
        }
        Arrays.fill(level, 0);
        for (int k = 0; k < rows; k++) {
            addTimes(level, inverse[k], right[k]);
        }
    }

    private static int safest(double[] turned, boolean[] done) {
        int found = -1;
        double most = 1e-7;
        for (int row = 0; row < turned.length; row++) {
            if (!done[row] && Math.abs(turned[row]) > most) {
                most = Math.abs(turned[row]);
                found = row;
            }
        }
        return found;
    }

    /** What one more piece of a kind would cost, in units of cost; 0 for a kind nobody wants. */
    double price(int kind) {
        return rowOfKind[kind] < 0 ? 0 : duals[rowOfKind[kind]] * unit;
    }

    /** What one more bar of a limited sort would save, in units of cost. */
    double charge(int type) {
        return rowOfBar[type] < 0 ? 0 : -duals[rowOfBar[type]] * unit;
    }

    /** Cost of the fractions. */
    double value() {
        double value = 0;
        for (int row = 0; row < rows; row++) {
            value += cost(basis[row]) * level[row];
        }
        return value * unit;
    }

    /** A pattern and how often it is cut. */
    record Share(Pattern pattern, double times) {}

    /** What is cut, in the order the patterns came. */
    List<Share> shares() {
        double[] times = new double[patterns.size()];
        for (int row = 0; row < rows; row++) {
            if (basis[row] >= 0) {
                times[basis[row]] = level[row];
            }
        }
        List<Share> shares = new ArrayList<>();
        for (int column = 0; column < times.length; column++) {
            if (times[column] > 1e-5) {
                shares.add(new Share(patterns.get(column), times[column]));
            }
        }
        return shares;
    }
}
