package org.thalweg.api;

import java.util.List;
import org.thalweg.api.wire.WorkingAnswer;
import org.thalweg.packet.LaidValley;
import org.thalweg.units.Units;
import org.thalweg.valley.ValleySide;

/**
 * Writes how the figures of a valley came about, each with its formula, the numbers put in and the source, in the order in
 * which they stand in the answer. Only what was computed is told, and only what one line can tell truly: no line is made up
 * for an area that took following every fall line of a roof.
 *
 * <p>Each line takes its numbers from figures of the same answer, so that a reader can follow the chain to the request.
 */
final class WorkingWriter {

    private final Units units;
    private final WorkingCase asked;

    WorkingWriter(Units units, WorkingCase asked) {
        this.units = units;
        this.asked = asked;
    }

    List<WorkingAnswer> write(LaidValley valley) {
        WorkingSheet sheet = new WorkingSheet(units);
        AngleWorking angles = new AngleWorking(sheet, asked, valley);
        GrowthWorking growth = new GrowthWorking(sheet, asked);
        PanWorking pan = new PanWorking(sheet, asked, growth, valley);
        LineWorking lines = new LineWorking(sheet, asked, valley);
        angles.valley();
        pan.section();
        for (int i = 0; i < 2; i++) {
            angles.side(i);
            pan.side(i);
            angles.ends(i);
            lines.side(i);
        }
        pan.pieces();
        lines.rows();
        longestPanel(sheet, valley);
        growth.growth("/movement", "longest panel", valley.longest(), valley.growth());
        WaterWorking water = new WaterWorking(sheet, asked, valley);
        for (int i = 0; i < 2; i++) {
            water.side(i);
        }
        return sheet.entries();
    }

    /** At a corner the longest runs from the foot straight up to where both planes end, level with the head. */
    private void longestPanel(WorkingSheet sheet, LaidValley valley) {
        if (asked.corner().isEmpty()) {
            return;
        }
        String length = sheet.length(valley.layout().edge().length());
        List<String> runs = valley.layout().sides().stream()
                .map(ValleySide::seen)
                .filter(seen -> seen.run().metres() > 0)
                .map(seen -> length + " * " + sheet.sin(seen.mitre()))
                .toList();
        sheet.add(
                "/movement/longestPanel",
                "max(L sin φ₁, L sin φ₂), of the planes whose panels end at the valley",
                runs.size() == 1 ? runs.get(0) : "max(" + String.join(", ", runs) + ")",
                valley.longest(),
                WorkingSheet.GEOMETRY);
    }
}
