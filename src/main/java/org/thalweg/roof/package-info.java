/**
 * Planes and edges. A crew calls it by its lines: eave at the bottom, rake up the side, ridge on top, hip where two
 * planes turn away from each other, valley where they turn together. This room reads rings of corners into a checked
 * {@link org.thalweg.roof.Roof}: corners that nearly meet are joined, every plane has its frame, every edge its trade
 * name, length, slope and bend.
 *
 * <p>World frame: x and y level, z up, metres. Plane frame: see {@link org.thalweg.geometry.Frame}. A valid roof is
 * planes that are simple, flat and not upright; seen from above two planes share at most their edges.
 */
@NullMarked
package org.thalweg.roof;

import org.jspecify.annotations.NullMarked;
