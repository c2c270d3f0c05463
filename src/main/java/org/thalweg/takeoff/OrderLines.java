package org.thalweg.takeoff;

import java.util.List;
import java.util.Optional;
import org.thalweg.fastening.FastenerKind;
import org.thalweg.fastening.FastenerRow;
import org.thalweg.fastening.Seam;
import org.thalweg.panel.Panel;
import org.thalweg.panel.PlanePanels;
import org.thalweg.roof.EdgeKind;
import org.thalweg.sealing.SealItem;
import org.thalweg.sealing.SealRun;
import org.thalweg.stock.Grid;
import org.thalweg.takeoff.OrderLine.Made;
import org.thalweg.trim.Trim;
import org.thalweg.trim.TrimPiece;
import org.thalweg.underlayment.IceBarrier;
import org.thalweg.underlayment.IceBarrier.IceStrip;
import org.thalweg.underlayment.Roll;
import org.thalweg.underlayment.Underlay.PlaneUnderlay;
import org.thalweg.units.Length;
import org.thalweg.valley.CleatRun;
import org.thalweg.valley.PanPiece;
import org.thalweg.valley.ValleyLayout;
import org.thalweg.valley.ValleySide;

/**
 * The order of a job, line by line. Every line is counted from what the layout lists, from nothing else.
 *
 * <p>Pans, trims and cleats are ordered as long as their pieces are, or, where the caller says what they are cut from, as the
 * bars of a cutting plan. A cleat along an edge that is no valley is as long as the row of its fasteners, edge distances
 * added.
 *
 * @param lines item by item, in the order of {@link OrderItem}; nothing that is not needed
 * @param cuts  the cutting plans, item by item; none where the caller gave no stock
 * @param coil  the panels in one run of coil, where the caller asked for it
 */
public record OrderLines(List<OrderLine> lines, List<SheetCut> cuts, Optional<CoilCut> coil) {

    public OrderLines {
        lines = List.copyOf(lines);
        cuts = List.copyOf(cuts);
    }

    public static OrderLines of(OrderCase asked) {
        OrderSheet sheet = new OrderSheet(asked.ordering(), asked.laid().roof().tolerance());
        Optional<CoilCut> coil = coil(asked);
        panels(asked, sheet);
        coil.ifPresent(cut -> sheet.inOneRun(
                OrderItem.COIL,
                made(asked, asked.sheet().girth()),
                Grid.length(cut.run().length())));
        asked.laid().valleys().forEach(valley -> pan(valley, asked, sheet));
        cleats(asked, sheet);
        clips(asked, sheet);
        screws(asked, sheet);
        asked.trims().forEach(trim -> trim(trim, asked, sheet));
        asked.sealing().runs().forEach(run -> seal(run, asked, sheet));
        underlay(asked, sheet);
        asked.ice().ifPresent(ice -> iceBarrier(ice, asked, sheet));
        List<SheetCut> cuts = cuts(asked);
        cuts.forEach(sheet::cutFrom);
        return new OrderLines(sheet.lines(), cuts, coil);
    }

    private static Optional<CoilCut> coil(OrderCase asked) {
        return asked.ordering()
                .stock()
                .flatMap(SheetStock::coil)
                .map(offer -> CoilCut.of(
                        asked.laid().panels(),
                        asked.laid().spec().cover(),
                        offer,
                        asked.laid().roof().tolerance()));
    }

    private static List<SheetCut> cuts(OrderCase asked) {
        if (asked.ordering().stock().isEmpty()) {
            return List.of();
        }
        SheetCutting cutting = new SheetCutting(asked.ordering().stock().get());
        asked.laid().valleys().forEach(cutting::add);
        int rows = 0;
        for (FastenerRow row : asked.rows().rows()) {
            if (row.kind() == FastenerKind.CLEAT && !atValley(row, asked)) {
                cutting.addCleat(edge(row, asked) + "-cleat-" + ++rows, cleatLength(row, asked));
            }
        }
        asked.trims().forEach(cutting::add);
        return cutting.cut();
    }

