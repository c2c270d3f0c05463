package org.thalweg.api;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.problem.Nearest;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.LayoutRequest;
import org.thalweg.api.wire.LayoutRequest.LayingForm;
import org.thalweg.api.wire.LayoutRequest.PanelForm;
import org.thalweg.api.wire.LayoutRequest.StartForm;
import org.thalweg.api.wire.LayoutRequest.TreatmentForm;
import org.thalweg.api.wire.RoofForm;
import org.thalweg.api.wire.WireLength;
import org.thalweg.api.wire.WirePoint;
import org.thalweg.finding.Origin;
import org.thalweg.geometry.Point3;
import org.thalweg.packet.EdgeName;
import org.thalweg.packet.LayoutCase;
import org.thalweg.packet.LayoutCase.EdgeException;
import org.thalweg.packet.LayoutCase.PlaneException;
import org.thalweg.panel.Lead;
import org.thalweg.panel.PanelSpec;
import org.thalweg.panel.PlaneLaying;
import org.thalweg.panel.Start;
import org.thalweg.reference.Gauges;
import org.thalweg.reference.Metal;
import org.thalweg.reference.Metals;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.takeoff.PanelSheet;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;

/** Reads the wire's layout request: units in, defaults filled in, pointers kept. */
final class LayoutReader {

    private static final Origin PANEL = Origin.REQUEST.at("panel");
    private static final Origin START = Origin.REQUEST.at("start");
    private static final Origin TREATMENTS = Origin.REQUEST.at("edgeTreatments");
    private static final Origin LAYING = Origin.REQUEST.at("laying");

    private static final Map<String, EdgeKind> KINDS = new LinkedHashMap<>();

    static {
        for (EdgeKind kind : EdgeKind.values()) {
            KINDS.put(kind.wire(), kind);
        }
    }

    private final LayoutRequest request;
    private final TapeReader tape;
    private final PanelDefaults defaults;

    private LayoutReader(LayoutRequest request) {
        this.request = request;
        this.tape = new TapeReader(request.units().length());
        this.defaults = PanelDefaults.of(request.units().length());
    }

    static LayoutCase read(LayoutRequest request) {
        return new LayoutReader(request).read();
    }

    private LayoutCase read() {
        PanelForm panel = request.panel();
        PanelSpec spec = spec(panel);
        PanelSheet sheet = sheet(panel, spec);
        Map<EdgeKind, EdgeTreatment> byKind = new EnumMap<>(EdgeKind.class);
        List<EdgeException> byEdge = new ArrayList<>();
        orNone(request.edgeTreatments()).forEach((name, form) -> treatment(name, form, byKind, byEdge));
        PlaneLaying laying = new PlaneLaying(
                lead(panel.leads(), Lead.LEFT), start(request.start(), START, spec, wholePanel()), Optional.empty());
        List<PlaneException> byPlane = new ArrayList<>();
        orNone(request.laying()).forEach((plane, form) -> byPlane.add(laying(plane, form, laying, spec)));
        RoofSurvey survey = RoofReader.read(
                request.roof(), request.tolerance(), panel.minimumSlope(), PANEL.at("minimumSlope"), tape);
        return new LayoutCase(survey, spec, sheet, byKind, byEdge, laying, byPlane);
    }

    private PanelSpec spec(PanelForm panel) {
        Length longest = length(panel.longest(), defaults.longest(), "longest", Limits.LONGEST);
        Length increment =
                length(panel.orderIncrement(), defaults.orderIncrement(), "orderIncrement", Limits.ORDER_INCREMENT);
        Length endLap = length(panel.endLap(), defaults.endLap(longest), "endLap", Limits.END_LAP);
        Length stagger = length(panel.stagger(), defaults.stagger(longest), "stagger", Limits.STAGGER);
        boolean lappable = PanelSpec.canLap(longest, endLap, stagger, increment);
        if (!lappable) {
            noteTooShortToLap(longest, endLap.metres() + stagger.metres() / 2 + 2 * increment.metres());
        }
        Length cover = tape.length(panel.cover(), PANEL.at("cover"), Limits.COVER);
        return new PanelSpec(
                // What can't be read has been noted; a metre stands in until the reading is done.
                cover.metres() > 0 ? cover : Length.metres(1),
                lappable ? longest : Length.metres(Limits.LONGEST.most()),
                length(panel.shortest(), defaults.shortest(), "shortest", Limits.SHORTEST),
                increment,
                length(panel.narrowestRip(), defaults.narrowestRip(), "narrowestRip", Limits.NARROWEST_RIP),
                endLap,
                stagger);
    }

