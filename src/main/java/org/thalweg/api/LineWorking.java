package org.thalweg.api;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.fastening.EvenRow;
import org.thalweg.fastening.FastenerKind;
import org.thalweg.fastening.ValleyRows.Row;
import org.thalweg.fastening.ValleyRows.Spacings;
import org.thalweg.finding.Source;
import org.thalweg.packet.LaidValley;
import org.thalweg.reference.Rules;
import org.thalweg.roof.EdgeKind;
import org.thalweg.units.Count;
import org.thalweg.units.Length;
import org.thalweg.valley.CleatRun;
import org.thalweg.valley.EndLine;
import org.thalweg.valley.OffsetLine;
import org.thalweg.valley.SlopedEdge;
import org.thalweg.valley.ValleySide;

/** The working of what runs along a valley: chalk lines, cleats and rows of fasteners. */
final class LineWorking {

    private final WorkingSheet sheet;
    private final WorkingCase asked;
    private final LaidValley valley;
    private final String length;

    LineWorking(WorkingSheet sheet, WorkingCase asked, LaidValley valley) {
        this.sheet = sheet;
        this.asked = asked;
        this.valley = valley;
        this.length = sheet.length(valley.layout().edge().length());
    }

    /**
     * How far a line lies off the low.
     *
     * @param letters at the foot
     * @param foot    the same in numbers
     * @param head    at the head, in numbers
     * @param perUp   by how much it lies further out for each length up the low; nothing when the line is parallel to it
     * @param source  whose figures those are
     */
    private record Off(String letters, String foot, String head, Optional<String> perUp, String source) {}

    void side(int i) {
        ValleySide side = valley.layout().sides().get(i);
        String at = "/sides/" + i;
        String foot = sheet.length(side.heldBack());
        String head = sheet.length(side.heldBackAtTop());
        String inset =
                sheet.length(asked.terms().rules().of(FastenerKind.VALLEY).inset());
        Optional<String> perUp = side.heldBack().equals(side.heldBackAtTop())
                ? Optional.empty()
                : Optional.of("(" + head + " - " + foot + ") / " + length);
        Off chalk = new Off("d", foot, head, perUp, WorkingSheet.GEOMETRY);
        Off fasteners = new Off(
                "(d + f)",
                "(" + foot + " + " + inset + ")",
                "(" + head + " + " + inset + ")",
                perUp,
                WorkingSheet.GEOMETRY + "; f: "
                        + WorkingSheet.whose(asked.fastening().fastenerInset(), Source.COMMON_PRACTICE));
        String flat = sheet.length(valley.layout().spec().flat());
        Off pan = new Off("T", flat, flat, Optional.empty(), WorkingSheet.GEOMETRY);
        side.chalkLine().ifPresent(line -> line(at + "/chalkLine", line, side.seen(), chalk));
        side.fastenerLine().ifPresent(line -> line(at + "/fastenerLine", line, side.seen(), fasteners));
        side.panEdge().ifPresent(line -> line(at + "/panEdge", line, side.seen(), pan));
        side.cleat().ifPresent(cleat -> cleat(at + "/cleat", cleat, side.seen()));
        side.sealant()
                .ifPresent(sealant -> sheet.add(
                        at + "/sealantLength",
                        side.cleat().isPresent() ? "length of the cleat" : "length of the fastener line",
                        sheet.length(sealant),
                        sealant,
                        WorkingSheet.GEOMETRY));
    }

    private void line(String at, OffsetLine line, SlopedEdge.Side seen, Off off) {
        length(at, line, off);
        mark(at + "/lower", line.lower(), seen.bottom(), off, false);
        mark(at + "/upper", line.upper(), seen.top(), off, true);
    }

    private void length(String at, OffsetLine line, Off off) {
        String up = sheet.length(line.upper().up()) + " - "
                + sheet.length(line.lower().up());
        String out = sheet.length(line.upper().out()) + " - "
                + sheet.length(line.lower().out());
        boolean parallel = off.perUp.isEmpty();
        sheet.add(
                at + "/length",
                parallel ? "upper up − lower up" : "√((upper up − lower up)² + (upper out − lower out)²)",
                parallel ? up : "sqrt((" + up + ")^2 + (" + out + ")^2)",
                line.length(),
                off.source);
    }

