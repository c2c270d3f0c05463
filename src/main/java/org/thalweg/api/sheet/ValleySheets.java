package org.thalweg.api.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.wire.HipAnswer;
import org.thalweg.api.wire.MarkedLength;
import org.thalweg.api.wire.UnitsForm;
import org.thalweg.api.wire.ValleyAnswer;
import org.thalweg.api.wire.ValleyAnswer.CleatAnswer;
import org.thalweg.api.wire.ValleyAnswer.PanAnswer;
import org.thalweg.api.wire.ValleyAnswer.RowAnswer;
import org.thalweg.api.wire.ValleyAnswer.SideAnswer;
import org.thalweg.api.wire.ValleyWaterAnswer.StationAnswer;
import org.thalweg.api.wire.ValleyWaterAnswer.WaterSideAnswer;
import org.thalweg.drawing.Dot;
import org.thalweg.drawing.Flow;
import org.thalweg.drawing.Ink;
import org.thalweg.drawing.LegendLine;
import org.thalweg.drawing.Packet;
import org.thalweg.drawing.Pen;
import org.thalweg.drawing.Table;
import org.thalweg.drawing.Type;
import org.thalweg.fastening.ValleyRows.RowKind;
import org.thalweg.units.LengthUnit;

/** Valleys: the pan in section, both sides laid flat, then every blank; after them the hips. */
final class ValleySheets {

    private static final double LAID = 250;
    private static final double AFTER = 10;

    private ValleySheets() {}

    static void add(Packet packet, List<ValleyAnswer> valleys, List<HipAnswer> hips, UnitsForm units) {
        valleys.forEach(valley -> add(packet, valley, units));
        HipSheets.add(packet, hips, units.length());
    }

    private static void add(Packet packet, ValleyAnswer valley, UnitsForm units) {
        LengthUnit unit = units.length();
        Flow flow = new Flow(packet, View.VALLEYS.word(), "Valley " + valley.edge());
        flow.heading(
                "The pan square to the valley, looking up it; its sheet is "
                        + valley.pan().coilWidth().tape() + " wide",
                120);
        PanSection.draw(flow, valley, unit);
        figures(valley).on(flow);
        flow.skip(AFTER);
        water(flow, valley, units);
        Flow laid = new Flow(packet, View.VALLEYS.word(), "Valley " + valley.edge() + ", what to chalk and fasten");
        LaidSides sides = sides(valley);
        sides.on(laid, ", both sides laid flat, the foot to the left", LAID, 0, unit);
        valleyLegend(valley).on(laid);
        laid.text(LaidSides.HOW, Type.SMALL, Ink.GREY);
        laid.skip(AFTER);
        Table lines = sides.lines();
        if (!lines.isEmpty()) {
            lines.on(laid);
        }
        laid.skip(AFTER);
        rows(valley.fasteners()).on(laid);
        PanBlankSheets.add(packet, valley, unit);
    }

    private static Table figures(ValleyAnswer valley) {
        PanAnswer pan = valley.pan();
        SideAnswer left = valley.sides().get(0);
        SideAnswer right = valley.sides().get(1);
        Table table = new Table()
                .words("side", 130)
                .words("left: " + left.plane(), 110)
                .words("right: " + right.plane(), 110)
                .words("valley", 130)
                .words(valley.edge(), 120);
        List<String[]> sides = new ArrayList<>();
        both(sides, "pitch", valley, side -> Lettered.pitch(side.pitch()));
        both(sides, "angle from eave", valley, side -> Lettered.degrees(side.angleFromEaveDeg()));
        both(sides, "rise across cover", valley, side -> tape(side.riseAcrossCover()));
        both(sides, "hold-back, foot", valley, side -> side.holdBack().tape());
        both(sides, "hold-back, head", valley, side -> side.holdBackAtTop().tape());
        both(sides, "pan under panels", valley, side -> side.coverUnderPanel().tape());
        both(sides, "flat, low to outer fold", valley, side -> side.flat().tape());
        both(sides, "sealant tape", valley, side -> tape(side.sealantLength()));
        if (valley.sides().stream().anyMatch(side -> side.cleat().isPresent())) {
            both(sides, "cleat in all", valley, side -> tape(side.cleat().map(CleatAnswer::length)));
            both(sides, "its pieces", valley, side -> side.cleat()
                    .map(ValleySheets::cleat)
                    .orElse("none"));
            both(sides, "hems notched every", valley, side -> tape(side.cleat().flatMap(CleatAnswer::notchSpacing)));
        }
        List<String[]> whole = new ArrayList<>();
        whole.add(new String[] {"length", valley.length().tape()});
        whole.add(new String[] {"slope", Lettered.degrees(valley.slopeDeg())});
        whole.add(new String[] {"bend", Lettered.degrees(valley.bendDeg())});
        whole.add(new String[] {"panels held", Lettered.word(valley.hold())});
        whole.add(
                new String[] {"pieces of pan", Integer.toString(valley.pieces().size())});
        whole.add(new String[] {
            "return, leg of rib", pan.edgeReturn().tape() + ", " + pan.ribLeg().tape()
        });
        whole.add(new String[] {
            "longest panel there", valley.movement().longestPanel().tape()
        });
        whole.add(new String[] {
            "grows, shrinks by",
            Lettered.number(valley.movement().longer()) + ", "
                    + Lettered.number(valley.movement().shorter())
        });
        whole.add(new String[] {
            "fixed screws allow", Lettered.number(valley.movement().limit())
        });
        whole.add(new String[] {"so hold them", Lettered.word(valley.movement().recommended())});
        whole.add(new String[] {"rain", figure(valley.drainage().rainfall())});
        for (int i = 0; i < Math.max(sides.size(), whole.size()); i++) {
            String[] side = i < sides.size() ? sides.get(i) : new String[] {"", "", ""};
            String[] other = i < whole.size() ? whole.get(i) : new String[] {"", ""};
            table.row(side[0], side[1], side[2], other[0], other[1]);
        }
        return table;
    }

