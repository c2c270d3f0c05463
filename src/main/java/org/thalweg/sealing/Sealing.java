package org.thalweg.sealing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.thalweg.fastening.EvenRow;
import org.thalweg.fastening.FastenerRow;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Tolerance;
import org.thalweg.panel.Panel;
import org.thalweg.roof.PanelHold;
import org.thalweg.trim.Trim;
import org.thalweg.trim.TrimPiece;
import org.thalweg.units.Length;
import org.thalweg.valley.CleatRun;
import org.thalweg.valley.PanPiece;
import org.thalweg.valley.ValleyLayout;
import org.thalweg.valley.ValleySide;

/**
 * Everything that makes a laid roof tight.
 *
 * <p>What is always true: one closure stands for every end of a panel that has a row of closure screws, tape lies where those
 * and the other rows through panels are, and every lap of a pan or a trim has its beads.
 *
 * <p>Known limits: an end with no room for a single fastener has no row, and so nothing here; the rows' findings tell of it. A
 * line that goes on over the corner of a panel which is not cut there ends at that panel's rib.
 * Seams are closed dry, and sealant in them comes with the panel.
 *
 * @param runs  along the rows of fasteners in their order; then valley by valley the cleats, the left side's first, and the
 *              laps of the pan from the foot up; then trim by trim its laps
 * @param rules what they were counted by
 */
public record Sealing(List<SealRun> runs, SealingRules rules) {

    public Sealing {
        runs = List.copyOf(runs);
    }

    /** Counts it. */
    public static Sealing of(SealingCase asked) {
        List<SealRun> runs = new ArrayList<>();
        addRows(asked, runs);
        for (ValleyLayout valley : asked.valleys()) {
            addCleats(valley, asked.rules(), runs);
            addPanLaps(valley, asked.rules(), runs);
        }
        for (Trim trim : asked.trims()) {
            addTrimLaps(trim, asked.rules(), asked.tolerance(), runs);
        }
        return new Sealing(runs, asked.rules());
    }

    private static void addRows(SealingCase asked, List<SealRun> runs) {
        Optional<FastenerRow> before = Optional.empty();
        Optional<OnMetal> had = Optional.empty();
        for (FastenerRow row : asked.rows().rows()) {
            Optional<SealKind> kind = SealKind.along(row.kind());
            if (kind.isEmpty() || row.panel().isEmpty()) {
                continue;
            }
            Panel panel = row.panel().get();
            OnMetal now = OnMetal.of(row, panel);
            // An obstacle may break a row in two; tape and closure run on under it.
            boolean again = before.filter(last -> alike(last, row)).isPresent()
                    && had.filter(last -> last.same(now, asked.tolerance().metres()))
                            .isPresent();
            if (!again) {
                addRow(kind.get(), row, panel, Length.metres(now.length()), asked.rules(), runs);
            }
            before = Optional.of(row);
            had = Optional.of(now);
        }
    }

    private static boolean alike(FastenerRow one, FastenerRow other) {
        return one.kind() == other.kind()
                && one.edge() == other.edge()
                && one.plane() == other.plane()
                && one.panel().map(Panel::mark).equals(other.panel().map(Panel::mark));
    }

    private static void addRow(
            SealKind kind, FastenerRow row, Panel panel, Length length, SealingRules rules, List<SealRun> runs) {
        OptionalInt plane = OptionalInt.of(row.plane());
        Optional<Panel> on = Optional.of(panel);
        if (kind.closed()) {
            runs.add(new SealRun(kind, SealItem.CLOSURE, plane, on, row.edge(), Optional.empty(), length, 1));
        }
        int lines = rules.of(kind);
        if (lines > 0) {
            runs.add(new SealRun(kind, kind.item(), plane, on, row.edge(), Optional.empty(), length, lines));
        }
    }

    private static void addCleats(ValleyLayout valley, SealingRules rules, List<SealRun> runs) {
        int lines = rules.of(SealKind.CLEAT);
        if (valley.hold() != PanelHold.CLEATED || lines == 0) {
            return;
        }
        for (ValleySide side : valley.sides()) {
            side.cleat()
                    .map(CleatRun::length)
                    .ifPresent(length -> runs.add(new SealRun(
                            SealKind.CLEAT,
                            SealKind.CLEAT.item(),
                            OptionalInt.of(side.seen().plane()),
                            Optional.empty(),
                            valley.edge().index(),
                            Optional.empty(),
                            length,
                            lines)));
        }
    }

    /** Beads go across the middle of a lap, as far as there is metal: from return to return, up the rib and down. */
    private static void addPanLaps(ValleyLayout valley, SealingRules rules, List<SealRun> runs) {
        int beads = rules.of(SealKind.PAN_LAP);
        for (PanPiece piece : valley.pieces()) {
            double lap = piece.lap().metres();
            if (lap > 0 && beads > 0) {
                List<Point2> outline = piece.blank().outline();
                runs.add(lap(
                        SealKind.PAN_LAP,
                        SealKind.PAN_LAP.item(),
                        valley.edge().index(),
                        piece.mark(),
                        Length.metres(OnMetal.across(outline, lap / 2)),
                        beads));
            }
        }
    }

    private static void addTrimLaps(Trim trim, SealingRules rules, Tolerance tolerance, List<SealRun> runs) {
        Length width = trim.flat().width();
        int beads = rules.of(SealKind.TRIM_LAP);
        for (TrimPiece piece : trim.pieces()) {
            if (piece.lap().metres() <= 0) {
                continue;
            }
            if (beads > 0) {
                runs.add(lap(SealKind.TRIM_LAP, SealKind.TRIM_LAP.item(), trim.index(), piece.mark(), width, beads));
            }
            EvenRow rivets = EvenRow.along(width, rules.rivetSpacing(), rules.edgeDistance(), tolerance);
            runs.add(lap(SealKind.TRIM_LAP, SealItem.RIVET, trim.index(), piece.mark(), width, rivets.count()));
        }
    }

    private static SealRun lap(SealKind kind, SealItem item, int edge, String piece, Length length, int count) {
        return new SealRun(kind, item, OptionalInt.empty(), Optional.empty(), edge, Optional.of(piece), length, count);
    }

    /** All of an item end to end; nothing long for rivets. */
    public Length length(SealItem item) {
        return Length.metres(runs.stream()
                .filter(run -> run.item() == item)
                .mapToDouble(run -> run.total().metres())
                .sum());
    }

    /** How many of an item there are: lines, beads, closures or rivets. */
    public int count(SealItem item) {
        return runs.stream()
                .filter(run -> run.item() == item)
                .mapToInt(SealRun::count)
                .sum();
    }
}
