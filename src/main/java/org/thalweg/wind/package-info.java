/**
 * Wind. It lifts a roof rather than pressing on it: least in the field, harder along edges, hardest at corners. Clips stand
 * closer there. How hard is for an engineer to say; for common low buildings this room can work out a first figure from
 * published tables, and says that it is preliminary.
 *
 * <pre>
 *     3 3 2 2 2 2 2 3 3   rake            plan of half a gable roof steeper than 7°: ridge above, eave below;
 *     3 3 2 2 2 2 2 3 3   ridge above     1 field, 2 edges, 3 corners; every strip is as wide as a
 *     2 2 1 1 1 1 1 2 2
 *     2 2 1 1 1 1 1 2 2
 *     3 3 2 2 2 2 2 3 3
 *     3 3 2 2 2 2 2 3 3   eave
 * </pre>
 *
 * <p>Distances are measured level, as seen from above, in metres. Pressures are uplift, square to the plane, 0 or more, at the
 * level of allowable loads. Heights are above the ground and come from the caller: a roof does not know where the ground is.
 *
 * <p>Always true: the stretches of a line are all of it; a mirrored roof has mirrored zones; a wider zone width takes no
 * place to a lower zone.
 *
 * <p>Known limits: the zones are those of ASCE 7-05 and 7-10 for gable and hip roofs, closed buildings of 60 ft or less on
 * level ground. Single slopes have zones of their own, wider along the high side, which were not found in print; so have
 * roofs in steps. Overhangs are pulled from below too: not added.
 */
@NullMarked
package org.thalweg.wind;

import org.jspecify.annotations.NullMarked;
