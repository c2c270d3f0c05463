package org.thalweg.drawing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A list as comma-separated values [published: RFC 4180]: UTF-8, CRLF, a line of headings first. */
public final class CsvFile {

    private CsvFile() {}

    public static byte[] of(List<String> headings, List<List<String>> rows) {
        StringBuilder text = new StringBuilder(1 << 14);
        try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
            csv.printRecord(headings);
            for (List<String> row : rows) {
                csv.printRecord(row);
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
