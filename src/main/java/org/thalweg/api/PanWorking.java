package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.thalweg.finding.Source;
import org.thalweg.packet.LaidValley;
import org.thalweg.packet.PanMovement;
import org.thalweg.reference.Rules;
import org.thalweg.reference.Sourced;
import org.thalweg.roof.EdgeKind;
import org.thalweg.units.Count;
import org.thalweg.units.Length;
import org.thalweg.valley.EndLine;
import org.thalweg.valley.PanPiece;
import org.thalweg.valley.PanSpec;
import org.thalweg.valley.SlopedEdge;
import org.thalweg.valley.ValleyLayout;
import org.thalweg.valley.ValleySide;

/** The working of the pan: its section, how far the panels stay off its low, and its pieces. */
final class PanWorking {

    private final WorkingSheet sheet;
    private final WorkingCase asked;
    private final GrowthWorking growth;
    private final PanMovement movement;
    private final ValleyLayout layout;
    private final PanSpec spec;
    private final String flat;
    private final String length;

    PanWorking(WorkingSheet sheet, WorkingCase asked, GrowthWorking growth, LaidValley valley) {
        this.sheet = sheet;
        this.asked = asked;
        this.growth = growth;
        this.movement = valley.pan();
        this.layout = valley.layout();
        this.spec = layout.spec();
        this.flat = sheet.length(spec.flat());
        this.length = sheet.length(layout.edge().length());
    }

    void section() {
        flat("/pan/flat");
        sheet.add(
                "/pan/lowBendDeg",
                "90° + δ / 2",
                "90 + " + sheet.degrees(layout.edge().edge().bend()) + " / 2",
                layout.bendAtLow(),
                WorkingSheet.GEOMETRY);
    }

    private void flat(String of) {
        sheet.add(
                of,
                "T = C / 2 − g − r",
                sheet.length(spec.coilWidth()) + " / 2 - " + sheet.length(spec.ribLeg()) + " - "
                        + sheet.length(spec.edgeReturn()),
                spec.flat(),
                WorkingSheet.GEOMETRY);
    }

    void side(int i) {
        ValleySide side = layout.sides().get(i);
        String at = "/sides/" + i;
        String heldBack = sheet.length(side.heldBack());
        flat(at + "/flat");
        if (spec.holdBack().isEmpty()) {
            heldBack(at, side);
        } else if (!asked.holdBacks().contains(side.heldBack())) {
            sheet.add(
                    at + "/holdBack",
                    "d′ of the valley below in one line, which this one goes on",
                    heldBack,
                    side.heldBack(),
                    WorkingSheet.GEOMETRY);
        }
        Sourced<Length> leastOpen = Rules.valleyLeastExposure();
        sheet.add(
                at + "/holdBackAtTop",
                "max(min(0, d), d − m L / 2), m: widening of both sides together",
                "max(min(0, " + heldBack + "), " + heldBack + " - "
                        + sheet.number(spec.widening().rise()) + " / "
                        + sheet.number(spec.widening().run()) + " * " + length + " / 2)",
                side.heldBackAtTop(),
                WorkingSheet.GEOMETRY + "; m: "
                        + (asked.pan().widening() == null ? "none given" : Source.REQUEST.text())
                        + "; both sides together " + sheet.heldAgainst(leastOpen.value(), leastOpen.source()));
        Sourced<Length> leastCover = Rules.valleyLeastCover();
        sheet.add(
                at + "/coverUnderPanel",
                "c = T − d",
                flat + " - " + heldBack,
                side.cover(),
                WorkingSheet.GEOMETRY + "; " + sheet.heldAgainst(leastCover.value(), leastCover.source()));
    }

    private void heldBack(String at, ValleySide side) {
        Sourced<Length> least = Rules.valleyLeastCover();
        sheet.add(
                at + "/holdBack",
                "d = max(0, T − c)",
                "max(0, " + flat + " - " + sheet.length(spec.cover().orElse(least.value())) + ")",
                side.heldBack(),
                WorkingSheet.GEOMETRY + "; c: " + (spec.cover().isPresent() ? Source.REQUEST : least.source()).text());
    }

    /**
     * The pieces: how many, and the first, the second, the last but one and the last. Those between are like the second.
     */
    void pieces() {
        List<PanPiece> pieces = layout.pieces();
        int count = pieces.size();
        Reach below = reach(true);
        Reach above = reach(false);
        LapsTo lapsTo = lapsTo(above);
        count(pieces, lapsTo, above);
        TreeSet<Integer> told = new TreeSet<>(List.of(0, Math.min(1, count - 1), Math.max(0, count - 2), count - 1));
        for (int i : told) {
            if (i == 0) {
                first(pieces.get(0), below);
            } else {
                next(pieces, i);
            }
            pieceLength(pieces, i, lapsTo, above);
            if (i > 0) {
                lap(pieces.get(i), i);
            }
            growth.piece(
                    "/pieces/" + i + "/movement",
                    pieces.get(i).length(),
                    movement.pieces().get(i));
        }
    }

