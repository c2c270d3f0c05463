package org.thalweg.api.batch;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/** Saved takeoffs that nobody ordered, and a few lines that are no takeoffs: the same seed gives the same lines. */
final class InventedJobs {

    private static final String[] METALS = {"galvanized-steel", "copper", "aluminium"};
    private static final String[] PROFILES = {"eave drip", "ridge cap", "hip cap", "peak cover"};

    private final Random random;

    InventedJobs(long seed) {
        this.random = new Random(seed);
    }

    static void write(Path file, long seed, int count) throws IOException {
        InventedJobs jobs = new InventedJobs(seed);
        try (BufferedWriter lines = Files.newBufferedWriter(file)) {
            for (int i = 0; i < count; i++) {
                lines.write(jobs.next());
                lines.newLine();
            }
        }
    }

    /** One in a hundred is no job. */
    String next() {
        return random.nextInt(100) == 0 ? bad() : takeoff();
    }

    private String bad() {
        return switch (random.nextInt(3)) {
            case 0 -> "{\"engine\": \"thalweg/0.1.0\", ";
            case 1 -> "[]";
            default -> takeoff().replace("\"FOT\"", "\"no unit\"");
        };
    }

    private String takeoff() {
        StringBuilder job = new StringBuilder();
        job.append("{\"job\":\"").append(2000 + random.nextInt(26)).append('-').append(random.nextInt(1000));
        job.append("\",\"takeoff\":{\"engine\":\"thalweg/0.1.0\",\"digest\":\"");
        for (int i = 0; i < 8; i++) {
            job.append(String.format(Locale.ROOT, "%08x", random.nextInt()));
        }
        job.append("\",\"units\":{\"length\":\"in\",\"area\":\"ft2\",\"mass\":\"lb\"},\"orderLines\":[");
        line(job, "panel", made("", 20.75), "FOT", true);
        for (int i = 0, count = 1 + random.nextInt(5); i < count; i++) {
            String profile = ",\"profile\":\"" + PROFILES[random.nextInt(PROFILES.length)] + '"';
            line(job.append(','), "trim", made(profile, 4 + random.nextInt(12)), "FOT", true);
        }
        line(job.append(','), "clip", "", "C62", false);
        line(job.append(','), "panelScrew", "", "C62", false);
        job.append("],\"totals\":[{\"item\":\"finishedArea\",\"quantity\":")
                .append(figure())
                .append(",\"unit\":\"FTK\"}]}");
        if (random.nextBoolean()) {
            job.append(",\"was\":{\"amount\":\"")
                    .append(random.nextInt(100_000))
                    .append(".50\",\"currency\":\"USD\"}");
        }
        job.append('}');
        return job.toString();
    }

    private void line(StringBuilder job, String item, String made, String unit, boolean heavy) {
        job.append("{\"item\":\"").append(item).append('"').append(made);
        job.append(",\"net\":").append(figure()).append(",\"lap\":").append(figure());
        job.append(",\"ordered\":")
                .append(figure())
                .append(",\"unit\":\"")
                .append(unit)
                .append('"');
        if (heavy) {
            job.append(",\"mass\":{\"value\":").append(figure()).append(",\"unit\":\"lb\"}");
        }
        job.append('}');
    }

    private String made(String profile, double width) {
        return String.format(
                Locale.ROOT,
                ",\"made\":{\"metal\":\"%s\",\"thickness\":0.0276,\"width\":{\"value\":%s}%s}",
                METALS[random.nextInt(METALS.length)],
                width,
                profile);
    }

    private String figure() {
        return String.format(Locale.ROOT, "%d.%03d", random.nextInt(3000), random.nextInt(1000));
    }
}
