package org.thalweg.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Finding.Needed;
import org.thalweg.units.Measure;

/**
 * One reason why there is no answer.
 *
 * @param code   what is wrong; never changes its meaning
 * @param at     what in the request is wrong; for a missing member, its parent
 * @param detail one or two sentences for people: what is wrong and what to do. {@code {actual}} and {@code {limit}}
 *               stand where the figures go; the writer puts them in the caller's unit
 * @param actual the figure found, if there is one
 * @param limit  the figure it was held against, if there is one
 * @param told   more figures of the sentence; each stands where its name does, in braces
 */
public record Refusal(
        RefusalCode code,
        Origin at,
        String detail,
        Optional<Measure> actual,
        Optional<Measure> limit,
        List<Needed> told) {

    public Refusal {
        told = List.copyOf(told);
    }

    public static Refusal of(RefusalCode code, Origin at, String detail) {
        return new Refusal(code, at, detail, Optional.empty(), Optional.empty(), List.of());
    }

    public static Refusal of(RefusalCode code, Origin at, String detail, Measure actual, Measure limit) {
        return new Refusal(code, at, detail, Optional.of(actual), Optional.of(limit), List.of());
    }

    /** The same with one more figure in its sentence. */
    public Refusal tells(String name, Measure figure) {
        List<Needed> more = new ArrayList<>(told);
        more.add(new Needed(name, figure));
        return new Refusal(code, at, detail, actual, limit, more);
    }
}
