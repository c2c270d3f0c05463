package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.wire.CoilAnswer;
import org.thalweg.api.wire.FindingAnswer;
import org.thalweg.api.wire.LayoutAnswer;
import org.thalweg.api.wire.LayoutAnswer.BlankLine;
import org.thalweg.api.wire.LayoutAnswer.LaidPlane;
import org.thalweg.api.wire.LayoutRequest;
import org.thalweg.api.wire.LayoutRequest.Include;
import org.thalweg.api.wire.LayoutRequest.PanelForm;
import org.thalweg.api.wire.LayoutRequest.StartBy;
import org.thalweg.api.wire.LayoutUsed;
import org.thalweg.api.wire.LayoutUsed.PanelUsed;
import org.thalweg.api.wire.LayoutUsed.StartUsed;
import org.thalweg.api.wire.OrderLineAnswer;
import org.thalweg.api.wire.PanelAnswer;
import org.thalweg.api.wire.RiseAndRun;
import org.thalweg.api.wire.TakeoffAnswer;
import org.thalweg.api.wire.WindUsed;
import org.thalweg.packet.Layout;
import org.thalweg.packet.LayoutCase;
import org.thalweg.panel.Panel;
import org.thalweg.panel.PanelSpec;
import org.thalweg.panel.PlanePanels;
import org.thalweg.panel.Start;
import org.thalweg.roof.Plane;
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
        Map<Integer, Length> travel = layout.movement().travelNeeded();
        List<LaidPlane> laid = new ArrayList<>(layout.panels().planes().size());
        for (PlanePanels plane : layout.panels().planes()) {
            laid.add(laid(plane, layout, travel.getOrDefault(plane.plane(), Length.ZERO)));
            for (Panel panel : plane.panels()) {
                panels.add(panelWriter.write(panel, plane.frame(), offcuts, world));
            }
        }
        List<OrderLineAnswer> orderLines = new OrderWriter(units).lines(layout.order());
        FastenerWriter fasteners = new FastenerWriter(units, layout.roof(), layout.panels(), world);
        return new LayoutAnswer(
                engine,
                digest,
                Optional.ofNullable(request.job()),
                request.units(),
                used(layout, asked, request),
                new RoofWriter(units).write(layout.roof()),
                laid,
                panels,
                new ValleyWriter(units, asked.valleys(), working(asked, request)).write(layout.valleys()),
                new HipWriter(units).write(layout.hips()),
                new TrimWriter(units, asked.trims().sheet(), included(request, Include.WORKING)).write(layout.trims()),
                fasteners.rows(layout.fasteners()),
                fasteners.clips(layout.seams()),
                layout.wind().map(wind -> new WindWriter(units).write(wind, layout.roof())),
                new MovementWriter(units, layout.roof()).write(layout.movement()),
                new UnderlaymentWriter(units).write(layout.roof(), layout.underlay(), layout.ice()),
                new SealingWriter(units).write(layout.roof(), layout.sealing()),
                new CuttingWriter(units)
                        .cuts(asked.ordering().stock(), layout.order().cuts()),
                coil(layout, asked),
                order(layout.takeoff(), asked),
                orderLines,
                new TotalsWriter(units).totals(layout.takenOff(), orderLines),
                findings(layout),
                Cautions.ALL);
    }

    /** The same request's order, without the drawings' detail. */
    TakeoffAnswer takeoff(Layout layout, LayoutCase asked, LayoutRequest request, String engine, String digest) {
        List<OrderLineAnswer> orderLines = new OrderWriter(units).lines(layout.order());
        return new TakeoffAnswer(
                engine,
                digest,
                request.units(),
                used(layout, asked, request),
                new CuttingWriter(units)
                        .cuts(asked.ordering().stock(), layout.order().cuts()),
                coil(layout, asked),
                order(layout.takeoff(), asked),
                orderLines,
                new TotalsWriter(units).totals(layout.takenOff(), orderLines),
                findings(layout),
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

    private LaidPlane laid(PlanePanels plane, Layout layout, Length travel) {
        Plane of = layout.roof().planes().get(plane.plane());
        return new LaidPlane(
                of.id(),
                plane.frame().equals(of.frame())
                        ? Optional.empty()
                        : Optional.of(new RoofWriter(units).write(plane.frame())),
                plane.lead(),
                RoofWriter.marked(plane.start(), units),
                plane.panels().size(),
                units.area().round(plane.finishedArea()),
                length(travel),
                layout.movement().longest().map(longest -> RoofWriter.marked(longest, units)));
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

    private List<FindingAnswer> findings(Layout layout) {
        List<FindingAnswer> findings =
                new ArrayList<>(FindingWriter.findings(layout.roof().findings(), units));
        findings.addAll(FindingWriter.findings(layout.panels().findings(), units));
        layout.valleys().forEach(valley -> findings.addAll(FindingWriter.findings(valley.findings(), units)));
        layout.hips().forEach(hip -> findings.addAll(FindingWriter.findings(hip.findings(), units)));
        findings.addAll(FindingWriter.findings(layout.fasteners().findings(), units));
        findings.addAll(FindingWriter.findings(layout.movement().findings(), units));
        layout.trims().forEach(trim -> findings.addAll(FindingWriter.findings(trim.findings(), units)));
        layout.wind()
                .ifPresent(wind -> findings.addAll(
                        FindingWriter.findings(wind.clips().uplift().findings(), units)));
        findings.addAll(new CuttingWriter(units).findings(layout.order().cuts()));
        return findings;
    }

    private Optional<CoilAnswer> coil(Layout layout, LayoutCase asked) {
        return layout.order().coil().map(cut -> new CoilWriter(units)
                .write(cut.offer().name(), cut.plan(), Optional.of(asked.sheet().girth()), Optional.empty()));
    }

    private LayoutUsed used(Layout layout, LayoutCase asked, LayoutRequest request) {
        UsedWriter used = new UsedWriter(units);
        List<String> left = defaults(request);
        return new LayoutUsed(
                length(Length.metres(asked.survey().tolerance().metres())),
                panel(asked),
                start(asked.laying().start()),
                used.treatments(request.edgeTreatments(), asked.byKind(), asked.byEdge(), asked.valleys()),
                used.pan(asked.valleys()),
                used.hipCap(asked.valleys()),
                new TrimUsedWriter(units).used(asked.trims()),
                used.fastening(asked.valleys()),
                new UnderlaymentWriter(units).used(asked.underlay()),
                new SealingWriter(units).used(asked.sealing()),
                wind(layout, asked),
                used.climate(asked.valleys(), request.climate()),
                used.ordering(asked.ordering()),
                new CuttingWriter(units)
                        .used(request.cutting(), asked.ordering().stock(), left),
                Tape.rule(units.length()),
                left);
    }

    private Optional<WindUsed> wind(Layout layout, LayoutCase asked) {
        return asked.wind().flatMap(terms -> layout.wind().map(wind -> new WindWriter(units).used(terms, wind)));
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
        FootprintReader.defaults(request.roof().footprint(), left);
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
        UsedWriter.windDefaults(request.wind(), left);
        UsedWriter.hipCapDefaults(request.hipCap(), left);
        TrimUsedWriter.defaults(request.trims(), panel, left);
        UsedWriter.ifAbsent(
                request.ordering() == null ? null : request.ordering().formed(), "#/ordering/formed", left);
        UnderlaymentWriter.defaults(request.underlayment(), left);
        SealingWriter.defaults(request.sealing(), left);
        return left;
    }

    private double length(Length length) {
        return units.length().round(length);
    }
}
