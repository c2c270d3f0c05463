package org.thalweg.api.sheet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.thalweg.drawing.PdfFile;
import org.thalweg.drawing.Sheet;

/** Draws jobs of the tests to {@code target/sheets}, to be looked at; all of them, or those whose names begin with an argument. */
public final class DrawnExamples {

    private static final Path OUT = Path.of("target", "sheets");

    private DrawnExamples() {}

    public static void main(String[] begins) throws IOException {
        Files.createDirectories(OUT);
        for (Job job : Jobs.all()) {
            if (begins.length > 0
                    && List.of(begins).stream().noneMatch(begin -> job.name().startsWith(begin))) {
                continue;
            }
            long start = System.nanoTime();
            List<Sheet> sheets = job.sheets();
            byte[] pdf =
                    PdfFile.of(sheets, job.name(), job.json().path("digest").asText());
            long took = (System.nanoTime() - start) / 1_000_000;
            Files.write(OUT.resolve(job.name().replace(' ', '-').replace(",", "") + ".pdf"), pdf);
            System.out.printf("%s: %d sheets, %d bytes, %d ms%n", job.name(), sheets.size(), pdf.length, took);
        }
    }
}
