package org.thalweg.fastening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.PanelHold;
import org.thalweg.units.Length;
import org.thalweg.valley.OffsetLine;
import org.thalweg.valley.ValleyLayout;
import org.thalweg.valley.ValleySide;

/**
 * Every row of fasteners at one valley.
 *
 * <p>Where panels are screwed down, the row is told panel by panel: between the clearances at two ribs of a whole panel,
 * measured along the slanted line, so that a steeper mitre takes more screws.
 */
public final class ValleyRows {

    private ValleyRows() {}

    /** What a row holds down. */
    public enum RowKind {
        /** The outer edge of the pan. */
        PAN_EDGE,
        /** The panels, through sealant and pan. */
        VALLEY,
        /** The cleat the panels are hooked to. */
        CLEAT
    }

    /**
     * How far apart.
     *
     * @param panEdge      greatest spacing at the edges of the pan
     * @param panel        greatest spacing of the screws that hold panels
     * @param cleat        greatest spacing of the fasteners of a cleat
     * @param edgeDistance from the end of a line
     * @param ribClearance from a rib to the nearest screw, square to the rib
     */
    public record Spacings(Length panEdge, Length panel, Length cleat, Length edgeDistance, Length ribClearance) {}

    /**
     * One row.
     *
     * @param kind   what it holds down
     * @param onLeft whether it is on the plane to the left
     * @param from   where its line starts; plane frame, metres
     * @param to     where it ends
     * @param row    the fasteners; of a whole panel, where panels are screwed down
     */
    public record Row(RowKind kind, boolean onLeft, Point2 from, Point2 to, EvenRow row) {}

    /** The rows of a valley: the left side's, then the right side's, each the pan's edge first. */
    public static List<Row> of(ValleyLayout valley, Spacings spacings, Length panelCover, Tolerance tolerance) {
        List<Row> rows = new ArrayList<>(4);
        for (ValleySide side : valley.sides()) {
            side.panScrewLine()
                    .ifPresent(line -> rows.add(row(
                            RowKind.PAN_EDGE,
                            side,
                            line,
                            EvenRow.along(line.length(), spacings.panEdge(), spacings.edgeDistance(), tolerance))));
            if (valley.hold() == PanelHold.CLEATED) {
                side.chalkLine()
                        .ifPresent(line -> rows.add(row(
                                RowKind.CLEAT,
                                side,
                                line,
                                EvenRow.along(line.length(), spacings.cleat(), spacings.edgeDistance(), tolerance))));
            } else {
                side.fastenerLine()
                        .flatMap(line -> panel(line, side, spacings, panelCover, tolerance))
                        .ifPresent(rows::add);
            }
        }
        return rows;
    }

    private static Optional<Row> panel(
            OffsetLine line, ValleySide side, Spacings spacings, Length panelCover, Tolerance tolerance) {
        if (side.riseAcrossCover().isEmpty()) {
            return Optional.empty();
        }
        double slanted = 1 / side.seen().mitre().cos();
        EvenRow row = EvenRow.along(
                Length.metres(panelCover.metres() * slanted),
                spacings.panel(),
                Length.metres(spacings.ribClearance().metres() * slanted),
                tolerance);
        return Optional.of(row(RowKind.VALLEY, side, line, row));
    }

    private static Row row(RowKind kind, ValleySide side, OffsetLine line, EvenRow row) {
        return new Row(kind, side.seen().onLeft(), line.from(), line.to(), row);
    }
}
