package org.thalweg.api;

import java.util.Optional;
import org.thalweg.api.problem.Figure;
import org.thalweg.units.Angle;
import org.thalweg.units.Area;
import org.thalweg.units.Count;
import org.thalweg.units.Flow;
import org.thalweg.units.Force;
import org.thalweg.units.Length;
import org.thalweg.units.Mass;
import org.thalweg.units.Measure;
import org.thalweg.units.Pitch;
import org.thalweg.units.Pressure;
import org.thalweg.units.Rainfall;
import org.thalweg.units.Temperature;
import org.thalweg.units.TemperatureScale;
import org.thalweg.units.Units;

/** Writes figures of any kind in the caller's units, and puts them into sentences. */
final class FigureWriter {

    private FigureWriter() {}

    /** Units name no scale of temperature: those are told in Celsius. */
    static Figure write(Measure measure, Units units) {
        if (measure instanceof Length length) {
            return new Figure(units.length().round(length), units.length().symbol());
        }
        if (measure instanceof Area area) {
            return new Figure(units.area().round(area), units.area().symbol());
        }
        if (measure instanceof Mass mass) {
            return new Figure(units.mass().round(mass), units.mass().symbol());
        }
        if (measure instanceof Angle angle) {
            return new Figure(angle.roundedDegrees(), "deg");
        }
        if (measure instanceof Pitch pitch) {
            return new Figure(pitch.roundedPer12(), "per 12");
        }
        if (measure instanceof Temperature temperature) {
            return new Figure(TemperatureScale.CELSIUS.round(temperature), TemperatureScale.CELSIUS.symbol());
        }
        if (measure instanceof Flow flow) {
            return new Figure(units.flow().round(flow), units.flow().symbol());
        }
        if (measure instanceof Rainfall rainfall) {
            return new Figure(rainfall.round(units.length()), Rainfall.symbol(units.length()));
        }
        if (measure instanceof Force force) {
            return new Figure(units.force().round(force), units.force().symbol());
        }
        if (measure instanceof Pressure pressure) {
            return new Figure(units.pressure().round(pressure), units.pressure().symbol());
        }
        return Figure.of((double) ((Count) measure).number());
    }

    static Optional<Figure> write(Optional<Measure> measure, Units units) {
        return measure.map(found -> write(found, units));
    }

    /** Puts the figures where the sentence has {@code {actual}} and {@code {limit}}. */
    static String fill(String sentence, Optional<Figure> actual, Optional<Figure> limit) {
        if (sentence.indexOf('{') < 0) {
            return sentence;
        }
        return sentence.replace("{actual}", actual.map(Figure::text).orElse("?"))
                .replace("{limit}", limit.map(Figure::text).orElse("?"));
    }
}