    /** Goods that are cut together, those of one mark of width, are one line whatever their profiles. */
    private static Made sheetOf(
            OrderItem item, Length thickness, Length width, Optional<String> profile, OrderCase asked) {
        boolean cut = asked.ordering()
                .stock()
                .filter(stock -> !stock.offersFor(item, Optional.of(width)).isEmpty())
                .isPresent();
        return new Made(
                asked.sheet().metal(),
                thickness,
                cut ? asked.ordering().marked(width) : width,
                cut ? Optional.empty() : profile);
    }

    /** What shows is told as the length of whole panels that would show as much. */
    private static void panels(OrderCase asked, OrderSheet sheet) {
        boolean coil = asked.ordering().formed() == Ordering.Formed.ON_SITE;
        Made made = made(asked, asked.sheet().girth());
        double cover = asked.laid().spec().cover().metres();
        for (PlanePanels plane : asked.laid().panels().planes()) {
            double blanks = 0;
            double finished = 0;
            double cut = 0;
            for (Panel panel : plane.panels()) {
                blanks += panel.blankLength().metres();
                finished += panel.finished().area();
                cut += panel.cut().area();
            }
            sheet.add(
                    coil ? OrderItem.COIL : OrderItem.PANEL,
                    Optional.of(made),
                    asked.laid().roof().planes().get(plane.plane()).id(),
                    Quantity.of(Quantity.Kind.LENGTH, blanks, finished / cover, (cut - finished) / cover),
                    coil ? 0 : plane.panels().size());
        }
    }

    private static void pan(ValleyLayout valley, OrderCase asked, OrderSheet sheet) {
        double pieces = 0;
        double laps = 0;
        for (PanPiece piece : valley.pieces()) {
            pieces += piece.length().metres();
            laps += piece.lap().metres();
        }
        sheet.add(
                OrderItem.VALLEY_PAN,
                Optional.of(sheetOf(
                        OrderItem.VALLEY_PAN,
                        asked.sheet().thickness(),
                        valley.spec().coilWidth(),
                        Optional.empty(),
                        asked)),
                valley.edge().edge().id(),
                Quantity.of(Quantity.Kind.LENGTH, pieces, valley.edge().length().metres(), laps),
                valley.pieces().size());
    }

    private static void cleats(OrderCase asked, OrderSheet sheet) {
        for (ValleyLayout valley : asked.laid().valleys()) {
            for (ValleySide side : valley.sides()) {
                side.cleat().ifPresent(cleat -> cleat(valley, cleat, sheet));
            }
        }
        for (FastenerRow row : asked.rows().rows()) {
            if (row.kind() == FastenerKind.CLEAT && !atValley(row, asked)) {
                sheet.add(
                        OrderItem.CLEAT,
                        Optional.empty(),
                        edge(row, asked),
                        Quantity.length(cleatLength(row, asked).metres()),
                        1);
            }
        }
    }

    private static String edge(FastenerRow row, OrderCase asked) {
        return asked.laid().roof().edges().get(row.edge()).id();
    }

    private static Length cleatLength(FastenerRow row, OrderCase asked) {
        double ends = 2 * asked.laid().rules().edgeDistance().metres();
        return Length.metres(row.from().distance(row.to()) + ends);
    }

    private static void cleat(ValleyLayout valley, CleatRun cleat, OrderSheet sheet) {
        sheet.add(
                OrderItem.CLEAT,
                Optional.empty(),
                valley.edge().edge().id(),
                Quantity.length(cleat.length().metres()),
                cleat.count());
    }

    /** Valleys tell their own cleats; the rows along them only hold them. */
    private static boolean atValley(FastenerRow row, OrderCase asked) {
        return row.edge() >= 0 && asked.laid().roof().edges().get(row.edge()).kind() == EdgeKind.VALLEY;
    }

    private static void clips(OrderCase asked, OrderSheet sheet) {
        List<Seam> seams = asked.seams().seams();
        long all = 0;
        for (int from = 0, to = 0; from < seams.size(); from = to) {
            int plane = seams.get(from).plane();
            long clips = 0;
            for (; to < seams.size() && seams.get(to).plane() == plane; to++) {
                clips += seams.get(to).count();
            }
            String id = asked.laid().roof().planes().get(plane).id();
            sheet.add(OrderItem.CLIP, Optional.empty(), id, Quantity.count(clips), 0);
            all += clips;
        }
        int screws = asked.laid().rules().clips().screws();
        sheet.add(OrderItem.DECK_SCREW, Optional.empty(), OrderItem.CLIP.key(), Quantity.count(all * screws), 0);
    }

