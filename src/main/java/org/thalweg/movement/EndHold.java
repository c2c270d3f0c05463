package org.thalweg.movement;

/** What holds an end of a panel. The list is open: callers must expect holds that are added later. */
public enum EndHold {
    /** Screws through it: it can move by the play of their holes. */
    SCREWS,
    /** A hem round a cleat: it slides until it slips off, or bears on the lip. */
    HEM,
    /** Nothing that stops it: a strip beside it, or the panel it is lapped to, which moves along. */
    FREE
}
