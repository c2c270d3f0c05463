package org.thalweg.finding;

/** What can be noticed about a roof or a layout. A code never changes its meaning; new ones may be added. */
public enum FindingCode {
    /** The plane has no dependable fall line. */
    LEVEL_PLANE(Severity.WARNING),
    /** The plane is flatter than the least slope of the panel system. */
    SLOPE_BELOW_MINIMUM(Severity.STOP),
    /** Corners stand off the plane by more than the tolerance. */
    PLANE_NOT_FLAT(Severity.WARNING),
    /** Two planes lie on the same side of a line. */
    STACKED_PLANES(Severity.WARNING),
    /** More than two planes meet at one edge. */
    CROWDED_EDGE(Severity.WARNING),
    /** Two planes fall to a level line: water stands there. */
    LEVEL_VALLEY(Severity.STOP),
    /** Corners of two planes come close and do not meet. */
    NEAR_MISS(Severity.WARNING),
    /** A piece narrower than the narrowest rip. */
    SLIVER(Severity.WARNING),
    /** A panel over the longest that can be made or carried; it is lapped. */
    PANEL_TOO_LONG(Severity.NOTE),
    /** A panel under the shortest that can be made. */
    PANEL_TOO_SHORT(Severity.WARNING),
    /** No panels: the plane is level and no fall was given. */
    NO_FALL_LINE(Severity.STOP),
    /** The set-backs leave nothing of the plane. */
    NOTHING_LEFT(Severity.WARNING),
    /** Hems or turn-ups make a piece wider than its blank. */
    WIDER_THAN_BLANK(Severity.WARNING);

    private final Severity severity;

    FindingCode(Severity severity) {
        this.severity = severity;
    }

    public Severity severity() {
        return severity;
    }
}
