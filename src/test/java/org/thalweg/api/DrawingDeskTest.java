package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jakarta.ws.rs.ServiceUnavailableException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** Slow drawings take so many threads and no more. */
class DrawingDeskTest {

    @Test
    void whenTheDeskIsFullTheNextIsToldToComeAgain() throws Exception {
        DrawingDesk desk = new DrawingDesk();
        ExecutorService callers = Executors.newCachedThreadPool();
        CountDownLatch begun = new CountDownLatch(Limits.DRAWINGS_AT_ONCE);
        CountDownLatch finish = new CountDownLatch(1);
        List<Future<String>> drawings = new ArrayList<>();
        try {
            for (int i = 0; i < Limits.DRAWINGS_WAITING; i++) {
                drawings.add(callers.submit(() -> desk.draw(() -> {
                    begun.countDown();
                    await(finish);
                    return "drawn";
                })));
            }
            assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
            while (desk.free() > 0) {
                Thread.onSpinWait();
            }
            assertThatThrownBy(() -> desk.draw(() -> "drawn")).isInstanceOf(ServiceUnavailableException.class);
            finish.countDown();
            for (Future<String> drawing : drawings) {
                assertThat(drawing.get(10, TimeUnit.SECONDS)).isEqualTo("drawn");
            }
            assertThat(desk.draw(() -> "again")).isEqualTo("again");
        } finally {
            finish.countDown();
            callers.shutdownNow();
        }
    }

    @Test
    void aDrawingThatFailsLeavesItsPlace() {
        DrawingDesk desk = new DrawingDesk();
        for (int i = 0; i < 2 * Limits.DRAWINGS_WAITING; i++) {
            assertThatThrownBy(() -> desk.draw(() -> {
                        throw new IllegalStateException("torn");
                    }))
                    .hasMessage("torn");
        }
        assertThat(desk.free()).isEqualTo(Limits.DRAWINGS_WAITING);
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }
}
