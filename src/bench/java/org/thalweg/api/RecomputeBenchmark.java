package org.thalweg.api;

import jakarta.validation.Validation;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.thalweg.api.json.Posted;
import org.thalweg.api.json.PostedReader;
import org.thalweg.api.wire.LayoutAnswer.Total;
import org.thalweg.api.wire.LayoutRequest;
import org.thalweg.api.wire.OrderLineAnswer;
import org.thalweg.fastening.FastenerRows;
import org.thalweg.fastening.FasteningCase;
import org.thalweg.fastening.Seams;
import org.thalweg.packet.Layout;
import org.thalweg.packet.LayoutCase;
import org.thalweg.packet.Layouts;
import org.thalweg.packet.TakenOff;
import org.thalweg.panel.PanelLayout;
import org.thalweg.panel.Panels;
import org.thalweg.roof.Roof;
import org.thalweg.roof.Roofs;
import org.thalweg.sealing.Sealing;
import org.thalweg.sealing.SealingCase;
import org.thalweg.takeoff.OrderCase;
import org.thalweg.takeoff.OrderLines;
import org.thalweg.takeoff.PanelTakeoff;
import org.thalweg.trim.Trim;
import org.thalweg.trim.Trims;
import org.thalweg.underlayment.Underlay;
import org.thalweg.units.Units;

/**
 * A saved job taken off again, as a nightly run over all of them does: from the bytes of the request to the printed order lines
 * and totals; then the same part by part. The job is the six-plane house of the other benchmarks, everything else by default.
 *
 * <p>The middle of many single times is told, which a machine that others use as well disturbs least.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 10, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class RecomputeBenchmark {

    private static final byte[] JOB = """
            {
              "units": { "length": "mm", "area": "m2", "mass": "kg" },
              "roof": {
                "points": {
                  "A": [0, 0, 0], "B": [4000, 0, 0], "C": [12000, 0, 0], "D": [16000, 0, 0], "E": [16000, 10000, 0],
                  "F": [0, 10000, 0], "G": [5000, 5000, 2500], "H": [11000, 5000, 2500], "J": [8000, 4000, 2000],
                  "K": [4000, -6000, 0], "L": [8000, -6000, 2000], "M": [12000, -6000, 0]
                },
                "planes": [
                  { "id": "south", "outline": ["A", "B", "J", "C", "D", "H", "G"] },
                  { "id": "north", "outline": ["E", "F", "G", "H"] },
                  { "id": "west", "outline": ["F", "A", "G"] },
                  { "id": "east", "outline": ["D", "E", "H"] },
                  { "id": "wingWest", "outline": ["B", "K", "L", "J"] },
                  { "id": "wingEast", "outline": ["M", "C", "J", "L"] }
                ]
              },
              "panel": { "cover": 480 },
              "edgeTreatments": {
                "eave": { "setback": -25, "hem": 25 },
                "valley": { "setback": 320, "hem": 25 },
                "ridge": { "setback": 25, "hem": 25 },
                "hip": { "setback": 25, "hem": 25 }
              }
            }
            """.getBytes(StandardCharsets.UTF_8);

    private final PostedReader reader = new PostedReader(
            Validation.buildDefaultValidatorFactory());
    private final LayoutRequest request = (LayoutRequest)
            reader.read(JOB, LayoutRequest.class).request();
    private final Units units = request.units().units();
    private final LayoutCase asked = LayoutReader.read(request);
    private final Layout laid = Layouts.layOut(asked);
    private final Roof roof = laid.roof();
    private final FasteningCase fastening = laid.takenOff().laid();

    /** What pricing needs of a job. */
    public record Printed(List<OrderLineAnswer> lines, List<Total> totals) {}

    /** From bytes to what is printed. */
    @Benchmark
    public Printed takeOff() {
        LayoutRequest posted = (LayoutRequest)
                reader.read(JOB, LayoutRequest.class).request();
        return print(Layouts.takeOff(LayoutReader.read(posted)), posted.units().units());
    }

    private static Printed print(TakenOff job, Units units) {
        List<OrderLineAnswer> lines = new OrderWriter(units).lines(job.order());
        return new Printed(lines, new TotalsWriter(units).totals(job, lines));
    }

    /** Bytes bound to records, held against their annotations, and their digest. */
    @Benchmark
    public Posted<?> partPosted() {
        return reader.read(JOB, LayoutRequest.class);
    }

    /** Units in, defaults filled in. */
    @Benchmark
    public LayoutCase partCase() {
        return LayoutReader.read(request);
    }

    /** Everything between the case and what is printed. */
    @Benchmark
    public TakenOff partCounted() {
        return Layouts.takeOff(asked);
    }

    /** The same with all that is only drawn or told, for comparison. */
    @Benchmark
    public Layout partLayOut() {
        return Layouts.layOut(asked);
    }

    @Benchmark
    public Roof partRoof() {
        return Roofs.read(asked.survey());
    }

    @Benchmark
    public PanelLayout partPanels() {
        return Panels.layOut(
                roof,
                asked.spec(),
                laid.treatments(),
                Collections.nCopies(roof.planes().size(), asked.laying()));
    }

    @Benchmark
    public List<Trim> partTrims() {
        return Trims.on(roof, asked.trims()).layOut();
    }

    @Benchmark
    public FastenerRows partRows() {
        return FastenerRows.of(fastening);
    }

    @Benchmark
    public Seams partSeams() {
        return Seams.of(fastening);
    }

    @Benchmark
    public Underlay partUnderlay() {
        return Underlay.of(roof, asked.underlay().roll());
    }

    @Benchmark
    public Sealing partSealing() {
        return Sealing.of(new SealingCase(
                laid.fasteners(), fastening.valleys(), laid.trims(), asked.sealing(), roof.tolerance()));
    }

    @Benchmark
    public PanelTakeoff partTakeoff() {
        return PanelTakeoff.of(roof, laid.panels(), asked.spec(), asked.sheet());
    }

    @Benchmark
    public OrderLines partOrder() {
        return OrderLines.of(new OrderCase(
                fastening,
                asked.sheet(),
                laid.fasteners(),
                laid.seams(),
                laid.trims(),
                laid.underlay(),
                laid.ice(),
                laid.sealing(),
                asked.ordering()));
    }

    @Benchmark
    public Printed partPrinted() {
        return print(laid.takenOff(), units);
    }
}
