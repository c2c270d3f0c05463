package org.thalweg.roof;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.thalweg.finding.Finding;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Vector3;
import org.thalweg.roof.Building.FoundEdge;
import org.thalweg.roof.Building.Surface;

/** Reads buildings and holds what comes out against what their file says of them. */
final class Comparison {

    /**
     * Why an edge is called something else here than in the file, whose classes are computed too and not published.
     */
    enum Why {
        /** The file says how the rim of a hole lies; here it is an opening. */
        RIM_OF_AN_OPENING,
        /** The file joins edges within 2 cm; here two planes meet only if their corners do, within the tolerance. */
        APART,
        /** The file calls a surface under 3° flat and an edge within 2° level; here 0.5°, and within 5° in its plane. */
        NEARLY_FLAT,
        /** The file calls surfaces within 2° coplanar; here they are flush only if their fall lines agree within 5° too. */
        TURNING,
        /** More than two surfaces on one line: the file lists every two, here two are neighbours and the rest stacked. */
        CROWDED,
        /** A surface thinner than 2 cm: the file finds both its long sides on one line and lists the two surfaces twice. */
        THIN,
        /** The file has a type of its own for edges of surfaces over 85°. */
        STEEP,
        /** None of these. */
        UNEXPLAINED
    }

    /** An edge that is called something else. */
    record Disagreement(Building building, FoundEdge theirs, String ours, Why why) {
        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%s | %s | %s %s %.3f m | %s | %s",
                    building.set(),
                    building.id(),
                    theirs.type(),
                    theirs.surfaces(),
                    theirs.length(),
                    ours,
                    why);
        }
    }

    private static final double FLAT_DEG = 3;

    /** The file's ends are printed to the millimetre and lie up to 2 cm off either surface. */
    private static final double BESIDE = 0.025;

    final Map<String, Integer> refused = new TreeMap<>();
    final Map<String, Integer> findings = new TreeMap<>();
    final Map<String, Integer> disagreeing = new TreeMap<>();
    final List<Disagreement> disagreements = new ArrayList<>();
    final List<String> unlike = new ArrayList<>();
    int buildings;
    int read;
    int planes;
    int agreeing;
    double worstArea;
    double worstAreaShare;
    double worstPitchDeg;

    void add(Building building) {
        buildings++;
        try {
            Roof roof = Roofs.read(building.survey());
            read++;
            for (Finding finding : roof.findings()) {
                findings.merge(finding.code().name(), 1, Integer::sum);
            }
            for (int p = 0; p < building.surfaces().size(); p++) {
                compare(building, p, roof.planes().get(p), building.surfaces().get(p));
            }
            for (FoundEdge edge : building.edges()) {
                compare(building, roof, edge);
            }
        } catch (Refused e) {
            for (Refusal refusal : e.refusals()) {
                refused.merge(refusal.code() + (building.clean() ? " (clean)" : " (not clean)"), 1, Integer::sum);
            }
        }
    }

    private void compare(Building building, int number, Plane plane, Surface surface) {
        planes++;
        double area = Math.max(
                Math.abs(plane.area().squareMetres() - surface.area()),
                Math.abs(plane.planArea().squareMetres() - surface.planArea()));
        double pitch = Math.abs(plane.slope().inDegrees() - surface.pitchDeg());
        worstArea = Math.max(worstArea, area);
        worstAreaShare = Math.max(worstAreaShare, area / surface.area());
        worstPitchDeg = Math.max(worstPitchDeg, pitch);
        // Half of the last digit printed, and joining moves a side by up to the tolerance.
        double girth = girth(surface.rings().get(0));
        if (area > 0.00005 + 0.001 * girth || pitch > 0.005) {
            unlike.add(String.format(
                    Locale.ROOT,
                    "%s | %s | surface %d: area %.4f, file %.4f; pitch %.3f, file %.3f; off %.4f",
                    building.set(),
                    building.id(),
                    number,
                    plane.area().squareMetres(),
                    surface.area(),
                    plane.slope().inDegrees(),
                    surface.pitchDeg(),
                    plane.off().metres()));
        }
    }

    private static double girth(List<Point3> ring) {
        double girth = 0;
        for (int i = 0; i < ring.size(); i++) {
            girth += ring.get(i).distance(ring.get((i + 1) % ring.size()));
        }
        return girth;
    }

    private void compare(Building building, Roof roof, FoundEdge theirs) {
        Optional<Edge> ours = best(roof, theirs);
        String called = ours.map(edge -> called(edge, theirs)).orElse("nothing");
        if (agree(theirs.type(), called)) {
            agreeing++;
            return;
        }
        boolean listedTwice = theirs.shared()
                && building.edges().stream()
                                .filter(e -> e.shared() && e.surfaces().containsAll(theirs.surfaces()))
                                .count()
                        > 1;
        Why why = ours.map(edge -> why(roof, theirs, edge, listedTwice)).orElse(Why.UNEXPLAINED);
        disagreements.add(new Disagreement(building, theirs, called, why));
        disagreeing.merge(theirs.type() + " -> " + called + " : " + why, 1, Integer::sum);
    }

    /** The edge of the same surfaces that has most in common with theirs; otherwise of one of the surfaces. */
    private static Optional<Edge> best(Roof roof, FoundEdge theirs) {
        Edge best = null;
        double most = 0;
        for (Edge edge : roof.edges()) {
            double common = touches(edge, theirs) ? common(edge, theirs) : 0;
            // Of two that cover the whole length, the one that the same surfaces carry.
            double weighed = sameSurfaces(edge, theirs) ? 2 * common : common;
            if (weighed > most) {
                most = weighed;
                best = edge;
            }
        }
        return Optional.ofNullable(best);
    }

    private static boolean touches(Edge edge, FoundEdge theirs) {
        return edge.sides().stream().anyMatch(side -> theirs.surfaces().contains(side.plane()));
    }

    private static boolean sameSurfaces(Edge edge, FoundEdge theirs) {
        return edge.sides().size() == theirs.surfaces().size()
                && edge.sides().stream().allMatch(side -> theirs.surfaces().contains(side.plane()));
    }

    /** Length two edges have in common, if they lie beside each other; metres. */
    private static double common(Edge edge, FoundEdge theirs) {
        double[] ends = commonEnds(edge, theirs);
        if (ends[1] <= ends[0]) {
            return 0;
        }
        Point3 middle = at(edge, (ends[0] + ends[1]) / 2);
        return off(middle, theirs.from(), theirs.to()) <= BESIDE ? ends[1] - ends[0] : 0;
    }

    /** Where along our edge theirs begins and ends, within our edge; metres. */
    private static double[] commonEnds(Edge edge, FoundEdge theirs) {
        double length = edge.length().metres();
        Vector3 run = edge.to().minus(edge.from()).times(1 / length);
        double one = theirs.from().minus(edge.from()).dot(run);
        double other = theirs.to().minus(edge.from()).dot(run);
        return new double[] {Math.max(0, Math.min(one, other)), Math.min(length, Math.max(one, other))};
    }

    private static Point3 at(Edge edge, double along) {
        return edge.from()
                .plus(edge.to().minus(edge.from()).times(along / edge.length().metres()));
    }

    private static double off(Point3 point, Point3 from, Point3 to) {
        Vector3 run = to.minus(from);
        double along = Math.max(0, Math.min(1, point.minus(from).dot(run) / run.dot(run)));
        return point.distance(from.plus(run.times(along)));
    }

    private static String called(Edge edge, FoundEdge theirs) {
        String kind = edge.kind() == EdgeKind.PITCH_BREAK
                ? (edge.convex() ? "convex pitchBreak" : "concave pitchBreak")
                : edge.kind().wire();
        if (sameSurfaces(edge, theirs)) {
            return kind;
        }
        return kind + (edge.shared() ? " of others" : " of one");
    }

    private static boolean agree(String theirs, String ours) {
        return switch (theirs) {
            case "ridge", "hip", "valley", "eave" -> ours.equals(theirs);
            case "valley_level" -> ours.equals("levelValley");
            case "convex_break" -> ours.equals("convex pitchBreak");
            case "concave_break" -> ours.equals("concave pitchBreak");
            case "coplanar" -> ours.equals("flush");
            case "overlap" -> ours.equals("stacked");
            case "high_edge" -> ours.equals("highEave");
            case "rake" -> List.of("rake", "angledEave", "angledRake").contains(ours);
            case "flat_edge" ->
                List.of("eave", "highEave", "rake", "angledEave", "angledRake", "opening")
                        .contains(ours);
            default -> false;
        };
    }

    private static Why why(Roof roof, FoundEdge theirs, Edge ours, boolean listedTwice) {
        if (ours.kind() == EdgeKind.OPENING && theirs.surfaces().size() == 1) {
            return Why.RIM_OF_AN_OPENING;
        }
        if (theirs.type().equals("steep")) {
            return Why.STEEP;
        }
        if (theirs.surfaces().size() == 2 && !sameSurfaces(ours, theirs)) {
            return ours.shared() || ours.kind() == EdgeKind.STACKED
                    ? Why.CROWDED
                    : apart(roof, theirs) ? Why.APART : Why.UNEXPLAINED;
        }
        if (theirs.type().equals("overlap") && listedTwice) {
            return Why.THIN;
        }
        if (theirs.type().equals("coplanar") && ours.bend().compareTo(EdgeKinds.FLUSH) <= 0) {
            return Why.TURNING;
        }
        boolean flat = theirs.surfaces().stream()
                .anyMatch(s -> roof.planes().get(s).slope().inDegrees() < FLAT_DEG);
        boolean levelButNotInPlane = ours.slope().compareTo(EdgeKinds.LEVEL_SLOPE) <= 0
                && ours.sides().stream().allMatch(side -> side.mitre().compareTo(EdgeKinds.LEVEL_MITRE) > 0);
        return flat || levelButNotInPlane ? Why.NEARLY_FLAT : Why.UNEXPLAINED;
    }

    /** Whether an end of the common length, on either surface, is further from the other surface than the tolerance. */
    private static boolean apart(Roof roof, FoundEdge theirs) {
        List<Edge> one = beside(roof, theirs, 0);
        List<Edge> other = beside(roof, theirs, 1);
        return strays(one, other, theirs, roof) || strays(other, one, theirs, roof);
    }

    private static List<Edge> beside(Roof roof, FoundEdge theirs, int surface) {
        int plane = theirs.surfaces().get(surface);
        return roof.edges().stream()
                .filter(edge -> edge.sides().stream().anyMatch(side -> side.plane() == plane))
                .filter(edge -> common(edge, theirs) > 0)
                .toList();
    }

    private static boolean strays(List<Edge> edges, List<Edge> from, FoundEdge theirs, Roof roof) {
        for (Edge edge : edges) {
            for (double end : commonEnds(edge, theirs)) {
                double least = from.stream()
                        .mapToDouble(other -> off(at(edge, end), other.from(), other.to()))
                        .min()
                        .orElse(Double.POSITIVE_INFINITY);
                if (least > roof.tolerance().metres()) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The counts, one a line. */
    String counts() {
        StringBuilder text = new StringBuilder();
        text.append("buildings %d, read %d, planes %d%n".formatted(buildings, read, planes));
        text.append("refusals %s%n".formatted(refused));
        text.append("findings %s%n".formatted(findings));
        text.append("edges agreeing %d, disagreeing %d%n".formatted(agreeing, disagreements.size()));
        disagreeing.forEach((what, count) -> text.append("  %5d %s%n".formatted(count, what)));
        text.append(String.format(
                Locale.ROOT,
                "worst area error %.4f m2, %.2e of the plane; worst pitch error %.4f deg%n",
                worstArea,
                worstAreaShare,
                worstPitchDeg));
        return text.toString();
    }
}
