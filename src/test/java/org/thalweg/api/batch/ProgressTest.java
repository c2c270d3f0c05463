package org.thalweg.api.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class ProgressTest {

    private final ByteArrayOutputStream told = new ByteArrayOutputStream();
    private final AtomicLong nanos = new AtomicLong(-5); // clocks may begin below nought

    private Progress progress(Progress.Manner manner) {
        return new Progress(new PrintStream(told, true, StandardCharsets.UTF_8), manner, nanos::get, 40_000_000);
    }

    private String told() {
        String text = told.toString(StandardCharsets.UTF_8);
        told.reset();
        return text;
    }

    private void seconds(double more) {
        nanos.addAndGet((long) (more * TimeUnit.SECONDS.toNanos(1)));
    }

    @Test
    void whereNobodySitsALineIsToldEveryTenSeconds() {
        Progress progress = progress(Progress.Manner.LINES);
        seconds(9.9);
        progress.at(9_900, 9_900_000);
        assertThat(told()).isEmpty();
        seconds(0.1);
        progress.at(10_000, 10_000_000);
        assertThat(told().strip()).isEqualTo("25 %  10,000 jobs  10.0 of 40.0 MB  1,000 jobs/s");
        progress.at(10_001, 10_001_000);
        progress.end();
        assertThat(told()).isEmpty();
    }

    @Test
    void onATerminalABarGrows() {
        Progress progress = progress(Progress.Manner.BAR);
        seconds(0.2);
        progress.at(200, 20_000_000);
        assertThat(told())
                .startsWith("\r[" + "#".repeat(15) + ".".repeat(15) + "]  50 %")
                .doesNotContain("\n");
        progress.end();
        assertThat(told()).isEqualTo(System.lineSeparator());
        assertThat(progress.seconds()).isEqualTo(0.2);
    }

    @Test
    void askedToBeQuietItTellsNothing() {
        Progress progress = progress(Progress.Manner.SILENT);
        seconds(100);
        progress.at(1, 1);
        progress.end();
        assertThat(told()).isEmpty();
    }
}
