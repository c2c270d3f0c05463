package org.thalweg.stock;

/** Whether a panel may be turned end for end, which swaps its ribs. */
public enum Turning {
    /** Both edges are alike, or the ribs are formed after the cut. */
    ALLOWED,
    /** Ribs are handed: the coil runs through the former with the male rib on one side. */
    FORBIDDEN
}
