package org.thalweg.panel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.thalweg.finding.Origin;
import org.thalweg.geometry.Frame;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Tolerance;
import org.thalweg.geometry.Vector3;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.EdgeTreatments;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;
import org.thalweg.units.Angle;
import org.thalweg.units.Area;
import org.thalweg.units.Length;

/** Roofs of a single plane, made straight from the plane's shape, so that panels can be tested without reading a roof. */
public final class Flat {

    private static final Frame FRAME =
            new Frame(new Point3(0, 0, 0), new Vector3(1, 0, 0), new Vector3(0, 0.8, 0.6), new Vector3(0, -0.6, 0.8));

    private Flat() {}

    /** A plane of this shape; every side's tag becomes an edge of its own. Sizes in metres. */
    public static Roof roof(Region shape) {
        Map<Integer, Edge> edges = new TreeMap<>();
        collect(shape.outer(), edges);
        shape.openings().forEach(opening -> collect(opening, edges));
        List<Edge> all = new ArrayList<>(Collections.nCopies(
                edges.keySet().stream().mapToInt(tag -> tag + 1).max().orElse(0), edges.get(0)));
        edges.forEach(all::set);
        Plane plane = new Plane(
                "p",
                FRAME,
                shape,
                Angle.atan2(0.6, 0.8),
                false,
                new Area(shape.area()),
                new Area(shape.area() * 0.8),
                Length.ZERO,
                Origin.REQUEST);
        return new Roof(List.of(plane), all, List.of(), Tolerance.DEFAULT);
    }

    private static void collect(Ring ring, Map<Integer, Edge> edges) {
        for (int i = 0; i < ring.size(); i++) {
            edges.put(
                    ring.tag(i),
                    new Edge(
                            "E" + ring.tag(i),
                            EdgeKind.EAVE,
                            List.of(),
                            FRAME.inWorld(ring.corner(i)),
                            FRAME.inWorld(ring.corner(ring.next(i))),
                            Length.metres(ring.corner(i).distance(ring.corner(ring.next(i)))),
                            Angle.ZERO,
                            Angle.ZERO,
                            false,
                            Origin.REQUEST));
        }
    }

    /** Treatments by side tag. */
    public static EdgeTreatments treated(Map<Integer, EdgeTreatment> bySide) {
        return new EdgeTreatments(Map.of(), bySide);
    }

    public static EdgeTreatment treatment(double setback, double hem, double turnUp) {
        return new EdgeTreatment(Length.metres(setback), Length.metres(hem), Length.metres(turnUp));
    }

    /** Nothing folded; the lower end of the edge set back otherwise than the upper one. */
    public static EdgeTreatment tapered(double setback, double setbackAtTop) {
        return new EdgeTreatment(Length.metres(setback), Length.metres(setbackAtTop), Length.ZERO, Length.ZERO);
    }

    /** A panel of this cover that is never too long, too short or a sliver, and is ordered to the millimetre. */
    public static PanelSpec cover(double cover) {
        return spec(cover, 1000, 0.001, 0);
    }

    public static PanelSpec spec(double cover, double longest, double increment, double narrowestRip) {
        return new PanelSpec(
                Length.metres(cover),
                Length.metres(longest),
                Length.ZERO,
                Length.metres(increment),
                Length.metres(narrowestRip),
                Length.metres(0.15),
                Length.metres(0.6));
    }

    public static PlanePanels lay(Region shape, PanelSpec spec, EdgeTreatments treatments, Lead lead, Start start) {
        return layOut(shape, spec, treatments, lead, start).planes().get(0);
    }

    public static PanelLayout layOut(Region shape, PanelSpec spec, EdgeTreatments treatments, Lead lead, Start start) {
        Roof roof = roof(shape);
        return Panels.layOut(roof, spec, treatments.of(roof), List.of(new PlaneLaying(lead, start, Optional.empty())));
    }

    public static Start offset(double width) {
        return new Start.Offset(Length.metres(width));
    }
}
