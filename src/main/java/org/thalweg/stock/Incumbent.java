package org.thalweg.stock;

import java.util.ArrayList;
import java.util.List;

/** The best plan so far, and the best reason why none is cheaper. */
final class Incumbent {

    private final CuttingProblem problem;
    private final Work work;
    private List<Lot> lots = List.of();
    private long cost = Long.MAX_VALUE;
    private Certificate certificate;
    private long bound;
    private boolean searched;

    Incumbent(CuttingProblem problem, Certificate certificate, Work work) {
        this.problem = problem;
        this.work = work;
        this.certificate = certificate;
        this.bound = certificate.bound(problem, work);
    }

    /** No plan yet, and only those below a cost are of use. */
    static Incumbent below(long cost, CuttingProblem problem, Certificate certificate, Work work) {
        Incumbent incumbent = new Incumbent(problem, certificate, work);
        incumbent.cost = cost;
        return incumbent;
    }

    CuttingProblem problem() {
        return problem;
    }

    /** Another plan, in two parts; kept when it is cheaper. */
    void offer(List<Lot> chosen, List<Lot> rest) {
        long offered = Lot.cost(chosen, problem) + Lot.cost(rest, problem);
        if (offered < cost) {
            cost = offered;
            lots = new ArrayList<>(chosen);
            lots.addAll(rest);
        }
    }

    void offer(Certificate other) {
        long offered = other.bound(problem, work);
        if (offered > bound) {
            bound = offered;
            certificate = other;
        }
    }

    /** A search found that nothing costs less than this; no price list says so. */
    void searched(long nothingBelow) {
        if (nothingBelow > bound) {
            bound = nothingBelow;
            searched = true;
        }
    }

    boolean proven() {
        return cost <= bound;
    }

    boolean found() {
        return cost != Long.MAX_VALUE;
    }

    long cost() {
        return cost;
    }

    long bound() {
        return bound;
    }

    /** Whether the bound rests on a search, and not on the certificate alone. */
    boolean bySearch() {
        return searched;
    }

    Certificate certificate() {
        return certificate;
    }

    List<Lot> lots() {
        return List.copyOf(lots);
    }
}
