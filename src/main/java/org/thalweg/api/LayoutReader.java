package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.LayoutRequest;
import org.thalweg.api.wire.LayoutRequest.LayingForm;
import org.thalweg.api.wire.LayoutRequest.PanelForm;
import org.thalweg.api.wire.LayoutRequest.StartForm;
import org.thalweg.api.wire.WireLength;
import org.thalweg.fastening.FasteningRules;
import org.thalweg.finding.Origin;
import org.thalweg.packet.LayoutCase;
import org.thalweg.packet.LayoutCase.PlaneException;
import org.thalweg.packet.ValleyTerms;
import org.thalweg.packet.WindTerms;
import org.thalweg.panel.Lead;
import org.thalweg.panel.PanelSpec;
import org.thalweg.panel.PlaneLaying;
import org.thalweg.panel.Start;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.sealing.SealingRules;
import org.thalweg.takeoff.Ordering;
import org.thalweg.takeoff.PanelSheet;
import org.thalweg.trim.TrimSpec;
import org.thalweg.underlayment.UnderlayCase;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/** Reads the wire's layout request: units in, defaults filled in, pointers kept. */
final class LayoutReader {

    private static final Origin START = Origin.REQUEST.at("start");
    private static final Origin LAYING = Origin.REQUEST.at("laying");

    private final LayoutRequest request;
    private final TapeReader tape;

    private LayoutReader(LayoutRequest request) {
        this.request = request;
        this.tape = new TapeReader(request.units().length());
    }

    static LayoutCase read(LayoutRequest request) {
        return new LayoutReader(request).read();
    }

    private LayoutCase read() {
        PanelForm panel = request.panel();
        LengthUnit unit = request.units().length();
        PanelReader panelReader = new PanelReader(panel, unit, tape);
        PanelSpec spec = panelReader.spec();
        PanelSheet sheet = panelReader.sheet(spec);
        TreatmentReader treatments = new TreatmentReader(request.roof(), unit, tape);
        treatments.read(request.edgeTreatments());
        FasteningRules rules = new FasteningReader(request.fastening(), request.valleyPan(), unit, tape).read();
        ValleyTerms valleys = new ValleyTermsReader(
                        request.valleyPan(), request.fastening(), request.climate(), request.hipCap(), unit, tape)
                .read(spec.cover(), sheet.metal(), rules);
        TrimSpec trims = new TrimReader(unit, tape)
                .spec(request.trims(), sheet.seamHeight(), valleys.cap().leg(), sheet.thickness());
        UnderlayCase underlay = new UnderlaymentReader(request.underlayment(), unit, tape).read();
        SealingRules sealing = new SealingReader(request.sealing(), unit, tape).read(rules.edgeDistance());
        Optional<WindTerms> wind =
                new WindReader(request.units().units(), tape).read(request.wind(), clipSpacing(rules));
        PlaneLaying laying = new PlaneLaying(
                lead(panel.leads(), Lead.LEFT), start(request.start(), START, spec, wholePanel()), Optional.empty());
        List<PlaneException> byPlane = new ArrayList<>();
        orNone(request.laying()).forEach((plane, form) -> byPlane.add(laying(plane, form, laying, spec)));
        Ordering ordering =
                new OrderingReader(unit, tape).read(request.ordering(), request.cutting(), sheet.thickness());
        // Last, for it refuses whatever has been noted.
        RoofSurvey survey = RoofReader.read(
                request.roof(), request.tolerance(), panel.minimumSlope(), PanelReader.PANEL.at("minimumSlope"), tape);
        CuttingReader.refuseDuplicates(request.cutting());
        return new LayoutCase(
                survey,
                spec,
                sheet,
                treatments.byKind(),
                treatments.byEdge(),
                laying,
                byPlane,
                valleys,
                trims,
                underlay,
                sealing,
                wind,
                ordering);
    }

    /** The greatest spacing of clips, where the request says it: the wind allows no more. */
    private Optional<Length> clipSpacing(FasteningRules rules) {
        boolean given = request.fastening() != null && request.fastening().clipSpacing() != null;
        return given ? Optional.of(rules.clips().maxSpacing()) : Optional.empty();
    }

    private Start wholePanel() {
        return new Start.Offset(Length.ZERO);
    }

    private Start start(@Nullable StartForm form, Origin at, PanelSpec spec, Start absent) {
        if (form == null) {
            return absent;
        }
        LayoutRequest.StartBy by = form.by();
        if (form.offset() != null && by != LayoutRequest.StartBy.OFFSET) {
            tape.note(() -> Fault.of(
                    ReadingCode.UNKNOWN_MEMBER,
                    at.at("offset").pointer(),
                    "An offset is only read beside \"by\": \"offset\". Leave it out, or say so."));
        }
        return switch (by) {
            case OFFSET -> new Start.Offset(offset(form.offset(), at.at("offset"), spec));
            case CENTRED -> new Start.Centred();
            case LEAST_WASTE -> new Start.LeastWaste();
        };
    }

    private Length offset(@Nullable WireLength given, Origin at, PanelSpec spec) {
        Length offset = tape.length(given, Length.ZERO, at, Limits.START_OFFSET);
        if (offset.metres() < spec.cover().metres()) {
            return offset;
        }
        tape.notePassed(
                at,
                offset,
                spec.cover(),
                "The first panel is %s wide; it must be less than the cover, %s. For a whole panel give 0.");
        return Length.ZERO;
    }

    private static Lead lead(LayoutRequest.@Nullable Leads given, Lead absent) {
        if (given == null) {
            return absent;
        }
        return given == LayoutRequest.Leads.LEFT ? Lead.LEFT : Lead.RIGHT;
    }

    private PlaneException laying(String plane, LayingForm form, PlaneLaying rest, PanelSpec spec) {
        Origin at = LAYING.at(plane);
        return new PlaneException(
                plane,
                new PlaneLaying(
                        lead(form.leads(), rest.lead()),
                        start(form.start(), at.at("start"), spec, rest.start()),
                        Optional.ofNullable(form.fallDeg()).map(Angle::degrees)),
                at);
    }

    private static <T> Map<String, T> orNone(@Nullable Map<String, T> map) {
        return map == null ? Map.of() : map;
    }
}
