package org.thalweg.packet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Point3;
import org.thalweg.panel.PanelLayout;
import org.thalweg.panel.Panels;
import org.thalweg.panel.PlaneLaying;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.EdgeTreatments;
import org.thalweg.roof.Roof;
import org.thalweg.roof.Roofs;
import org.thalweg.takeoff.PanelTakeoff;

/** Lays out one job. */
public final class Layouts {

    private Layouts() {}

    /**
     * Reads the roof, lays its panels and counts them.
     *
     * @throws Refused when what was measured is no roof, or an edge or plane is named that it does not have
     */
    public static Layout layOut(LayoutCase asked) {
        Roof roof = Roofs.read(asked.survey());
        List<Refusal> refusals = new ArrayList<>(0);
        EdgeTreatments treatments = new EdgeTreatments(asked.byKind(), byEdge(roof, asked, refusals));
        List<PlaneLaying> laying = laying(roof, asked, refusals);
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        PanelLayout panels = Panels.layOut(roof, asked.spec(), treatments, laying);
        return new Layout(roof, panels, PanelTakeoff.of(roof, panels, asked.spec(), asked.sheet()));
    }

    private static Map<Integer, EdgeTreatment> byEdge(Roof roof, LayoutCase asked, List<Refusal> refusals) {
        Map<Integer, EdgeTreatment> byEdge = new HashMap<>();
        for (LayoutCase.EdgeException exception : asked.byEdge()) {
            boolean found = false;
            for (int i = 0; i < roof.edges().size(); i++) {
                if (named(exception.edge(), roof.edges().get(i), roof)) {
                    byEdge.put(i, exception.treatment());
                    found = true;
                }
            }
            if (!found) {
                refusals.add(Refusal.of(
                        RefusalCode.NO_SUCH_EDGE,
                        exception.at(),
                        "No edge of the roof has this name or lies between these points. Ask /v1/roofs which edges it"
                                + " has."));
            }
        }
        return byEdge;
    }

    private static boolean named(EdgeName name, Edge edge, Roof roof) {
        if (name instanceof EdgeName.ById byId) {
            return byId.id().equals(edge.id());
        }
        EdgeName.Between line = (EdgeName.Between) name;
        return onLine(edge.from(), line, roof) && onLine(edge.to(), line, roof);
    }

    /** Between the two points a way through this one is no longer than the straight one, but for the tolerance. */
    private static boolean onLine(Point3 point, EdgeName.Between line, Roof roof) {
        double off =
                point.minus(line.from()).cross(line.to().minus(line.from())).length()
                        / line.to().distance(line.from());
        double along = point.minus(line.from()).dot(line.to().minus(line.from()))
                / line.to().distance(line.from());
        double tolerance = roof.tolerance().metres();
        return off <= tolerance && along >= -tolerance && along <= line.to().distance(line.from()) + tolerance;
    }

    private static List<PlaneLaying> laying(Roof roof, LayoutCase asked, List<Refusal> refusals) {
        List<PlaneLaying> laying =
                new ArrayList<>(Collections.nCopies(roof.planes().size(), asked.laying()));
        for (LayoutCase.PlaneException exception : asked.byPlane()) {
            int plane = index(roof, exception.plane());
            if (plane < 0) {
                refusals.add(Refusal.of(
                        RefusalCode.NO_SUCH_PLANE,
                        exception.at(),
                        "The roof has no plane of this id. Name one of its planes."));
            } else if (exception.laying().fall().isPresent()
                    && !roof.planes().get(plane).level()) {
                refusals.add(Refusal.of(
                        RefusalCode.FALL_NOT_FREE,
                        exception.at().at("fallDeg"),
                        "The plane slopes, so water runs down its own fall line. Leave fallDeg out; it is for level"
                                + " planes."));
            } else {
                laying.set(plane, exception.laying());
            }
        }
        return laying;
    }

    private static int index(Roof roof, String id) {
        for (int i = 0; i < roof.planes().size(); i++) {
            if (roof.planes().get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }
}
