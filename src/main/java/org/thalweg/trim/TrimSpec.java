package org.thalweg.trim;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.thalweg.roof.EdgeKind;
import org.thalweg.units.Length;

/**
 * The trims of a job.
 *
 * @param seamHeight  of the panels, which the usual profiles stand over; 0 or more
 * @param ventedRidge whether the usual profile of ridges lets air out
 * @param hipLeg      girth of each leg of the usual cap of hips; above 0
 * @param sheet       what trims are bent of
 * @param stock       what pieces are made of
 * @param past        how far caps, and flashings at walls and pitch breaks, run past the outside of the roof, square to its edge;
 *                    0 or more
 * @param laidFrom    the end that pieces of a level edge are laid from, each over the one before, seen from the edge's first plane
 *                    looking up; pieces of a sloped edge are laid from below
 * @param orders      what each kind of edge gets; kinds not named, and kinds that can't, get no trim
 */
public record TrimSpec(
        Length seamHeight,
        boolean ventedRidge,
        Length hipLeg,
        Sheet sheet,
        TrimStock stock,
        Length past,
        Hand laidFrom,
        Map<EdgeKind, TrimOrder> orders) {

    public TrimSpec {
        orders = orders.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(orders));
        if (seamHeight.metres() < 0 || past.metres() < 0) {
            throw new IllegalArgumentException(
                    "seams (%s) and what runs past (%s) are 0 or more".formatted(seamHeight, past));
        }
        for (TrimOrder order : orders.values()) {
            if (order.lap().metres() >= stock.length().metres()) {
                throw new IllegalArgumentException(
                        "a lap (%s) must be below the longest piece (%s)".formatted(order.lap(), stock.length()));
            }
        }
    }

    /**
     * What trims are bent of, and how.
     *
     * @param thickness    of the metal; 0 or more
     * @param insideRadius of bends that are no hems; 0 or more
     * @param allowance    what bends take up
     * @param coilWidth    of the widest sheet at hand; above 0
     */
    public record Sheet(Length thickness, Length insideRadius, BendAllowance allowance, Length coilWidth) {}

    /** What edges of a kind get. */
    public Optional<TrimOrder> order(EdgeKind kind) {
        return Optional.ofNullable(orders.get(kind));
    }
}
