package org.thalweg.packet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.thalweg.fastening.FastenerKind;
import org.thalweg.fastening.FasteningCase;
import org.thalweg.fastening.HeldPanel;
import org.thalweg.fastening.HeldPanel.FreeEnd;
import org.thalweg.fastening.HeldPanels;
import org.thalweg.fastening.Seam;
import org.thalweg.fastening.Seams;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Place;
import org.thalweg.movement.Growth;
import org.thalweg.movement.HeldEnd;
import org.thalweg.movement.MovementFindings;
import org.thalweg.movement.MovementFindings.Clips;
import org.thalweg.movement.MovingPanel;
import org.thalweg.panel.Cut;
import org.thalweg.roof.Edge;
import org.thalweg.roof.Plane;
import org.thalweg.units.Length;

/**
 * How far every panel of a roof moves, and what a crew should know of it.
 *
 * <p>A valley says itself that its screws pin panels, as it does when it is looked at alone; what it says is not said again.
 *
 * <p><em>Known limit.</em> Where two planes lie in one and panels are lapped over the line between, each plane's panels are
 * taken for themselves; what the lower ones move the upper ones by is not added.
 *
 * @param panels   plane by plane, strip by strip as laid, from the lowest up
 * @param longest  the longest panel the clips allow; nothing where their travel is not known or the metal keeps one temperature
 * @param findings of clips, by plane, then of ends, by edge
 */
public record RoofMovement(List<PanelMovement> panels, Optional<Length> longest, List<Finding> findings) {

    public RoofMovement {
        panels = List.copyOf(panels);
        findings = List.copyOf(findings);
    }

    /**
     * @param fastening the laid roof
     * @param seams     its clips
     * @param valleys   those that are laid out
     * @param terms     metal, temperatures, and what lets panels move
     */
    static RoofMovement of(FasteningCase fastening, Seams seams, List<LaidValley> valleys, ValleyTerms terms) {
        Moving moving = new Moving(fastening, seams, terms);
        List<PanelMovement> panels = new ArrayList<>();
        for (HeldPanel held : HeldPanels.of(fastening).panels()) {
            panels.add(new PanelMovement(held, moving.panel(held)));
        }
        Optional<Length> longest = terms.movement()
                .clipTravel()
                .flatMap(travel ->
                        Growth.longest(travel, terms.metal().expansion().value(), terms.temperatures()))
                .map(fastening.fixed()::longest);
        List<Finding> findings = MovementFindings.of(
                panels.stream().map(PanelMovement::moves).toList(),
                terms.movement().clipTravel().map(travel -> new Clips(travel, longest)),
                Length.metres(fastening.roof().tolerance().hair()));
        Set<String> told = saidByValleys(valleys);
        return new RoofMovement(
                panels,
                longest,
                findings.stream()
                        .filter(each -> each.code() != FindingCode.FIXED_PANEL_MOVES
                                || !told.contains(each.place().id()))
                        .toList());
    }

    /** How far the clips of each plane must let its panels slide, each way; by the plane's index, those that have panels. */
    public Map<Integer, Length> travelNeeded() {
        Map<Integer, Length> needed = new HashMap<>();
        for (PanelMovement panel : panels) {
            needed.merge(
                    panel.held().plane(),
                    panel.moves().travelNeeded(),
                    (one, other) -> one.compareTo(other) >= 0 ? one : other);
        }
        return needed;
    }

    private static Set<String> saidByValleys(List<LaidValley> valleys) {
        Set<String> edges = new HashSet<>();
        for (LaidValley valley : valleys) {
            if (valley.findings().stream().anyMatch(each -> each.code() == FindingCode.FIXED_PANEL_MOVES)) {
                edges.add(valley.layout().edge().edge().id());
            }
        }
        return edges;
    }

    /** Looks at one panel after the other. */
    private static final class Moving {

        private final FasteningCase fastening;
        private final ValleyTerms terms;
        private final Map<PlaneStrip, List<Seam>> seams = new HashMap<>();

        Moving(FasteningCase fastening, Seams seams, ValleyTerms terms) {
            this.fastening = fastening;
            this.terms = terms;
            for (Seam seam : seams.seams()) {
                this.seams
                        .computeIfAbsent(new PlaneStrip(seam.plane(), seam.strip()), strip -> new ArrayList<>(1))
                        .add(seam);
            }
        }

        private record PlaneStrip(int plane, int strip) {}

        private record EdgeAndEnd(int edge, boolean lower) {}

        MovingPanel panel(HeldPanel held) {
            Plane plane = fastening.roof().planes().get(held.plane());
            return new MovingPanel(
                    held.mark(),
                    new Place(Place.Kind.PLANE, plane.id(), plane.at()),
                    growth(held.below()),
                    growth(held.above()),
                    clipped(held),
                    ends(held));
        }

        private Growth growth(Length free) {
            return Growth.of(free, terms.metal().expansion().value(), terms.temperatures());
        }

        /** Whether a seam runs along it, on either side. */
        private boolean clipped(HeldPanel held) {
            int strip = held.pieces().get(0).strip();
            double lowest = held.fixed().up() - held.below().metres();
            double highest = held.fixed().up() + held.above().metres();
            for (int first = strip - 1; first <= strip; first++) {
                for (Seam seam : seams.getOrDefault(new PlaneStrip(held.plane(), first), List.of())) {
                    if (seam.from().up() < highest && seam.to().up() > lowest) {
                        return true;
                    }
                }
            }
            return false;
        }

        /** One for each edge and end, the part of it that is furthest away; lower ends first, in the order of the edges. */
        private List<HeldEnd> ends(HeldPanel held) {
            Map<EdgeAndEnd, FreeEnd> furthest = new HashMap<>();
            for (FreeEnd end : held.ends()) {
                furthest.merge(
                        new EdgeAndEnd(end.edge(), end.lower()),
                        end,
                        (one, other) -> other.free().compareTo(one.free()) > 0 ? other : one);
            }
            return furthest.values().stream()
                    .sorted(Comparator.comparing(FreeEnd::lower).reversed().thenComparing(FreeEnd::edge))
                    .map(this::end)
                    .toList();
        }

        private HeldEnd end(FreeEnd end) {
            Edge edge = fastening.roof().edges().get(end.edge());
            Place place = new Place(Place.Kind.EDGE, edge.id(), edge.at());
            Growth growth = growth(end.free());
            Optional<FastenerKind> kind = FastenerKind.at(
                    edge.kind(),
                    end.lower() ? Cut.End.LOWER : Cut.End.UPPER,
                    fastening.holds().get(end.edge()));
            if (kind.equals(Optional.of(FastenerKind.CLEAT))) {
                Length hem = fastening.treatments().get(end.edge()).hem();
                return HeldEnd.hooked(
                        place,
                        end.lower(),
                        growth,
                        end.mitre(),
                        terms.movement().hook(hem));
            }
            return kind.filter(FastenerKind::pinsPanel).isPresent()
                    ? HeldEnd.screwed(
                            place, end.lower(), growth, terms.movement().screwPlay())
                    : HeldEnd.free(place, end.lower(), growth);
        }
    }
}
