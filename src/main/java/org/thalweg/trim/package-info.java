/**
 * Trims: what a crew bends out of flat sheet to finish the edges of a roof. Eave drips, rake covers, caps over ridges and hips,
 * flashings where a slope changes, at walls and round openings.
 *
 * <pre>
 *        girth 1            A profile is a strip in section: legs (their girths) and the bends between them. Walk along it
 *     ___________           from its first edge with the weather face to your left: a bend <em>up</em> turns to the left,
 *    first       |          toward the weather, a bend <em>down</em> to the right. The first leg is the one on the roof (on
 *     edge       | girth 2  a ridge or hip the left one, at a pitch break the upper one), the last the one furthest out.
 *                 \
 *                  girth 3  Girths are measured to <em>outside mould lines</em>: to where the outer faces of two legs would
 *                           meet if the bend between them were sharp; past a square bend, to the outermost of the bend.
 * </pre>
 *
 * <p><b>Section of a trim at its edge</b>: square to the edge; {@code across} points away from the first plane in that plane,
 * {@code up} stands off it outward; both are 0 at the edge. Metal is taken as having no thickness there: a section, and the
 * cuts that follow from it, run along mould lines. What bending takes off counts in the flat width only.
 *
 * <p><b>Ends</b>. A level edge runs from left to right, seen from its first plane looking up the slope; a sloped one runs up.
 * A <em>reach</em> is how far a line of the trim runs past the corner its edge ends at, along the edge; below 0 it stops short.
 * Lying flat a blank is drawn with its first edge to the left and the start of its edge below.
 * An end is left or right as it lies to the hand with the weather face up and the last leg towards you.
 */
@NullMarked
package org.thalweg.trim;

import org.jspecify.annotations.NullMarked;