    private double highest(Reach above) {
        return layout.edge().length().metres() + above.metres;
    }

    /**
     * Pieces follow each other by P − ℓ, from the first one's lowest point on; if that hangs so low that the first piece must
     * be longer to lap above the foot, from the foot on. Not told of a valley shorter than a lap, which is one piece.
     */
    private void count(List<PanPiece> pieces, LapsTo lapsTo, Reach above) {
        double gain = spec.pieceLength().metres() - spec.lap().metres();
        double from = pieces.get(0).from().metres();
        double reach = Math.min(
                highest(above) - spec.pieceLength().metres() - asked.hair().metres(),
                lapsTo.metres - spec.lap().metres());
        String lap = sheet.length(spec.lap());
        String piece = sheet.length(spec.pieceLength());
        String numbers = "min(" + sheet.metres(highest(above)) + " - " + piece + " - " + sheet.length(asked.hair())
                + ", " + sheet.metres(lapsTo.metres) + " - " + lap + ")";
        String each = ") / (" + piece + " - " + lap + ")))";
        String letters = "; h: top of the pan, u: where the flats narrow to the head";
        if (pieces.size() == 1 + steps(reach - from, gain)) {
            count(
                    pieces,
                    "1 + max(0, ⌈(min(h − P − ε, u − ℓ) − s) / (P − ℓ)⌉)" + letters + ", s: first from",
                    "1 + max(0, ceil((" + numbers + " - " + sheet.metres(from) + each);
        } else if (pieces.size() == 2 + steps(reach, gain)) {
            count(
                    pieces,
                    "2 + max(0, ⌈min(h − P − ε, u − ℓ) / (P − ℓ)⌉)" + letters + "; the first ends a lap above the foot",
                    "2 + max(0, ceil((" + numbers + each);
        }
    }

    private static long steps(double reach, double gain) {
        return (long) Math.max(0, Math.ceil(reach / gain));
    }

    private void count(List<PanPiece> pieces, String formula, String numbers) {
        sheet.add(
                "/pieces",
                formula,
                numbers,
                new Count(pieces.size()),
                WorkingSheet.GEOMETRY + "; P: " + pieceSource() + "; ℓ: " + lapSource());
    }

    private void first(PanPiece piece, Reach below) {
        if (asked.same(-below.metres, piece.from().metres())) {
            sheet.add(
                    "/pieces/0/from",
                    "−max(p, e / sin ω, e / sin ω − T cot ω), both sides; p: rib past the foot, e: flat past the end, square",
                    "-" + below.numbers,
                    piece.from(),
                    WorkingSheet.GEOMETRY + "; " + below.source);
        }
    }

    private void next(List<PanPiece> pieces, int i) {
        PanPiece before = pieces.get(i - 1);
        sheet.add(
                "/pieces/" + i + "/from",
                "from + length of the piece below − ℓ",
                sheet.length(before.from()) + " + " + sheet.length(before.length()) + " - "
                        + sheet.length(pieces.get(i).lap()),
                pieces.get(i).from(),
                WorkingSheet.GEOMETRY);
    }

    /** As long as it can be, cut short where its lap must lie lower, or what the last one needs. */
    private void pieceLength(List<PanPiece> pieces, int i, LapsTo lapsTo, Reach above) {
        PanPiece piece = pieces.get(i);
        double from = piece.from().metres();
        double to = from + piece.length().metres();
        double highest = highest(above);
        double least = spec.shortestPiece().metres();
        double lap = spec.lap().metres();
        String head = length + " + " + above.numbers;
        String minusFrom = " - " + sheet.metres(from);
        String whole = sheet.length(spec.pieceLength());
        if (i == pieces.size() - 1) {
            if (asked.same(to, highest)) {
                told(
                        i,
                        "L + max(p, e / sin ω, e / sin ω − T cot ω) − s, both sides at the head",
                        head + minusFrom,
                        piece,
                        above.source);
            }
        } else if (asked.same(piece.length().metres(), spec.pieceLength().metres())) {
            told(i, "P", whole, piece, "P: " + pieceSource());
        } else if (asked.same(to, lapsTo.metres)) {
            told(
                    i,
                    "u − s, u: where laps end",
                    lapsTo.numbers + minusFrom,
                    piece,
                    "laps lie where the flats are whole");
        } else if (asked.same(to, lap)) {
            told(i, "ℓ − s: up to a lap above the foot", sheet.metres(lap) + minusFrom, piece, "ℓ: " + lapSource());
        } else if (i == pieces.size() - 2 && asked.same(to, highest - least + lap)) {
            told(
                    i,
                    "h − q + ℓ − s, q: shortest piece, which the last one is; h: top of the pan",
                    head + " - " + sheet.metres(least) + " + " + sheet.metres(lap) + minusFrom,
                    piece,
                    "q: " + WorkingSheet.whose(asked.pan().shortestPiece(), Source.COMMON_PRACTICE));
        }
    }

