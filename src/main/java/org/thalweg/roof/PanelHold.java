package org.thalweg.roof;

/** How a panel's end is held at an edge. */
public enum PanelHold {
    /** By exposed screws with washers through panel, sealant tape and flashing: simple, and the panel can't move. */
    FIXED,
    /** Hemmed round a continuous cleat: nothing pierces the panel, it can move. */
    CLEATED
}
