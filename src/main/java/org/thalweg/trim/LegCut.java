package org.thalweg.trim;

import org.thalweg.units.Angle;
import org.thalweg.units.Length;

/**
 * The cut across one leg at one end.
 *
 * @param leg   which leg, counted from 0 at the first edge, hems not counted
 * @param inner reach of its inner line, the one nearer the first edge
 * @param outer reach of its outer line
 * @param cut   from square, in (−90°, 90°); above 0 when the outer line reaches further. A hem is cut back with its leg
 */
public record LegCut(int leg, Length inner, Length outer, Angle cut) {}