    private void told(int i, String formula, String numbers, PanPiece piece, String source) {
        sheet.add("/pieces/" + i + "/length", formula, numbers, piece.length(), WorkingSheet.GEOMETRY + "; " + source);
    }

    private void lap(PanPiece piece, int i) {
        Sourced<Length> least = Rules.valleyLeastLap();
        sheet.add(
                "/pieces/" + i + "/lap",
                "ℓ",
                sheet.length(spec.lap()),
                piece.lap(),
                lapSource() + "; " + sheet.heldAgainst(least.value(), least.source()));
    }

    private String pieceSource() {
        return WorkingSheet.whose(asked.pan().pieceLength(), Source.COMMON_PRACTICE);
    }

    private String lapSource() {
        return asked.lapSource(sheet.units().length());
    }

    /**
     * How far the pan reaches past one end of the valley.
     *
     * @param metres  0 or more
     * @param numbers the same in numbers
     * @param source  whose figures those are
     */
    private record Reach(double metres, String numbers, String source) {}

    private Reach reach(boolean below) {
        SlopedEdge edge = layout.edge();
        List<SlopedEdge.End> ends = below
                ? List.of(edge.left().bottom(), edge.right().bottom())
                : List.of(edge.left().top(), edge.right().top());
        boolean meets = ends.stream().anyMatch(end -> end.kind() == EdgeKind.VALLEY);
        Length rib = meets ? spec.ribPastValley() : below ? spec.ribPastEave() : spec.ribPastTop();
        double most = rib.metres();
        List<String> numbers = new ArrayList<>(List.of(sheet.length(rib)));
        List<String> sources = new ArrayList<>(List.of("p: " + ribSource(meets, below)));
        for (SlopedEdge.End end : ends) {
            EndLine line = EndLine.of(end, spec);
            most = Math.max(
                    most, Math.max(line.past(), line.past() - spec.flat().metres() * line.perOut()));
            addNew(numbers, past(line));
            addNew(numbers, tip(line));
            if (line.past() > 0) {
                addNew(sources, "e: " + pastSource(end.kind()));
            }
        }
        return new Reach(most, "max(" + String.join(", ", numbers) + ")", String.join("; ", sources));
    }

    private static void addNew(List<String> list, String text) {
        if (!list.contains(text)) {
            list.add(text);
        }
    }

    /** e / sin ω, how far a flat runs past its own corner along the low. */
    private String past(EndLine line) {
        if (line.past() == 0) {
            return "0";
        }
        return sheet.metres(line.past() * line.angle().sin()) + " / " + sheet.sin(line.angle());
    }

    /** e / sin ω − T cot ω, how far its outer corner does. */
    private String tip(EndLine line) {
        return past(line) + " - " + flat + " * " + sheet.cos(line.angle()) + " / " + sheet.sin(line.angle());
    }

    private String ribSource(boolean meets, boolean below) {
        return WorkingSheet.whose(
                meets
                        ? asked.pan().ribPastValley()
                        : below ? asked.pan().ribPastEave() : asked.pan().ribPastTop(),
                Source.COMMON_PRACTICE);
    }

    private String pastSource(EdgeKind kind) {
        return switch (kind) {
            case EAVE, ANGLED_EAVE -> WorkingSheet.whose(asked.pan().eaveProjection(), Source.COMMON_PRACTICE);
            case SIDE_WALL, HEAD_WALL ->
                WorkingSheet.whose(
                        asked.pan().wallTurnUp(), Rules.sideWallLeastHeight().source());
            default -> lapSource();
        };
    }

    /**
     * Up to where laps may lie.
     *
     * @param metres  up the low from the foot
     * @param numbers the same in numbers
     */
    private record LapsTo(double metres, String numbers) {}

    /** Where the flats narrow to the head, if one piece spans what is above that and a lap; else the head. */
    private LapsTo lapsTo(Reach above) {
        SlopedEdge edge = layout.edge();
        EndLine left = EndLine.of(edge.left().top(), spec);
        EndLine right = EndLine.of(edge.right().top(), spec);
        double flatWidth = spec.flat().metres();
        double narrows = Math.max(
                0, Math.max(flatWidth * left.perOut() - left.past(), flatWidth * right.perOut() - right.past()));
        double full = edge.length().metres() - narrows;
        boolean spanned = highest(above) - full + spec.lap().metres()
                <= spec.pieceLength().metres() + asked.hair().metres();
        if (!spanned || full < spec.lap().metres()) {
            return new LapsTo(edge.length().metres(), length);
        }
        return new LapsTo(full, length + " + min(0, " + tip(left) + ", " + tip(right) + ")");
    }
}
