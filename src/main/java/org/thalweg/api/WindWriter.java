package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.wire.WindAnswer;
import org.thalweg.api.wire.WindAnswer.PressuresAnswer;
import org.thalweg.api.wire.WindAnswer.SpacingsAnswer;
import org.thalweg.api.wire.WindAnswer.WindPlane;
import org.thalweg.api.wire.WindUsed;
import org.thalweg.api.wire.WindUsed.SiteUsed;
import org.thalweg.finding.Source;
import org.thalweg.packet.LaidWind;
import org.thalweg.packet.LaidWind.ZoneSpacings;
import org.thalweg.packet.WindTerms;
import org.thalweg.packet.WindTerms.Named;
import org.thalweg.packet.WindTerms.WorkedOut;
import org.thalweg.roof.Roof;
import org.thalweg.units.Length;
import org.thalweg.units.SpeedUnit;
import org.thalweg.units.Units;
import org.thalweg.wind.LowRiseWind;
import org.thalweg.wind.Uplift;
import org.thalweg.wind.ZonePressures;
import org.thalweg.wind.ZoneWidth;

/** Writes the wind that clips were spaced for. */
final class WindWriter {

    private static final String RULE =
            "10 % of the least horizontal dimension or 0.4 of the mean roof height, whichever is"
                    + " smaller, but not less than 4 % of the least horizontal dimension or 3 ft.";
    private static final String GIVEN = "As the request gives it.";

    private final Units units;

    WindWriter(Units units) {
        this.units = units;
    }

    WindAnswer write(LaidWind wind, Roof roof) {
        Uplift uplift = wind.clips().uplift();
        List<WindPlane> planes = new ArrayList<>(roof.planes().size());
        for (int i = 0; i < roof.planes().size(); i++) {
            planes.add(new WindPlane(
                    roof.planes().get(i).id(),
                    uplift.planes().get(i).map(this::pressures),
                    wind.planes().get(i).map(this::spacings)));
        }
        return new WindAnswer(
                RoofWriter.marked(uplift.zones().width(), units),
                wind.width().map(width -> RoofWriter.marked(width.least(), units)),
                wind.width().isPresent() ? RULE : GIVEN,
                (wind.width().isPresent() ? ZoneWidth.SOURCE : Source.REQUEST).text(),
                uplift.preliminary(),
                uplift.source().text(),
                planes);
    }

    private PressuresAnswer pressures(ZonePressures pressures) {
        return new PressuresAnswer(
                FigureWriter.write(pressures.field(), units),
                FigureWriter.write(pressures.edge(), units),
                FigureWriter.write(pressures.corner(), units));
    }

    private SpacingsAnswer spacings(ZoneSpacings spacings) {
        return new SpacingsAnswer(
                RoofWriter.marked(spacings.field(), units),
                RoofWriter.marked(spacings.edge(), units),
                RoofWriter.marked(spacings.corner(), units));
    }

    WindUsed used(WindTerms terms, LaidWind wind) {
        return new WindUsed(
                FigureWriter.write(terms.clip(), units),
                terms.zones().height().map(this::length),
                length(wind.clips().uplift().zones().width()),
                terms.pressures() instanceof Named named ? Optional.of(pressures(named.zones())) : Optional.empty(),
                terms.pressures() instanceof WorkedOut of ? Optional.of(site(of.wind())) : Optional.empty(),
                length(terms.mostInField()),
                length(terms.mostElsewhere()));
    }

    private SiteUsed site(LowRiseWind wind) {
        SpeedUnit unit = SpeedUnit.beside(units.length());
        return new SiteUsed(
                new Figure(unit.round(wind.speed()), unit.symbol()),
                wind.exposure().key(),
                wind.map(),
                FigureWriter.write(wind.area(), units));
    }

    private double length(Length length) {
        return units.length().round(length);
    }
}
