package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.wire.FindingAnswer;
import org.thalweg.api.wire.LayoutAnswer;
import org.thalweg.api.wire.LayoutAnswer.BlankLine;
import org.thalweg.api.wire.LayoutAnswer.LaidPlane;
import org.thalweg.api.wire.LayoutAnswer.Total;
import org.thalweg.api.wire.LayoutRequest;
import org.thalweg.api.wire.LayoutRequest.Include;
import org.thalweg.api.wire.LayoutRequest.PanelForm;
import org.thalweg.api.wire.LayoutRequest.StartBy;
import org.thalweg.api.wire.LayoutUsed;
import org.thalweg.api.wire.LayoutUsed.PanelUsed;
import org.thalweg.api.wire.LayoutUsed.StartUsed;
import org.thalweg.api.wire.PanelAnswer;
import org.thalweg.api.wire.RiseAndRun;
import org.thalweg.api.wire.SealRunAnswer;
import org.thalweg.api.wire.UnderlaymentAnswer;
import org.thalweg.packet.Layout;
import org.thalweg.packet.LayoutCase;
import org.thalweg.panel.Panel;
import org.thalweg.panel.PanelSpec;
import org.thalweg.panel.PlanePanels;
import org.thalweg.panel.Start;
import org.thalweg.takeoff.BlankOrder;
import org.thalweg.takeoff.PanelSheet;
import org.thalweg.takeoff.PanelTakeoff;
import org.thalweg.units.Area;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;
import org.thalweg.units.Tape;
import org.thalweg.units.Units;

/** Writes a layout in the caller's units. Every figure is rounded here, once. */
final class LayoutWriter {

    /** UN/CEFACT Recommendation 20: a piece, and per cent. */
    private static final String PIECE = "C62";

    private static final String PER_CENT = "P1";

    private final Units units;

    LayoutWriter(Units units) {
        this.units = units;
    }

    /** The answer to a request for a layout. */
    LayoutAnswer answer(Layout layout, LayoutCase asked, LayoutRequest request, String engine, String digest) {
        boolean offcuts = included(request, Include.OFFCUTS);
        boolean world = included(request, Include.WORLD);
        PanelWriter panelWriter = new PanelWriter(
                units, layout.roof(), layout.treatments(), asked.spec().cover());
        List<PanelAnswer> panels = new ArrayList<>(layout.takeoff().panelCount());
        List<LaidPlane> laid = new ArrayList<>(layout.panels().planes().size());
        for (PlanePanels plane : layout.panels().planes()) {
            laid.add(laid(plane, layout));
            for (Panel panel : plane.panels()) {
                panels.add(panelWriter.write(panel, plane.frame(), offcuts, world));
            }
        }
        List<FindingAnswer> findings =
                new ArrayList<>(FindingWriter.findings(layout.roof().findings(), units));
        findings.addAll(FindingWriter.findings(layout.panels().findings(), units));
        layout.valleys().forEach(valley -> findings.addAll(FindingWriter.findings(valley.findings(), units)));
        layout.hips().forEach(hip -> findings.addAll(FindingWriter.findings(hip.findings(), units)));
        findings.addAll(FindingWriter.findings(layout.fasteners().findings(), units));
        FastenerWriter fasteners = new FastenerWriter(units, layout.roof());
        UnderlaymentAnswer underlayment =
                new UnderlaymentWriter(units).write(layout.roof(), layout.underlay(), layout.ice());
        List<SealRunAnswer> sealing = new SealingWriter(units).write(layout.roof(), layout.sealing());
        List<Total> totals = new ArrayList<>(totals(layout.takeoff()));
        totals.addAll(UnderlaymentWriter.totals(underlayment));
        totals.addAll(new SealingWriter(units)
                .totals(sealing, asked.sealing(), layout.roof().tolerance()));
        return new LayoutAnswer(
                engine,
                digest,
                request.units(),
                used(asked, request),
                new RoofWriter(units).write(layout.roof()),
                laid,
                panels,
                new ValleyWriter(units, asked.valleys(), working(asked, request)).write(layout.valleys()),
                new HipWriter(units).write(layout.hips()),
                fasteners.rows(layout.fasteners()),
                fasteners.clips(layout.seams()),
                underlayment,
                sealing,
                order(layout.takeoff(), asked),
                totals,
                findings,
                Cautions.ALL);
    }

    private Optional<WorkingWriter> working(LayoutCase asked, LayoutRequest request) {
        return included(request, Include.WORKING)
                ? Optional.of(new WorkingWriter(units, WorkingCase.of(request, asked)))
                : Optional.empty();
    }

    private static boolean included(LayoutRequest request, Include what) {
        return request.include() != null && request.include().contains(what);
    }

    private LaidPlane laid(PlanePanels plane, Layout layout) {
        return new LaidPlane(
                layout.roof().planes().get(plane.plane()).id(),
                plane.lead(),
                RoofWriter.marked(plane.start(), units),
                plane.panels().size(),
                units.area().round(plane.finishedArea()));
    }

