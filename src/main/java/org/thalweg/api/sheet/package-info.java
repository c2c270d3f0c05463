/**
 * What a crew holds in its hands: an answer drawn on sheets that are printed and taped to a stack of panels. Everything
 * lettered on them is a figure of the answer as it is printed there; nothing is worked out a second time. The board they
 * are drawn on is the room {@code drawing}.
 */
@NullMarked
package org.thalweg.api.sheet;

import org.jspecify.annotations.NullMarked;
