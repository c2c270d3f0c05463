package org.thalweg.roof;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.thalweg.finding.Finding;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Vector3;

/** Exploring. */
final class Comparison {
    int buildings;
    int read;
    int agree;
    final Map<String, Integer> refused = new TreeMap<>();
    final Map<String, Integer> findings = new TreeMap<>();
    final Map<String, Integer> pairs = new TreeMap<>();
    final List<String> notes = new ArrayList<>();
    double worstArea;
    double worstRelative;
    double worstPitch;
    int planes;

    void add(Building b) {
        buildings++;
        Roof roof;
        try {
            roof = Roofs.read(b.survey());
        } catch (Refused e) {
            for (Refusal r : e.refusals()) {
                refused.merge(r.code() + (b.clean() ? " clean" : " not clean"), 1, Integer::sum);
                notes.add("REFUSED " + b.set() + " " + b.id() + " clean=" + b.clean() + " " + r.code() + " " + r.at()
                        + " " + r.detail() + r.actual() + r.limit());
            }
            return;
        }
        read++;
        for (Finding f : roof.findings()) {
            findings.merge(f.code().name(), 1, Integer::sum);
        }
        for (int p = 0; p < roof.planes().size(); p++) {
            Plane plane = roof.planes().get(p);
            Building.Surface s = b.surfaces().get(p);
            planes++;
            double err = Math.abs(plane.area().squareMetres() - s.area());
            double errPlan = Math.abs(plane.planArea().squareMetres() - s.planArea());
            double dp = Math.abs(plane.slope().inDegrees() - s.pitchDeg());
            if (err > 6e-5 || errPlan > 6e-5 || dp > 0.00051) {
                notes.add(String.format(
                        Locale.ROOT,
                        "AREA %s %s %d area %.5f/%.4f plan %.5f/%.4f pitch %.4f/%.3f off %.4f clean %s n=%d",
                        b.set(),
                        b.id(),
                        p,
                        plane.area().squareMetres(),
                        s.area(),
                        plane.planArea().squareMetres(),
                        s.planArea(),
                        plane.slope().inDegrees(),
                        s.pitchDeg(),
                        plane.off().metres(),
                        b.clean(),
                        s.rings().get(0).size()));
            }
            worstArea = Math.max(worstArea, err);
            worstRelative = Math.max(worstRelative, err / s.area());
            worstPitch = Math.max(worstPitch, dp);
        }
        for (Building.FoundEdge e : b.edges()) {
            String ours = ours(roof, e);
            if (agrees(e.type(), ours)) {
                agree++;
            } else {
                pairs.merge(e.type() + " -> " + ours, 1, Integer::sum);
                notes.add(String.format(
                        Locale.ROOT,
                        "EDGE %s -> %s | %s %s clean=%s faces %s len %.3f %s",
                        e.type(),
                        ours,
                        b.set(),
                        b.id(),
                        b.clean(),
                        e.surfaces(),
                        e.length(),
                        detail));
            }
        }
    }

    String detail = "";

    String ours(Roof roof, Building.FoundEdge e) {
        Edge best = null;
        double most = 0.0;
        int first = e.surfaces().get(0);
        int second = e.shared() ? e.surfaces().get(1) : -1;
        for (Edge edge : roof.edges()) {
            boolean a = edge.sides().stream().anyMatch(s -> s.plane() == first);
            boolean c = second >= 0 && edge.sides().stream().anyMatch(s -> s.plane() == second);
            if (!a && !c) {
                continue;
            }
            double o = overlap(edge, e.from(), e.to());
            boolean whole = a
                    && (c == e.shared())
                    && edge.sides().size() == e.surfaces().size();
            if (whole) {
                o *= 1.5;
            }
            if (o > most + 1e-6) {
                most = o;
                best = edge;
            }
        }
        detail = best == null
                ? ""
                : String.format(
                        Locale.ROOT,
                        "%s len %.3f slope %.2f bend %.2f mitres %s planes %s",
                        best.id(),
                        best.length().metres(),
                        best.slope().inDegrees(),
                        best.bend().inDegrees(),
                        best.sides().stream()
                                .map(s -> String.format(
                                        Locale.ROOT,
                                        "%d@%.2f(pl %.2f)",
                                        s.plane(),
                                        s.mitre().inDegrees(),
                                        roof.planes().get(s.plane()).slope().inDegrees()))
                                .toList(),
                        roof.planes().size());
        if (best == null) {
            return "none";
        }
        String kind = best.kind().wire() + (best.kind() == EdgeKind.PITCH_BREAK ? (best.convex() ? "+" : "-") : "");
        Edge found = best;
        boolean same = found.sides().size() == e.surfaces().size()
                && e.surfaces().stream().allMatch(f -> found.sides().stream().anyMatch(s -> s.plane() == f));
        return same ? kind : kind + (found.sides().size() == 1 ? " alone" : " with another");
    }

    static double overlap(Edge edge, Point3 p, Point3 q) {
        Vector3 run = edge.to().minus(edge.from());
        double len = run.length();
        Vector3 u = run.times(1 / len);
        double t0 = p.minus(edge.from()).dot(u);
        double t1 = q.minus(edge.from()).dot(u);
        double lo = Math.max(0, Math.min(t0, t1));
        double hi = Math.min(len, Math.max(t0, t1));
        if (hi <= lo) {
            return 0;
        }
        Point3 m = edge.from().plus(u.times((lo + hi) / 2));
        Vector3 w = q.minus(p);
        double t = m.minus(p).dot(w) / w.dot(w);
        double off = m.distance(p.plus(w.times(t)));
        return off < 0.03 ? hi - lo : 0;
    }

    static boolean agrees(String theirs, String ours) {
        return switch (theirs) {
            case "ridge" -> ours.equals("ridge");
            case "hip" -> ours.equals("hip");
            case "valley" -> ours.equals("valley");
            case "valley_level" -> ours.equals("levelValley");
            case "convex_break" -> ours.equals("pitchBreak+");
            case "concave_break" -> ours.equals("pitchBreak-");
            case "coplanar" -> ours.equals("flush");
            case "eave" -> ours.equals("eave");
            case "high_edge" -> ours.equals("highEave");
            case "rake" -> ours.equals("rake") || ours.equals("angledEave") || ours.equals("angledRake");
            case "flat_edge" ->
                ours.equals("eave")
                        || ours.equals("highEave")
                        || ours.equals("rake")
                        || ours.equals("angledEave")
                        || ours.equals("angledRake")
                        || ours.equals("opening");
            default -> false;
        };
    }
}
