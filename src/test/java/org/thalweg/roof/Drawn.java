package org.thalweg.roof;

import static java.util.stream.Collectors.toList;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.Refused;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Pitch;

/**
 * A roof drawn as a plan in a text block: every letter is a corner, a column and a row are a metre each, x to the right
 * and y up the page. Heights are 0 unless given; planes are named by their corners.
 */
public final class Drawn {

    private final Map<Character, Point3> corners = new LinkedHashMap<>();
    private final List<String> planes = new ArrayList<>();
    private final List<String> named = new ArrayList<>();
    private final List<EdgeKind> kinds = new ArrayList<>();
    private Tolerance tolerance = Tolerance.DEFAULT;
    private Pitch leastSlope = new Pitch(0.25, 12);

    public static Drawn plan(String drawing) {
        Drawn drawn = new Drawn();
        List<String> rows = drawing.lines().toList();
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < rows.get(row).length(); column++) {
                char letter = rows.get(row).charAt(column);
                if (Character.isLetter(letter)) {
                    drawn.corners.put(letter, new Point3(column, rows.size() - 1 - row, 0));
                }
            }
        }
        return drawn;
    }

    /** Puts corners at a height, metres. */
    public Drawn height(double z, String letters) {
        return move(letters, p -> new Point3(p.x(), p.y(), z));
    }

    public Drawn move(String letters, UnaryOperator<Point3> moving) {
        letters.chars().forEach(letter -> corners.compute((char) letter, (l, p) -> moving.apply(corner(l))));
        return this;
    }

    /** One more corner at a place. */
    public Drawn corner(char letter, double x, double y, double z) {
        corners.put(letter, new Point3(x, y, z));
        return this;
    }

    /** Adds planes: the corners of the outline, then after each space those of an opening. */
    public Drawn planes(String... letters) {
        planes.addAll(Arrays.asList(letters));
        return this;
    }

    private PlaneOutline plane(int number) {
        String[] rings = planes.get(number).split(" ", -1);
        Origin at = Origin.REQUEST.at("planes").at(number);
        List<PlaneOutline.OpeningOutline> openings = new ArrayList<>();
        for (int i = 1; i < rings.length; i++) {
            Origin openingAt = at.at("openings").at(i - 1).at("outline");
            openings.add(new PlaneOutline.OpeningOutline(rings[i], ring(rings[i]), openingAt));
        }
        return new PlaneOutline(rings[0], ring(rings[0]), openings, at, at.at("outline"));
    }

    public Drawn named(String ends, EdgeKind kind) {
        named.add(ends);
        kinds.add(kind);
        return this;
    }

    private NamedEdge name(int number) {
        String ends = named.get(number);
        Origin at = Origin.REQUEST.at("edges").at(number);
        return new NamedEdge(corner(ends.charAt(0)), corner(ends.charAt(1)), kinds.get(number), at);
    }

    public Drawn leastSlope(Pitch least) {
        leastSlope = least;
        return this;
    }

    public Drawn tolerance(double metres) {
        tolerance = new Tolerance(metres);
        return this;
    }

    private List<Point3> ring(String letters) {
        return letters.chars().mapToObj(letter -> corner((char) letter)).collect(toList());
    }

    public Point3 corner(char letter) {
        Point3 corner = corners.get(letter);
        if (corner == null) {
            throw new IllegalArgumentException("no corner " + letter);
        }
        return corner;
    }

    RoofSurvey survey() {
        return new RoofSurvey(
                IntStream.range(0, planes.size()).mapToObj(this::plane).toList(),
                IntStream.range(0, named.size()).mapToObj(this::name).toList(),
                tolerance,
                leastSlope,
                Source.COMMON_PRACTICE);
    }

    public Read read() {
        return new Read(this, Roofs.read(survey()));
    }

    /** What is refused; nothing when the roof can be read. */
    List<Refusal> refusals() {
        try {
            Roofs.read(survey());
            return List.of();
        } catch (Refused refused) {
            return refused.refusals();
        }
    }

    /** A drawn roof that has been read; edges are asked for by the letters of their ends, planes by their outline's. */
    public record Read(Drawn drawn, Roof roof) {

        /** All edges between two corners, either way round. */
        public List<Edge> edges(String ends) {
            Point3 one = drawn.corner(ends.charAt(0));
            Point3 other = drawn.corner(ends.charAt(1));
            return roof.edges().stream()
                    .filter(e -> (near(e.from(), one) && near(e.to(), other))
                            || (near(e.from(), other) && near(e.to(), one)))
                    .toList();
        }

        /** The one edge between two corners. */
        public Edge edge(String ends) {
            List<Edge> found = edges(ends);
            if (found.size() != 1) {
                throw new AssertionError("edges " + ends + ": " + found + " of " + kinds());
            }
            return found.get(0);
        }

        public EdgeKind kind(String ends) {
            return edge(ends).kind();
        }

        public Plane plane(String id) {
            return roof.planes().stream()
                    .filter(p -> p.id().equals(id))
                    .findFirst()
                    .orElseThrow();
        }

        List<String> ids() {
            return roof.edges().stream().map(Edge::id).toList();
        }

        List<EdgeKind> kinds() {
            return roof.edges().stream().map(Edge::kind).toList();
        }

        List<FindingCode> codes() {
            return roof.findings().stream().map(Finding::code).toList();
        }

        Finding finding(FindingCode code) {
            List<Finding> found =
                    roof.findings().stream().filter(f -> f.code() == code).toList();
            if (found.size() != 1) {
                throw new AssertionError(code + ": " + found + " of " + codes());
            }
            return found.get(0);
        }

        /** The planes at the edge between two corners, by their outlines' letters. */
        List<String> planesAt(String ends) {
            return edge(ends).sides().stream()
                    .map(side -> roof.planes().get(side.plane()).id())
                    .toList();
        }

        private static boolean near(Point3 a, Point3 b) {
            return a.distance(b) <= 0.002;
        }
    }
}
