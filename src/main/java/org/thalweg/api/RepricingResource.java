package org.thalweg.api;

import io.smallrye.common.annotation.Blocking;
import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.ServiceUnavailableException;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.StreamingOutput;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.thalweg.api.json.PostedReader;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.NoAnswer;
import org.thalweg.api.problem.Problem;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.JsonSpan;
import org.thalweg.api.wire.RepricingJob;
import org.thalweg.api.wire.RepricingSpans;
import org.thalweg.api.wire.RepricingStart;
import org.thalweg.api.wire.RepricingsAnswer;
import org.thalweg.api.wire.RepricingsAnswer.JobAnswer;
import org.thalweg.api.wire.RepricingsAnswer.RepricingEnd;
import org.thalweg.api.wire.RepricingsRequest;

/** Saved jobs and a new price book, to money: a few at once, or as many as there are, one a line. */
@Path("/v1/repricings")
@Tag(name = "repricings")
public class RepricingResource {

    /** Lines of JSON. */
    public static final String LINES = "application/x-ndjson";

    private static final byte[] LINE_FEED = {'\n'};

    private final Repricings repricings;
    private final Semaphore streams = new Semaphore(Limits.REPRICING_STREAMS);

    RepricingResource(Repricings repricings) {
        this.repricings = repricings;
    }

    @POST
    @Consumes(MediaType.APPLICATION_JSON)
    @Produces(MediaType.APPLICATION_JSON)
    @Operation(
            operationId = "repriceJobs",
            summary = "Price saved jobs again by another price book, a few at once or any number as a stream",
            description =
                    "Each job has the total that `/v1/quotes` gives for it, whatever else is in the request. Up to 1000 jobs go as"
                            + " `application/json`. Any number goes as `application/x-ndjson`: the price book in the first line, a job in every"
                            + " other, an answer line for each in the same order as soon as it is priced, and a last line with the summary; a"
                            + " stream without it was cut off. Both give the same bytes for a job. A bad job is answered with its problem and the"
                            + " others go on; a bad price book refuses the whole request. A few streams are priced at once; one more is told to"
                            + " come again.")
    @APIResponse(
            responseCode = "200",
            description = "What the jobs come to.",
            content = {
                @Content(
                        mediaType = MediaType.APPLICATION_JSON,
                        schema = @Schema(implementation = RepricingsAnswer.class),
                        examples = @ExampleObject(name = "books", ref = "repriceBooksAnswer")),
                @Content(
                        mediaType = LINES,
                        schema = @Schema(oneOf = {JobAnswer.class, RepricingEnd.class}),
                        examples = @ExampleObject(name = "books", ref = "repriceLinesAnswer"))
            })
    @APIResponse(responseCode = "503", ref = "Busy")
    public byte[] few(
            @RequestBody(
                            required = true,
                            description = "The prices and the jobs.",
                            content = {
                                @Content(
                                        mediaType = MediaType.APPLICATION_JSON,
                                        schema = @Schema(implementation = RepricingsRequest.class),
                                        examples = @ExampleObject(name = "books", ref = "repriceBooks")),
                                @Content(
                                        mediaType = LINES,
                                        schema = @Schema(oneOf = {RepricingStart.class, RepricingJob.class}),
                                        examples = @ExampleObject(name = "books", ref = "repriceLines"))
                            })
                    InputStream posted) {
        byte[] body = PostedReader.bytes(posted);
        RepricingSpans spans = repricings.spans(body);
        RepricingBook book = repricings.book(asLine(body, spans.priceBook()));
        Repricer repricer = repricings.repricer(book);
        RepricingSums sums = new RepricingSums();
        ByteArrayOutputStream answers = new ByteArrayOutputStream();
        try {
            answers.write("{\"answers\":[".getBytes(StandardCharsets.US_ASCII));
            for (int i = 0; i < spans.jobs().size(); i++) {
                if (i > 0) {
                    answers.write(',');
                }
                answer(repricer, body, spans.jobs().get(i), i + 2L, sums, answers);
            }
            answers.write(("],\"summary\":" + sums.summary(repricings.engine(), book.digest()) + "}")
                    .getBytes(StandardCharsets.US_ASCII));
        } catch (IOException e) {
            throw new UncheckedIOException("memory can always be written", e);
        }
        return answers.toByteArray();
    }

    /** The book as the first line of a stream would say it. */
    private static byte[] asLine(byte[] body, JsonSpan book) {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        line.writeBytes("{\"priceBook\":".getBytes(StandardCharsets.US_ASCII));
        line.write(body, book.from(), book.to() - book.from());
        line.write('}');
        return line.toByteArray();
    }

    private static void answer(
            Repricer repricer, byte[] body, JsonSpan job, long line, RepricingSums sums, OutputStream answers)
            throws IOException {
        if (job.to() - job.from() > Limits.REPRICING_LINE_BYTES) {
            repricer.refuseOverlong(line, sums, answers);
        } else {
            repricer.answer(body, job.from(), job.to(), line, sums, answers);
        }
    }

    /** Any number of jobs. The contract tells of it with {@link #few}. */
    @POST
    @Blocking
    @Consumes(LINES)
    @Produces(LINES)
    @Operation(hidden = true)
    public StreamingOutput many(InputStream posted, @Context RoutingContext exchange) {
        Place place = new Place();
        // However it ends: answered, broken off, or never begun.
        exchange.addEndHandler(ended -> place.leave());
        BoundedLines lines = new BoundedLines(posted, Limits.REPRICING_LINE_BYTES);
        RepricingBook book = book(lines);
        return out -> {
            try {
                stream(lines, book, out);
            } catch (IOException e) {
                // Nobody is there any more, or the connection is closed without a summary.
                throw PostedReader.cutOff();
            } finally {
                place.leave();
            }
        };
    }

    /** A place among the streams that are priced at once. */
    private final class Place {

        private final AtomicBoolean taken = new AtomicBoolean(true);

        Place() {
            if (!streams.tryAcquire()) {
                throw new ServiceUnavailableException();
            }
        }

        void leave() {
            if (taken.getAndSet(false)) {
                streams.release();
            }
        }
    }

    private RepricingBook book(BoundedLines lines) {
        try {
            if (!lines.next()) {
                throw NoAnswer.of(
                        Problem.UNREADABLE,
                        Fault.of(
                                ReadingCode.EMPTY_BODY,
                                "#",
                                "The body is empty. Send the price book as its first line, and a job in every other."));
            }
        } catch (IOException e) {
            throw PostedReader.cutOff();
        }
        if (lines.overlong()) {
            throw NoAnswer.lineTooLarge();
        }
        return repricings.book(lines.copy());
    }

    private void stream(BoundedLines lines, RepricingBook book, OutputStream out) throws IOException {
        Repricer repricer = repricings.repricer(book);
        RepricingSums sums = new RepricingSums();
        while (lines.next()) {
            repricer.answer(lines, lines.number(), sums, out);
            if (lines.drained()) {
                // Whoever waits for an answer before he sends the next job has it now.
                out.flush();
            }
        }
        out.write(("{\"summary\":" + sums.summary(repricings.engine(), book.digest()) + "}")
                .getBytes(StandardCharsets.US_ASCII));
        out.write(LINE_FEED);
    }
}
