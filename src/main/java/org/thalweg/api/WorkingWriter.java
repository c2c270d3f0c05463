package org.thalweg.api;

import java.util.List;
import org.thalweg.api.wire.WorkingAnswer;
import org.thalweg.movement.Temperatures;
import org.thalweg.packet.LaidValley;
import org.thalweg.reference.MetalFigure;
import org.thalweg.units.TemperatureScale;
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
        PanWorking pan = new PanWorking(sheet, asked, valley.layout());
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
        growth(sheet, valley);
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

    private void growth(WorkingSheet sheet, LaidValley valley) {
        Temperatures temperatures = asked.terms().temperatures();
        TemperatureScale scale = UsedWriter.scale(asked.climate(), units.length());
        MetalFigure printed = asked.terms().metal().printedExpansion();
        boolean perFahrenheit = printed.unit().endsWith("/F");
        boolean alike = perFahrenheit == (scale == TemperatureScale.FAHRENHEIT);
        String formula = alike ? "" : perFahrenheit ? " × 1.8; printed per °F" : " / 1.8; printed per K";
        String numbers = alike ? "" : perFahrenheit ? " * 1.8" : " / 1.8";
        String cold = sheet.number(scale.from(temperatures.lowest()));
        String warm = sheet.number(scale.from(temperatures.highest()));
        String fastened = sheet.number(scale.from(temperatures.installedAt()));
        String perDegree = printed.value().toPlainString() + " * " + sheet.length(valley.longest());
        String source = asked.terms().metal().expansion().source().text();
        sheet.add(
                "/movement/longer",
                "expansion × longest panel × (highest − installedAt)" + formula,
                perDegree + " * (" + warm + " - " + fastened + ")" + numbers,
                valley.growth().longer(),
                source);
        sheet.add(
                "/movement/shorter",
                "expansion × longest panel × (installedAt − lowest)" + formula,
                perDegree + " * (" + fastened + " - " + cold + ")" + numbers,
                valley.growth().shorter(),
                source);
    }
}
