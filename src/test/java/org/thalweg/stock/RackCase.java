package org.thalweg.stock;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.stream.Stream;

/** One case of several stock lengths, read from its three tables. */
record RackCase(String name, List<StockBar> stock, List<CutPiece> pieces, long kerf, OptionalLong reference) {

    private static final Path FOLDER = Path.of("src/test/resources/cutting");

    static List<RackCase> all() {
        try (Stream<Path> cases = Files.list(FOLDER)) {
            return cases.filter(Files::isDirectory).sorted().map(RackCase::of).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static RackCase named(String name) {
        return of(FOLDER.resolve(name));
    }

    private static RackCase of(Path folder) {
        List<Map<String, String>> bins = rows(folder.resolve("bins.csv"));
        List<StockBar> stock = new ArrayList<>();
        for (Map<String, String> bin : bins) {
            int copies = Integer.parseInt(bin.get("COPIES"));
            stock.add(new StockBar(
                    bin.getOrDefault("ID", ""),
                    Long.parseLong(bin.get("X")),
                    Long.parseLong(bin.getOrDefault("COST", bin.get("X"))),
                    copies < 0 ? OptionalInt.empty() : OptionalInt.of(copies)));
        }
        List<CutPiece> pieces = new ArrayList<>();
        long kerf = 0;
        for (Map<String, String> item : rows(folder.resolve("items.csv"))) {
            pieces.add(CutPiece.of(
                    item.getOrDefault("ID", ""), Long.parseLong(item.get("X")), Integer.parseInt(item.get("COPIES"))));
            kerf = -Long.parseLong(item.getOrDefault("NESTING_LENGTH", "0"));
        }
        return new RackCase(folder.getFileName().toString(), stock, pieces, kerf, reference(folder, stock));
    }

    private static OptionalLong reference(Path folder, List<StockBar> stock) {
        Path solution = folder.resolve("solution.csv");
        if (!Files.exists(solution)) {
            return OptionalLong.empty();
        }
        return OptionalLong.of(rows(solution).stream()
                .filter(row -> "BIN".equals(row.get("TYPE")))
                .mapToLong(row -> Long.parseLong(row.get("COPIES"))
                        * stock.get(Integer.parseInt(row.get("ID"))).cost())
                .sum());
    }

    private static List<Map<String, String>> rows(Path file) {
        try {
            List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
            String[] heads = lines.get(0).split(",", -1);
            List<Map<String, String>> rows = new ArrayList<>();
            for (String line : lines.subList(1, lines.size())) {
                String[] cells = line.split(",", -1);
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 0; i < heads.length; i++) {
                    row.put(heads[i], cells[i]);
                }
                rows.add(row);
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    CuttingCase asked(Budget budget) {
        return new CuttingCase(stock, pieces, kerf, 1, budget);
    }

    @Override
    public String toString() {
        return name;
    }
}
