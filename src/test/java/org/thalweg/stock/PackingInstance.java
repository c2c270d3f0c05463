package org.thalweg.stock;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** One published bin packing instance with the least number of bins, proven by others. */
record PackingInstance(String set, String name, long capacity, List<CutPiece> pieces, int optimum) {

    private static final ObjectMapper JSON = new ObjectMapper();

    static List<PackingInstance> in(Path file) {
        try (Stream<String> lines = Files.lines(file, StandardCharsets.UTF_8)) {
            return lines.filter(line -> !line.isBlank())
                    .map(PackingInstance::of)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every instance of the folder that the system property {@code thalweg.packing} names, file by file. */
    static List<PackingInstance> inFolder() {
        try (Stream<Path> files = Files.list(Path.of(System.getProperty("thalweg.packing", "")))) {
            return files.filter(file -> file.toString().endsWith(".jsonl"))
                    .sorted()
                    .flatMap(file -> in(file).stream())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static PackingInstance of(String line) {
        try {
            JsonNode instance = JSON.readTree(line);
            List<CutPiece> pieces = new ArrayList<>();
            for (JsonNode size : instance.get("sizes")) {
                pieces.add(CutPiece.of(
                        "p" + pieces.size(), size.get(0).asLong(), size.get(1).asInt()));
            }
            return new PackingInstance(
                    instance.get("set").asText(),
                    instance.get("name").asText(),
                    instance.get("capacity").asLong(),
                    pieces,
                    instance.get("optimum").asInt());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    CuttingCase asked(Budget budget) {
        return new CuttingCase(List.of(StockBar.of("bin", capacity, 1)), pieces, 0, 1, budget);
    }

    /** The same with a kerf that pieces and bins are shortened by, so that as much fits as before. */
    CuttingCase askedWithKerf(long kerf, Budget budget) {
        List<CutPiece> wider = pieces.stream()
                .map(piece -> CutPiece.of(piece.id(), piece.length() * 10 - kerf, piece.count()))
                .toList();
        return new CuttingCase(List.of(StockBar.of("bin", capacity * 10 - kerf, 1)), wider, kerf, 1, budget);
    }

    /** Only the name, so that a failing case says which. */
    @Override
    public String toString() {
        return set + " " + name;
    }
}
