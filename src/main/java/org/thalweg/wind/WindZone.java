package org.thalweg.wind;

/** Part of a roof by how hard the wind lifts it, weakest first. */
public enum WindZone {
    /** Zone 1: away from everything. */
    FIELD("field", 1),
    /** Zone 2: along eaves, rakes, ridges and hips. */
    EDGE("edge", 2),
    /** Zone 3: where two such strips cross at a corner. */
    CORNER("corner", 3);

    private final String wire;
    private final int number;

    WindZone(String wire, int number) {
        this.wire = wire;
        this.number = number;
    }

    /** How callers write it. */
    public String wire() {
        return wire;
    }

    /** Its number in the published figures. */
    public int number() {
        return number;
    }
}
