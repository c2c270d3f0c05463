package org.thalweg.units;

/**
 * A whole number of things: corners, planes, panels.
 *
 * @param number how many; 0 or more
 */
public record Count(long number) implements Measure {}
