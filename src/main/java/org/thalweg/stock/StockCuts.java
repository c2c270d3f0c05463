package org.thalweg.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.thalweg.stock.CuttingPlan.Proof;
import org.thalweg.stock.CuttingPlan.Reason;
import org.thalweg.stock.CuttingPlan.Unplaced;

/**
 * Cutting pieces from bars at the least cost, with a bound that says how far from the least it may be.
 *
 * <p>What is least is the cost of the bars used. What goes back to the rack is told and valued, but not weighed against the
 * cost: a plan is not made dearer to keep a longer off-cut.
 *
 * <p>Fewer bars are taken where they cost no more: no two bars of a plan that cost something, and no three of a plan of up to
 * 100 different bars, could be one bar of their cost or less. That a plan has the fewest bars of all that cost as much is not
 * promised.
 *
 * <p>The same request gives the same plan, on any machine, unless the budget's clock strikes first.
 */
public final class StockCuts {

    private StockCuts() {}

    public static CuttingPlan cut(CuttingCase asked) {
        PieceKinds kinds = new PieceKinds(asked);
        if (kinds.none()) {
            return nothing(asked, kinds);
        }
        CuttingProblem problem = kinds.problem();
        Work work = new Work(asked.budget());
        Incumbent best = CuttingSolver.solve(problem, work);
        BarFilling filling = BarFilling.of(asked, kinds, problem, FewerBars.of(problem, best.lots()));
        boolean tooFew = best.bound() >= kinds.missing();
        List<CutBar> bars = filling.bars();
        long cost = filling.cost();
        return new CuttingPlan(
                bars,
                cost,
                Math.min(best.bound(), cost),
                best.bySearch() ? Proof.SEARCH : Proof.CERTIFICATE,
                realBars(best.certificate(), asked),
                kinds.priced(),
                unplaced(asked, kinds, filling.uncut(), tooFew ? Reason.TOO_FEW_BARS : Reason.NOT_FOUND),
                work.late());
    }

    private static CuttingPlan nothing(CuttingCase asked, PieceKinds kinds) {
        Certificate zero = Certificate.of(new long[0], new long[asked.stock().size()]);
        List<Unplaced> unplaced = unplaced(asked, kinds, Map.of(), Reason.TOO_LONG);
        return new CuttingPlan(List.of(), 0, 0, Proof.CERTIFICATE, zero, List.of(), unplaced, false);
    }

    /** Without the bar that nobody has, in the smallest whole numbers. */
    private static Certificate realBars(Certificate certificate, CuttingCase asked) {
        return new Certificate(
                        certificate.prices(),
                        certificate.worths().subList(0, asked.stock().size()))
                .reduced();
    }

    /** In the order of the request. */
    private static List<Unplaced> unplaced(
            CuttingCase asked, PieceKinds kinds, Map<String, Integer> uncut, Reason reason) {
        List<Unplaced> unplaced = new ArrayList<>();
        for (CutPiece piece : asked.pieces()) {
            int tooLong = kinds.tooLong().getOrDefault(piece.id(), 0);
            int left = uncut.getOrDefault(piece.id(), 0);
            if (tooLong + left > 0) {
                unplaced.add(new Unplaced(piece.id(), tooLong + left, tooLong > 0 ? Reason.TOO_LONG : reason));
            }
        }
        return unplaced;
    }
}
