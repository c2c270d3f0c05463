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
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.thalweg.api.json.PostedReader;
import org.thalweg.api.wire.StockCutAnswer;
import org.thalweg.api.wire.StockCutRequest;
import org.thalweg.stock.CoilPlan;
import org.thalweg.stock.PairedBlanks;
import org.thalweg.stock.StockCuts;
import org.thalweg.units.Units;

/** Stock cut from the bytes of a request to the bytes of its answer, and the plan alone. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class StockCutBenchmark {

    @Param({"stock-cuts-boathouse", "stock-cuts-hip"})
    private String example = "";

    private final PostedReader reader = new PostedReader(Validation.buildDefaultValidatorFactory());
    private Optional<Exchange> exchange = Optional.empty();
    private Optional<StockCutRequest> asked = Optional.empty();

    @Setup
    public void load() throws IOException {
        exchange = Optional.of(new Exchange(example));
        asked = Optional.of((StockCutRequest)
                reader.read(exchange().request, StockCutRequest.class).request());
    }

    /** The plan alone: of bars, or the run of the coil. */
    @Benchmark
    public Object compute() {
        StockCutRequest request = asked.orElseThrow();
        if (StockCutReader.ofCoil(request)) {
            StockCutReader.Coil coil = StockCutReader.coil(request);
            return CoilPlan.of(coil.panels(), coil.turning());
        }
        return StockCuts.cut(StockCutReader.bars(request, System::nanoTime).cutting());
    }

    @Benchmark
    public byte[] cut() {
        var posted = reader.read(exchange().request, StockCutRequest.class);
        StockCutRequest request = (StockCutRequest) posted.request();
        Units units = request.units().units();
        return exchange().write(answer(request, new StockCutWriter(units, request, "thalweg/0", posted.digest())));
    }

    private static StockCutAnswer answer(StockCutRequest request, StockCutWriter writer) {
        if (StockCutReader.ofCoil(request)) {
            StockCutReader.Coil coil = StockCutReader.coil(request);
            return writer.answer(
                    coil,
                    CoilPlan.of(coil.panels(), coil.turning()),
                    PairedBlanks.of(coil.panels(), coil.turning()));
        }
        StockCutReader.Bars bars = StockCutReader.bars(request, System::nanoTime);
        return writer.answer(bars, StockCuts.cut(bars.cutting()));
    }

    @Benchmark
    public byte[] echo() {
        return exchange().echo();
    }

    private Exchange exchange() {
        return exchange.orElseThrow();
    }
}
