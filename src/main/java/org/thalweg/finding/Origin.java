package org.thalweg.finding;

import org.jspecify.annotations.Nullable;

/**
 * Where in the caller's request a thing came from: a JSON Pointer (RFC 6901) as a URI fragment, built only when asked
 * for, so that keeping one costs next to nothing.
 */
public final class Origin {

    /** The whole request. */
    public static final Origin REQUEST = new Origin(null, "");

    private final @Nullable Origin parent;
    private final String step;

    private Origin(@Nullable Origin parent, String step) {
        this.parent = parent;
        this.step = step;
    }

    /** The member {@code name} of this object. */
    public Origin at(String name) {
        return new Origin(this, name);
    }

    /** The element {@code index} of this list, counted from 0. */
    public Origin at(int index) {
        return new Origin(this, Integer.toString(index));
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
