package org.thalweg.finding;

/**
 * Where a limit comes from.
 *
 * @param text the code, table or handbook; or {@code "the request"}, {@code "geometry"},
 *             {@code "common practice, no source"}
 */
public record Source(String text) {
    /** The caller's own figure. */
    public static final Source REQUEST = new Source("the request");

    /** It follows from the geometry alone. */
    public static final Source GEOMETRY = new Source("geometry");

    /** A rule of thumb of the trade that has no single source. */
    public static final Source COMMON_PRACTICE = new Source("common practice, no source");
}
