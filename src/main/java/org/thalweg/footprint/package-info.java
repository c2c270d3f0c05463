/**
 * Outlines of walls and the roof that rises over them. A crew has the plan of the walls and a pitch for every side; this
 * room finds where the slopes meet: ridges, hips and valleys. A side without a pitch is a gable: its wall goes up, and the
 * slopes beside it run through to it.
 *
 * <p>Every side sends its eave inward as it rises, the flatter the faster; where eaves meet, slopes meet (the weighted
 * straight skeleton). At a height a side may become another: a wall gets its eave, a hip turns into a gable, a steep slope
 * into a flat one. A gable in line with its neighbours is the end of a cross gable. Eaves stand out from the walls by their
 * overhangs, level at their height ({@link org.thalweg.footprint.EaveLines}). What is found goes on as a survey, read like any
 * other roof ({@link org.thalweg.footprint.RoofedFootprint}). Plan in metres, x and y level; heights in metres, at the level
 * the caller's eaves are measured from.
 *
 * <p>Always true: what is answered has passed every check of {@link org.thalweg.footprint.RoofCheck}; anything else is
 * refused with a reason. Not found here: a slope that surrounds another part of the roof, sides in line of unlike pitch, a
 * gable set back from its wall (a dormer).
 */
@NullMarked
package org.thalweg.footprint;

import org.jspecify.annotations.NullMarked;
