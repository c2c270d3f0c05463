package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.validation.Validation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.thalweg.api.json.PostedReader;
import org.thalweg.api.wire.LayoutRequest;
import org.thalweg.api.wire.OrderLineAnswer;
import org.thalweg.packet.LayoutCase;
import org.thalweg.packet.Layouts;
import org.thalweg.packet.TakenOff;
import org.thalweg.units.Units;

/** What is only counted is printed as what is laid out in full: every example of a layout or a take-off, line by line. */
class TakenOffTest {

    private static final PostedReader READER = new PostedReader(Validation.buildDefaultValidatorFactory());

    static List<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("openapi", "examples"))) {
            return files.filter(file -> file.getFileName().toString().matches("(layouts|takeoffs)-.*\\.request\\.json"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void countingAloneOrdersTheSame(Path example) throws IOException {
        LayoutRequest request = (LayoutRequest)
                READER.read(Files.readAllBytes(example), LayoutRequest.class).request();
        Units units = request.units().units();
        LayoutCase asked = LayoutReader.read(request);
        TakenOff counted = Layouts.takeOff(asked);
        TakenOff laidOut = Layouts.layOut(asked).takenOff();
        List<OrderLineAnswer> lines = new OrderWriter(units).lines(counted.order());
        assertThat(lines).isNotEmpty().isEqualTo(new OrderWriter(units).lines(laidOut.order()));
        assertThat(new TotalsWriter(units).totals(counted, lines))
                .isNotEmpty()
                .isEqualTo(new TotalsWriter(units).totals(laidOut, lines));
    }
}
