/**
 * Cutting pieces from what lies on the rack: bars, lengths of trim, coil. A saw or a shear takes its kerf at every cut; what
 * is long enough to keep goes back to the rack.
 *
 * <p>Everything is a whole number of grid steps, so that a plan either fits or does not; the room that asks chooses the
 * grid. The kerf is added to every piece and once to every bar, which lets the last piece of a bar end flush: pieces a, b, c
 * and kerf k fit a bar L when a + k + b + k + c is at most L, that is (a + k) + (b + k) + (c + k) at most L + k.
 *
 * <p>Always true: every piece asked for is cut once or listed as left over; no bar is over-filled; the lower bound is never
 * above the cost of the plan, and the {@link org.thalweg.stock.Certificate} proves it to anyone who can add.
 */
@NullMarked
package org.thalweg.stock;

import org.jspecify.annotations.NullMarked;
