package org.thalweg.trim;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.thalweg.reference.Rules;
import org.thalweg.roof.EdgeKind;
import org.thalweg.trim.TrimShape.Turn;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;

/**
 * Plain profiles for every edge that gets a trim, drawn for this house; a caller's own win over them. Girths are common
 * practice, no source, but for those a published rule stands beside.
 *
 * <pre>
 *   eave drip              rake cover, peak cover     ridge and hip cap       pitch break        wall and kerb flashing
 *
 *     deck                      top                      ___/\___                                          |
 *   --------.               ________                  __/        \__          under      over              | wall
 *           | face         |        |               hooked over closures    --------. |-----.            __|
 *            \ kick     drop        | face                                          '-'      \          |  base
 *                          on pan    \ kick                                        seam    hook         drop
 * </pre>
 */
public final class UsualShapes {

    private static final Length DECK = Length.inches(4);
    private static final Length EAVE_FACE = Length.inches(2);
    private static final Length KICK = Length.inches(0.75);
    private static final Turn KICKED_OUT = Turn.degrees(30);
    private static final Length EDGE_HEM = Length.inches(0.5);
    private static final Length COVER_TOP = Length.inches(4);
    private static final Length COVER_FACE_BELOW = Length.inches(3);
    private static final Length CAP_LEG = Length.inches(6);
    private static final Length VENT_GAP = Length.inches(1);
    private static final Length VENT_LEG = Length.inches(7);
    private static final Length HOOK = Length.inches(0.5);
    private static final Length HOOK_GAP = Length.inches(0.125);
    private static final Turn SQUARE_DOWN = Turn.degrees(-90);
    private static final Turn SQUARE_UP = Turn.degrees(90);

    /** A step over the seams of a lower plane that bends further than this away grows no more: it is twice the seam. */
    private static final double MOST_STEP = 2;

    /** A face that leans further over than this is not made longer to reach past the seams. */
    private static final double LEAST_LEAN = 0.25;

    private UsualShapes() {}

    /**
     * The profile for an edge.
     *
     * @param kind       of the edge
     * @param edgeBend   how far the trim bends there; above 0 up
     * @param seamHeight of the panels; 0 or more
     * @param vented     whether ridges let air out
     * @return nothing for edges that get no trim: valleys have pans
     */
    public static Optional<TrimShape> of(EdgeKind kind, Angle edgeBend, Length seamHeight, boolean vented) {
        return switch (kind) {
            case EAVE, ANGLED_EAVE -> Optional.of(eave());
            case RAKE, ANGLED_RAKE -> Optional.of(cover("rake cover", edgeBend, seamHeight));
            case HIGH_EAVE -> Optional.of(cover("peak cover", edgeBend, seamHeight));
            case RIDGE -> Optional.of(vented ? ventedCap(seamHeight) : cap("ridge cap", seamHeight, CAP_LEG));
            case HIP -> Optional.of(hipCap(seamHeight, CAP_LEG));
            case PITCH_BREAK -> Optional.of(pitchBreak(edgeBend, seamHeight));
            case SIDE_WALL -> Optional.of(upstand("side wall flashing", seamHeight));
            case HEAD_WALL -> Optional.of(upstand("head wall flashing", seamHeight));
            case OPENING -> Optional.of(upstand("kerb flashing", seamHeight));
            case VALLEY, LEVEL_VALLEY, FLUSH, EXPANSION_JOINT, STACKED -> Optional.empty();
        };
    }

    /** The cap of a hip whose legs are so long. */
    static TrimShape hipCap(Length seamHeight, Length leg) {
        return cap("hip cap", seamHeight, leg);
    }

    /**
     * On the deck, over the fascia, and kicked out for the panels' hem to hook on. The deck leg is twice the 2 in that are
     * the least a drip edge goes up the deck. [published: see {@link Rules#dripEdgeLeastUpDeck}]
     */
    private static TrimShape eave() {
        return new TrimShape(
                "eave drip",
                List.of(DECK, EAVE_FACE, KICK),
                List.of(Turn.OF_EDGE, KICKED_OUT),
                0,
                Length.ZERO,
                Optional.empty(),
                Optional.of(Hem.closed(EDGE_HEM)));
    }

