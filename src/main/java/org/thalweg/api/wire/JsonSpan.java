package org.thalweg.api.wire;

/**
 * A value as it stands in the body, to be read later.
 *
 * @param from its first byte
 * @param to   behind its last byte
 */
public record JsonSpan(int from, int to) {

    /** The same in a body whose first {@code more} bytes are not counted in it. */
    public JsonSpan behind(int more) {
        return new JsonSpan(from + more, to + more);
    }
}
