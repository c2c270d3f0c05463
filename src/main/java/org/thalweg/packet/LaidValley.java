package org.thalweg.packet;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.drainage.Channel;
import org.thalweg.drainage.PanRoom;
import org.thalweg.drainage.ValleyWater;
import org.thalweg.drainage.WaterCase;
import org.thalweg.drainage.WaterSide;
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
 * @param water   what runs down it
 */
public record LaidValley(
        ValleyLayout layout,
        List<ValleyRows.Row> rows,
        Length longest,
        Growth growth,
        HoldAdvice advice,
        ValleyWater water) {

    public LaidValley {
        rows = List.copyOf(rows);
    }

    static LaidValley of(Roof roof, SlopedEdge edge, PanelEnds ends, ValleyTerms terms, ValleyAsked asked) {
        PanSpec pan = ends.pan(edge.index(), terms);
        PanelHold hold = terms.hold(ends.of(edge.index()));
        ValleyLayout layout = Valleys.layOut(edge, pan, hold, asked, roof.tolerance());
        Length longest = longer(edge.left().run(), edge.right().run());
        Growth growth = Growth.of(longest, terms.metal().expansion().value(), terms.temperatures());
        return new LaidValley(
                layout,
                ValleyRows.of(layout, terms.rules().ofValley(), asked.panelCover(), roof.tolerance()),
                longest,
                growth,
                HoldAdvice.of(growth, terms.screwPlay()),
                water(roof, edge, pan, terms));
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
        if (layout.hold() == PanelHold.FIXED && !advice.fixedWillDo()) {
            all.add(Finding.of(
                    FindingCode.FIXED_PANEL_MOVES,
                    layout.edge().place(),
                    "The longest panel at valley {place} moves {actual} and fixed screws let it move {limit}. Hold the panels"
                            + " with a cleat.",
                    advice.growth(),
                    advice.limit(),
                    advice.source()));
        }
        all.addAll(water.findings());
        return all;
    }
}
