package org.thalweg.roof;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Figures as a source prints them. */
public final class Printed {

    private Printed() {}

    /** Half of the last digit printed, and a little for the half that is cut in binary. */
    public static double halfDigit(String printed) {
        return 0.5 * Math.pow(10, -Math.max(0, new BigDecimal(printed).scale())) + 1e-10;
    }

    static InputStream open(String resource) {
        return Stream.ofNullable(Printed.class.getResourceAsStream(resource))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no resource " + resource));
    }

    /** The rows of a published table; lines that begin with {@code #} say where they come from. */
    public static List<CSVRecord> rows(String resource) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader reader = new InputStreamReader(open(resource), StandardCharsets.UTF_8)) {
            return format.parse(reader).getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
