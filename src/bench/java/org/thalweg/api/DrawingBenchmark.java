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
import org.thalweg.api.sheet.LayoutSheets;
import org.thalweg.api.sheet.SheetTerms;
import org.thalweg.api.sheet.View;
import org.thalweg.api.wire.LayoutAnswer;
import org.thalweg.api.wire.LayoutRequest;
import org.thalweg.drawing.PdfFile;
import org.thalweg.drawing.SvgFile;
import org.thalweg.packet.LayoutCase;
import org.thalweg.packet.Layouts;

/** The demo house drawn from its finished answer, beside the same answer written as JSON. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 5)
@Measurement(iterations = 5, time = 4)
@Fork(1)
public class DrawingBenchmark {

    private static final String DIGEST = "0123456789abcdef".repeat(4);

    private Optional<Exchange> exchange = Optional.empty();
    private Optional<LayoutAnswer> answer = Optional.empty();

    @Setup
    public void layOut() throws IOException {
        Exchange demo = new Exchange("layouts-demo");
        PostedReader reader =
                new PostedReader(Validation.buildDefaultValidatorFactory());
        LayoutRequest asked = (LayoutRequest)
                reader.read(demo.request, LayoutRequest.class).request();
        LayoutCase layoutCase = LayoutReader.read(asked);
        answer = Optional.of(new LayoutWriter(asked.units().units())
                .answer(Layouts.layOut(layoutCase), layoutCase, asked, "thalweg/0", DIGEST));
        exchange = Optional.of(demo);
    }

    @Benchmark
    public byte[] packet() {
        SheetTerms terms = new SheetTerms(Optional.empty(), Optional.empty(), Optional.empty(), "job");
        return PdfFile.of(LayoutSheets.of(answer.orElseThrow(), terms), "job", DIGEST);
    }

    @Benchmark
    public byte[] map() {
        SheetTerms terms = new SheetTerms(Optional.of(View.MAP), Optional.empty(), Optional.empty(), "job");
        return SvgFile.of(LayoutSheets.of(answer.orElseThrow(), terms), "map", "from above");
    }

    @Benchmark
    public byte[] json() {
        return exchange.orElseThrow().write(answer.orElseThrow());
    }
}
