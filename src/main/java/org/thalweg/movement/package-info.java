/**
 * Movement. A panel is longer in the sun than it was on the bench, and shorter in January. It grows and shrinks from the
 * point where it is fixed; everything else that holds it (clips, hems, the holes of screws) must let it, or the panel
 * buckles and the holes wear to slots.
 *
 * <p>The free length is what moves: from the fixed point to the end, so the whole panel when it is fixed at one end and
 * half of it when it is fixed in the middle. Lengths in metres, differences of temperature in kelvins; what a piece gets
 * longer and shorter by are both counted upward from 0, from the temperature it was installed at.
 */
@NullMarked
package org.thalweg.movement;

import org.jspecify.annotations.NullMarked;
