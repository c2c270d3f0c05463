package org.thalweg.api;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.LayoutRequest.PanelForm;
import org.thalweg.api.wire.ValleyRequest;
import org.thalweg.api.wire.ValleyRequest.CornerForm;
import org.thalweg.api.wire.ValleyRequest.CornerTop;
import org.thalweg.fastening.FasteningRules;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.packet.EdgeName;
import org.thalweg.packet.ValleyCase;
import org.thalweg.packet.ValleyTerms;
import org.thalweg.panel.PanelSpec;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.InnerCorner;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.takeoff.SheetStock;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Pitch;

/** Reads the wire's request for one valley: units in, defaults filled in, pointers kept. */
final class ValleyReader {

    private static final Origin CORNER = Origin.REQUEST.at("corner");
    private static final Origin SLOPE = PanelReader.PANEL.at("minimumSlope");

    private static final Pitch UNREAD = new Pitch(1, 1);

    private final ValleyRequest request;
    private final LengthUnit unit;
    private final TapeReader tape;

    private ValleyReader(ValleyRequest request) {
        this.request = request;
        this.unit = request.units().length();
        this.tape = new TapeReader(unit);
    }

    static ValleyCase read(ValleyRequest request) {
        return new ValleyReader(request).read();
    }

    private ValleyCase read() {
        PanelForm panel = request.panel();
        PanelReader panelReader = new PanelReader(panel, unit, tape);
        PanelSpec spec = panelReader.spec();
        FasteningRules rules = new FasteningReader(request.fastening(), request.valleyPan(), unit, tape).read();
        ValleyTerms terms = new ValleyTermsReader(
                        request.valleyPan(), request.fastening(), request.climate(), null, unit, tape)
                .read(spec.cover(), panelReader.sheet(spec).metal(), rules);
        TreatmentReader treatments = new TreatmentReader(request.roof(), unit, tape);
        treatments.read(request.edgeTreatments());
        Optional<SheetStock> stock = new CuttingReader(unit, tape)
                .read(
                        request.cutting(),
                        "A valley has no panels of its own to cut. Leave the coil out; a layout takes it.");
        CornerForm corner = request.corner();
        RoofSurvey survey = corner == null ? roof(panel) : corner(corner, panel);
        CuttingReader.refuseDuplicates(request.cutting());
        return new ValleyCase(survey, name(treatments), at(), treatments.byKind(), treatments.byEdge(), terms, stock);
    }

    private RoofSurvey roof(PanelForm panel) {
        // The shape of the request was checked: without a corner it has a roof.
        return RoofReader.read(requireNonNull(request.roof()), request.tolerance(), panel.minimumSlope(), SLOPE, tape);
    }

    private RoofSurvey corner(CornerForm form, PanelForm panel) {
        Pitch left =
                tape.pitch(form.pitches().get(0), UNREAD, CORNER.at("pitches").at(0));
        Pitch right =
                tape.pitch(form.pitches().get(1), UNREAD, CORNER.at("pitches").at(1));
        Optional<Length> run = tape.given(form.run(), CORNER.at("run"), Limits.CORNER_RUN);
        Optional<Length> length = tape.given(form.length(), CORNER.at("length"), Limits.CORNER_RUN);
        if (run.isPresent() == length.isPresent()) {
            tape.note(() -> Fault.of(
                    ReadingCode.EITHER_OR,
                    CORNER.pointer(),
                    "Give the valley's \"run\" along the left eave or its true \"length\", one of the two."));
        }
        RoofReader.Measured measured = RoofReader.measured(request.tolerance(), panel.minimumSlope(), SLOPE, tape);
        tape.done();
        EdgeKind top = form.top() == CornerTop.HEAD_WALL ? EdgeKind.HEAD_WALL : EdgeKind.RIDGE;
        return new InnerCorner(left, right, Angle.degrees(form.planAngleDeg()), run, length, top, CORNER)
                .survey(measured.tolerance(), measured.leastSlope(), measured.leastSlopeSource());
    }

    private Origin at() {
        if (request.corner() != null) {
            return CORNER;
        }
        return Origin.REQUEST.at(request.valley() == null ? "edge" : "valley");
    }

    private EdgeName name(TreatmentReader treatments) {
        if (request.corner() != null) {
            return new EdgeName.OnlyValley();
        }
        if (request.valley() == null) {
            return new EdgeName.ById(requireNonNull(request.edge()));
        }
        return treatments
                .between(request.valley().get(0), request.valley().get(1))
                .orElseThrow(() -> new Refused(Refusal.of(
                        RefusalCode.UNKNOWN_POINT,
                        at(),
                        requireNonNull(request.roof()).points() == null
                                ? "In this form a roof has no points with names. Name the valley by its id in an answer of"
                                        + " /v1/roofs, such as V1, as \"edge\"."
                                : "The valley runs between two points, and one of them is not among the roof's points. Add it,"
                                        + " or mend the name.")));
    }
}
