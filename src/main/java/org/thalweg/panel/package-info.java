/**
 * Panels. They run up the slope side by side, each one cover wide from rib to rib, the first one at the edge where the
 * crew starts. Every panel is cut from a square-ended blank: mitred at hips and valleys, ripped at the rakes, notched
 * round a chimney, lapped where it is longer than can be made.
 *
 * <p>Plane frame: {@code across} right, {@code up} the slope. Panel frame: {@code across} from the left rib, 0, to the
 * right rib, the cover; {@code along} from the blank's lower square end upward, where a crew hooks its tape. Metres.
 *
 * <p>Always true: the finished pieces of a plane are disjoint and together are its finished outline; no piece is wider
 * than the cover; mirroring a roof and its lead mirrors its panels.
 */
@NullMarked
package org.thalweg.panel;

import org.jspecify.annotations.NullMarked;
