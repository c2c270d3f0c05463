/**
 * The drawing board: sheets of paper, pens, lettering, scales, dimension lines and tables, and how a finished sheet is
 * put out as SVG, PDF or, at full size, DXF. Draws what it is told and computes no figure of the trade: what is lettered
 * on a sheet was worked out and rounded before.
 *
 * <p>On a sheet x runs right and y runs down from the upper left corner, both in points: 72 to the inch.
 */
@NullMarked
package org.thalweg.drawing;

import org.jspecify.annotations.NullMarked;