    private static void screws(OrderCase asked, OrderSheet sheet) {
        asked.rows()
                .counts()
                .forEach((kind, count) -> sheet.add(
                        kind.throughPanel() ? OrderItem.PANEL_SCREW : OrderItem.DECK_SCREW,
                        Optional.empty(),
                        kind.wire(),
                        Quantity.count(count),
                        0));
    }

    private static void trim(Trim trim, OrderCase asked, OrderSheet sheet) {
        double pieces = 0;
        double laps = 0;
        for (TrimPiece piece : trim.pieces()) {
            pieces += piece.length().metres();
            laps += piece.lap().metres();
        }
        sheet.add(
                OrderItem.TRIM,
                Optional.of(sheetOf(
                        OrderItem.TRIM,
                        trim.profile().thickness(),
                        asked.ordering().marked(trim.flat().width()),
                        Optional.of(trim.profile().name()),
                        asked)),
                trim.edge().id(),
                Quantity.of(Quantity.Kind.LENGTH, pieces, trim.edge().length().metres(), laps),
                trim.pieces().size());
    }

    private static void seal(SealRun run, OrderCase asked, OrderSheet sheet) {
        OrderItem item = ordered(run.item());
        if (item == OrderItem.SEALANT) {
            sheet.packed(item, asked.sealing().rules().beadPerCartridge().metres());
        }
        boolean counted = item.kind() == Quantity.Kind.COUNT;
        sheet.add(
                item,
                Optional.empty(),
                run.kind().wire(),
                counted
                        ? Quantity.count(run.count())
                        : Quantity.length(run.total().metres()),
                0);
    }

    private static OrderItem ordered(SealItem item) {
        return switch (item) {
            case TAPE -> OrderItem.SEALANT_TAPE;
            case SEALANT -> OrderItem.SEALANT;
            case CLOSURE -> OrderItem.CLOSURE;
            case RIVET -> OrderItem.RIVET;
        };
    }

    /** The roof is what is covered; rolls are whole. */
    private static void underlay(OrderCase asked, OrderSheet sheet) {
        Roll roll = asked.underlay().roll();
        sheet.packed(OrderItem.UNDERLAYMENT, roll.area().squareMetres());
        double net = 0;
        for (PlaneUnderlay plane : asked.underlay().planes()) {
            double area = plane.net().squareMetres();
            net += area;
            sheet.add(
                    OrderItem.UNDERLAYMENT,
                    Optional.empty(),
                    asked.laid().roof().planes().get(plane.plane()).id(),
                    Quantity.area(area),
                    0);
        }
        double laps = asked.underlay().laps().squareMetres();
        double rolls = asked.underlay().order().rolls() * roll.area().squareMetres();
        sheet.more(OrderItem.UNDERLAYMENT, laps, rolls - net - laps);
    }

    /** What is rolled out, laps and all, edge by edge; rolls are whole. */
    private static void iceBarrier(IceBarrier ice, OrderCase asked, OrderSheet sheet) {
        double rolledOut = 0;
        for (IceStrip strip : ice.strips()) {
            double length = strip.courses().stream()
                    .mapToDouble(course -> course.rolledOut().metres())
                    .sum();
            rolledOut += length;
            sheet.add(
                    OrderItem.ICE_BARRIER,
                    Optional.empty(),
                    asked.laid().roof().edges().get(strip.edge()).id(),
                    Quantity.area(length * ice.roll().width().metres()),
                    0);
        }
        sheet.packed(OrderItem.ICE_BARRIER, ice.roll().area().squareMetres());
        double rolls = ice.order().rolls() * ice.roll().area().squareMetres();
        sheet.more(
                OrderItem.ICE_BARRIER, 0, rolls - rolledOut * ice.roll().width().metres());
    }

    private static Made made(OrderCase asked, Length width) {
        return new Made(asked.sheet().metal(), asked.sheet().thickness(), width, Optional.empty());
    }
}
