package org.thalweg.api.sheet;

import java.util.ArrayList;
import java.util.List;

/** Marks of panels, runs of them drawn together: south-11 … 15. */
final class Marks {

    private static final int SHORTEST_RUN = 3;

    private Marks() {}

    /** All of {@code marks} in their order. */
    static String listed(List<String> marks) {
        List<String> parts = new ArrayList<>();
        int from = 0;
        while (from < marks.size()) {
            int to = from + 1;
            while (to < marks.size() && follows(marks.get(to - 1), marks.get(to))) {
                to++;
            }
            if (to - from >= SHORTEST_RUN) {
                String last = marks.get(to - 1);
                parts.add(marks.get(from) + " … " + last.substring(last.lastIndexOf('-') + 1));
            } else {
                parts.addAll(marks.subList(from, to));
            }
            from = to;
        }
        return String.join(", ", parts);
    }

    /** Whether {@code next} is the same plane's next strip, neither of them one piece of several. */
    private static boolean follows(String mark, String next) {
        int dash = mark.lastIndexOf('-');
        int own = strip(mark, dash);
        return own >= 0
                && next.length() > dash
                && next.startsWith(mark.substring(0, dash + 1))
                && strip(next, dash) == own + 1;
    }

    private static int strip(String mark, int dash) {
        String digits = mark.substring(dash + 1);
        boolean plain =
                !digits.isEmpty() && digits.length() < 7 && digits.chars().allMatch(c -> c >= '0' && c <= '9');
        return plain ? Integer.parseInt(digits) : -1;
    }
}