    /** From the pan up over the last seam and down the fascia, 3 in below the roof line. */
    private static TrimShape cover(String name, Angle edgeBend, Length seam) {
        double lean = Math.max(LEAST_LEAN, Math.abs(edgeBend.sin()));
        Length face = Length.metres(seam.metres() / lean + COVER_FACE_BELOW.metres());
        return overSeam(
                name,
                seam,
                List.of(COVER_TOP, face, KICK),
                List.of(Turn.OF_EDGE, KICKED_OUT),
                Optional.of(Hem.closed(EDGE_HEM)));
    }

    /** Two legs on closures as high as the seams, with open hems that hook over their edges. */
    private static TrimShape cap(String name, Length seam, Length leg) {
        Hem hook = Hem.open(HOOK, HOOK_GAP);
        return new TrimShape(
                name, List.of(leg, leg), List.of(Turn.OF_EDGE), 0, seam, Optional.of(hook), Optional.of(hook));
    }

    /** An inch higher, wider, and with its edges turned down in front of the vent. */
    private static TrimShape ventedCap(Length seam) {
        return new TrimShape(
                "vented ridge cap",
                List.of(VENT_GAP, VENT_LEG, VENT_LEG, VENT_GAP),
                List.of(SQUARE_DOWN, Turn.OF_EDGE, SQUARE_DOWN),
                1,
                Length.metres(seam.metres() + VENT_GAP.metres()),
                Optional.empty(),
                Optional.empty());
    }

    /**
     * Up under the upper panels, then a step over the seams of the lower ones, so that the lower leg lies a seam's height off
     * the lower plane: seam / cos δ. Legs: 6 in under, 4 in over. [published: see {@link Rules#slopeChangeUnderUpper}]
     */
    private static TrimShape pitchBreak(Angle edgeBend, Length seam) {
        Length under = Rules.slopeChangeUnderUpper().value();
        Length over = Rules.slopeChangeOverLower().value();
        Optional<Hem> hook = Optional.of(Hem.open(HOOK, HOOK_GAP));
        if (seam.metres() == 0) {
            return new TrimShape(
                    "pitch break flashing",
                    List.of(under, over),
                    List.of(Turn.OF_EDGE),
                    0,
                    Length.ZERO,
                    Optional.empty(),
                    hook);
        }
        Length step = Length.metres(seam.metres() / Math.max(1 / MOST_STEP, edgeBend.cos()));
        return new TrimShape(
                "pitch break flashing",
                List.of(under, step, over),
                List.of(SQUARE_UP, new Turn(SQUARE_DOWN.own(), true)),
                0,
                Length.ZERO,
                Optional.empty(),
                hook);
    }

    /** From the pan up over the seam, out 4 in and up the wall 4 in. [published: see {@link Rules#sideWallLeastHeight}] */
    private static TrimShape upstand(String name, Length seam) {
        Length leg = Rules.sideWallLeastHeight().value();
        return overSeam(name, seam, List.of(leg, leg), List.of(Turn.OF_EDGE), Optional.empty());
    }

    /** Starts with a leg that drops from the height of the seams to the pan, where there are seams. */
    private static TrimShape overSeam(
            String name, Length seam, List<Length> girths, List<Turn> turns, Optional<Hem> last) {
        if (seam.metres() == 0) {
            return new TrimShape(name, girths, turns, 0, seam, Optional.empty(), last);
        }
        return new TrimShape(name, before(seam, girths), before(SQUARE_DOWN, turns), 1, seam, Optional.empty(), last);
    }

    private static <T> List<T> before(T head, List<T> tail) {
        return Stream.concat(Stream.of(head), tail.stream()).toList();
    }
}
