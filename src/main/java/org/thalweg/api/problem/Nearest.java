package org.thalweg.api.problem;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** What a caller may have meant by a name that is not known. */
public final class Nearest {

    /** Looking through more names than these for every mistake would let mistakes cost more than roofs. */
    private static final int MOST_NAMES = 1_000;

    private static final int LONGEST_NAME = 40;

    private Nearest() {}

    /** {@code ' Did you mean "R1"?'}, or nothing when no known name is near. */
    public static String hint(String name, Collection<String> known) {
        return of(name, known)
                .map(near -> " Did you mean " + Echo.of(near) + "?")
                .orElse("");
    }

    /** The known name with the fewest letters changed, at most a third of them; the first of equals. */
    static Optional<String> of(String name, Collection<String> known) {
        if (name.length() > LONGEST_NAME || known.size() > MOST_NAMES) {
            return Optional.empty();
        }
        int most = Math.max(1, name.length() / 3);
        return known.stream()
                .filter(candidate -> Math.abs(candidate.length() - name.length()) <= most)
                .filter(candidate -> changes(name, candidate) <= most)
                .min(Comparator.comparingInt(candidate -> changes(name, candidate)));
    }

    /** Letters to put in, take out or change, whatever their case (Levenshtein's distance). */
    private static int changes(String from, String to) {
        String a = from.toLowerCase(Locale.ROOT);
        String b = to.toLowerCase(Locale.ROOT);
        int[] above = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int changed = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(changed, 1 + Math.min(above[j], row[j - 1]));
            }
            above = row;
        }
        return above[b.length()];
    }
}