    private void mark(String at, OffsetLine.Mark mark, SlopedEdge.End end, Off off, boolean upper) {
        EndLine ends = EndLine.of(end, valley.layout().spec());
        up(at + "/up", mark, end, ends, off, upper);
        boolean parallel = off.perUp.isEmpty();
        sheet.add(
                at + "/out",
                parallel ? off.letters : off.letters + " + m · up, m = (d′ − d) / L",
                off.foot
                        + off.perUp
                                .map(per -> " + " + per + " * " + sheet.length(mark.up()))
                                .orElse(""),
                mark.out(),
                off.source);
        mark.along()
                .ifPresent(along -> sheet.add(
                        at + "/along",
                        "out / sin ω",
                        sheet.length(mark.out()) + " / " + sheet.sin(end.corner()),
                        along,
                        off.source));
    }

    private void up(String at, OffsetLine.Mark mark, SlopedEdge.End end, EndLine ends, Off off, boolean upper) {
        String cot = ends.onEdge() ? "cot ω" : end.kind() == EdgeKind.VALLEY ? "cot (ω / 2)" : "cot 90°";
        String cotNumbers = sheet.cos(ends.angle()) + " / " + sheet.sin(ends.angle());
        String letters = off.letters + " " + cot;
        String numbers = off.foot + " * " + cotNumbers;
        if (off.perUp.isEmpty()) {
            sheet.add(
                    at,
                    upper ? "L − " + letters : letters,
                    upper ? length + " - " + numbers : numbers,
                    mark.up(),
                    off.source);
            return;
        }
        String per = off.perUp.get() + " * " + cotNumbers;
        sheet.add(
                at,
                (upper ? "(L − " + letters + ") / (1 + m " : letters + " / (1 − m ") + cot + "), m = (d′ − d) / L",
                upper ? "(" + length + " - " + numbers + ") / (1 + " + per + ")" : numbers + " / (1 - " + per + ")",
                mark.up(),
                off.source);
    }

    private void cleat(String at, CleatRun cleat, SlopedEdge.Side seen) {
        Length longest = valley.layout().spec().cleatLength();
        String whole = sheet.length(longest);
        String run = sheet.length(cleat.length());
        String source =
                WorkingSheet.GEOMETRY + "; P: " + WorkingSheet.whose(asked.pan().cleatLength(), Source.COMMON_PRACTICE);
        sheet.add(at + "/length", "length of the chalk line", run, cleat.length(), WorkingSheet.GEOMETRY);
        sheet.add(at + "/pieceLength", "min(P, length)", "min(" + whole + ", " + run + ")", cleat.piece(), source);
        sheet.add(
                at + "/lastLength",
                "length − (n − 1) P",
                run + " - (" + cleat.count() + " - 1) * " + whole,
                cleat.last(),
                source);
        sheet.add(
                at + "/count",
                "n = max(1, ⌈(length − ε) / P⌉)",
                "max(1, ceil((" + run + " - " + sheet.length(asked.hair()) + ") / " + whole + "))",
                new Count(cleat.count()),
                source);
        cleat.notchSpacing()
                .ifPresent(spacing -> sheet.add(
                        at + "/notchSpacing",
                        "w / cos φ",
                        sheet.length(asked.terms().panelCover()) + " / " + sheet.cos(seen.mitre()),
                        spacing,
                        WorkingSheet.GEOMETRY));
    }

    void rows() {
        for (int i = 0; i < valley.rows().size(); i++) {
            row("/fasteners/" + i, valley.rows().get(i));
        }
    }

    /**
     * A figure a row follows from.
     *
     * @param letters what it is
     * @param numbers the same in numbers
     * @param source  whose it is
     */
    private record Given(String letters, String numbers, String source) {}

