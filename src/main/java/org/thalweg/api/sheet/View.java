package org.thalweg.api.sheet;

import java.util.Arrays;
import java.util.Optional;

/** Parts of an answer that are drawn, in the order of a packet. */
public enum View {
    MAP("map"),
    PLANES("planes"),
    TICKETS("tickets"),
    VALLEYS("valleys"),
    TRIMS("trims"),
    CUTTING("cutting"),
    FASTENERS("fasteners"),
    ORDER("order"),
    FINDINGS("findings");

    private final String word;

    View(String word) {
        this.word = word;
    }

    /** How callers ask for it. */
    public String word() {
        return word;
    }

    public static Optional<View> of(String word) {
        return Arrays.stream(values()).filter(view -> view.word.equals(word)).findFirst();
    }
}
