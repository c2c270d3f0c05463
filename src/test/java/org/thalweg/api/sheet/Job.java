package org.thalweg.api.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import org.thalweg.api.Answered;
import org.thalweg.api.wire.LayoutAnswer;
import org.thalweg.api.wire.ValleysAnswer;
import org.thalweg.drawing.Paper;
import org.thalweg.drawing.Sheet;

/**
 * A request and what it is answered.
 *
 * @param name   what it is about
 * @param layout the answer, if it is a layout
 * @param valley the answer, if it is a valley alone
 */
record Job(String name, Optional<LayoutAnswer> layout, Optional<ValleysAnswer> valley) {

    static Job layout(String name, String request) {
        return new Job(name, Optional.of(Answered.layout(request)), Optional.empty());
    }

    static Job valley(String name, String request) {
        return new Job(name, Optional.empty(), Optional.of(Answered.valley(request)));
    }

    /** Every view. */
    List<Sheet> sheets() {
        return sheetsOn(Optional.empty());
    }

    List<Sheet> sheetsOn(Optional<Paper> paper) {
        return drawn(new SheetTerms(Optional.empty(), Optional.empty(), paper, name));
    }

    List<Sheet> sheets(View view) {
        return drawn(new SheetTerms(Optional.of(view), Optional.empty(), Optional.empty(), name));
    }

    private List<Sheet> drawn(SheetTerms terms) {
        return layout.map(answer -> LayoutSheets.of(answer, terms))
                .orElseGet(() -> ValleysSheets.of(valley.orElseThrow(), terms));
    }

    JsonNode json() {
        return Answered.json(layout.isPresent() ? layout.get() : valley.orElseThrow());
    }

    @Override
    public String toString() {
        return name;
    }
}
