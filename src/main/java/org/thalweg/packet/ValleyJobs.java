package org.thalweg.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Roof;
import org.thalweg.roof.Roofs;
import org.thalweg.takeoff.SheetCut;
import org.thalweg.takeoff.SheetCutting;
import org.thalweg.takeoff.SheetStock;
import org.thalweg.valley.SlopedEdge;

/** Lays out valleys that are asked for alone. */
public final class ValleyJobs {

    private ValleyJobs() {}

    /**
     * Valleys of a roof of which nothing else was asked.
     *
     * @param roof    the roof as read
     * @param valleys those that lie where the request said; one or more, from the order of the edges
     * @param cuts    their pans and cleats, cut from stock where there is some
     */
    public record ValleyJob(Roof roof, List<LaidValley> valleys, List<SheetCut> cuts) {
        public ValleyJob {
            valleys = List.copyOf(valleys);
            cuts = List.copyOf(cuts);
        }
    }

    /**
     * Reads the roof and lays out the valley, or the valleys a line is parted into.
     *
     * @throws Refused when what was measured is no roof, or what is named is no valley of it
     */
    public static ValleyJob layOut(ValleyCase asked) {
        Roof roof = Roofs.read(asked.survey());
        List<Integer> named = NamedEdges.of(roof, asked.valley());
        if (named.isEmpty()) {
            throw new Refused(noEdge(asked));
        }
        ValleyWork.check(roof, named, asked.terms().pan(), asked.at());
        List<Refusal> refusals = new ArrayList<>(0);
        PanelEnds ends = new PanelEnds(roof, asked.byKind(), asked.byEdge(), refusals);
        List<LaidValley> valleys = new ArrayList<>(1);
        for (int edge : named) {
            valley(roof, edge).ifPresent(valley -> valleys.add(lay(roof, valley, ends, asked)));
        }
        if (valleys.isEmpty()) {
            refusals.add(noValley(roof, named.get(0), asked));
        }
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        return new ValleyJob(
                roof, valleys, asked.stock().map(stock -> cut(valleys, stock)).orElse(List.of()));
    }

    private static List<SheetCut> cut(List<LaidValley> valleys, SheetStock stock) {
        SheetCutting cutting = new SheetCutting(stock);
        valleys.forEach(valley -> cutting.add(valley.layout()));
        return cutting.cut();
    }

    private static LaidValley lay(Roof roof, SlopedEdge valley, PanelEnds ends, ValleyCase asked) {
        ValleyTerms terms = asked.terms();
        return LaidValley.of(roof, valley, ends, terms, terms.asked(asked.survey()));
    }

    private static Optional<SlopedEdge> valley(Roof roof, int edge) {
        return roof.edges().get(edge).kind() == EdgeKind.VALLEY ? SlopedEdge.of(roof, edge) : Optional.empty();
    }

    private static Refusal noEdge(ValleyCase asked) {
        if (asked.valley() instanceof EdgeName.OnlyValley) {
            return Refusal.of(
                    RefusalCode.NO_VALLEY,
                    asked.at(),
                    "The planes meet so near level, or so nearly in one plane, that no valley runs between them. Check the"
                            + " corner and the pitches.");
        }
        return NamedEdges.none(asked.at());
    }

    private static Refusal noValley(Roof roof, int edge, ValleyCase asked) {
        EdgeKind kind = roof.edges().get(edge).kind();
        return Refusal.of(
                RefusalCode.NOT_A_VALLEY,
                asked.at(),
                kind == EdgeKind.VALLEY
                        ? "More than two planes crowd about this valley, so it is not laid out. Leave out the planes that are"
                                + " given twice or lie under the roof."
                        : "This edge is of the kind " + kind.wire()
                                + ". Name a valley; /v1/roofs tells which edges are.");
    }
}