    private void noteTooShortToLap(Length longest, double needed) {
        Figure actual = tape.figure(longest);
        Figure limit = tape.figure(Length.metres(needed));
        tape.note(() -> Fault.of(
                ReadingCode.OUT_OF_RANGE,
                PANEL.at("longest").pointer(),
                "The longest blank is %s; it must be more than %s, which the end lap, half the stagger and two order"
                                .formatted(actual.text(), limit.text())
                        + " increments take.",
                actual,
                limit));
    }

    private Length length(@Nullable WireLength given, Length absent, String member, Limit limit) {
        return tape.length(given, absent, PANEL.at(member), limit);
    }

    private PanelSheet sheet(PanelForm panel, PanelSpec spec) {
        Optional<Length> seamHeight = Optional.ofNullable(panel.seamHeight())
                .map(given -> tape.length(given, PANEL.at("seamHeight"), Limits.SEAM_HEIGHT));
        Length girth = length(panel.girth(), PanelDefaults.girth(spec.cover()), "girth", Limits.GIRTH);
        Length thickness = length(panel.thickness(), PanelDefaults.THICKNESS, "thickness", Limits.THICKNESS);
        Metal metal = metal(panel.metal());
        return new PanelSheet(metal, thickness, girth, seamHeight, Gauges.massPerArea(metal, thickness));
    }

    private Metal metal(@Nullable String given) {
        String key = given == null ? PanelDefaults.METAL : given;
        Optional<Metal> metal = Metals.of(key);
        if (metal.isEmpty()) {
            List<String> known = Metals.all().stream().map(Metal::key).toList();
            tape.note(() -> Fault.of(
                    ReadingCode.UNKNOWN_VALUE,
                    PANEL.at("metal").pointer(),
                    "%s is no metal known here.%s Known: %s."
                            .formatted(Echo.of(key), Nearest.hint(key, known), String.join(", ", known))));
        }
        return metal.orElseGet(() -> Metals.all().get(0));
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
        Figure actual = tape.figure(offset);
        Figure limit = tape.figure(spec.cover());
        tape.note(() -> Fault.of(
                ReadingCode.OUT_OF_RANGE,
                at.pointer(),
                "The first panel is %s wide; it must be less than the cover, %s. For a whole panel give 0."
                        .formatted(actual.text(), limit.text()),
                actual,
                limit));
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

    private void treatment(
            String name, TreatmentForm form, Map<EdgeKind, EdgeTreatment> byKind, List<EdgeException> byEdge) {
        Origin at = TREATMENTS.at(name);
        EdgeTreatment treatment = new EdgeTreatment(
                tape.length(form.setback(), Length.ZERO, at.at("setback"), Limits.SETBACK),
                tape.length(form.hem(), Length.ZERO, at.at("hem"), Limits.HEM),
                tape.length(form.turnUp(), Length.ZERO, at.at("turnUp"), Limits.TURN_UP));
        EdgeKind kind = KINDS.get(name);
        if (kind != null) {
            byKind.put(kind, treatment);
        } else {
            byEdge.add(new EdgeException(edge(name, at), treatment, at));
        }
    }

    /** Two points of the roof with a hyphen between them, or else the name an edge has in an answer. */
    private EdgeName edge(String name, Origin at) {
        Map<String, WirePoint> points = points(request.roof());
        List<EdgeName> found = new ArrayList<>(1);
        for (int hyphen = name.indexOf('-'); hyphen >= 0; hyphen = name.indexOf('-', hyphen + 1)) {
            WirePoint from = points.get(name.substring(0, hyphen));
            WirePoint to = points.get(name.substring(hyphen + 1));
            if (from != null && to != null) {
                found.add(new EdgeName.Between(point(from), point(to)));
            }
        }
        if (found.size() > 1) {
            tape.note(() -> Fault.of(
                    ReadingCode.UNKNOWN_VALUE,
                    at.pointer(),
                    "%s can be read as more than one pair of points. Rename a point, or use the edge's own name."
                            .formatted(Echo.of(name))));
        }
        return found.isEmpty() ? new EdgeName.ById(name) : found.get(0);
    }

    private static Map<String, WirePoint> points(RoofForm roof) {
        return orNone(roof.points());
    }

    /** Read again with the roof, where what is wrong with it is noted. */
    private Point3 point(WirePoint given) {
        TapeReader again = new TapeReader(request.units().length());
        return new Point3(
                again.length(given.x(), Origin.REQUEST, Limits.COORDINATE).metres(),
                again.length(given.y(), Origin.REQUEST, Limits.COORDINATE).metres(),
                again.length(given.z(), Origin.REQUEST, Limits.COORDINATE).metres());
    }

    private static <T> Map<String, T> orNone(@Nullable Map<String, T> map) {
        return map == null ? Map.of() : map;
    }
}
