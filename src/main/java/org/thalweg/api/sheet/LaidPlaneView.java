package org.thalweg.api.sheet;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toMap;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.api.wire.LayoutAnswer;
import org.thalweg.api.wire.LayoutAnswer.LaidPlane;
import org.thalweg.api.wire.PanelAnswer;
import org.thalweg.api.wire.ReadRoof.EdgeAnswer;
import org.thalweg.api.wire.ReadRoof.FrameAnswer;
import org.thalweg.api.wire.ReadRoof.PlaneAnswer;
import org.thalweg.api.wire.WorldPoint;

/**
 * A plane with all of an answer that lies on it, seen square to it: across to the right, up the slope upward, in the frame its
 * panels are placed in.
 *
 * @param plane    the plane
 * @param laid     how it is laid, where it is
 * @param frame    of its panels
 * @param outline  its corners, across and up by turns
 * @param openings its holes, likewise
 * @param panels   every panel on it
 * @param edges    every edge it carries
 */
record LaidPlaneView(
        PlaneAnswer plane,
        Optional<LaidPlane> laid,
        FrameAnswer frame,
        double[] outline,
        List<double[]> openings,
        List<PanelAnswer> panels,
        List<EdgeAnswer> edges) {

    /** Every plane of an answer, in its order. */
    static List<LaidPlaneView> of(LayoutAnswer answer) {
        Map<String, LaidPlane> laid =
                answer.laid().stream().collect(toMap(LaidPlane::plane, one -> one, (first, second) -> first));
        Map<String, List<PanelAnswer>> panels = answer.panels().stream().collect(groupingBy(PanelAnswer::plane));
        Map<String, List<EdgeAnswer>> edges = new HashMap<>();
        for (EdgeAnswer edge : answer.roof().edges()) {
            for (String plane : edge.planes()) {
                edges.computeIfAbsent(plane, id -> new ArrayList<>()).add(edge);
            }
        }
        List<LaidPlaneView> views = new ArrayList<>();
        for (PlaneAnswer plane : answer.roof().planes()) {
            views.add(of(
                    plane,
                    Optional.ofNullable(laid.get(plane.id())),
                    panels.getOrDefault(plane.id(), List.of()),
                    edges.getOrDefault(plane.id(), List.of())));
        }
        return views;
    }

    private static LaidPlaneView of(
            PlaneAnswer plane, Optional<LaidPlane> laid, List<PanelAnswer> panels, List<EdgeAnswer> edges) {
        FrameAnswer frame = laid.flatMap(LaidPlane::frame).orElse(plane.frame());
        List<double[]> openings = plane.openings().stream()
                .map(opening -> in(frame, plane, Places.of(opening.outline())))
                .toList();
        return new LaidPlaneView(
                plane, laid, frame, in(frame, plane, Places.of(plane.outline())), openings, panels, edges);
    }

    /** Places of the plane's own frame in {@code frame}, which is the same one unless the plane is level. */
    private static double[] in(FrameAnswer frame, PlaneAnswer plane, double[] own) {
        if (frame == plane.frame()) {
            return own;
        }
        double[] places = new double[own.length];
        for (int i = 0; i < own.length; i += 2) {
            double[] there = onto(frame, world(plane.frame(), own[i], own[i + 1]));
            places[i] = there[0];
            places[i + 1] = there[1];
        }
        return places;
    }

    private static WorldPoint world(FrameAnswer frame, double across, double up) {
        return new WorldPoint(
                frame.origin().x()
                        + across * frame.across().x()
                        + up * frame.up().x(),
                frame.origin().y()
                        + across * frame.across().y()
                        + up * frame.up().y(),
                frame.origin().z()
                        + across * frame.across().z()
                        + up * frame.up().z());
    }

    private static double[] onto(FrameAnswer frame, WorldPoint point) {
        double x = point.x() - frame.origin().x();
        double y = point.y() - frame.origin().y();
        double z = point.z() - frame.origin().z();
        return new double[] {
            x * frame.across().x() + y * frame.across().y() + z * frame.across().z(),
            x * frame.up().x() + y * frame.up().y() + z * frame.up().z()
        };
    }

    /** A place of the world in this view. */
    double[] onto(WorldPoint point) {
        return onto(frame, point);
    }

    /** Places of this view seen from above: x and y of the world by turns. */
    double[] plan(double[] places) {
        double[] plan = new double[places.length];
        for (int i = 0; i < places.length; i += 2) {
            WorldPoint point = world(frame, places[i], places[i + 1]);
            plan[i] = point.x();
            plan[i + 1] = point.y();
        }
        return plan;
    }

    /** A panel as it shows, in this view. */
    static double[] shown(PanelAnswer panel) {
        return Places.of(
                panel.finished().outline(),
                panel.place().across(),
                panel.place().up());
    }

    /** All planes of a roof from above, for its size. */
    static List<double[]> plans(List<LaidPlaneView> views) {
        return views.stream().map(view -> view.plan(view.outline())).toList();
    }
}
