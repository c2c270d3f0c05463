package org.thalweg.movement;

import java.util.Optional;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Place;
import org.thalweg.reference.Expansion;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;

/**
 * One panel that is fixed at one place, and what lets it move there from: its clips, the hems at its ends, the holes of screws.
 *
 * @param panel        which
 * @param expansion    of its metal
 * @param temperatures of it
 */
public record Moves(Place panel, Expansion expansion, Temperatures temperatures) {

    /** How far a place of it moves that lies {@code free} from where it is fixed. */
    public Growth growth(Length free) {
        return Growth.of(free, expansion, temperatures);
    }

    /**
     * Whether its clips let it move; the end is taken for the last clip, which stands a little nearer.
     *
     * @param free    from where it is fixed to its further end
     * @param travel  of a clip, each way from where it was set
     * @param longest the longest panel clips of that travel allow where panels are fixed as this one is
     * @return nothing if they do
     */
    public Optional<Finding> onClips(Length free, Play travel, Length longest) {
        Length most = growth(free).most();
        if (most.compareTo(travel.eachWay()) <= 0) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(
                        FindingCode.CLIP_TRAVEL_TOO_SMALL,
                        panel,
                        "The further end of panel {place} moves {actual} and its clips let it move {limit}; panels up to"
                                + " {longestPanel} would do. Take clips with more travel, fix the panel half-way up, or part"
                                + " it by an expansion joint.",
                        most,
                        travel.eachWay(),
                        travel.source())
                .needs("longestPanel", longest));
    }

    /**
     * Whether the hem at one of its ends stays hooked to its cleat, and the cleat free in it.
     *
     * @param free  from where it is fixed to that end
     * @param mitre φ, from the level line to the end
     * @param edge  name of the edge it ends on
     * @return nothing if it does
     */
    public Optional<Finding> inHem(Length free, Angle mitre, HemHook hem, String edge) {
        Growth square = growth(free).squareTo(mitre);
        boolean slipsOff = square.longer().metres() > 0 && square.longer().compareTo(hem.engaged()) >= 0;
        if (!slipsOff && square.shorter().compareTo(hem.gap()) <= 0) {
            return Optional.empty();
        }
        String message = slipsOff
                ? "Growing, the hem of panel {place} moves {actual} at edge " + edge
                        + " and {limit} of the cleat lies in it:"
                        + " it slips off. Hook it further in, or make the hem {hem} at least."
                : "Shrinking, the hem of panel {place} moves {actual} at edge " + edge
                        + " and has {limit} before it bears on"
                        + " its cleat. Hook it less far in, or make the hem {hem} at least.";
        return Optional.of(Finding.of(
                        FindingCode.HEM_TOO_SHORT,
                        panel,
                        message,
                        slipsOff ? square.longer() : square.shorter(),
                        slipsOff ? hem.engaged() : hem.gap(),
                        hem.source())
                .needs("hem", HemHook.hemFor(square)));
    }

    /**
     * Whether screws through one of its ends, away from where it is fixed, let it move.
     *
     * @param free from where it is fixed to that end
     * @param play of their holes
     * @param edge name of the edge it ends on
     * @return nothing if they do
     */
    public Optional<Finding> underScrews(Length free, Play play, String edge) {
        Length most = growth(free).most();
        if (most.compareTo(play.eachWay()) <= 0) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(
                FindingCode.FIXED_PANEL_MOVES,
                panel,
                "Panel {place} is screwed down at edge " + edge + ", where it moves {actual} and its screws let it move"
                        + " {limit}. Hold it there by a cleat, or fix it there and nowhere else.",
                most,
                play.eachWay(),
                play.source()));
    }
}
