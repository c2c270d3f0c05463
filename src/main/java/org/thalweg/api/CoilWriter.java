package org.thalweg.api;

import java.util.List;
import java.util.Optional;
import org.thalweg.api.wire.CoilAnswer;
import org.thalweg.api.wire.CoilAnswer.BlankRunAnswer;
import org.thalweg.api.wire.CoilAnswer.LayingOrderAnswer;
import org.thalweg.api.wire.CoilAnswer.PairedAnswer;
import org.thalweg.api.wire.CoilAnswer.RunPanelAnswer;
import org.thalweg.api.wire.CoilAnswer.SpanAnswer;
import org.thalweg.api.wire.MarkedLength;
import org.thalweg.stock.CoilPlan;
import org.thalweg.stock.CoilRun;
import org.thalweg.stock.CoilRun.PlacedPanel;
import org.thalweg.stock.Grid;
import org.thalweg.stock.PairedBlanks;
import org.thalweg.units.Area;
import org.thalweg.units.Length;
import org.thalweg.units.Units;

/** Writes the run of a coil, panel by panel with the marks along both of its edges. */
final class CoilWriter {

    private final Units units;

    CoilWriter(Units units) {
        this.units = units;
    }

    CoilAnswer write(String stock, CoilPlan plan, Optional<Length> width, Optional<PairedBlanks> paired) {
        Length ordered = Grid.length(plan.best().length());
        Length panels = Length.metres(Grid.length(plan.bothEdges()).metres() / 2);
        return new CoilAnswer(
                stock,
                marked(plan.best().length()),
                units.length().round(panels),
                marked(plan.eachSquare()),
                area(ordered, width),
                area(panels, width),
                run(plan.best()),
                new LayingOrderAnswer(
                        marked(plan.inOrder().length()),
                        units.length().round(Grid.length(plan.costOfOrder())),
                        run(plan.inOrder())),
                paired.map(this::paired));
    }

    private PairedAnswer paired(PairedBlanks paired) {
        return new PairedAnswer(
                marked(paired.length()),
                paired.proven(),
                paired.blanks().stream()
                        .map(blank -> new BlankRunAnswer(marked(blank.run().length()), run(blank.run())))
                        .toList());
    }

    private Optional<Double> area(Length length, Optional<Length> width) {
        return width.map(wide -> units.area().round(new Area(length.metres() * wide.metres())));
    }

    private List<RunPanelAnswer> run(CoilRun run) {
        return run.panels().stream().map(this::panel).toList();
    }

    private RunPanelAnswer panel(PlacedPanel placed) {
        long lower = placed.from();
        long upper = lower + placed.panel().left();
        return new RunPanelAnswer(
                placed.panel().id(),
                placed.turned(),
                new SpanAnswer(marked(lower), marked(lower + placed.panel().lower())),
                new SpanAnswer(marked(upper), marked(upper + placed.panel().upper())));
    }

    private MarkedLength marked(long steps) {
        return RoofWriter.marked(Grid.length(steps), units);
    }
}
