/**
 * Water in a valley. Rain that falls on a standing-seam plane stays between the seams and runs straight down the slope,
 * so each plane brings a valley the rain of just those panels that end on it. In the valley the water of each side runs
 * by itself, in the corner between the pan and the rib that keeps it from washing under the panels across. A crew wants to
 * know how far up the pan it spreads, which says how far to hold the panels back, and how high it stands at the rib.
 *
 * <p>Plane frame: {@code across} right, {@code up} the slope; metal lies to the left of every side of a ring. Along a
 * valley: metres, true length, from its lower end. Across it: in the section square to the valley line. Areas are seen
 * from above, for that is how rain is measured.
 *
 * <p>Always true: what drains to the low sides of a plane adds up to the plane; more rain is never less deep; mirroring a
 * roof swaps the two sides of a valley.
 *
 * <p>Known limits: the rain is steady and all of it runs off; the flow is uniform, with no freeboard and no loss where it
 * turns into the valley or drops over a lap. Not added: what another valley, a gutter or a spout lets out on the plane,
 * what drips from an eave higher up, what runs down a wall, and rain driven by wind.
 */
@NullMarked
package org.thalweg.drainage;

import org.jspecify.annotations.NullMarked;
