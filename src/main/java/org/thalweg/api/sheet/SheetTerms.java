package org.thalweg.api.sheet;

import java.util.Optional;
import org.thalweg.drawing.Paper;

/**
 * How an answer is to be drawn.
 *
 * @param view  the one part to draw; all of them otherwise
 * @param sheet the one sheet of them to draw, 1 the first; all of them otherwise
 * @param paper to draw on; what is usual for the request's unit otherwise
 * @param job   the caller's name of the job; may be empty
 */
public record SheetTerms(Optional<View> view, Optional<Integer> sheet, Optional<Paper> paper, String job) {

    /** The same, drawn as {@code usual} where no view is asked for. */
    public SheetTerms or(View usual) {
        return new SheetTerms(Optional.of(view.orElse(usual)), sheet, paper, job);
    }
}
