package org.thalweg.trim;

import org.thalweg.units.Length;

/**
 * What pieces of trim are made of.
 *
 * @param length   of the longest piece; above 0. Sheets are furnished up to 10 ft. [published: see
 *                 {@link org.thalweg.reference.Rules#sheetLongest}]
 * @param shortest piece that can be made; 0 or more, not above {@code length}
 */
public record TrimStock(Length length, Length shortest) {

    public TrimStock {
        if (!(length.metres() > 0 && shortest.metres() >= 0 && shortest.metres() <= length.metres())) {
            throw new IllegalArgumentException(
                    "the shortest piece (%s) is 0 or more and at most the longest (%s)".formatted(shortest, length));
        }
    }
}
