package org.thalweg.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.drainage.Channel;
import org.thalweg.drainage.PanRoom;
import org.thalweg.drainage.ValleyWater;
import org.thalweg.drainage.WaterCase;
import org.thalweg.drainage.WaterSide;
import org.thalweg.fastening.FixedPoint;
import org.thalweg.fastening.ValleyRows;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Source;
import org.thalweg.movement.Growth;
import org.thalweg.movement.HoldAdvice;
import org.thalweg.roof.PanelHold;
import org.thalweg.roof.Roof;
import org.thalweg.units.Length;
import org.thalweg.valley.PanSpec;
import org.thalweg.valley.SlopedEdge;
import org.thalweg.valley.ValleyLayout;
import org.thalweg.valley.Valleys;
import org.thalweg.valley.Valleys.ValleyAsked;

/**
 * Everything a crew needs to know about one valley. What a layout says of a valley and what is said of it alone both come
 * from {@link #of}.
 *
 * @param layout  pan, lines and cleats
 * @param rows    fasteners
 * @param longest longest panel that ends at it
 * @param growth  how far that panel grows and shrinks
 * @param advice  how to hold it
 * @param fixed   where its panels are fixed
 * @param pan     how far its pan moves
 * @param water   what runs down it
 */
public record LaidValley(
        ValleyLayout layout,
        List<ValleyRows.Row> rows,
        Length longest,
        Growth growth,
        HoldAdvice advice,
        FixedPoint fixed,
        PanMovement pan,
        ValleyWater water) {

    public LaidValley {
        rows = List.copyOf(rows);
    }

    static LaidValley of(Roof roof, SlopedEdge edge, PanelEnds ends, ValleyTerms terms, ValleyAsked asked) {
        ValleyLayout layout = pan(roof, edge, ends, terms, asked);
        Length longest = longer(edge.left().run(), edge.right().run());
        Growth growth = Growth.of(longest, terms.metal().expansion().value(), terms.temperatures());
        List<ValleyRows.Row> rows =
                ValleyRows.of(layout, terms.rules().ofValley(), asked.panelCover(), roof.tolerance());
        return new LaidValley(
                layout,
                rows,
                longest,
                growth,
                HoldAdvice.of(growth, terms.movement().screwPlay()),
                terms.movement().fixed(),
                PanMovement.of(layout, rows, terms),
                water(roof, edge, layout.spec(), terms));
    }

    /** Its pan with its lines and cleats, and nothing else. */
    static ValleyLayout pan(Roof roof, SlopedEdge edge, PanelEnds ends, ValleyTerms terms, ValleyAsked asked) {
        PanelHold hold = terms.hold(ends.of(edge.index()));
        return Valleys.layOut(edge, ends.pan(edge.index(), terms), hold, asked, roof.tolerance());
    }

    private static ValleyWater water(Roof roof, SlopedEdge edge, PanSpec pan, ValleyTerms terms) {
        PanRoom room = new PanRoom(
                atLeastNothing(pan.heldBack()),
                atLeastNothing(pan.heldBackAtTop(edge.length())),
                terms.margin(),
                pan.ribLeg(),
                pan.beyondHoldBack(),
                Source.REQUEST);
        return ValleyWater.of(new WaterCase(
                edge.place(),
                edge.length(),
                edge.edge().slope(),
                List.of(
                        WaterSide.of(roof, edge.left().plane(), edge.index()),
                        WaterSide.of(roof, edge.right().plane(), edge.index())),
                room,
                terms.stations(edge.length()),
                terms.rainfall(),
                Channel.ROUGHNESS,
                roof.tolerance()));
    }

    /** Panels that run past the low leave water no room; not less than none. */
    private static Length atLeastNothing(Length heldBack) {
        return longer(heldBack, Length.ZERO);
    }

    private static Length longer(Length one, Length other) {
        return one.compareTo(other) >= 0 ? one : other;
    }

    /** What a crew should know of it. */
    public List<Finding> findings() {
        List<Finding> all = new ArrayList<>(layout.findings());
        if (layout.hold() == PanelHold.FIXED) {
            underScrews().ifPresent(all::add);
        }
        all.addAll(pan.findings());
        all.addAll(water.findings());
        return all;
    }

    /** What fixed screws do to its panels. Where panels are fixed at their lower ends, they move at the upper ones. */
    private Optional<Finding> underScrews() {
        Length moves = fixed.furthest(advice.growth());
        if (moves.compareTo(advice.limit()) <= 0) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(
                FindingCode.FIXED_PANEL_MOVES,
                layout.edge().place(),
                fixed == FixedPoint.EAVE
                        ? "The longest panel at valley {place} moves {actual} from end to end and fixed screws let it move"
                                + " {limit}: screwed down there, it must be free to slide at its upper end. Hold the panels"
                                + " with a cleat, or let no screws through their upper ends."
                        : "The longest panel at valley {place} moves {actual} there and fixed screws let it move {limit}. Hold"
                                + " the panels with a cleat.",
                moves,
                advice.limit(),
                advice.source()));
    }
}
