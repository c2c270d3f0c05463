package org.thalweg.packet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.finding.Origin;
import org.thalweg.packet.LayoutCase.EdgeException;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.takeoff.SheetStock;

/**
 * One valley, asked for alone.
 *
 * @param survey the roof it is in; of a corner, the two planes there
 * @param valley which of its edges
 * @param at     where in the request that is said
 * @param byKind how panels end at edges, by kind
 * @param byEdge how they end at single edges instead
 * @param terms  pan, fasteners, climate
 * @param stock  what the pan and its cleats are cut from, if that is asked
 */
public record ValleyCase(
        RoofSurvey survey,
        EdgeName valley,
        Origin at,
        Map<EdgeKind, PanelEnd> byKind,
        List<EdgeException> byEdge,
        ValleyTerms terms,
        Optional<SheetStock> stock) {

    public ValleyCase {
        byKind = Map.copyOf(byKind);
        byEdge = List.copyOf(byEdge);
    }
}
