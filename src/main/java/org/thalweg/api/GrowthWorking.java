package org.thalweg.api;

import java.util.Optional;
import org.thalweg.movement.Growth;
import org.thalweg.movement.LappedPiece;
import org.thalweg.movement.Temperatures;
import org.thalweg.reference.MetalFigure;
import org.thalweg.reference.Rules;
import org.thalweg.reference.Sourced;
import org.thalweg.units.Length;
import org.thalweg.units.TemperatureScale;

/** The working of what heat and cold do: how far panels and pieces of pan move, and what is left of their laps. */
final class GrowthWorking {

    private final WorkingSheet sheet;
    private final String scaled;
    private final String times;
    private final String printed;
    private final String warming;
    private final String cooling;
    private final String source;

    GrowthWorking(WorkingSheet sheet, WorkingCase asked) {
        this.sheet = sheet;
        TemperatureScale scale = UsedWriter.scale(asked.climate(), sheet.units().length());
        MetalFigure figure = asked.terms().metal().printedExpansion();
        boolean perFahrenheit = figure.unit().endsWith("/F");
        boolean alike = perFahrenheit == (scale == TemperatureScale.FAHRENHEIT);
        this.scaled = alike ? "" : perFahrenheit ? " × 1.8; printed per °F" : " / 1.8; printed per K";
        this.times = alike ? "" : perFahrenheit ? " * 1.8" : " / 1.8";
        this.printed = figure.value().toPlainString();
        Temperatures temperatures = asked.terms().temperatures();
        String cold = sheet.number(scale.from(temperatures.lowest()));
        String warm = sheet.number(scale.from(temperatures.highest()));
        String fastened = sheet.number(scale.from(temperatures.installedAt()));
        this.warming = "(" + warm + " - " + fastened + ")";
        this.cooling = "(" + fastened + " - " + cold + ")";
        this.source = asked.terms().metal().expansion().source().text();
    }

    /** Of something that is free from one end to the other. */
    void growth(String of, String what, Length free, Growth growth) {
        String perDegree = printed + " * " + sheet.length(free) + " * ";
        sheet.add(
                of + "/longer",
                "expansion × " + what + " × (highest − installedAt)" + scaled,
                perDegree + warming + times,
                growth.longer(),
                source);
        sheet.add(
                of + "/shorter",
                "expansion × " + what + " × (installedAt − lowest)" + scaled,
                perDegree + cooling + times,
                growth.shorter(),
                source);
    }

    void piece(String of, Length length, LappedPiece piece) {
        growth(of, "length", length, piece.growth());
        Optional<Length> left = piece.lapLeft();
        if (left.isPresent()) {
            Sourced<Length> least = Rules.valleyLeastLap();
            sheet.add(
                    of + "/lapLeft",
                    "max(0, lap − shorter)",
                    "max(0, " + sheet.length(piece.lap().orElseThrow()) + " - "
                            + sheet.length(piece.growth().shorter()) + ")",
                    left.get(),
                    WorkingSheet.GEOMETRY + "; " + sheet.heldAgainst(least.value(), least.source()));
        }
    }
}
