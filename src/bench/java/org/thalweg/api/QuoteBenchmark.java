package org.thalweg.api;

import jakarta.validation.Validation;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.thalweg.api.json.PostedReader;
import org.thalweg.api.wire.QuoteRequest;
import org.thalweg.pricing.Pricing;
import org.thalweg.pricing.Quote;

/** A saved takeoff of twelve lines and four of labour: its sums alone, as a batch does them, and from bytes to bytes. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 8, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class QuoteBenchmark {

    private final PostedReader reader = new PostedReader(Validation.buildDefaultValidatorFactory());
    private final Engine engine = new Engine();
    private Optional<Exchange> exchange = Optional.empty();
    private Optional<QuoteReader.Asked> asked = Optional.empty();

    @Setup
    public void load() throws IOException {
        exchange = Optional.of(new Exchange("quotes-hip"));
        asked = Optional.of(new QuoteReader(read().request, engine).read());
    }

    @Benchmark
    public Quote price() {
        QuoteReader.Asked of = asked.orElseThrow();
        return Pricing.price(of.book(), of.takeoff());
    }

    @Benchmark
    public byte[] quote() {
        Read read = read();
        QuoteReader quotes = new QuoteReader(read.request, engine);
        QuoteReader.Asked of = quotes.read();
        return exchange.orElseThrow()
                .write(new QuoteWriter(quotes.units(), of.book().currency())
                        .answer(
                                Pricing.price(of.book(), of.takeoff()),
                                read.request.priceBook(),
                                of.book(),
                                engine.name(),
                                read.digest));
    }

    @Benchmark
    public byte[] echo() {
        return exchange.orElseThrow().echo();
    }

    private record Read(QuoteRequest request, String digest) {}

    private Read read() {
        var posted = reader.read(exchange.orElseThrow().request, QuoteRequest.class);
        return new Read((QuoteRequest) posted.request(), posted.digest());
    }
}