    private List<BlankLine> order(PanelTakeoff takeoff, LayoutCase asked) {
        List<BlankLine> lines = new ArrayList<>(takeoff.order().size());
        for (BlankOrder order : takeoff.order()) {
            lines.add(new BlankLine(
                    RoofWriter.marked(asked.spec().cover(), units),
                    RoofWriter.marked(asked.sheet().girth(), units),
                    RoofWriter.marked(order.length(), units),
                    order.count(),
                    order.marks()));
        }
        return lines;
    }

    private List<Total> totals(PanelTakeoff takeoff) {
        String area = units.area().code();
        return List.of(
                new Total("panels", takeoff.panelCount(), PIECE),
                new Total("roofArea", units.area().round(takeoff.roofArea()), area),
                new Total("finishedArea", units.area().round(takeoff.finishedArea()), area),
                new Total(
                        "orderedLength",
                        units.length().round(takeoff.orderedLength()),
                        units.length().code()),
                new Total("orderedArea", units.area().round(takeoff.orderedArea()), area),
                new Total("sheetArea", units.area().round(takeoff.sheetArea()), area),
                new Total("waste", Math.max(0, Math.rint(takeoff.waste() * 1e4) / 1e2), PER_CENT),
                new Total(
                        "mass", units.mass().round(takeoff.mass()), units.mass().code()));
    }

    private LayoutUsed used(LayoutCase asked, LayoutRequest request) {
        UsedWriter used = new UsedWriter(units);
        return new LayoutUsed(
                length(Length.metres(asked.survey().tolerance().metres())),
                panel(asked),
                start(asked.laying().start()),
                used.treatments(request.edgeTreatments(), asked.byKind(), asked.byEdge(), asked.valleys()),
                used.pan(asked.valleys()),
                used.hipCap(asked.valleys()),
                used.fastening(asked.valleys()),
                new UnderlaymentWriter(units).used(asked.underlay()),
                new SealingWriter(units).used(asked.sealing()),
                used.climate(asked.valleys(), request.climate()),
                Tape.rule(units.length()),
                defaults(request));
    }

    private PanelUsed panel(LayoutCase asked) {
        PanelSpec spec = asked.spec();
        PanelSheet sheet = asked.sheet();
        Pitch least = asked.survey().leastSlope();
        return new PanelUsed(
                length(spec.cover()),
                sheet.seamHeight().map(this::length),
                length(sheet.girth()),
                sheet.metal().key(),
                length(sheet.thickness()),
                massPerArea(sheet),
                sheet.mass().source().text(),
                length(spec.longest()),
                length(spec.shortest()),
                length(spec.orderIncrement()),
                length(spec.narrowestRip()),
                asked.laying().lead(),
                length(spec.endLap()),
                length(spec.stagger()),
                new RiseAndRun(least.rise(), least.run()));
    }

    private Figure massPerArea(PanelSheet sheet) {
        Area one = units.area().of(1);
        return new Figure(
                units.mass().round(sheet.mass().of(one)),
                units.mass().symbol() + "/" + units.area().symbol());
    }

    private StartUsed start(Start start) {
        if (start instanceof Start.Offset given) {
            return new StartUsed(StartBy.OFFSET, Optional.of(length(given.width())));
        }
        return new StartUsed(start instanceof Start.Centred ? StartBy.CENTRED : StartBy.LEAST_WASTE, Optional.empty());
    }

    private static List<String> defaults(LayoutRequest request) {
        PanelForm panel = request.panel();
        List<String> left = new ArrayList<>();
        UsedWriter.ifAbsent(request.tolerance(), "#/tolerance", left);
        UsedWriter.ifAbsent(request.start(), "#/start", left);
        UsedWriter.ifAbsent(panel.girth(), "#/panel/girth", left);
        UsedWriter.ifAbsent(panel.metal(), "#/panel/metal", left);
        UsedWriter.ifAbsent(panel.thickness(), "#/panel/thickness", left);
        UsedWriter.ifAbsent(panel.longest(), "#/panel/longest", left);
        UsedWriter.ifAbsent(panel.shortest(), "#/panel/shortest", left);
        UsedWriter.ifAbsent(panel.orderIncrement(), "#/panel/orderIncrement", left);
        UsedWriter.ifAbsent(panel.narrowestRip(), "#/panel/narrowestRip", left);
        UsedWriter.ifAbsent(panel.leads(), "#/panel/leads", left);
        UsedWriter.ifAbsent(panel.endLap(), "#/panel/endLap", left);
        UsedWriter.ifAbsent(panel.stagger(), "#/panel/stagger", left);
        UsedWriter.ifAbsent(panel.minimumSlope(), "#/panel/minimumSlope", left);
        UsedWriter.defaults(request.valleyPan(), request.fastening(), request.climate(), left);
        UsedWriter.hipCapDefaults(request.hipCap(), left);
        UnderlaymentWriter.defaults(request.underlayment(), left);
        SealingWriter.defaults(request.sealing(), left);
        return left;
    }

    private double length(Length length) {
        return units.length().round(length);
    }
}
