package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.api.wire.CertificateAnswer;
import org.thalweg.api.wire.CertificateAnswer.PriceAnswer;
import org.thalweg.api.wire.CertificateAnswer.WorthAnswer;
import org.thalweg.api.wire.MarkedLength;
import org.thalweg.api.wire.StockCutAnswer.BarAnswer;
import org.thalweg.api.wire.StockCutAnswer.PlacedAnswer;
import org.thalweg.api.wire.StockCutAnswer.UnplacedAnswer;
import org.thalweg.stock.CutBar;
import org.thalweg.stock.CuttingCase;
import org.thalweg.stock.CuttingPlan;
import org.thalweg.stock.CuttingPlan.Kind;
import org.thalweg.stock.Grid;
import org.thalweg.stock.StockBar;
import org.thalweg.units.Units;

/** Writes a cutting plan: bars piece by piece, and the price list that proves how good it is. */
final class PlanWriter {

    private final Units units;

    PlanWriter(Units units) {
        this.units = units;
    }

    List<BarAnswer> bars(CuttingPlan plan) {
        return plan.bars().stream().map(this::bar).toList();
    }

    private BarAnswer bar(CutBar bar) {
        List<PlacedAnswer> pieces = new ArrayList<>(bar.pieces().size());
        long kerfs = bar.length() - bar.offcut();
        for (CutBar.PlacedPiece piece : bar.pieces()) {
            pieces.add(new PlacedAnswer(piece.id(), marked(piece.from()), marked(piece.to())));
            kerfs -= piece.to() - piece.from();
        }
        return new BarAnswer(
                bar.stock(),
                marked(bar.length()),
                bar.count(),
                pieces,
                units.length().round(Grid.length(kerfs)),
                marked(bar.offcut()),
                bar.kept(),
                bar.value());
    }

    CertificateAnswer certificate(CuttingCase cutting, CuttingPlan plan) {
        List<PriceAnswer> prices = new ArrayList<>();
        long worth = 0;
        for (int kind = 0; kind < plan.priced().size(); kind++) {
            Kind priced = plan.priced().get(kind);
            long price = plan.certificate().prices().get(kind);
            worth += price * priced.count();
            prices.add(new PriceAnswer(
                    priced.length(),
                    priced.count(),
                    price,
                    priced.pieces(),
                    priced.apart().map(Long::valueOf)));
        }
        List<WorthAnswer> worths = new ArrayList<>();
        for (int i = 0; i < cutting.stock().size(); i++) {
            StockBar bar = cutting.stock().get(i);
            worths.add(new WorthAnswer(
                    bar.id(),
                    bar.length() + cutting.kerf(),
                    plan.certificate().worths().get(i)));
        }
        Optional<Long> scale = worths.size() == 1 ? Optional.of(worths.get(0).worth()) : Optional.empty();
        return new CertificateAnswer(Grid.atLeast(units.length().of(1)), prices, worths, worth, scale);
    }

    static List<UnplacedAnswer> unplaced(CuttingPlan plan) {
        return plan.unplaced().stream()
                .map(each -> new UnplacedAnswer(each.id(), each.count(), each.reason()))
                .toList();
    }

    /** How many bars there are; nothing where there are as many as are wanted. */
    static Optional<Long> count(StockBar bar) {
        return bar.count().isPresent() ? Optional.of((long) bar.count().getAsInt()) : Optional.empty();
    }

    private MarkedLength marked(long steps) {
        return RoofWriter.marked(Grid.length(steps), units);
    }
}
