package org.thalweg.api;

import java.util.Optional;
import org.thalweg.api.wire.GaugesAnswer;
import org.thalweg.api.wire.GaugesAnswer.GaugeAnswer;
import org.thalweg.api.wire.MetalsAnswer;
import org.thalweg.api.wire.MetalsAnswer.MetalAnswer;
import org.thalweg.api.wire.PrintedFigure;
import org.thalweg.api.wire.RulesAnswer;
import org.thalweg.api.wire.RulesAnswer.RuleAnswer;
import org.thalweg.reference.Gauge;
import org.thalweg.reference.Gauges;
import org.thalweg.reference.Metal;
import org.thalweg.reference.MetalFigure;
import org.thalweg.reference.Metals;
import org.thalweg.reference.Rule;
import org.thalweg.reference.Rules;
import org.thalweg.units.LengthUnit;

/** Writes the published figures as the tables of this service have them: nothing is converted or rounded on the way. */
final class ReferenceWriter {

    private ReferenceWriter() {}

    static MetalsAnswer metals(Engine engine) {
        return new MetalsAnswer(
                engine.name(),
                Metals.all().stream().map(ReferenceWriter::write).toList(),
                Metals.figures().stream().map(ReferenceWriter::write).toList());
    }

    static GaugesAnswer gauges(Engine engine) {
        return new GaugesAnswer(
                engine.name(),
                LengthUnit.INCH.symbol(),
                "lb/ft2",
                Gauges.all().stream().map(ReferenceWriter::write).toList());
    }

    static RulesAnswer rules(Engine engine) {
        return new RulesAnswer(
                engine.name(), Rules.all().stream().map(ReferenceWriter::write).toList());
    }

    private static MetalAnswer write(Metal metal) {
        return new MetalAnswer(
                metal.key(), metal.gaugeSystem(), write(metal.printedDensity()), write(metal.printedExpansion()));
    }

    private static PrintedFigure write(MetalFigure figure) {
        return new PrintedFigure(
                figure.metal(),
                figure.property(),
                figure.value(),
                figure.unit(),
                figure.source(),
                figure.confidence(),
                unlessEmpty(figure.note()));
    }

    private static GaugeAnswer write(Gauge gauge) {
        return new GaugeAnswer(
                gauge.system(),
                unlessEmpty(gauge.gauge()),
                gauge.thicknessInches(),
                gauge.leastInches(),
                gauge.mostInches(),
                gauge.poundsPerSquareFoot(),
                gauge.source(),
                gauge.confidence(),
                unlessEmpty(gauge.note()));
    }

    private static RuleAnswer write(Rule rule) {
        return new RuleAnswer(
                rule.topic(),
                rule.rule(),
                unlessEmpty(rule.value()),
                rule.number(),
                unlessEmpty(rule.unit()),
                rule.source(),
                rule.confidence(),
                unlessEmpty(rule.note()));
    }

    private static Optional<String> unlessEmpty(String cell) {
        return cell.isEmpty() ? Optional.empty() : Optional.of(cell);
    }
}
