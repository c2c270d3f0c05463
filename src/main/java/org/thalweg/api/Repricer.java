package org.thalweg.api;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.io.JsonStringEncoder;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.security.DigestException;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.Optional;
import org.thalweg.api.json.Sha256;
import org.thalweg.api.problem.Failures;
import org.thalweg.api.problem.NoAnswer;
import org.thalweg.api.problem.ProblemAnswer;
import org.thalweg.finding.Refused;
import org.thalweg.pricing.PriceBook;
import org.thalweg.pricing.Pricing;

/** Prices jobs again, line by line. Not for two threads at once. */
public final class Repricer {

    private static final JsonFactory JSON = JsonFactory.builder()
            .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
            .build();

    private static final JsonStringEncoder NAMES = JsonStringEncoder.getInstance();

    private final PriceBook book;
    private final Optional<PlainJobs> quick;
    private final JobReader reader;
    private final ObjectMapper mapper;
    private final String currency;
    private final AnswerLine line;
    private final MessageDigest sha;
    private final byte[] hash;
    private long atOnce;

    Repricer(PriceBook book, Optional<PlainJobs> quick, JobReader reader, ObjectMapper mapper, AnswerLine line) {
        this.line = line;
        this.book = book;
        this.quick = quick;
        this.reader = reader;
        this.mapper = mapper;
        this.currency = book.currency().getCurrencyCode();
        this.sha = Sha256.begin();
        this.hash = new byte[sha.getDigestLength()];
    }

    /**
     * Prices the job in {@code buffer} and writes one answer line with its line feed.
     *
     * @param buffer bytes in which the line lies
     * @param from   its first byte
     * @param to     behind its last byte, without line feed
     * @param number where the line stands, told with a problem
     * @param sums   the answer is added to them
     * @param out    where to write
     */
    public void answer(byte[] buffer, int from, int to, long number, RepricingSums sums, OutputStream out)
            throws IOException {
        if (quick.isPresent() && atOnce(quick.get(), buffer, from, to, sums)) {
            atOnce++;
        } else {
            strictly(Arrays.copyOfRange(buffer, from, to), number, sums);
        }
        send(sums, out);
    }

    /** Answers the line that {@code lines} stands on, whether all of it was read or not; {@code number} as above. */
    public void answer(BoundedLines lines, long number, RepricingSums sums, OutputStream out) throws IOException {
        if (lines.overlong()) {
            refuseOverlong(number, sums, out);
        } else {
            answer(lines.buffer(), lines.from(), lines.to(), number, sums, out);
        }
    }

    /** How many jobs were read the short way. */
    long atOnce() {
        return atOnce;
    }

    /** Answers a line that has more bytes than are read. */
    public void refuseOverlong(long number, RepricingSums sums, OutputStream out) throws IOException {
        problem(Optional.empty(), number, NoAnswer.lineTooLarge().answer(), sums);
        send(sums, out);
    }

    /** The usual job: whether it was one. Whoever has something to complain of is heard by the strict reader. */
    private boolean atOnce(PlainJobs plain, byte[] buffer, int from, int to, RepricingSums sums) throws IOException {
        Optional<PlainJobs.Job> job = plain.read(buffer, from, to);
        if (job.isEmpty()) {
            return false;
        }
        Optional<BigDecimal> total;
        try {
            total = Pricing.price(book, job.get().takeoff()).total();
        } catch (Refused refused) {
            return false;
        }
        if (total.isEmpty()) {
            return false;
        }
        line.begin(NAMES.quoteAsUTF8(job.get().name()));
        priced(total.get(), job.get().was(), sums);
        return true;
    }

    private void strictly(byte[] text, long number, RepricingSums sums) throws IOException {
        try {
            JobReader.Priced priced = reader.price(text);
            line.begin(NAMES.quoteAsUTF8(priced.job()));
            priced(priced.total(), priced.was(), sums);
        } catch (NoAnswer none) {
            problem(job(text), number, none.answer(), sums);
        } catch (RuntimeException failure) {
            problem(job(text), number, Failures.log(failure), sums);
        }
    }

    private void priced(BigDecimal total, Optional<BigDecimal> was, RepricingSums sums) {
        sums.priced(currency, total);
        line.money("total", total, currency);
        if (was.isPresent()) {
            BigDecimal change = total.subtract(was.get());
            sums.compared(currency, was.get(), change);
            line.money("was", was.get(), currency);
            line.money("change", change, currency);
        }
        line.end();
    }

    private void problem(Optional<String> job, long number, ProblemAnswer problem, RepricingSums sums)
            throws IOException {
        sums.failed(1);
        if (job.isPresent()) {
            line.begin(NAMES.quoteAsUTF8(job.get()));
        } else {
            line.begin();
        }
        line.problem(number, mapper.writeValueAsBytes(problem));
        line.end();
    }

    private void send(RepricingSums sums, OutputStream out) throws IOException {
        sha.update(line.bytes(), 0, line.length());
        try {
            sha.digest(hash, 0, hash.length);
        } catch (DigestException e) {
            throw new IllegalStateException("a digest has its length", e);
        }
        sums.hashed(hash);
        line.send(out);
    }

    /** The name of a job that can't be read, so that its owner finds it; nothing where that can't be read either. */
    private static Optional<String> job(byte[] text) {
        try (JsonParser json = JSON.createParser(text)) {
            if (json.nextToken() == JsonToken.START_OBJECT) {
                while (json.nextToken() == JsonToken.FIELD_NAME) {
                    boolean named = json.currentName().equals("job");
                    JsonToken value = json.nextToken();
                    if (named) {
                        return value == JsonToken.VALUE_STRING ? name(json.getText()) : Optional.empty();
                    }
                    json.skipChildren();
                }
            }
            return Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static Optional<String> name(String text) {
        boolean good = !text.isEmpty()
                && text.length() <= Limits.ID_LENGTH
                && text.codePoints().noneMatch(c -> Character.getType(c) == Character.SURROGATE);
        return good ? Optional.of(text) : Optional.empty();
    }
}
