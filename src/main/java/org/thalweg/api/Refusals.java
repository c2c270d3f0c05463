package org.thalweg.api;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Faults;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.problem.NoAnswer;
import org.thalweg.api.problem.Problem;
import org.thalweg.finding.Finding.Needed;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.Refused;
import org.thalweg.units.Units;

/** Tells callers, in their units, why what they sent describes no roof. */
final class Refusals {

    private Refusals() {}

    /**
     * Does {@code work} for a caller who reads {@code units}.
     *
     * @throws NoAnswer when the work is refused
     */
    static <A> A toldIn(Units units, Supplier<A> work) {
        try {
            return work.get();
        } catch (Refused refused) {
            throw NoAnswer.of(Problem.NOT_A_ROOF, write(refused.refusals(), units));
        }
    }

    /**
     * Does {@code work} on what a caller posted at {@code place} of the request, which the work takes for all of it.
     *
     * @throws NoAnswer when the work is refused, with pointers from the whole request
     */
    static <A> A toldIn(Units units, Origin place, Supplier<A> work) {
        try {
            return toldIn(units, work);
        } catch (NoAnswer none) {
            throw none.within(place);
        }
    }

    private static Faults write(List<Refusal> refusals, Units units) {
        Faults faults = Faults.none();
        refusals.forEach(refusal -> faults.add(() -> write(refusal, units)));
        return faults;
    }

    private static Fault write(Refusal refusal, Units units) {
        Optional<Figure> actual = FigureWriter.write(refusal.actual(), units);
        Optional<Figure> limit = FigureWriter.write(refusal.limit(), units);
        String detail = FigureWriter.fill(refusal.detail(), actual, limit);
        for (Needed told : refusal.told()) {
            detail = detail.replace(
                    "{" + told.name() + "}",
                    FigureWriter.write(told.figure(), units).text());
        }
        return new Fault(refusal.code().name(), refusal.at().pointer(), detail, actual, limit);
    }
}
