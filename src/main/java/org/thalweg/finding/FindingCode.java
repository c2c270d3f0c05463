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
    WIDER_THAN_BLANK(Severity.WARNING),
    /** A valley is flatter than the panel system allows a roof to be. */
    VALLEY_TOO_FLAT(Severity.STOP),
    /** The pan reaches less far under the panels than it must. */
    COVER_TOO_SMALL(Severity.STOP),
    /** Less of the pan lies open at the top of the valley than a published rule asks for. */
    EXPOSURE_TOO_SMALL(Severity.WARNING),
    /** Pan pieces lap each other by less than a published rule asks for. */
    PAN_LAP_TOO_SMALL(Severity.WARNING),
    /** The trimmed end of a pan piece makes it longer than a piece can be. */
    PAN_PIECE_TOO_LONG(Severity.WARNING),
    /** A pan piece is shorter than the shortest that can be made. */
    PAN_PIECE_TOO_SHORT(Severity.WARNING),
    /** Water in a valley spreads under the panels. */
    WATER_UNDER_PANEL(Severity.STOP),
    /** Water of one side of a valley goes over the rib to the other. */
    WATER_OVER_RIB(Severity.STOP),
    /** The two sides of a valley bring unequal water and the rib is lower than a published rule asks for. */
    RIB_TOO_LOW(Severity.WARNING),
    /** Panels grow by more than fixed screws let them. */
    FIXED_PANEL_MOVES(Severity.WARNING),
    /** The closure of a hip would stand beyond the end of the panels. */
    CLOSURE_OFF_PANEL(Severity.WARNING),
    /** A row of fasteners is too short to keep its distances from edges and ribs. */
    ROW_TOO_SHORT(Severity.NOTE),
    /** Panels end where one plane runs on as another, and do not lap. */
    FLUSH_NOT_LAPPED(Severity.WARNING),
    /** Fasteners would stand in the water way of a valley; they are left out. */
    FASTENER_IN_WATER_WAY(Severity.STOP),
    /** A leg of a trim is shorter than its bends take. */
    TRIM_LEG_TOO_SHORT(Severity.WARNING),
    /** A trim is wider, rolled out flat, than the coil. */
    TRIM_WIDER_THAN_COIL(Severity.WARNING),
    /** A piece of trim is shorter than the shortest that can be made. */
    TRIM_PIECE_TOO_SHORT(Severity.WARNING),
    /** A trim is so short that the cuts at its two ends cross. */
    TRIM_ENDS_CROSS(Severity.WARNING),
    /** A panel moves further than its clips let it. */
    CLIP_TRAVEL_TOO_SMALL(Severity.WARNING),
    /** A panel moves so far that its hem slips off its cleat, or bears on it. */
    HEM_TOO_SHORT(Severity.WARNING),
    /** Screws through panels and pan pin a pan that moves by more than they let it. */
    FIXED_PAN_MOVES(Severity.NOTE),
    /** How hard the wind lifts the roof was worked out from tables; an engineer decides. */
    WIND_PRELIMINARY(Severity.NOTE),
    /** How hard the wind lifts a plane is not in the published tables. */
    WIND_OUTSIDE_TABLE(Severity.WARNING),
    /** A piece to cut is longer than every bar. */
    PIECE_TOO_LONG(Severity.STOP),
    /** There are too few bars for all pieces, however they are cut. */
    TOO_FEW_BARS(Severity.STOP),
    /** No bar was found for a piece in the time there was. */
    PIECE_NOT_PLACED(Severity.STOP),
    /** No entry of the price book fits an order line. */
    NO_PRICE(Severity.STOP),
    /** A price is per a unit that measures something else than the line or the total. */
    PRICE_PER_OTHER_MEASURE(Severity.STOP),
    /** Labour is priced by a total that the takeoff does not have. */
    NO_SUCH_TOTAL(Severity.STOP);

    private final Severity severity;

    FindingCode(Severity severity) {
        this.severity = severity;
    }

    public Severity severity() {
        return severity;
    }
}
