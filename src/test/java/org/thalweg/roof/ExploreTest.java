package org.thalweg.roof;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ExploreTest {
    @Test
    void explore() throws Exception {
        Comparison c = new Comparison();
        try (var list = Files.list(Path.of("/work/shared/data"))) {
            for (Path p : list.filter(f -> f.getFileName().toString().startsWith("lod2-"))
                    .sorted()
                    .toList()) {
                Building.in(p.resolve("roofs.jsonl"), p.getFileName().toString())
                        .forEach(c::add);
            }
        }
        StringBuilder out = new StringBuilder();
        out.append("buildings " + c.buildings + " read " + c.read + " planes " + c.planes + " agree " + c.agree
                + " worst area " + c.worstArea + " rel " + c.worstRelative + " pitch " + c.worstPitch + "\n");
        out.append(c.refused + "\n" + c.findings + "\n");
        c.pairs.forEach((k, v) -> out.append(v + " " + k + "\n"));
        Files.writeString(Path.of("/tmp/scratch/summary.txt"), out.toString());
        Files.write(Path.of("/tmp/scratch/notes.txt"), c.notes);
    }
}
