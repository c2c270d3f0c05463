package org.thalweg.finding;

/** Why a request describes no roof. A code never changes its meaning; new ones may be added. */
public enum RefusalCode {
    /** A name that is used but not given in {@code points}. */
    UNKNOWN_POINT,
    /**
     * Two planes, two openings of one plane, two sides or two openings of a footprint, two profiles of trims, two sorts of
     * stock or two pieces have the same id.
     */
    DUPLICATE_ID,
    /** Fewer than three corners are left once corners within the tolerance are one. */
    TOO_FEW_CORNERS,
    /** A side of a ring crosses or runs along another side. */
    RING_CROSSES_ITSELF,
    /** The corners lie further off any plane than can be roofed. */
    PLANE_NOT_FLAT,
    /** The plane stands upright: it is a wall, not a roof. */
    PLANE_UPRIGHT,
    /** An opening reaches outside its plane. */
    OPENING_OUTSIDE,
    /** Two openings overlap, or one lies in another. */
    OPENINGS_OVERLAP,
    /** A named edge is no edge of the roof. */
    NO_SUCH_EDGE,
    /** A named plane is no plane of the roof. */
    NO_SUCH_PLANE,
    /** Two planes meet in no valley: their eaves run in line, or one of them is level. */
    NO_VALLEY,
    /** A run along an eave does not tell how long the valley is. */
    NO_RUN,
    /** The edge that is named is no valley. */
    NOT_A_VALLEY,
    /** A plane that has a fall line of its own was given another. */
    FALL_NOT_FREE,
    /** Corners of planes lie on sides of other planes more often than is read. */
    TOO_CROWDED,
    /** The roof takes more panels than are laid in one request. */
    TOO_MANY_PANELS,
    /** The valleys take more pieces of pan, or more steps to follow their water, than one request may cost. */
    TOO_MANY_PIECES,
    /** The roof takes more fasteners and clips than are placed in one request. */
    TOO_MANY_FASTENERS,
    /** The trims take more pieces than are cut in one request. */
    TOO_MANY_TRIM_PIECES,
    /** Pieces of one width have more different lengths than one cutting plan holds. */
    TOO_MANY_LENGTHS,
    /** The roof takes more sheets of underlayment than are laid in one request. */
    TOO_MANY_SHEETS,
    /** Its drawings take more sheets than are drawn in one packet. */
    PACKET_TOO_LONG,
    /** A clip holds so little against the wind that clips would stand closer together than they are placed. */
    CLIPS_TOO_CLOSE,
    /** Finding the wind zones of the roof would take more steps than one request may cost. */
    WIND_TOO_LARGE,
    /** The search for the start with the least waste would take more steps than one request may cost. */
    SEARCH_TOO_LARGE,
    /** A corner that is named by its number is not in its outline. */
    NO_SUCH_CORNER,
    /** The two corners a plane is said to rise from are not the ends of one of its sides. */
    NOT_A_SIDE,
    /** No given height reaches a plane of a plan: it meets none of the planes that have one. */
    PLANE_WITHOUT_HEIGHT,
    /** Planes of a plan that meet at a corner stand at different heights there. */
    HEIGHTS_DISAGREE,
    /** A plane of a plan would stand higher or lower than is read. */
    HEIGHT_OUT_OF_REACH,
    /** A side or a hole that is named by its number is not in the footprint. */
    NO_SUCH_SIDE,
    /** More is said about a side of a footprint twice. */
    SIDE_NAMED_TWICE,
    /** A footprint reaches further, or finding its roof takes more steps, than one request may cost. */
    FOOTPRINT_TOO_LARGE,
    /** A pitch so near level or upright that the slope over a side of a footprint is no roof. */
    PITCH_EXTREME,
    /** A side of a footprint changes at or below its eave, or at or below the change before. */
    HEIGHTS_OUT_OF_ORDER,
    /** Rings of a footprint cross or touch themselves or each other. */
    RINGS_CROSS,
    /** A hole of a footprint lies outside its outline, or in another hole. */
    HOLE_OUTSIDE,
    /** Eaves that stand out so far leave no room for a side between them, or cross. */
    OVERHANG_TOO_WIDE,
    /** Two sides of a footprint in one line stand out differently: their eaves do not meet. */
    OVERHANGS_IN_LINE,
    /** A roof over a footprint stands out over a lower slope that is built against its wall. */
    OVERHANG_OVER_ROOF,
    /** Two sides of a footprint in one line have different pitches: one of them would have no slope. */
    PITCHES_IN_LINE,
    /** Slopes never meet over some part of a footprint: too many of its sides are gables. */
    ROOF_NEVER_CLOSES,
    /** A slope over a footprint would surround another, touch itself or have no area. */
    SLOPE_NOT_SIMPLE,
    /** A slope over a footprint is so narrow that it is none once corners within the tolerance are one. */
    FINER_THAN_TOLERANCE,
    /** No roof over a footprint was found that passes every check; none is answered rather than a wrong one. */
    ROOF_NOT_FOUND,
    /** The CityJSON document can't be read as one. */
    CITYJSON_UNREADABLE,
    /** The document has several buildings and none was chosen, or the chosen one is not there. */
    CITYJSON_WHICH_BUILDING,
    /** The building has no roof surface of level of detail 2. */
    CITYJSON_NO_ROOF,
    /** A saved takeoff is of another generation of the engine. */
    TAKEOFF_OUTDATED,
    /** A quote comes to more money than is told. */
    TOTAL_TOO_LARGE
}
