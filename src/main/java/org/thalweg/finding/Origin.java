package org.thalweg.finding;

import org.jspecify.annotations.Nullable;

/**
 * Where in the caller's request a thing came from: a JSON Pointer (RFC 6901) as a URI fragment, built only when asked
 * for, so that keeping one costs next to nothing.
 */
public final class Origin {

    /** The whole request. */
    public static final Origin REQUEST = new Origin(null, "", false);

    private final @Nullable Origin parent;
    private final String step;

    private final boolean whole;

    private Origin(@Nullable Origin parent, String step, boolean whole) {
        this.parent = parent;
        this.step = step;
        this.whole = whole;
    }

    /** The member {@code name} of this object. */
    public Origin at(String name) {
        return whole ? this : new Origin(this, name, false);
    }

    /** The element {@code index} of this list, counted from 0. */
    public Origin at(int index) {
        return at(Integer.toString(index));
    }

    /** The same place, for a thing that was worked out from all of it: whatever is asked for inside is here too. */
    public Origin whole() {
        return new Origin(parent, step, true);
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
