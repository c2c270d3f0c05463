package org.thalweg.api.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.api.wire.FastenerAnswer;
import org.thalweg.api.wire.LayoutAnswer;
import org.thalweg.api.wire.MarkedLength;
import org.thalweg.api.wire.OrderLineAnswer;
import org.thalweg.api.wire.PanelAnswer;
import org.thalweg.api.wire.PanelAnswer.CutAnswer;
import org.thalweg.api.wire.TrimAnswer;
import org.thalweg.api.wire.UnitsForm;
import org.thalweg.api.wire.ValleyAnswer;
import org.thalweg.api.wire.ValleysAnswer;
import org.thalweg.drawing.CsvFile;
import org.thalweg.panel.Cut;

/** Lists of an answer to count and sort on: what to cut, what to order, where fasteners go. Units stand in the headings. */
public final class Lists {

    private Lists() {}

    /** A list of a roof that is laid, as CSV. */
    public static byte[] of(LayoutAnswer answer, SheetList list) {
        return switch (list) {
            case CUT -> cut(answer.units(), answer.panels(), answer.valleys(), answer.trims());
            case ORDER -> order(answer);
            case FASTENERS -> fasteners(answer);
        };
    }

    /** What to cut for a valley alone, as CSV. */
    public static byte[] ofPans(ValleysAnswer answer) {
        return cut(answer.units(), List.of(), answer.valleys(), List.of());
    }

    private static byte[] cut(
            UnitsForm units, List<PanelAnswer> panels, List<ValleyAnswer> valleys, List<TrimAnswer> trims) {
        String in = " (" + units.length().symbol() + ")";
        List<List<String>> rows = new ArrayList<>(panels.size());
        panels.forEach(panel -> rows.add(row(panel)));
        for (ValleyAnswer valley : valleys) {
            valley.pieces()
                    .forEach(piece -> rows.add(piece(
                            "valley pan",
                            piece.mark(),
                            valley.edge(),
                            valley.pan().coilWidth(),
                            piece.length())));
        }
        for (TrimAnswer trim : trims) {
            trim.pieces()
                    .forEach(piece -> rows.add(
                            piece(trim.profile(), piece.mark(), trim.edge(), trim.flatWidth(), piece.length())));
        }
        return CsvFile.of(
                List.of(
                        "kind",
                        "mark",
                        "of",
                        "length" + in,
                        "length, tape",
                        "width" + in,
                        "width, tape",
                        "lower cut, left rib" + in,
                        "lower cut, right rib" + in,
                        "lower mitre (deg)",
                        "upper cut, left rib" + in,
                        "upper cut, right rib" + in,
                        "upper mitre (deg)",
                        "cuts",
                        "edges"),
                rows);
    }

    private static List<String> row(PanelAnswer panel) {
        Optional<CutAnswer> lower = only(panel, Cut.End.LOWER);
        Optional<CutAnswer> upper = only(panel, Cut.End.UPPER);
        return List.of(
                "panel",
                panel.mark(),
                panel.plane(),
                Lettered.number(panel.blankLength().value()),
                panel.blankLength().tape(),
                Lettered.number(panel.width().value()),
                panel.width().tape(),
                mark(lower.flatMap(CutAnswer::left)),
                mark(lower.flatMap(CutAnswer::right)),
                lower.map(cut -> Lettered.number(cut.mitreDeg())).orElse(""),
                mark(upper.flatMap(CutAnswer::left)),
                mark(upper.flatMap(CutAnswer::right)),
                upper.map(cut -> Lettered.number(cut.mitreDeg())).orElse(""),
                Integer.toString(panel.cuts().size()),
                String.join(
                        " ",
                        panel.cuts().stream().map(CutAnswer::edge).distinct().toList()));
    }

    /** The cut of an end that has just one; an end of several is told on its ticket. */
    private static Optional<CutAnswer> only(PanelAnswer panel, Cut.End end) {
        List<CutAnswer> cuts =
                panel.cuts().stream().filter(cut -> cut.end() == end).toList();
        return cuts.size() == 1 ? Optional.of(cuts.get(0)) : Optional.empty();
    }

    private static String mark(Optional<MarkedLength> length) {
        return length.map(marked -> Lettered.number(marked.value())).orElse("");
    }

    private static List<String> piece(String kind, String mark, String of, MarkedLength width, MarkedLength length) {
        List<String> row = new ArrayList<>(List.of(
                kind,
                mark,
                of,
                Lettered.number(length.value()),
                length.tape(),
                Lettered.number(width.value()),
                width.tape()));
        for (int i = row.size(); i < 15; i++) {
            row.add("");
        }
        return row;
    }

    private static byte[] order(LayoutAnswer answer) {
        List<List<String>> rows = new ArrayList<>();
        for (OrderLineAnswer line : answer.orderLines()) {
            rows.add(List.of(
                    line.item(),
                    line.made().flatMap(OrderLineAnswer.Made::profile).orElse(""),
                    line.made().map(OrderLineAnswer.Made::metal).orElse(""),
                    line.made().map(made -> Lettered.number(made.thickness())).orElse(""),
                    line.made()
                            .map(made -> Lettered.number(made.width().value()))
                            .orElse(""),
                    Lettered.number(line.net()),
                    Lettered.number(line.lap()),
                    Lettered.number(line.waste()),
                    line.rack().map(Lettered::number).orElse(""),
                    Lettered.number(line.ordered()),
                    line.unit(),
                    line.pieces().map(Object::toString).orElse(""),
                    line.packs().map(Object::toString).orElse(""),
                    line.mass().map(mass -> Lettered.number(mass.value())).orElse("")));
        }
        String in = " (" + answer.units().length().symbol() + ")";
        return CsvFile.of(
                List.of(
                        "item",
                        "profile",
                        "metal",
                        "thickness" + in,
                        "flat width" + in,
                        "net (unit)",
                        "laps (unit)",
                        "waste (unit)",
                        "from the rack (unit)",
                        "ordered (unit)",
                        "unit (UN/CEFACT Rec 20)",
                        "pieces",
                        "packs",
                        "mass (" + answer.units().mass().symbol() + ")"),
                rows);
    }

    private static byte[] fasteners(LayoutAnswer answer) {
        List<List<String>> rows = new ArrayList<>();
        for (FastenerAnswer row : answer.fasteners()) {
            rows.add(List.of(
                    Lettered.word(row.kind()),
                    row.plane(),
                    row.panel().orElse(""),
                    row.edge(),
                    Integer.toString(row.count()),
                    Lettered.number(row.spacing().value()),
                    row.spacing().tape()));
        }
        for (FastenerAnswer.ClipAnswer seam : answer.clips()) {
            rows.add(List.of(
                    "clip",
                    seam.plane(),
                    "",
                    "seam " + seam.strip(),
                    Integer.toString(seam.count()),
                    Lettered.number(seam.spacing().value()),
                    seam.spacing().tape()));
        }
        return CsvFile.of(
                List.of(
                        "kind",
                        "plane",
                        "panel",
                        "along",
                        "count (pieces)",
                        "spacing (" + answer.units().length().symbol() + ")",
                        "spacing, tape"),
                rows);
    }
}
