package org.thalweg.roof;

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
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Pitch;

/** One real building of a file of buildings: roof surfaces, and edges someone else found in them. */
public record Building(String set, String id, boolean clean, List<Surface> surfaces, List<FoundEdge> edges) {

    /** A roof surface and what the file says of it. */
    public record Surface(List<List<Point3>> rings, double pitchDeg, double area, double planArea) {}

    /** An edge of the file: of one surface, or shared by two. */
    public record FoundEdge(String type, List<Integer> surfaces, double length, Point3 from, Point3 to) {
        boolean shared() {
            return surfaces.size() > 1;
        }
    }

    private static final ObjectMapper JSON = new ObjectMapper();

    public static Stream<Building> in(Path file, String set) {
        try {
            return Files.readAllLines(file, StandardCharsets.UTF_8).stream().map(line -> of(line, set));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Every building of the folder of folders that the system property {@code thalweg.buildings} names, each folder with a file
     * {@code roofs.jsonl}; its set is the folder's name.
     */
    public static Stream<Building> inFolder() {
        Path folder = Path.of(System.getProperty("thalweg.buildings", ""));
        try (Stream<Path> sets = Files.list(folder)) {
            return sets.sorted().toList().stream()
                    .filter(set -> Files.exists(set.resolve("roofs.jsonl")))
                    .flatMap(set -> in(
                            set.resolve("roofs.jsonl"), folder.relativize(set).toString()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Building of(String line, String set) {
        try {
            JsonNode building = JSON.readTree(line);
            List<Surface> surfaces = new ArrayList<>();
            for (JsonNode surface : building.get("roof")) {
                surfaces.add(surface(surface));
            }
            List<FoundEdge> edges = new ArrayList<>();
            for (JsonNode edge : building.get("edges")) {
                edges.add(edge(edge));
            }
            boolean clean = building.get("clean").booleanValue();
            String setOf = building.has("set") ? building.get("set").textValue() : set;
            return new Building(setOf, building.get("id").textValue(), clean, surfaces, edges);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Surface surface(JsonNode surface) {
        List<List<Point3>> rings = new ArrayList<>();
        for (JsonNode ring : surface.get("rings")) {
            List<Point3> corners = new ArrayList<>();
            for (JsonNode corner : ring) {
                corners.add(point(corner));
            }
            rings.add(corners);
        }
        return new Surface(
                rings,
                surface.get("pitch_deg").doubleValue(),
                surface.get("area_m2").doubleValue(),
                surface.get("plan_area_m2").doubleValue());
    }

    private static FoundEdge edge(JsonNode edge) {
        List<Integer> faces = new ArrayList<>();
        edge.get("faces").forEach(face -> faces.add(face.intValue()));
        return new FoundEdge(
                edge.get("type").textValue(),
                faces,
                edge.get("length").doubleValue(),
                point(edge.get("p0")),
                point(edge.get("p1")));
    }

    private static Point3 point(JsonNode xyz) {
        return new Point3(
                xyz.get(0).doubleValue(), xyz.get(1).doubleValue(), xyz.get(2).doubleValue());
    }

    public RoofSurvey survey() {
        List<PlaneOutline> planes = new ArrayList<>();
        for (int i = 0; i < surfaces.size(); i++) {
            Origin at = Origin.REQUEST.at("planes").at(i);
            List<PlaneOutline.OpeningOutline> openings = new ArrayList<>();
            List<List<Point3>> rings = surfaces.get(i).rings();
            for (int h = 1; h < rings.size(); h++) {
                openings.add(new PlaneOutline.OpeningOutline(
                        "hole " + h, rings.get(h), at.at("openings").at(h - 1).at("outline")));
            }
            planes.add(new PlaneOutline("surface " + i, rings.get(0), openings, at, at.at("outline")));
        }
        return new RoofSurvey(planes, List.of(), Tolerance.DEFAULT, new Pitch(0.25, 12), Source.COMMON_PRACTICE);
    }
}
