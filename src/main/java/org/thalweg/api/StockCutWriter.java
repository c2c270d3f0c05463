package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.api.wire.FindingAnswer;
import org.thalweg.api.wire.StockCutAnswer;
import org.thalweg.api.wire.StockCutAnswer.StockCutUsed;
import org.thalweg.api.wire.StockCutAnswer.StockUsedAnswer;
import org.thalweg.api.wire.StockCutRequest;
import org.thalweg.api.wire.StockCutRequest.StockForm;
import org.thalweg.api.wire.StockCutRequest.StockKind;
import org.thalweg.finding.Origin;
import org.thalweg.stock.CoilPlan;
import org.thalweg.stock.CuttingCase;
import org.thalweg.stock.CuttingPlan;
import org.thalweg.stock.Grid;
import org.thalweg.stock.PairedBlanks;
import org.thalweg.stock.StockBar;
import org.thalweg.units.Tape;
import org.thalweg.units.Units;

/** Writes the answer to a request to cut stock: from bars or from a coil. */
final class StockCutWriter {

    private final Units units;
    private final StockCutRequest request;
    private final String engine;
    private final String digest;
    private final List<String> left = new ArrayList<>();

    StockCutWriter(Units units, StockCutRequest request, String engine, String digest) {
        this.units = units;
        this.request = request;
        this.engine = engine;
        this.digest = digest;
    }

    /** From bars. */
    StockCutAnswer answer(StockCutReader.Bars asked, CuttingPlan plan) {
        CuttingCase cutting = asked.cutting();
        return new StockCutAnswer(
                engine,
                digest,
                request.units(),
                used(asked),
                new PlanWriter(units).bars(plan),
                Optional.of(plan.cost()),
                plan.barCount(),
                Optional.of(plan.lowerBound()),
                plan.proven(),
                Optional.of(plan.proof()),
                Optional.of(plan.gap()),
                Optional.of(plan.keptValue()),
                plan.late(),
                Optional.of(new PlanWriter(units).certificate(cutting, plan)),
                Optional.empty(),
                PlanWriter.unplaced(plan),
                findings(cutting, plan),
                Cautions.ALL);
    }

    /** From a coil. */
    StockCutAnswer answer(StockCutReader.Coil asked, CoilPlan plan, PairedBlanks paired) {
        return new StockCutAnswer(
                engine,
                digest,
                request.units(),
                used(asked),
                List.of(),
                Optional.empty(),
                0,
                Optional.empty(),
                true,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.of(new CoilWriter(units).write(asked.stock(), plan, asked.width(), Optional.of(paired))),
                List.of(),
                List.of(),
                Cautions.ALL);
    }

    private List<FindingAnswer> findings(CuttingCase cutting, CuttingPlan plan) {
        return FindingWriter.findings(CutFindings.of(plan, cutting, Origin.REQUEST.at("pieces")::at), units);
    }

    // What it was made with.

    private StockCutUsed used(StockCutReader.Bars asked) {
        CuttingCase cutting = asked.cutting();
        List<StockUsedAnswer> stock = new ArrayList<>();
        for (int i = 0; i < cutting.stock().size(); i++) {
            stock.add(stock(request.stock().get(i), cutting.stock().get(i), "#/stock/" + i));
        }
        UsedWriter.ifAbsent(request.kerf(), "#/kerf", left);
        UsedWriter.ifAbsent(request.keepableOffcut(), "#/keepableOffcut", left);
        UsedWriter.ifAbsent(request.deadlineMs(), "#/deadlineMs", left);
        return new StockCutUsed(
                stock,
                Optional.of(length(cutting.kerf())),
                Optional.of(length(cutting.keepable())),
                Optional.empty(),
                asked.width().map(units.length()::round),
                Optional.of(asked.deadlineMs()),
                Tape.rule(units.length()),
                left);
    }

    private StockUsedAnswer stock(StockForm form, StockBar bar, String at) {
        UsedWriter.stockDefaults(form, at, left);
        return new StockUsedAnswer(
                bar.id(),
                form.kindOrBar(),
                Optional.of(length(bar.length())),
                Optional.of(bar.cost()),
                PlanWriter.count(bar));
    }

    private StockCutUsed used(StockCutReader.Coil asked) {
        UsedWriter.ifAbsent(request.turning(), "#/turning", left);
        return new StockCutUsed(
                List.of(new StockUsedAnswer(
                        asked.stock(), StockKind.COIL, Optional.empty(), Optional.empty(), Optional.empty())),
                Optional.empty(),
                Optional.empty(),
                Optional.of(asked.turning()),
                asked.width().map(units.length()::round),
                Optional.empty(),
                Tape.rule(units.length()),
                left);
    }

    private double length(long steps) {
        return units.length().round(Grid.length(steps));
    }
}
