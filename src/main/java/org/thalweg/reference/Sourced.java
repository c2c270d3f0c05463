package org.thalweg.reference;

import org.thalweg.finding.Source;

/**
 * A figure and where it stands in print.
 *
 * @param value      the figure
 * @param source     what to cite beside it; says so if the figure was recalled and not seen
 * @param confidence {@code found}, {@code found+computed}, {@code computed …}, {@code memory-high} or
 *                   {@code memory-medium}; the files explain the words
 */
public record Sourced<T>(T value, Source source, String confidence) {

    static <T> Sourced<T> of(T value, String source, String confidence) {
        return new Sourced<>(value, cited(source, confidence), confidence);
    }

    /** The source as a finding or a total may print it. */
    static Source cited(String source, String confidence) {
        return new Source(recalled(confidence) ? source + " (from memory: " + confidence + ")" : source);
    }

    /** Whether nobody here has seen the figure in print. */
    public boolean recalled() {
        return recalled(confidence);
    }

    private static boolean recalled(String confidence) {
        return confidence.contains("memory");
    }
}
