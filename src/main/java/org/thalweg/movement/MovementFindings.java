package org.thalweg.movement;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Place;
import org.thalweg.units.Length;

/**
 * What a crew should know of panels that move further than they can. A roof has hundreds of panels and they all move, so there
 * is one finding for what is wrong at one edge, or with the clips of one plane. It names the panel it is worst for and says how
 * many it concerns; of panels that are equally bad it names the first.
 */
public final class MovementFindings {

    /**
     * The clips of a job.
     *
     * @param travel  how far a panel can slide in one
     * @param longest the longest panel they allow; nothing where the metal keeps one temperature
     */
    public record Clips(Play travel, Optional<Length> longest) {}

    private final Length hair;
    private final Map<Place, Worst> clipped = new LinkedHashMap<>();
    private final Map<EdgeAndCode, Worst> held = new LinkedHashMap<>();

    private MovementFindings(Length hair) {
        this.hair = hair;
    }

    private record EdgeAndCode(Place edge, FindingCode code) {}

    /**
     * The worst panel so far.
     *
     * @param excess by how much it moves further than it may
     * @param end    where, if not in its clips
     * @param count  how many panels there are with it
     * @param last   the mark of the one that was met last
     */
    private record Worst(MovingPanel panel, Length excess, Optional<HeldEnd> end, int count, String last) {

        static Worst first(MovingPanel panel, Length excess, Optional<HeldEnd> end) {
            return new Worst(panel, excess, end, 1, panel.mark());
        }

        /** With one more, which may be the last one at another of its ends. */
        Worst and(MovingPanel other, Length by, Optional<HeldEnd> at, Length hair) {
            int counted = last.equals(other.mark()) ? count : count + 1;
            return by.metres() > excess.metres() + hair.metres()
                    ? new Worst(other, by, at, counted, other.mark())
                    : new Worst(panel, excess, end, counted, other.mark());
        }

        Finding.Panels panels() {
            return new Finding.Panels(panel.mark(), count);
        }
    }

    /**
     * The findings of a roof's panels: of clips, by plane, then of ends, by edge, both in the order in which the panels come to
     * them.
     *
     * @param clips nothing if their travel is not known; they are not checked then
     * @param hair  movements closer than this are one
     */
    public static List<Finding> of(List<MovingPanel> panels, Optional<Clips> clips, Length hair) {
        MovementFindings findings = new MovementFindings(hair);
        for (MovingPanel panel : panels) {
            clips.ifPresent(each -> findings.onClips(panel, each));
            findings.atEnds(panel);
        }
        List<Finding> all = new ArrayList<>();
        clips.ifPresent(each -> findings.clipped.forEach((plane, worst) -> all.add(clips(plane, worst, each))));
        findings.held.forEach((at, worst) ->
                all.add(at.code() == FindingCode.HEM_TOO_SHORT ? hem(at.edge(), worst) : screws(at.edge(), worst)));
        return all;
    }

    private void onClips(MovingPanel panel, Clips clips) {
        Length excess = Length.metres(
                panel.travelNeeded().metres() - clips.travel().eachWay().metres());
        if (panel.clipped() && excess.metres() > hair.metres()) {
            meet(clipped, panel.plane(), panel, excess, Optional.empty());
        }
    }

    private void atEnds(MovingPanel panel) {
        for (HeldEnd end : panel.ends()) {
            if (!end.within()) {
                FindingCode code =
                        end.hold() == EndHold.HEM ? FindingCode.HEM_TOO_SHORT : FindingCode.FIXED_PANEL_MOVES;
                meet(held, new EdgeAndCode(end.edge(), code), panel, end.excess(), Optional.of(end));
            }
        }
    }

    private <K> void meet(Map<K, Worst> worsts, K key, MovingPanel panel, Length excess, Optional<HeldEnd> end) {
        Worst worst = worsts.get(key);
        worsts.put(key, worst == null ? Worst.first(panel, excess, end) : worst.and(panel, excess, end, hair));
    }

    private static Finding clips(Place plane, Worst worst, Clips clips) {
        String longest = clips.longest().isPresent() ? " Panels up to {longestPanel} would do." : "";
        Finding finding = Finding.of(
                        FindingCode.CLIP_TRAVEL_TOO_SMALL,
                        plane,
                        "The further end of panel {panel} of plane {place} moves {actual} and its clips let it move {limit};"
                                + " panels it concerns: {panelCount}." + longest
                                + " Take clips with more travel, fix the panels half-way up, or part them by an expansion"
                                + " joint.",
                        worst.panel.travelNeeded(),
                        clips.travel().eachWay(),
                        clips.travel().source())
                .about(worst.panels());
        return clips.longest()
                .map(length -> finding.needs("longestPanel", length))
                .orElse(finding);
    }

    private static Finding hem(Place edge, Worst worst) {
        HeldEnd end = worst.end.orElseThrow();
        Allowance allowed = end.allowed().orElseThrow();
        boolean out = end.worseOut();
        String message = out
                ? "Growing, the hem of panel {panel} moves {actual} at edge {place} and {limit} of the cleat lies in it: it"
                        + " slips off; panels it concerns: {panelCount}. Hook it further in, or make the hem {hem} at least."
                : "Shrinking, the hem of panel {panel} moves {actual} at edge {place} and has {limit} before it bears on its"
                        + " cleat; panels it concerns: {panelCount}. Hook it less far in, or make the hem {hem} at least.";
        return Finding.of(
                        FindingCode.HEM_TOO_SHORT,
                        edge,
                        message,
                        out ? end.moves().longer() : end.moves().shorter(),
                        out ? allowed.longer() : allowed.shorter(),
                        allowed.source())
                .needs("hem", HemHook.hemFor(end.moves()))
                .about(worst.panels());
    }

    private static Finding screws(Place edge, Worst worst) {
        HeldEnd end = worst.end.orElseThrow();
        Allowance allowed = end.allowed().orElseThrow();
        String both = worst.panel.screwedTwice()
                ? "Screws hold panel {panel} down at its lower end and at its upper end, so it can't move: at edge {place}"
                        + " it would by {actual}"
                : "Screws hold panel {panel} down at edge {place}, away from where it is fixed: it moves {actual}";
        String remedy = end.lower()
                ? " Hold the panels there by a cleat, or fix them there and let their upper ends slide."
                : " Let them slide there, with closure and flashing fastened to the panels only, or fix them there and hold"
                        + " their lower ends by cleats.";
        return Finding.of(
                        FindingCode.FIXED_PANEL_MOVES,
                        edge,
                        both + " and the screws' holes let it {limit}; panels it concerns: {panelCount}." + remedy,
                        end.moves().most(),
                        allowed.longer(),
                        allowed.source())
                .about(worst.panels());
    }
}
