/**
 * Valleys, and hips, which are valleys turned over.
 *
 * <p>Where two roof planes fall together a crew lays a pan: a long sheet with a rib up its middle that keeps the water of
 * one side from washing under the panels of the other, a flat on each side that lies in its roof plane, and a return along
 * each outer edge. The panels of both planes come over the flats and stop short of the valley, so that a water way stays
 * open between them and the rib.
 *
 * <pre>
 *                 crown
 *      return       |       return       C = 2 (g + T + r)
 *        r \        | g       / r
 *           \______low______ /           T: flat, from the low to the outer fold
 *              T    |   T                d: hold-back, from the low to the panels' edge
 *         |--c--|-d-|                    c = T - d: how far the pan reaches under the panels
 * </pre>
 *
 * <p><b>Pan coordinates</b> of a side: {@code s} up the low from the foot of the valley, {@code t} from the low outward in
 * the plane of that side, 0 or more. A blank, lying flat before it is bent, has {@code across} from its middle, below 0 to
 * the left seen looking up the valley, and {@code along} from its lowest point. Girths are measured from bend line to bend
 * line; no bend allowance is taken off.
 */
@NullMarked
package org.thalweg.valley;

import org.jspecify.annotations.NullMarked;
