package org.thalweg.valley;

import org.thalweg.units.Length;

/**
 * One piece of the pan as it is laid.
 *
 * @param mark   its name: the valley's and a number, from the foot up
 * @param from   where its lowest point lies, up the low from the foot; below 0 past it
 * @param length of its blank, from its lowest point to its highest
 * @param lap    how far it lies over the piece below; 0 for the first
 * @param blank  its shape, lying flat
 */
public record PanPiece(String mark, Length from, Length length, Length lap, PanBlank blank) {}
