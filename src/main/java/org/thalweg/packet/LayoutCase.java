package org.thalweg.packet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.finding.Origin;
import org.thalweg.panel.PanelSpec;
import org.thalweg.panel.PlaneLaying;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.sealing.SealingRules;
import org.thalweg.takeoff.Ordering;
import org.thalweg.takeoff.PanelSheet;
import org.thalweg.trim.TrimSpec;
import org.thalweg.underlayment.UnderlayCase;

/**
 * A layout as asked for.
 *
 * @param survey     the roof as measured
 * @param spec       the panel
 * @param sheet      what it is formed from
 * @param byKind     how panels end at edges, by kind
 * @param byEdge     how they end at single edges instead
 * @param laying     how planes are laid
 * @param byPlane    how single planes are laid instead
 * @param valleys    what its valleys and hips have in common
 * @param trims      what its edges are trimmed with
 * @param underlay   the sheets under the metal
 * @param sealing    with how much everything is made tight
 * @param wind       what clips are spaced for; nothing where the table of rules says how far apart they stand
 * @param ordering   how it is bought
 */
public record LayoutCase(
        RoofSurvey survey,
        PanelSpec spec,
        PanelSheet sheet,
        Map<EdgeKind, PanelEnd> byKind,
        List<EdgeException> byEdge,
        PlaneLaying laying,
        List<PlaneException> byPlane,
        ValleyTerms valleys,
        TrimSpec trims,
        UnderlayCase underlay,
        SealingRules sealing,
        Optional<WindTerms> wind,
        Ordering ordering) {

    public LayoutCase {
        byKind = Map.copyOf(byKind);
        byEdge = List.copyOf(byEdge);
        byPlane = List.copyOf(byPlane);
    }

    /**
     * A single edge that is treated in its own way.
     *
     * @param edge      which
     * @param end       how panels end there
     * @param at        where in the request it stands
     */
    public record EdgeException(EdgeName edge, PanelEnd end, Origin at) {}

    /**
     * A single plane that is laid in its own way.
     *
     * @param plane  its id
     * @param laying how it is laid
     * @param at     where in the request it stands
     */
    public record PlaneException(String plane, PlaneLaying laying, Origin at) {}
}
