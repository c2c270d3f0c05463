package org.thalweg.trim;

import org.thalweg.units.Length;

/**
 * One piece of a trim.
 *
 * @param mark   its name: the edge's and a number, in the order they are laid
 * @param from   where its end nearer the start of the edge lies, from the corner the edge starts at; below 0 past it
 * @param length in all, from its furthest point to its furthest; above 0
 * @param lap    how far it lies over the piece before; 0 for the first
 * @param blank  its shape, lying flat
 */
public record TrimPiece(String mark, Length from, Length length, Length lap, TrimBlank blank) {}
