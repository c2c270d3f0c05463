package org.thalweg.movement;

import java.util.Optional;
import org.thalweg.finding.Place;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;

/**
 * One end of a panel, and whether what holds it lets it move as far as it will.
 *
 * @param edge    what it ends on
 * @param lower   whether it is a lower end
 * @param hold    what holds it
 * @param moves   how far it moves: along the slope; in a hem, square to the end
 * @param allowed how far it may; nothing where it is free
 */
public record HeldEnd(Place edge, boolean lower, EndHold hold, Growth moves, Optional<Allowance> allowed) {

    /** An end that screws go through. */
    public static HeldEnd screwed(Place edge, boolean lower, Growth growth, Play play) {
        return new HeldEnd(
                edge,
                lower,
                EndHold.SCREWS,
                growth,
                Optional.of(new Allowance(play.eachWay(), play.eachWay(), play.source())));
    }

    /**
     * An end that is hemmed round a cleat.
     *
     * @param growth along the slope
     * @param mitre  φ, from the level line to the end
     */
    public static HeldEnd hooked(Place edge, boolean lower, Growth growth, Angle mitre, HemHook hem) {
        return new HeldEnd(
                edge,
                lower,
                EndHold.HEM,
                growth.squareTo(mitre),
                Optional.of(new Allowance(hem.engaged(), hem.gap(), hem.source())));
    }

    /** An end that nothing stops. */
    public static HeldEnd free(Place edge, boolean lower, Growth growth) {
        return new HeldEnd(edge, lower, EndHold.FREE, growth, Optional.empty());
    }

    /** Whether it moves out too far: under screws beyond their play; out of a hem as soon as nothing of the lip is left in it. */
    public boolean outTooFar() {
        int over = allowed.map(may -> moves.longer().compareTo(may.longer())).orElse(-1);
        return over > 0 || (over == 0 && hold == EndHold.HEM && moves.longer().metres() > 0);
    }

    /** Whether it moves in too far. */
    public boolean inTooFar() {
        return allowed.filter(may -> moves.shorter().compareTo(may.shorter()) > 0)
                .isPresent();
    }

    /** Whether what holds it lets it move as far as it will. */
    public boolean within() {
        return !outTooFar() && !inTooFar();
    }

    /** By how much it moves further than it may, the worse way; below 0 where it may move further. Only where it is held. */
    Length excess() {
        Allowance may = allowed.orElseThrow();
        return Length.metres(Math.max(
                moves.longer().metres() - may.longer().metres(),
                moves.shorter().metres() - may.shorter().metres()));
    }

    /** Whether the worse way is out. */
    boolean worseOut() {
        Allowance may = allowed.orElseThrow();
        return moves.longer().metres() - may.longer().metres()
                >= moves.shorter().metres() - may.shorter().metres();
    }
}
