package org.thalweg.api;

import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Faults;
import org.thalweg.api.problem.Nearest;
import org.thalweg.api.problem.NoAnswer;
import org.thalweg.api.problem.Problem;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.sheet.SheetList;
import org.thalweg.api.sheet.SheetTerms;
import org.thalweg.api.sheet.View;
import org.thalweg.drawing.Paper;

/** Reads how an answer is to be drawn: what stands behind the question mark of an address. */
final class SheetReader {

    /** What a valley alone has drawings of. */
    static final Set<View> OF_VALLEYS = EnumSet.of(View.VALLEYS, View.CUTTING, View.FINDINGS);

    private static final Pattern SHEET = Pattern.compile("[1-9][0-9]{0,3}");

    private SheetReader() {}

    /**
     * How to draw.
     *
     * @param views those the answer has
     * @throws NoAnswer when a word is not known
     */
    static SheetTerms read(
            @Nullable String view,
            @Nullable String sheet,
            @Nullable String paper,
            @Nullable String job,
            Set<View> views) {
        Faults faults = Faults.none();
        Optional<View> asked = word("view", view, views, View::word, faults);
        Optional<Integer> number = sheet(sheet, faults);
        Optional<Paper> on = word("paper", paper, List.of(Paper.values()), Paper::word, faults);
        if (!faults.isEmpty()) {
            throw NoAnswer.of(Problem.BAD_REQUEST, faults);
        }
        return new SheetTerms(asked, number, on, job == null ? "" : job);
    }

    /**
     * Which list to write; the first of {@code lists} unless one is named.
     *
     * @throws NoAnswer when the word is not known
     */
    static SheetList list(@Nullable String list, List<SheetList> lists) {
        Faults faults = Faults.none();
        Optional<SheetList> asked = word("list", list, lists, SheetList::word, faults);
        if (!faults.isEmpty()) {
            throw NoAnswer.of(Problem.BAD_REQUEST, faults);
        }
        return asked.orElse(lists.get(0));
    }

    private static <W> Optional<W> word(
            String parameter, @Nullable String given, Collection<W> known, Function<W, String> called, Faults faults) {
        if (given == null) {
            return Optional.empty();
        }
        Optional<W> asked =
                known.stream().filter(one -> called.apply(one).equals(given)).findFirst();
        if (asked.isEmpty()) {
            faults.add(
                    () -> unknown(parameter, given, known.stream().map(called).toList()));
        }
        return asked;
    }

    private static Optional<Integer> sheet(@Nullable String given, Faults faults) {
        if (given == null) {
            return Optional.empty();
        }
        if (!SHEET.matcher(given).matches() || Integer.parseInt(given) > Limits.DRAWN_SHEETS) {
            faults.add(() -> Fault.of(
                    ReadingCode.OUT_OF_RANGE,
                    "#",
                    "The address asks for sheet=" + Echo.of(given) + ". Sheets are numbered from 1 to at most "
                            + Limits.DRAWN_SHEETS + "."));
            return Optional.empty();
        }
        return Optional.of(Integer.valueOf(given));
    }

    private static Fault unknown(String parameter, String given, List<String> known) {
        return Fault.of(
                ReadingCode.UNKNOWN_VALUE,
                "#",
                "The address asks for " + parameter + "=" + Echo.of(given) + ", which is not known here. Take one of "
                        + String.join(", ", known) + "." + Nearest.hint(given, known));
    }
}
