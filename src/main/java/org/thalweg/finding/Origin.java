package org.thalweg.finding;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where in the caller's request a thing came from: a JSON Pointer (RFC 6901) as a URI fragment, built only when asked
 * for, so that keeping one costs next to nothing.
 */
public final class Origin {

    /** The whole request. */
    public static final Origin REQUEST = new Origin(null, "", false, List.of(), null);

    private final @Nullable Origin parent;
    private final String step;

    private final boolean whole;
    private final List<Origin> gathered;
    private final @Nullable String called;

    private Origin(
            @Nullable Origin parent, String step, boolean whole, List<Origin> gathered, @Nullable String called) {
        this.parent = parent;
        this.step = step;
        this.whole = whole;
        this.gathered = gathered;
        this.called = called;
    }

    /** The member {@code name} of this object. */
    public Origin at(String name) {
        return whole ? this : new Origin(this, name, false, List.of(), null);
    }

    /** The element {@code index} of this list, counted from 0. */
    public Origin at(int index) {
        return gathered.isEmpty() ? at(Integer.toString(index)) : gathered.get(index);
    }

    /** The same place, for a thing that was worked out from all of it: whatever is asked for inside is here too. */
    public Origin whole() {
        return new Origin(parent, step, true, List.of(), called);
    }

    /** The same place, for a list that was worked out from it: each element came from a place of its own. */
    public Origin gathering(List<Origin> elements) {
        return new Origin(parent, step, false, List.copyOf(elements), called);
    }

    /** The same place, with what the thing that stands there is called. */
    public Origin calling(String name) {
        return new Origin(parent, step, whole, gathered, name);
    }

    /** What the thing that stands there is called, where somebody said so. */
    public Optional<String> called() {
        return Optional.ofNullable(called);
    }

    /** The member's name, or the element's number. */
    public String name() {
        return step;
    }

    /** The pointer: {@code #} for the whole request, {@code #/planes/2/outline/4} for a corner. */
    public String pointer() {
        return parent == null
                ? "#"
                : parent.pointer() + "/" + step.replace("~", "~0").replace("/", "~1");
    }

    @Override
    public String toString() {
        return pointer();
    }
}
