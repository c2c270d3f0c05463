/**
 * Underlayment: the sheets a crew rolls out over the deck before any metal comes, course by course from the eave up, each
 * course over the one below, and the ice barrier along the eaves and under the valleys.
 *
 * <pre>
 *   end lap            Courses are as wide as the roll and run level, across the slope. A course goes as far
 *      |___________    as the plane does anywhere in it, so its corners hang over hips, valleys and rakes and
 *   ___||__________|   are cut off there. Where an opening, or a notch of the outline, parts a course from
 *   __________||___    bottom to top, it is two runs.
 *   |______________|   side lap
 * </pre>
 *
 * <p>Places are in the plane's own frame: {@code across} right, {@code up} the slope, metres. A level plane is laid the same
 * way, from the side its frame calls lowest.
 */
@NullMarked
package org.thalweg.underlayment;

import org.jspecify.annotations.NullMarked;
