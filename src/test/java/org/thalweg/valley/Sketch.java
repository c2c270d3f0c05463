package org.thalweg.valley;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.NamedEdge;
import org.thalweg.roof.PlaneOutline;
import org.thalweg.roof.PlaneOutline.OpeningOutline;
import org.thalweg.roof.Roof;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/** A roof sketched corner by corner, in inches; corners are letters, planes and edges are named by theirs. */
final class Sketch {

    private final Map<Character, Point3> corners = new LinkedHashMap<>();
    private final List<PlaneOutline> planes = new ArrayList<>();
    private final List<NamedEdge> named = new ArrayList<>();
    private final UnaryOperator<Point3> moved;

    private Sketch(UnaryOperator<Point3> moved) {
        this.moved = moved;
    }

    static Sketch start() {
        return new Sketch(p -> p);
    }

    /** A sketch all of whose corners are moved; metres. */
    static Sketch moved(UnaryOperator<Point3> moved) {
        return new Sketch(moved);
    }

    Sketch corner(char letter, double x, double y, double z) {
        corners.put(letter, moved.apply(new Point3(inch(x), inch(y), inch(z))));
        return this;
    }

    /** A plane: the corners of its outline, after a space those of an opening. */
    Sketch plane(String letters) {
        String[] rings = letters.split(" ", -1);
        List<OpeningOutline> openings = new ArrayList<>();
        for (int i = 1; i < rings.length; i++) {
            openings.add(new OpeningOutline(rings[i], ring(rings[i]), Origin.REQUEST));
        }
        planes.add(new PlaneOutline(rings[0], ring(rings[0]), openings, Origin.REQUEST, Origin.REQUEST));
        return this;
    }

    Sketch named(String ends, EdgeKind kind) {
        named.add(new NamedEdge(at(ends.charAt(0)), at(ends.charAt(1)), kind, Origin.REQUEST));
        return this;
    }

    Roof read() {
        return Roofs.read(new RoofSurvey(planes, named, Pans.TOLERANCE, new Pitch(0.25, 12), Source.REQUEST));
    }

    /** World, metres. */
    Point3 at(char letter) {
        return Optional.ofNullable(corners.get(letter)).orElseThrow();
    }

    /** The sloped edge between two corners. */
    SlopedEdge edge(Roof roof, String ends) {
        for (int i = 0; i < roof.edges().size(); i++) {
            Point3 from = roof.edges().get(i).from();
            Point3 to = roof.edges().get(i).to();
            if ((near(from, ends.charAt(0)) && near(to, ends.charAt(1)))
                    || (near(from, ends.charAt(1)) && near(to, ends.charAt(0)))) {
                return SlopedEdge.of(roof, i).orElseThrow();
            }
        }
        throw new AssertionError("no edge " + ends + " among " + roof.edges());
    }

    private boolean near(Point3 point, char letter) {
        return point.distance(at(letter)) < 1e-6;
    }

    private List<Point3> ring(String letters) {
        return letters.chars().mapToObj(letter -> at((char) letter)).toList();
    }

    private static double inch(double inches) {
        return Length.inches(inches).metres();
    }

    /** Roofs of the boathouse, as far as valleys and a hip go: {@code demo/boathouse.md} says where each corner comes from. */
    static Sketch boathouse(UnaryOperator<Point3> moved) {
        return moved(moved)
                .corner('A', 0, 0, 108)
                .corner('B', 480, 0, 108)
                .corner('C', 480, -240, 108)
                .corner('D', 600, -240, 188)
                .corner('E', 720, -240, 108)
                .corner('F', 720, 384, 108)
                .corner('J', 0, 384, 108)
                .corner('K', 192, 192, 204)
                .corner('L', 576, 192, 204)
                .corner('M', 600, 160, 188)
                .corner('Q', 264, 36, 126)
                .corner('R', 360, 36, 126)
                .corner('S', 360, 108, 162)
                .corner('T', 312, 156, 186)
                .corner('U', 264, 108, 162)
                .corner('V', 264, 36, 162)
                .corner('W', 312, 36, 186)
                .corner('X', 360, 36, 162)
                .plane("ABMLK QRSTU")
                .plane("FJKL")
                .plane("JAK")
                .plane("BCDM")
                .plane("EFLMD")
                .plane("UVWT")
                .plane("XSTW")
                .named("QR", EdgeKind.HEAD_WALL)
                .named("RS", EdgeKind.SIDE_WALL)
                .named("UQ", EdgeKind.SIDE_WALL);
    }
}
