package org.thalweg.api.problem;

/** The caller's own words in our sentences: short, and with nothing in them that could act on a screen or a log. */
public final class Echo {

    private static final int LONGEST = 40;

    private Echo() {}

    /** In quotes, at most 40 characters, with control and invisible characters written as {@code \}{@code u0000}. */
    public static String of(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        int shown = 0;
        int i = 0;
        for (; i < text.length() && shown < LONGEST; shown++) {
            int c = text.codePointAt(i);
            append(quoted, c);
            i += Character.charCount(c);
        }
        return quoted.append(i < text.length() ? "…\"" : "\"").toString();
    }

    private static void append(StringBuilder to, int c) {
        if (visible(c)) {
            to.appendCodePoint(c);
            return;
        }
        for (char unit : Character.toChars(c)) {
            to.append("\\u%04x".formatted((int) unit));
        }
    }

    private static boolean visible(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }
}
