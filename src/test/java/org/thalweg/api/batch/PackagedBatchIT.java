package org.thalweg.api.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command line of the packaged application. That it serves when nothing is said is what {@code PackagedIT} rests on. */
class PackagedBatchIT {

    @TempDir
    Path folder;

    @Test
    void answersAreTheSameAsInThisProcess() throws Exception {
        Night night = Night.of(folder, 50, 50);
        night.repriceAll(night.out("here"), 1);
        assertEnds(0, "reprice", "--book", night.book, "--jobs", night.jobs, "--out", night.out("there"));
        for (Path file : Night.files(night.out("here"))) {
            assertThat(night.out("there").resolve(file.getFileName())).hasSameBinaryContentAs(file);
        }
    }

    @Test
    void itTakesNoPort() throws Exception {
        Night night = Night.of(folder, 10);
        try (ServerSocket taken = bound(8080);
                ServerSocket takenToo = bound(9000)) {
            String said =
                    assertEnds(0, "reprice", "--book", night.book, "--jobs", night.jobs, "--out", night.out("out"));
            assertThat(said).contains("10 jobs").doesNotContain("Listening");
        }
    }

    @Test
    void itEndsWithItsCode() throws Exception {
        assertThat(assertEnds(0, "--version")).contains("thalweg/");
        assertThat(assertEnds(0, "--help")).contains("reprice").contains("merge");
        assertEnds(1, "merge", "--out", folder.resolve("missing"));
        assertEnds(2, "nonsense");
    }

    @Test
    void whatTheReadmeSaysOfANightsJobsWorksAsItIsWritten() throws Exception {
        Matcher block =
                Pattern.compile("```sh\n(.*?)```", Pattern.DOTALL).matcher(Files.readString(Path.of("README.md")));
        assertThat(block.find()).isTrue();
        assumeTrue(bashIsHere(), "bash is not on the PATH, so the lines of the README were not run");
        File said = folder.resolve("readme.log").toFile();
        Process bash = new ProcessBuilder("bash", "-euc", block.group(1))
                .redirectErrorStream(true)
                .redirectOutput(said)
                .start();
        int code = Packaged.ended(bash);
        assertThat(code).as(Files.readString(said.toPath())).isZero();
        assertThat(Files.readString(said.toPath())).contains("\"jobs\":6000,\"failed\":2000,");
    }

    /** Whatever already has the port has taken it as well. */
    private static ServerSocket bound(int port) throws IOException {
        ServerSocket socket = new ServerSocket();
        try {
            socket.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
        } catch (BindException e) {
            return socket;
        }
        return socket;
    }

    private String assertEnds(int code, Object... args) throws IOException, InterruptedException {
        File said = folder.resolve("said.log").toFile();
        int ended = Packaged.ended(Packaged.start(said, args));
        String text = Files.readString(said.toPath());
        assertThat(ended).as(text).isEqualTo(code);
        return text;
    }

    private static boolean bashIsHere() {
        return Pattern.compile(File.pathSeparator, Pattern.LITERAL)
                .splitAsStream(System.getenv().getOrDefault("PATH", ""))
                .anyMatch(path -> Files.isExecutable(Path.of(path, "bash")));
    }
}