    private void row(String at, Row row) {
        Given line = line(row);
        Given edge = edge(row);
        Given most = most(row);
        EvenRow even = row.row();
        if (even.count() == 1) {
            alone(at, line, even);
            return;
        }
        String letters = "line − 2 · " + edge.letters;
        String numbers = line.numbers + " - 2 * " + edge.numbers;
        String where = ", line: " + line.letters;
        sheet.add(at + "/first", edge.letters, edge.numbers, even.first(), edge.source);
        sheet.add(
                at + "/spacing",
                "(" + letters + ") / (n − 1)" + where,
                "(" + numbers + ") / (" + even.count() + " - 1)",
                even.spacing(),
                WorkingSheet.GEOMETRY);
        sheet.add(
                at + "/count",
                "n = 1 + ⌈(" + letters + " − ε) / a⌉" + where,
                "1 + ceil((" + numbers + " - " + sheet.length(asked.hair()) + ") / " + most.numbers + ")",
                new Count(even.count()),
                WorkingSheet.GEOMETRY + "; a: " + most.source);
    }

    /** A line with no room for two has one in its middle. */
    private void alone(String at, Given line, EvenRow even) {
        sheet.add(
                at + "/first",
                "line / 2: no room for two, line: " + line.letters,
                line.numbers + " / 2",
                even.first(),
                WorkingSheet.GEOMETRY);
        sheet.add(at + "/spacing", "0: no room for two", "0", even.spacing(), WorkingSheet.GEOMETRY);
        sheet.add(at + "/count", "1: no room for two", "1", new Count(even.count()), WorkingSheet.GEOMETRY);
    }

    private Given line(Row row) {
        String drawn = sheet.metres(Math.hypot(
                row.to().across() - row.from().across(),
                row.to().up() - row.from().up()));
        return switch (row.kind()) {
            case PAN_EDGE -> new Given("from its from to its to", drawn, WorkingSheet.GEOMETRY);
            case CLEAT -> new Given("the cleat's length", drawn, WorkingSheet.GEOMETRY);
            case VALLEY ->
                new Given(
                        "w / cos φ", sheet.length(asked.terms().panelCover()) + overCosine(row), WorkingSheet.GEOMETRY);
        };
    }

    private Given edge(Row row) {
        Spacings spacings = asked.terms().rules().ofValley();
        return switch (row.kind()) {
            case PAN_EDGE, CLEAT ->
                new Given(
                        "edgeDistance",
                        sheet.length(spacings.edgeDistance()),
                        whose(asked.fastening().edgeDistance(), Source.COMMON_PRACTICE));
            case VALLEY ->
                new Given(
                        "ribClearance / cos φ",
                        sheet.length(spacings.ribClearance()) + overCosine(row),
                        WorkingSheet.GEOMETRY + "; ribClearance: "
                                + whose(asked.fastening().ribClearance(), Source.COMMON_PRACTICE));
        };
    }

    private Given most(Row row) {
        Spacings spacings = asked.terms().rules().ofValley();
        return switch (row.kind()) {
            case PAN_EDGE -> most(spacings.panEdge(), asked.pan().fastenerSpacing(), Source.COMMON_PRACTICE);
            case CLEAT ->
                most(
                        spacings.cleat(),
                        asked.fastening().cleatSpacing(),
                        Rules.valleyCleatSpacing().source());
            case VALLEY -> most(spacings.panel(), asked.fastening().valleySpacing(), Source.COMMON_PRACTICE);
        };
    }

    private Given most(Length spacing, @Nullable Object given, Source otherwise) {
        return new Given("a", sheet.length(spacing), whose(given, otherwise));
    }

    private String overCosine(Row row) {
        ValleySide side =
                row.onLeft() ? valley.layout().left() : valley.layout().right();
        return " / " + sheet.cos(side.seen().mitre());
    }

    private static String whose(@Nullable Object given, Source otherwise) {
        return WorkingSheet.whose(given, otherwise);
    }
}
