package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.PlanForm;
import org.thalweg.api.wire.PlanForm.PlanEdgeForm;
import org.thalweg.api.wire.PlanForm.PlanHeightForm;
import org.thalweg.api.wire.PlanForm.PlanOpeningForm;
import org.thalweg.api.wire.PlanForm.PlanPlaneForm;
import org.thalweg.api.wire.WirePlanCorner;
import org.thalweg.finding.Origin;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.PlanPlane;
import org.thalweg.roof.PlanPlane.Fall;
import org.thalweg.roof.PlanSurvey;
import org.thalweg.roof.PlanSurvey.Given;
import org.thalweg.roof.PlanSurvey.NamedSide;
import org.thalweg.roof.PlaneOutline;
import org.thalweg.roof.PlaneOutline.OpeningOutline;
import org.thalweg.units.Angle;
import org.thalweg.units.Pitch;

/** Reads a roof that is drawn in plan: units in, pointers kept. */
final class PlanReader {

    static final Origin PLAN = Origin.REQUEST.at("roof").at("plan");

    private static final Pitch UNREAD = new Pitch(1, 1);

    private final PlanForm plan;
    private final TapeReader tape;

    private PlanReader(PlanForm plan, TapeReader tape) {
        this.plan = plan;
        this.tape = tape;
    }

    /** @param tape has read the rest of the request; done when this returns */
    static PlanSurvey read(PlanForm plan, RoofReader.Measured measured, TapeReader tape) {
        return new PlanReader(plan, tape).read(measured);
    }

    private PlanSurvey read(RoofReader.Measured measured) {
        countCorners();
        List<PlanPlane> planes = new ArrayList<>(plan.planes().size());
        for (PlanPlaneForm form : plan.planes()) {
            planes.add(plane(form, PLAN.at("planes").at(planes.size())));
        }
        List<Given> heights = new ArrayList<>();
        heights.add(height(plan.height(), PLAN.at("height")));
        for (PlanHeightForm form : orNone(plan.heights())) {
            heights.add(height(form, PLAN.at("heights").at(heights.size() - 1)));
        }
        tape.done();
        return new PlanSurvey(
                planes, heights, sides(), measured.tolerance(), measured.leastSlope(), measured.leastSlopeSource());
    }

    /** What is too much for one request is refused before anything is made of it. */
    private void countCorners() {
        int corners = 0;
        for (PlanPlaneForm plane : plan.planes()) {
            corners += plane.outline().size();
            for (PlanOpeningForm opening : orNone(plane.openings())) {
                corners += opening.outline().size();
            }
        }
        if (corners > Limits.CORNERS) {
            tape.tooMany(PLAN.at("planes"), "corners in all", corners, Limits.CORNERS);
            tape.done();
        }
    }

    private PlanPlane plane(PlanPlaneForm form, Origin at) {
        List<OpeningOutline> openings = new ArrayList<>();
        for (PlanOpeningForm opening : orNone(form.openings())) {
            Origin outlineAt = at.at("openings").at(openings.size()).at("outline");
            openings.add(new OpeningOutline(opening.id(), corners(opening.outline(), outlineAt), outlineAt));
        }
        Origin outlineAt = at.at("outline");
        PlaneOutline drawn = new PlaneOutline(form.id(), corners(form.outline(), outlineAt), openings, at, outlineAt);
        Pitch pitch = tape.pitch(form.pitch(), UNREAD, at.at("pitch"));
        return new PlanPlane(drawn, pitch, fall(form, pitch, at));
    }

    private List<Point3> corners(List<WirePlanCorner> given, Origin at) {
        List<Point3> corners = new ArrayList<>(given.size());
        for (WirePlanCorner corner : given) {
            Origin cornerAt = at.at(corners.size());
            corners.add(new Point3(
                    tape.length(corner.x(), cornerAt.at(0), Limits.COORDINATE).metres(),
                    tape.length(corner.y(), cornerAt.at(1), Limits.COORDINATE).metres(),
                    0));
        }
        return corners;
    }

    private Fall fall(PlanPlaneForm form, Pitch pitch, Origin at) {
        List<Long> eave = form.eave();
        boolean both = eave != null && form.fallDeg() != null;
        boolean neither = eave == null && form.fallDeg() == null;
        if (both || neither && pitch.rise() > 0) {
            tape.note(
                    () -> Fault.of(
                            ReadingCode.EITHER_OR,
                            at.pointer(),
                            "Give the side the plane rises from as \"eave\", or which way it falls as \"fallDeg\", one of the two."));
        }
        if (eave != null) {
            return new PlanPlane.ToEave(eave.get(0).intValue(), eave.get(1).intValue());
        }
        return form.fallDeg() == null ? new PlanPlane.Nowhere() : new PlanPlane.Toward(Angle.degrees(form.fallDeg()));
    }

    private Given height(PlanHeightForm form, Origin at) {
        return new Given(
                form.plane(), form.corner().intValue(), tape.length(form.z(), at.at("z"), Limits.COORDINATE), at);
    }

    private List<NamedSide> sides() {
        List<NamedSide> sides = new ArrayList<>();
        for (PlanEdgeForm edge : orNone(plan.edges())) {
            sides.add(new NamedSide(
                    edge.plane(),
                    Optional.ofNullable(edge.opening()),
                    edge.side().intValue(),
                    edge.kind().kind(),
                    PLAN.at("edges").at(sides.size())));
        }
        return sides;
    }

    private static <T> List<T> orNone(@Nullable List<T> list) {
        return list == null ? List.of() : list;
    }
}
