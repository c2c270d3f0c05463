package org.thalweg.api.batch;

import java.io.PrintStream;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/** How far the work is: a bar on a terminal, and a line every ten seconds where nobody sits before it. */
final class Progress {

    private static final long BAR_EVERY = TimeUnit.MILLISECONDS.toNanos(200);
    private static final long LINE_EVERY = TimeUnit.SECONDS.toNanos(10);
    private static final int BAR_WIDTH = 30;
    private static final double MEGABYTE = 1e6;

    /** How it is told. */
    enum Manner {
        BAR,
        LINES,
        SILENT
    }

    private final PrintStream to;
    private final Manner manner;
    private final LongSupplier nanos;
    private final long whole;
    private final long begun;
    private long told;
    private boolean open;

    /**
     * @param nanos time from any start
     * @param whole bytes to be read
     */
    Progress(PrintStream to, Manner manner, LongSupplier nanos, long whole) {
        this.to = to;
        this.manner = manner;
        this.nanos = nanos;
        this.whole = whole;
        this.begun = nanos.getAsLong();
        this.told = begun;
    }

    /** So much is done. Called for every job, so it looks at the clock and mostly does nothing. */
    void at(long jobs, long bytes) {
        if (manner == Manner.SILENT) {
            return;
        }
        long now = nanos.getAsLong();
        if (now - told >= (manner == Manner.BAR ? BAR_EVERY : LINE_EVERY)) {
            told = now;
            tell(jobs, bytes, now);
        }
    }

    /** Nothing more comes: leaves a bar on its own line. */
    void end() {
        if (open) {
            to.println();
            open = false;
        }
    }

    double seconds() {
        return (nanos.getAsLong() - begun) / 1e9;
    }

    private void tell(long jobs, long bytes, long now) {
        double share = whole == 0 ? 1 : (double) bytes / whole;
        String figures = String.format(
                Locale.ROOT,
                "%3.0f %%  %,d jobs  %,.1f of %,.1f MB  %,.0f jobs/s",
                100 * share,
                jobs,
                bytes / MEGABYTE,
                whole / MEGABYTE,
                jobs / ((now - begun) / 1e9));
        if (manner == Manner.BAR) {
            int filled = (int) Math.round(share * BAR_WIDTH);
            to.print("\r[" + "#".repeat(filled) + ".".repeat(BAR_WIDTH - filled) + "] " + figures);
            to.flush();
            open = true;
        } else {
            to.println(figures);
        }
    }
}
