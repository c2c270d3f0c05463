package org.thalweg.geometry;

/** Tags of sides that lie on no edge of the roof. */
public final class Side {

    /** On a rib line, where a panel meets its neighbour. */
    public static final int RIB = -1;

    /** On a lap line, where one piece of a panel goes under the next. */
    public static final int LAP = -2;

    private Side() {}
}
