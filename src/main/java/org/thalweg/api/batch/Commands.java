package org.thalweg.api.batch;

import io.quarkus.bootstrap.logging.InitialConfigurator;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import java.util.logging.ConsoleHandler;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.Engine;
import org.thalweg.api.RepricingBook;
import org.thalweg.api.Repricings;
import org.thalweg.api.Stopwatch;
import org.thalweg.api.problem.NoAnswer;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** What can be said after the name of the program. Said nothing, it serves, and nothing of this is looked at. */
@Command(
        name = "thalweg",
        description = {
            "Without a command: serves on http://127.0.0.1:8080, see README.md.",
            "With one: works through files, starts no server, and ends."
        },
        synopsisSubcommandLabel = "[COMMAND]",
        mixinStandardHelpOptions = true,
        versionProvider = Commands.Version.class,
        exitCodeListHeading = "Ends with:%n",
        exitCodeList = {
            "0:all done; jobs that have no price are told in the answers and in the sums",
            "1:something could not be read or written",
            "2:the command line says nothing that can be done"
        })
public final class Commands {

    /** Kubernetes tells a pod of an Indexed Job which one it is. */
    static final String INDEX = "JOB_COMPLETION_INDEX";

    /** And the manifest of the Job tells it of how many. */
    static final String COUNT = "JOB_SHARDS";

    private final Map<String, String> environment;
    private final PrintStream out;
    private final PrintStream err;
    private final LongSupplier nanos;
    private final Supplier<Repricings> repricings;

    /**
     * @param nanos      time from any start
     * @param repricings asked for when there is something to price
     */
    Commands(
            Map<String, String> environment,
            PrintStream out,
            PrintStream err,
            LongSupplier nanos,
            Supplier<Repricings> repricings) {
        this.environment = environment;
        this.out = out;
        this.err = err;
        this.nanos = nanos;
        this.repricings = repricings;
    }

    /** Does what {@code args} say; the number is what the process ends with. */
    public static int run(String... args) {
        tellFailures();
        return new Commands(System.getenv(), System.out, System.err, new Stopwatch(), Repricings::alone)
                .line()
                .execute(args);
    }

    /** The framework keeps back what is logged until it has started, which it never does here. */
    private static void tellFailures() {
        Handler handler = new ConsoleHandler();
        handler.setLevel(Level.WARNING);
        InitialConfigurator.DELAYED_HANDLER.setHandlers(new Handler[] {handler});
    }

    CommandLine line() {
        return new CommandLine(this)
                .setOut(new PrintWriter(out, true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(err, true, StandardCharsets.UTF_8))
                .setUsageHelpAutoWidth(true)
                .setExecutionExceptionHandler((thrown, line, parsed) -> {
                    err.println(told(thrown));
                    return CommandLine.ExitCode.SOFTWARE;
                });
    }

    @Command(
            name = "reprice",
            description = {
                "Prices saved jobs, one a line, by one price book.",
                "",
                "Writes one file of answers for each shard, in the order of the jobs, and beside it a marker that it is"
                        + " finished. What is finished is not done again unless the jobs, the book or the engine"
                        + " changed; what was broken off leaves no answers and is done again."
            },
            mixinStandardHelpOptions = true,
            versionProvider = Version.class)
    int reprice(
            @Option(
                            names = "--book",
                            required = true,
                            paramLabel = "FILE",
                            description =
                                    "The price book: what the first line of a stream posted to /v1/repricings says.")
                    Path book,
            @Option(
                            names = "--jobs",
                            required = true,
                            paramLabel = "FILE|FOLDER",
                            description = "A file of jobs, or a folder of files whose names end in .ndjson.")
                    Path jobs,
            @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "Where answers go.")
                    Path folder,
            @Option(
                            names = "--shard",
                            paramLabel = "INDEX/COUNT",
                            description = "Which share of the jobs: 0/64 is the first of 64. Default: $" + INDEX
                                    + " of $" + COUNT + " where these are set, else all of them.")
                    @Nullable
                    String shard,
            @Option(names = "--verify", description = "Reads finished shards again, and does those that changed.")
                    boolean verify,
            @Option(names = "--quiet", description = "Tells no progress.") boolean quiet)
            throws IOException {
        Shard share = shard(shard);
        Repricings pricing = repricings.get();
        new RepricingRun(pricing, read(book, pricing), JobFiles.at(jobs), share, folder, err, nanos)
                .run(verify, quiet ? Progress.Manner.SILENT : manner());
        return CommandLine.ExitCode.OK;
    }

    @Command(
            name = "merge",
            description = {
                "Adds up the sums of all shards in a folder of answers.",
                "",
                "Writes them to summary.json there, and prints them. Ends with 1 where a shard is missing, or where not"
                        + " all were done by one book and one engine from the same jobs."
            },
            mixinStandardHelpOptions = true,
            versionProvider = Version.class)
    int merge(
            @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "Where the answers are.")
                    Path folder)
            throws IOException {
        String summary = Merger.merge(folder) + '\n';
        WholeFile.write(folder.resolve("summary.json"), summary.getBytes(StandardCharsets.UTF_8));
        out.print(summary);
        return CommandLine.ExitCode.OK;
    }

    private Shard shard(@Nullable String written) {
        String index = environment.get(INDEX);
        String count = environment.get(COUNT);
        if (written == null && index == null && count == null) {
            return new Shard(0, 1);
        }
        if (written == null && (index == null || count == null)) {
            throw usage("%s is set and %s is not: set both, or say --shard."
                    .formatted(index == null ? COUNT : INDEX, index == null ? INDEX : COUNT));
        }
        try {
            return Shard.parse(written == null ? index + "/" + count : written);
        } catch (IllegalArgumentException e) {
            throw usage(String.valueOf(e.getMessage()));
        }
    }

    private ParameterException usage(String message) {
        return new ParameterException(line().getSubcommands().get("reprice"), message);
    }

    private static Progress.Manner manner() {
        return System.console() == null ? Progress.Manner.LINES : Progress.Manner.BAR;
    }

    private static RepricingBook read(Path book, Repricings pricing) throws IOException {
        try {
            return pricing.book(Files.readAllBytes(book));
        } catch (NoAnswer refusal) {
            throw new BatchFailure("The price book %s can not be used. %s%s"
                    .formatted(
                            book,
                            refusal.answer().detail(),
                            refusal.answer().errors().stream()
                                    .map(fault -> "%n  %s  %s".formatted(fault.pointer(), fault.detail()))
                                    .collect(Collectors.joining())));
        }
    }

    /** File systems say little more than a name. */
    private static String told(Exception thrown) {
        if (thrown instanceof NoSuchFileException missing) {
            return missing.getFile() + " is not there.";
        }
        if (thrown instanceof AccessDeniedException denied) {
            return denied.getFile() + " may not be read or written by this user.";
        }
        if (thrown instanceof FileAlreadyExistsException taken) {
            return taken.getFile() + " is there already and is no folder.";
        }
        if (thrown instanceof IOException failed) {
            return "Reading or writing failed: " + failed.getMessage();
        }
        return thrown instanceof BatchFailure failed
                ? failed.getMessage()
                : "This is a mistake of the program: " + thrown;
    }

    /** Which engine this is. */
    static final class Version implements CommandLine.IVersionProvider {

        @Override
        public String[] getVersion() {
            return new String[] {new Engine().name()};
        }
    }
}
