package org.thalweg.api;

import jakarta.inject.Singleton;
import jakarta.ws.rs.ServiceUnavailableException;
import java.util.concurrent.Semaphore;
import java.util.function.Supplier;

/**
 * Where answers are drawn: a few at a time, so that packets of hundreds of sheets never take all the threads that answer
 * other callers. A few more wait their turn; any beyond those are told to come again.
 */
@Singleton
public class DrawingDesk {

    private final Semaphore places = new Semaphore(Limits.DRAWINGS_WAITING);
    private final Semaphore boards = new Semaphore(Limits.DRAWINGS_AT_ONCE, true);

    /**
     * Does {@code work} when a board is free.
     *
     * @throws ServiceUnavailableException when too many wait already
     */
    <D> D draw(Supplier<D> work) {
        if (!places.tryAcquire()) {
            throw new ServiceUnavailableException();
        }
        try {
            boards.acquireUninterruptibly();
            try {
                return work.get();
            } finally {
                boards.release();
            }
        } finally {
            places.release();
        }
    }

    /** How many more would be let in. */
    int free() {
        return places.availablePermits();
    }
}
