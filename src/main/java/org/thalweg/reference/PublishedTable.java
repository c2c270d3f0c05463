package org.thalweg.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** One of the files of this room: remarks that begin with {@code #}, a line of column names, then rows. */
final class PublishedTable {

    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();

    private PublishedTable() {}

    /** The rows in the order of the file. */
    static <T> List<T> read(String file, Function<CSVRecord, T> row) {
        try (InputStream bytes = Objects.requireNonNull(PublishedTable.class.getResourceAsStream(file), file);
                Reader text = new InputStreamReader(bytes, StandardCharsets.UTF_8)) {
            return FORMAT.parse(text).stream().map(row).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }
}
