/**
 * Points, planes and shapes. A roof plane is worked on lying flat, as if folded down onto the shop floor: level lines
 * run {@code across}, the fall line runs {@code up}. The only room that may import a geometry library, and the home of
 * the one {@link org.thalweg.geometry.Tolerance}.
 */
@NullMarked
package org.thalweg.geometry;

import org.jspecify.annotations.NullMarked;
