package org.thalweg.panel;

/** From which side of a plane, seen looking up the slope, panels are laid. */
public enum Lead {
    LEFT,
    RIGHT
}
