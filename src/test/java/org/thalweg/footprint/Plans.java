package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.random.RandomGenerator;
import org.thalweg.footprint.RoofOver.Corner;
import org.thalweg.footprint.RoofOver.Slope;
import org.thalweg.units.Pitch;

/** Plans of walls for tests, and what a roof is asked about. */
final class Plans {

    private static final ObjectMapper JSON = new ObjectMapper();

    private Plans() {}

    /** A ring of one pitch, 6:12. */
    static List<WallSide> ring(double... xy) {
        return ring(new Pitch(6, 12), xy);
    }

    static List<WallSide> ring(Pitch pitch, double... xy) {
        List<WallSide> ring = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            ring.add(WallSide.sloped(xy[i], xy[i + 1], pitch));
        }
        return ring;
    }

    /** The same walls with the pitches of sides, in order; "gable" for a gable. */
    static List<WallSide> pitched(List<WallSide> ring, String... pitches) {
        List<WallSide> pitched = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            pitched.add(WallSide.of(ring.get(i).x(), ring.get(i).y(), Pitch.read(pitches[i])));
        }
        return pitched;
    }

    static RoofOver roof(List<WallSide> outline) {
        return roof(Footprint.of(outline));
    }

    static RoofOver roof(Footprint footprint) {
        Rise rise = Footprints.roofOver(footprint);
        assertThat(rise).isInstanceOf(RoofOver.class);
        return (RoofOver) rise;
    }

    static NoRoof.Reason refused(List<WallSide> outline, List<List<WallSide>> courtyards) {
        Rise rise = Footprints.roofOver(new Footprint(outline, courtyards));
        assertThat(rise).isInstanceOf(NoRoof.class);
        return ((NoRoof) rise).reason();
    }

    /** Corners that are no corners of the walls. */
    static List<Corner> inner(RoofOver roof) {
        return roof.corners().stream().filter(corner -> corner.height() > 0).toList();
    }

    static boolean covers(RoofOver roof, Slope slope, double x, double y) {
        boolean inside = false;
        List<Integer> ring = slope.corners();
        for (int i = 0; i < ring.size(); i++) {
            Corner a = roof.corners().get(ring.get(i));
            Corner b = roof.corners().get(ring.get((i + 1) % ring.size()));
            if (a.y() > y != b.y() > y && x < (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()) + a.x()) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** How far a place lies inside the line of a side. */
    static double inward(List<WallSide> ring, int side, double x, double y) {
        WallSide a = ring.get(side);
        WallSide b = ring.get((side + 1) % ring.size());
        return ((b.x() - a.x()) * (y - a.y()) - (b.y() - a.y()) * (x - a.x()))
                / Math.hypot(b.x() - a.x(), b.y() - a.y());
    }

    /** Height of the roof at a place, found from the walls of the slope that covers it; not a number where none does. */
    static double heightAt(Footprint footprint, RoofOver roof, double x, double y) {
        for (Slope slope : roof.slopes()) {
            if (covers(roof, slope, x, y)) {
                int side = slope.sides().get(0);
                for (List<WallSide> ring : footprint.rings()) {
                    if (side < ring.size()) {
                        return Math.abs(inward(ring, side, x, y))
                                * slope.pitch().tan();
                    }
                    side -= ring.size();
                }
            }
        }
        return Double.NaN;
    }

    /** A ring round the origin whose corners are seen from there one after the other. */
    static List<WallSide> star(RandomGenerator random, int corners, double least, double most, Pitch pitch) {
        List<WallSide> ring = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + 0.7 * random.nextDouble()) / corners;
            double radius = least + (most - least) * random.nextDouble();
            ring.add(WallSide.sloped(radius * Math.cos(angle), radius * Math.sin(angle), pitch));
        }
        return ring;
    }

    /**
     * Rings round squares that were put together at random: walls square to each other, whole metres long, so that much
     * happens at once. The outer ring first; squares that meet at a corner only are filled up.
     */
    static List<List<int[]>> squares(RandomGenerator random, int width, int depth, int count) {
        boolean[][] full = new boolean[width + 2][depth + 2];
        full[width / 2 + 1][depth / 2 + 1] = true;
        for (int made = 1, tries = 0; made < count && tries < 100 * count; tries++) {
            int x = 1 + random.nextInt(width);
            int y = 1 + random.nextInt(depth);
            if (!full[x][y] && (full[x - 1][y] || full[x + 1][y] || full[x][y - 1] || full[x][y + 1])) {
                full[x][y] = true;
                made++;
            }
        }
        for (boolean again = true; again; ) {
            again = false;
            for (int x = 1; x < width; x++) {
                for (int y = 1; y < depth; y++) {
                    if (full[x][y] == full[x + 1][y + 1]
                            && full[x + 1][y] == full[x][y + 1]
                            && full[x][y] != full[x + 1][y]) {
                        full[x][y] = true;
                        full[x + 1][y] = true;
                        full[x][y + 1] = true;
                        full[x + 1][y + 1] = true;
                        again = true;
                    }
                }
            }
        }
        return around(full);
    }

    /** Rings round the full squares, these to the left, the outer ring first, without corners in line. */
    private static List<List<int[]>> around(boolean[][] full) {
        List<int[]> lines = new ArrayList<>();
        for (int x = 0; x < full.length; x++) {
            for (int y = 0; y < full[x].length; y++) {
                if (full[x][y]) {
                    addIf(lines, !full[x][y - 1], x, y, x + 1, y);
                    addIf(lines, !full[x + 1][y], x + 1, y, x + 1, y + 1);
                    addIf(lines, !full[x][y + 1], x + 1, y + 1, x, y + 1);
                    addIf(lines, !full[x - 1][y], x, y + 1, x, y);
                }
            }
        }
        List<List<int[]>> rings = new ArrayList<>();
        while (!lines.isEmpty()) {
            int[] first = lines.remove(0);
            List<int[]> ring = new ArrayList<>(List.of(first));
            int[] last = first;
            while (last[2] != first[0] || last[3] != first[1]) {
                for (int[] line : lines) {
                    if (line[0] == last[2] && line[1] == last[3]) {
                        last = line;
                        break;
                    }
                }
                lines.remove(last);
                ring.add(last);
            }
            List<int[]> corners = new ArrayList<>();
            for (int i = 0; i < ring.size(); i++) {
                int[] before = ring.get((i + ring.size() - 1) % ring.size());
                int[] line = ring.get(i);
                if (before[2] - before[0] != line[2] - line[0] || before[3] - before[1] != line[3] - line[1]) {
                    corners.add(new int[] {line[0], line[1]});
                }
            }
            rings.add(corners);
        }
        // The ring of the leftmost line is the outer one, and lines were noted from the left.
        return rings;
    }

    private static void addIf(List<int[]> lines, boolean wanted, int fromX, int fromY, int toX, int toY) {
        if (wanted) {
            lines.add(new int[] {fromX, fromY, toX, toY});
        }
    }

    /** The plans of a file of JSON lines: {@code outer} and {@code holes}. */
    static List<JsonNode> read(Path file) {
        try {
            List<JsonNode> read = new ArrayList<>();
            for (String line : Files.readAllLines(file)) {
                if (!line.isBlank()) {
                    read.add(JSON.readTree(line));
                }
            }
            return read;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static Footprint footprint(JsonNode plan, Pitch pitch) {
        List<List<WallSide>> courtyards = new ArrayList<>();
        plan.path("holes").forEach(hole -> courtyards.add(ring(hole, pitch)));
        return new Footprint(ring(plan.get("outer"), pitch), courtyards);
    }

    /** A polygon: its outer ring, then its holes, shrunk. */
    static Footprint footprint(JsonNode rings, Pitch pitch, double scale) {
        List<List<WallSide>> all = new ArrayList<>();
        rings.forEach(ring -> all.add(ring(ring, pitch).stream()
                .map(side -> WallSide.sloped(side.x() * scale, side.y() * scale, pitch))
                .toList()));
        return new Footprint(all.get(0), all.subList(1, all.size()));
    }

    private static List<WallSide> ring(JsonNode corners, Pitch pitch) {
        List<WallSide> ring = new ArrayList<>();
        Set<List<Double>> seen = new HashSet<>();
        for (JsonNode corner : corners) {
            // Some sources repeat the first corner at the end.
            if (seen.add(List.of(corner.get(0).asDouble(), corner.get(1).asDouble()))) {
                ring.add(WallSide.sloped(corner.get(0).asDouble(), corner.get(1).asDouble(), pitch));
            }
        }
        return ring;
    }
}
