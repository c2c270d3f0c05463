package org.thalweg.wind;

import org.thalweg.units.Length;
import org.thalweg.units.Pressure;

/**
 * A part of a straight line on a plane that the wind lifts alike.
 *
 * @param from   from the line's start to where it begins, along the line; 0 or more
 * @param to     to where it ends; beyond {@code from}
 * @param zone   the zone it lies in
 * @param uplift how hard, by design, at the level of allowable loads
 */
public record UpliftStretch(Length from, Length to, WindZone zone, Pressure uplift) {}
