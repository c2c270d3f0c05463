package org.thalweg.wind;

import org.thalweg.units.Length;

/**
 * A part of a straight line on a plane that lies in one zone.
 *
 * @param from from the line's start to where it begins, along the line; 0 or more
 * @param to   to where it ends; beyond {@code from}
 * @param zone which
 */
public record ZoneStretch(Length from, Length to, WindZone zone) {}