    private static String cleat(CleatAnswer cleat) {
        String last = cleat.count() > 1 ? ", the last " + cleat.lastLength().tape() : "";
        return cleat.count() + " × " + cleat.pieceLength().tape() + last;
    }

    private static void both(
            List<String[]> rows, String name, ValleyAnswer valley, Function<SideAnswer, String> figure) {
        rows.add(new String[] {
            name,
            figure.apply(valley.sides().get(0)),
            figure.apply(valley.sides().get(1))
        });
    }

    private static String tape(Optional<MarkedLength> length) {
        return length.map(MarkedLength::tape).orElse("none");
    }

    private static String figure(Optional<Figure> figure) {
        return figure.map(Figure::text).orElse("not given");
    }

    private static void water(Flow flow, ValleyAnswer valley, UnitsForm units) {
        Table table = new Table()
                .words("water", 120)
                .figures("catchment, " + units.area().symbol())
                .figures("up from the foot")
                .figures("may spread")
                .figures("spreads")
                .figures("deep")
                .words("flow", 80)
                .words("reaches its margin at", 120)
                .words("reaches the rib's top at", 120);
        for (WaterSideAnswer side : valley.drainage().sides()) {
            String rain = side.rainToPanels().map(Figure::text).orElse("no rain");
            String rib = side.rainToRib().map(Figure::text).orElse("no rain");
            List<StationAnswer> stations = side.stations();
            for (int i = 0; i < stations.size(); i++) {
                StationAnswer station = stations.get(i);
                table.row(
                        i == 0 ? side.plane() : "",
                        Lettered.number(station.catchment()),
                        Lettered.number(station.from()),
                        Lettered.number(station.spreadLimit()),
                        number(station.spread()),
                        number(station.depth()),
                        station.flow().map(Figure::text).orElse(""),
                        i == 0 ? rain : "",
                        i == 0 ? rib : "");
            }
        }
        table.on(flow);
    }

    private static String number(Optional<Double> number) {
        return number.map(Lettered::number).orElse("");
    }

    private static LaidSides sides(ValleyAnswer valley) {
        return new LaidSides(
                valley.edge(),
                valley.length(),
                valley.sides().stream().map(side -> side(valley, side)).toList());
    }

    private static LaidSides.Side side(ValleyAnswer valley, SideAnswer side) {
        return new LaidSides.Side(
                side.plane(),
                side.hand(),
                side.low(),
                side.bottom(),
                side.top(),
                Stream.of(
                                LaidSides.line("chalk", side.chalkLine(), Pen.MARK),
                                LaidSides.line("fasteners", side.fastenerLine(), Pen.MARK_BROKEN),
                                LaidSides.line("pan edge", side.panEdge(), Pen.HIDDEN))
                        .flatMap(Optional::stream)
                        .toList(),
                valley.fasteners().stream()
                        .filter(row -> row.hand() == side.hand())
                        .map(row -> new LaidSides.Row(row, dot(row.kind())))
                        .toList());
    }

    private static Dot dot(RowKind kind) {
        return switch (kind) {
            case PAN_EDGE -> Dot.DISC;
            case VALLEY -> Dot.RING;
            case CLEAT -> Dot.DIAMOND;
        };
    }

    private static LegendLine valleyLegend(ValleyAnswer valley) {
        LegendLine legend = new LegendLine()
                .pen(Pen.VALLEY, "low")
                .pen(Pen.MARK, "chalk: panels end here")
                .pen(Pen.MARK_BROKEN, "sealant and fasteners")
                .pen(Pen.HIDDEN, "outer fold of the pan")
                .pen(Pen.EAVE, "edge the plane ends on");
        valley.fasteners().stream()
                .filter(row -> !row.perPanel())
                .map(RowAnswer::kind)
                .distinct()
                .forEach(kind -> legend.dot(dot(kind), "fastener, " + Lettered.word(kind)));
        return legend;
    }

    private static Table rows(List<RowAnswer> rows) {
        Table table = new Table()
                .words("fasteners", 90)
                .words("plane", 150)
                .figures("count")
                .figures("first")
                .figures("spacing")
                .words("counted", 260);
        for (RowAnswer row : rows) {
            table.row(
                    Lettered.word(row.kind()),
                    row.plane(),
                    Integer.toString(row.count()),
                    row.first().tape(),
                    row.spacing().tape(),
                    row.perPanel()
                            ? "on every whole panel, the first from its rib along the line"
                            : "in all, the first from the foot of its line");
        }
        return table;
    }
}
