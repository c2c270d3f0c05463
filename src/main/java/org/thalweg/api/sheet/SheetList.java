package org.thalweg.api.sheet;

/** Lists of an answer that are written as rows to count on. */
public enum SheetList {
    CUT("cut"),
    ORDER("order"),
    FASTENERS("fasteners");

    private final String word;

    SheetList(String word) {
        this.word = word;
    }

    /** How callers ask for it. */
    public String word() {
        return word;
    }
}
