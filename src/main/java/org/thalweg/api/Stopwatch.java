package org.thalweg.api;

import jakarta.inject.Singleton;
import java.util.function.LongSupplier;

/** How long something takes, in nanoseconds from any start. The only clock there is; rooms that must stop in time are handed it. */
@Singleton
public class Stopwatch implements LongSupplier {

    @Override
    public long getAsLong() {
        return System.nanoTime();
    }
}
