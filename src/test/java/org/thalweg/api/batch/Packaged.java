package org.thalweg.api.batch;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The packaged application as an operator starts it. */
final class Packaged {

    private static final Path JAR = Path.of("target", "quarkus-app", "quarkus-run.jar");
    private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");
    private static final long MOST_SECONDS = 3600;

    private Packaged() {}

    /** Starts it; what it says on either stream goes to {@code said}. */
    static Process start(File said, Object... args) throws IOException {
        List<String> command = new ArrayList<>(List.of(JAVA.toString(), "-jar", JAR.toString()));
        for (Object arg : args) {
            command.add(arg.toString());
        }
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(said)
                .start();
    }

    static int ended(Process process) throws InterruptedException {
        if (!process.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError("still running after %d s".formatted(MOST_SECONDS));
        }
        return process.exitValue();
    }
}
