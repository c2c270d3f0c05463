package org.thalweg.api.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.thalweg.api.wire.HipAnswer;
import org.thalweg.api.wire.HipAnswer.HipSideAnswer;
import org.thalweg.api.wire.MarkedLength;
import org.thalweg.drawing.Flow;
import org.thalweg.drawing.Ink;
import org.thalweg.drawing.LegendLine;
import org.thalweg.drawing.Packet;
import org.thalweg.drawing.Pen;
import org.thalweg.drawing.Table;
import org.thalweg.drawing.Type;
import org.thalweg.units.LengthUnit;

/** Hips, two to a sheet: where panels, closure and cap end. */
final class HipSheets {

    private static final double LAID = 128;
    private static final double TABLE = 98;
    private static final double AFTER = 10;

    private HipSheets() {}

    static void add(Packet packet, List<HipAnswer> hips, LengthUnit unit) {
        if (!hips.isEmpty()) {
            Flow flow = new Flow(packet, View.VALLEYS.word(), "Hips");
            legend().on(flow);
            flow.text(LaidSides.HOW, Type.SMALL, Ink.GREY);
            hips.forEach(hip -> add(flow, hip, unit));
        }
    }

    private static LegendLine legend() {
        return new LegendLine()
                .pen(Pen.VALLEY, "hip")
                .pen(Pen.MARK, "panels end here")
                .pen(Pen.MARK_BROKEN, "outer side of the closure")
                .pen(Pen.HIDDEN, "edge of the cap")
                .pen(Pen.EAVE, "edge the plane ends on");
    }

    private static void add(Flow flow, HipAnswer hip, LengthUnit unit) {
        LaidSides sides = new LaidSides(
                hip.edge(),
                hip.length(),
                hip.sides().stream().map(HipSheets::side).toList());
        sides.on(
                flow,
                ": length " + hip.length().tape() + ", slope " + Lettered.degrees(hip.slopeDeg()) + ", cap bent "
                        + Lettered.degrees(hip.capBendDeg()) + " down",
                LAID,
                TABLE,
                unit);
        flow.text(
                "Above, " + told(hip.sides().get(0)) + "; below, "
                        + told(hip.sides().get(1)),
                Type.SMALL,
                Ink.BLACK);
        Table lines = sides.lines();
        if (!lines.isEmpty()) {
            lines.on(flow);
        }
        flow.skip(AFTER);
    }

    private static String told(HipSideAnswer side) {
        return side.plane() + ": " + Lettered.pitch(side.pitch()) + ", " + Lettered.degrees(side.angleFromEaveDeg())
                + " from its eave, rise across cover "
                + side.riseAcrossCover().map(MarkedLength::tape).orElse("none") + ", panels "
                + side.setback().tape() + " off";
    }

    private static LaidSides.Side side(HipSideAnswer side) {
        return new LaidSides.Side(
                side.plane(),
                side.hand(),
                side.line(),
                side.bottom(),
                side.top(),
                Stream.of(
                                LaidSides.line("panels", side.panelLine(), Pen.MARK),
                                LaidSides.line("closure", side.closureLine(), Pen.MARK_BROKEN),
                                LaidSides.line("cap", side.capLine(), Pen.HIDDEN))
                        .flatMap(Optional::stream)
                        .toList(),
                List.of());
    }
}
