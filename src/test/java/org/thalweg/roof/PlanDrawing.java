package org.thalweg.roof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.Refused;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.PlanPlane.Fall;
import org.thalweg.roof.PlanSurvey.Given;
import org.thalweg.roof.PlanSurvey.NamedSide;
import org.thalweg.roof.PlaneOutline.OpeningOutline;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/** A roof drawn in plan, plane by plane; metres. */
final class PlanDrawing {

    private static final Origin PLANES = Origin.REQUEST.at("planes");

    final List<PlanPlane> planes = new ArrayList<>();
    private final List<Given> heights = new ArrayList<>();
    private final List<NamedSide> named = new ArrayList<>();
    private Tolerance tolerance = Tolerance.DEFAULT;

    /** A plane by x and y of its corners that rises from its first side. */
    PlanDrawing plane(String id, double rise, double... xy) {
        return plane(id, new Pitch(rise, 12), new PlanPlane.ToEave(0, 1), xy);
    }

    PlanDrawing plane(String id, Pitch pitch, Fall fall, double... xy) {
        Origin at = PLANES.at(planes.size());
        planes.add(new PlanPlane(new PlaneOutline(id, ring(xy), List.of(), at, at.at("outline")), pitch, fall));
        return this;
    }

    /** An opening of the last plane. */
    PlanDrawing opening(String id, double... xy) {
        PlanPlane last = planes.remove(planes.size() - 1);
        PlaneOutline drawn = last.drawn();
        List<OpeningOutline> openings = new ArrayList<>(drawn.openings());
        Origin at = drawn.at().at("openings").at(openings.size()).at("outline");
        openings.add(new OpeningOutline(id, ring(xy), at));
        planes.add(new PlanPlane(
                new PlaneOutline(drawn.id(), drawn.outline(), openings, drawn.at(), drawn.outlineAt()),
                last.pitch(),
                last.fall()));
        return this;
    }

    PlanDrawing add(PlanPlane plane) {
        planes.add(plane);
        return this;
    }

    PlanDrawing height(String plane, int corner, double z) {
        heights.add(new Given(
                plane, corner, Length.metres(z), Origin.REQUEST.at("heights").at(heights.size())));
        return this;
    }

    PlanDrawing named(String plane, int side, EdgeKind kind) {
        return named(plane, Optional.empty(), side, kind);
    }

    PlanDrawing named(String plane, Optional<String> opening, int side, EdgeKind kind) {
        named.add(new NamedSide(
                plane, opening, side, kind, Origin.REQUEST.at("edges").at(named.size())));
        return this;
    }

    PlanDrawing tolerance(double metres) {
        tolerance = new Tolerance(metres);
        return this;
    }

    PlanSurvey survey() {
        return new PlanSurvey(planes, heights, named, tolerance, new Pitch(0.25, 12), Source.COMMON_PRACTICE);
    }

    Roof read() {
        return Roofs.read(RaisedPlan.of(survey()));
    }

    /** What is refused; nothing when the plan can be raised. */
    List<Refusal> refusals() {
        try {
            RaisedPlan.of(survey());
            return List.of();
        } catch (Refused refused) {
            return refused.refusals();
        }
    }

    private static List<Point3> ring(double... xy) {
        List<Point3> ring = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            ring.add(new Point3(xy[i], xy[i + 1], 0));
        }
        return ring;
    }
}
