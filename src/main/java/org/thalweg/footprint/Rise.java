package org.thalweg.footprint;

/** What comes of a plan of walls: the roof over it, or why there is none. */
public sealed interface Rise permits RoofOver, NoRoof {}
