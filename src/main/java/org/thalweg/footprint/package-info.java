/**
 * Outlines of walls and the roof that rises over them. A crew has the plan of the walls and a pitch for every side; this
 * room finds where the slopes meet: ridges, hips and valleys. A side without a pitch is a gable: its wall goes up, and the
 * slopes beside it run through to it.
 *
 * <p>Every side sends its eave inward as it rises, the flatter the faster; where eaves meet, slopes meet (the weighted
 * straight skeleton). Plan in metres, x and y level; heights in metres above the eaves, which are all at one height.
 *
 * <p>Always true: what is answered has passed every check of {@link org.thalweg.footprint.RoofCheck}; anything else is
 * refused with a reason. Not found here: eaves at several heights, overhangs, a gable beside an inner corner, a gable
 * over a part of a side.
 */
@NullMarked
package org.thalweg.footprint;

import org.jspecify.annotations.NullMarked;
