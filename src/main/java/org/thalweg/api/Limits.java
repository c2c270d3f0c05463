package org.thalweg.api;

import java.util.List;
import org.thalweg.footprint.Footprints;
import org.thalweg.packet.LaidWind;
import org.thalweg.packet.Layouts;
import org.thalweg.packet.TrimWork;
import org.thalweg.packet.ValleyWork;
import org.thalweg.panel.PanelWork;
import org.thalweg.pricing.Pricing;
import org.thalweg.roof.RaisedPlan;
import org.thalweg.roof.Roofs;
import org.thalweg.stock.CuttingCase;
import org.thalweg.underlayment.UnderlayWork;
import org.thalweg.units.Tape;
import org.thalweg.wind.LowRiseWind;
import org.thalweg.wind.WindZones;

/**
 * Every limit the service enforces, once: the annotations of the wire records, the reader of bodies and
 * {@code GET /v1/limits} all take them from here. The work a request may cost follows from them.
 */
public final class Limits {

    // Reading.
    public static final int BODY_BYTES = 4 * 1024 * 1024;
    public static final int NESTING = 64;
    public static final int TOKENS = 2_000_000;
    public static final int STRING_LENGTH = 10_000;
    /** A name's bytes in UTF-8, ample for two point names of 100 characters each and what joins them. */
    public static final int NAME_BYTES = 1_000;

    public static final int NUMBER_LENGTH = 100;
    public static final int ERRORS = 100;

    // Roofs.
    public static final int POINTS = 20_000;
    public static final int PLANES = 2_000;
    public static final int OPENINGS = 100;
    public static final int LEAST_CORNERS = 3;
    public static final int CORNERS_OF_A_RING = 5_000;
    public static final int CORNERS = 20_000;
    public static final int NAMED_EDGES = 2_000;
    /** Of all rings together. */
    public static final int FOOTPRINT_SIDES = Footprints.MOST_SIDES;

    public static final int FOOTPRINT_HOLES = 100;
    public static final int FOOTPRINT_CHANGES = 4;
    /** What is added to it for a slope further up leaves the id of a plane. */
    public static final int SIDE_ID_LENGTH = 90;

    public static final int ID_LENGTH = 100;
    public static final int TAPE_LENGTH = Tape.LONGEST;

    // Layouts.
    public static final int TREATMENTS = 2_000;
    public static final int INCLUDES = 10;
    public static final int METAL_LENGTH = 40;
    public static final int FULL_TURN_DEG = 360;

    // Orders.
    public static final int ITEM_LENGTH = 40;
    public static final int ORDER_ITEMS = 40;
    public static final int MOST_EXTRA = 100;
    public static final int MOST_IN_A_PACK = 1_000_000;

    // Valleys.
    public static final int HALF_TURN_DEG = 180;
    public static final int STATIONS = 20;
    public static final int COLDEST = -150;
    public static final int WARMEST = 400;

    // Trims.
    public static final int EDGE_KINDS = 40;
    public static final int PROFILES = 100;
    public static final int TRIM_LEGS = 12;
    public static final int PROFILE_NAME = 60;
    public static final int RUNS = 200;
    public static final int RUN_COUNT = 10_000;
    /** Lines of tape or beads of sealant side by side. */
    public static final int LINES = 6;

    // Cutting stock.
    public static final int STOCK_SORTS = 60;
    public static final int CUT_PIECES = 5_000;
    public static final int CUT_KINDS = CuttingCase.MOST_KINDS;
    public static final int CUT_COUNT = 100_000;
    public static final int COIL_PANELS = 5_000;
    public static final int CUT_GROUPS = 200;
    public static final int STOCK_COST = (int) CuttingCase.DEAREST;
    public static final int DEADLINE_MS = 5_000;
    public static final int CUTTING_MS = 2_000;
    public static final int MITRE_DEG = 85;

    // Price books and saved takeoffs.
    public static final int BOOK_ITEMS = 5_000;
    public static final int BREAKS = 20;
    public static final int LABOUR_ITEMS = 100;
    public static final int MARKUPS = 20;
    public static final int TAXES = 20;
    public static final int GTIN_LENGTH = 14;
    public static final int SUPPLIER_CODE = 80;
    public static final int CURRENCY_CODE = 3;
    public static final int UNIT_CODE = 3;
    public static final int SYMBOL_LENGTH = 20;
    public static final int ENGINE_LENGTH = 60;
    public static final int DIGEST_LENGTH = 64;
    public static final int QUOTED_LINES = 500;
    public static final int QUOTED_TOTALS = 200;
    public static final int SAVED_THICKNESS = 1_000;
    public static final int SAVED_WIDTH = 100_000;
    /** Of prices and quantities. */
    public static final int DECIMALS = 6;

    public static final int PERCENT_DECIMALS = 4;

    // Repricings.
    public static final int REPRICING_LINE_BYTES = 1024 * 1024;
    public static final int REPRICING_JOBS = 1_000;
    public static final int REPRICING_STREAMS = 8;

    // Drawings.
    public static final int DRAWN_SHEETS = 600;
    public static final int DRAWINGS_AT_ONCE = 2;
    public static final int DRAWINGS_WAITING = 8;

    /** Ids the service makes from names of a CityJSON document, which may be as long as any name. */
    public static final int ID_ANSWERED = NAME_BYTES + 100;

    /** A pointer into the deepest place, every name as long as may be and every character of it escaped. */
    public static final int POINTER_LENGTH = 2 * NESTING * (NAME_BYTES + 1);

    // Answers, at the most generous: a side is split wherever a corner of another plane lies on it.
    public static final int CORNERS_ANSWERED = 10 * CORNERS;
    public static final int EDGES = 10 * CORNERS;
    public static final int FINDINGS = 10 * CORNERS;
    public static final int CAUTIONS = 20;
    public static final int NEEDED = 10;
    public static final int PAN_PIECES = ValleyWork.MOST_PIECES;
    public static final int BLANK_CORNERS = 40;
    public static final int FOLDS = 11;
    public static final int VALLEY_ROWS = 4;
    public static final int TRIM_PIECES = TrimWork.MOST_PIECES;
    /** Two for each mould line at either end, one more for each hem, and one wherever a cut passes the end of a piece. */
    public static final int TRIM_CORNERS = 2 * (2 * TRIM_LEGS + 2) + 4 * (TRIM_LEGS + 2);

    public static final int CODES = 10;
    /** A bend's allowance and deduction, for every bend and two hems, and the width. */
    public static final int FLAT_WORKING = 2 * (TRIM_LEGS + 1) + 1;

    /** Of one valley: 125 lines, and 10 for each station and the foot, both sides together. */
    public static final int FASTENERS = Layouts.MOST_FASTENERS;

    public static final int SHEETS = UnderlayWork.MOST_SHEETS;

    /** Two for each row of fasteners, and for cleats and laps as many again. */
    public static final int SEAL_RUNS = 4 * Layouts.MOST_FASTENERS;

    public static final int WORKING = 125 + 10 * (STATIONS + 1);

    public static final int DEFAULTS = 200;
    public static final int PANELS_ANSWERED = 2 * PanelWork.MOST_PIECES;
    public static final int TOTALS = 60;
    public static final int ORDER_LINES = EDGES + 100;
    public static final int REFERENCE_ROWS = 1_000;

    private static final String OUTSIDE = "400 OUT_OF_RANGE";

    /** Numbers of a pitch. Rise 1000 in a run of 0.001 is as good as upright and is the roof's to refuse. */
    public static final Limit RISE = new Limit("rise", 0, 1_000, "1", "#/minimumSlope/rise", "400 OUT_OF_RANGE");

    public static final Limit RUN = new Limit("run", 0.001, 1_000, "1", "#/minimumSlope/run", "400 OUT_OF_RANGE");

    /** Ten thousand kilometres: any map projection's metres, with a tenth of a micrometre still told apart. */
    public static final Limit COORDINATE = Limit.length("coordinate", -1e7, 1e7, "#/roof/points/*/*");

    public static final Limit ROOF_OVERHANG = Limit.length("roofOverhang", 0, 10, "#/roof/footprint/overhang");

    public static final Limit TOLERANCE = Limit.length("tolerance", 1e-6, 0.1, "#/tolerance");
    public static final Limit COVER = Limit.length("cover", 0.05, 2, "#/panel/cover");
    public static final Limit SEAM_HEIGHT = Limit.length("seamHeight", 0, 0.2, "#/panel/seamHeight");
    public static final Limit GIRTH = Limit.length("girth", 0.05, 3, "#/panel/girth");
    public static final Limit THICKNESS = Limit.length("thickness", 0.0001, 0.005, "#/panel/thickness");
    public static final Limit LONGEST = Limit.length("longest", 0.1, 200, "#/panel/longest");
    public static final Limit SHORTEST = Limit.length("shortest", 0, 10, "#/panel/shortest");
    public static final Limit ORDER_INCREMENT = Limit.length("orderIncrement", 0.0001, 1, "#/panel/orderIncrement");
    public static final Limit NARROWEST_RIP = Limit.length("narrowestRip", 0, 1, "#/panel/narrowestRip");
    public static final Limit END_LAP = Limit.length("endLap", 0, 2, "#/panel/endLap");
    public static final Limit STAGGER = Limit.length("stagger", 0, 20, "#/panel/stagger");
    public static final Limit START_OFFSET = Limit.length("startOffset", 0, 2, "#/start/offset");
    public static final Limit SETBACK = Limit.length("setback", -2, 2, "#/edgeTreatments/*/setback");
    public static final Limit HEM = Limit.length("hem", 0, 0.5, "#/edgeTreatments/*/hem");
    public static final Limit TURN_UP = Limit.length("turnUp", 0, 0.5, "#/edgeTreatments/*/turnUp");

    public static final Limit COIL_WIDTH = Limit.length("coilWidth", 0.1, 3, "#/valleyPan/coilWidth");
    public static final Limit RIB_LEG = Limit.length("ribLeg", 0.005, 0.5, "#/valleyPan/ribLeg");
    public static final Limit EDGE_RETURN = Limit.length("edgeReturn", 0, 0.3, "#/valleyPan/edgeReturn");
    public static final Limit HOLD_BACK = Limit.length("holdBack", 0, 1.5, "#/valleyPan/holdBack");
    public static final Limit PAN_COVER = Limit.length("panCover", 0, 1.5, "#/valleyPan/cover");

    /** An inch to the foot. */
    public static final Limit WIDENING =
            new Limit("widening", 0, 1.0 / 12, "1", "#/valleyPan/widening", "400 OUT_OF_RANGE");

    public static final Limit PIECE_LENGTH = Limit.length("pieceLength", 0.3, 20, "#/valleyPan/pieceLength");
    public static final Limit SHORTEST_PIECE = Limit.length("shortestPiece", 0, 3, "#/valleyPan/shortestPiece");
    public static final Limit LAP = Limit.length("lap", 0.01, 2, "#/valleyPan/lap");
    public static final Limit EAVE_PROJECTION = Limit.length("eaveProjection", 0, 0.5, "#/valleyPan/eaveProjection");
    public static final Limit WALL_TURN_UP = Limit.length("wallTurnUp", 0, 1, "#/valleyPan/wallTurnUp");
    public static final Limit RIB_PAST_EAVE = Limit.length("ribPastEave", 0, 3, "#/valleyPan/ribPastEave");
    public static final Limit RIB_PAST_TOP = Limit.length("ribPastTop", 0, 3, "#/valleyPan/ribPastTop");
    public static final Limit RIB_PAST_VALLEY = Limit.length("ribPastValley", 0, 3, "#/valleyPan/ribPastValley");
    public static final Limit PAN_SPACING = Limit.length("panSpacing", 0.01, 3, "#/valleyPan/fastenerSpacing");
    public static final Limit EDGE_INSET = Limit.length("edgeInset", 0, 0.5, "#/valleyPan/edgeInset");
    public static final Limit CLEAT_LENGTH = Limit.length("cleatLength", 0.1, 20, "#/valleyPan/cleatLength");
    public static final Limit WATER_MARGIN = Limit.length("waterMargin", 0, 0.5, "#/valleyPan/waterMargin");
    public static final Limit STATION = Limit.length("station", 0, 1_000, "#/valleyPan/stations/*");
    public static final Limit VALLEY_SPACING = Limit.length("valleySpacing", 0.01, 3, "#/fastening/valleySpacing");
    public static final Limit CLEAT_SPACING = Limit.length("cleatSpacing", 0.01, 3, "#/fastening/cleatSpacing");
    public static final Limit EAVE_SPACING = Limit.length("eaveSpacing", 0.01, 3, "#/fastening/eaveSpacing");
    public static final Limit CLOSURE_SPACING = Limit.length("closureSpacing", 0.01, 3, "#/fastening/closureSpacing");
    public static final Limit STRIP_SPACING = Limit.length("stripSpacing", 0.01, 3, "#/fastening/stripSpacing");
    public static final Limit OPENING_SPACING = Limit.length("openingSpacing", 0.01, 3, "#/fastening/openingSpacing");
    public static final Limit LAP_SPACING = Limit.length("lapSpacing", 0.01, 3, "#/fastening/lapSpacing");
    public static final Limit CLIP_SPACING = Limit.length("clipSpacing", 0.01, 3, "#/fastening/clipSpacing");
    public static final Limit CLIP_END_DISTANCE = Limit.length("clipEndDistance", 0, 3, "#/fastening/clipEndDistance");
    public static final Limit FASTENER_INSET = Limit.length("fastenerInset", 0, 0.5, "#/fastening/fastenerInset");
    public static final Limit RIB_CLEARANCE = Limit.length("ribClearance", 0, 0.5, "#/fastening/ribClearance");
    public static final Limit EDGE_DISTANCE = Limit.length("edgeDistance", 0, 0.5, "#/fastening/edgeDistance");
    public static final Limit SCREW_PLAY = Limit.length("screwPlay", 0, 0.1, "#/fastening/screwPlay");

    public static final Limit CLIP_TRAVEL = Limit.length("clipTravel", 0, 0.2, "#/fastening/clipTravel");
    public static final Limit HEM_ENGAGEMENT = Limit.length("hemEngagement", 0, 0.5, "#/fastening/hemEngagement");
    public static final Limit ROLL_WIDTH = Limit.length("rollWidth", 0.2, 5, "#/underlayment/rollWidth");
    public static final Limit ROLL_LENGTH = Limit.length("rollLength", 2, 500, "#/underlayment/rollLength");
    public static final Limit ROLL_SIDE_LAP = Limit.length("rollSideLap", 0, 4.9, "#/underlayment/sideLap");
    public static final Limit ROLL_END_LAP = Limit.length("rollEndLap", 0, 0.9, "#/underlayment/endLap");
    public static final Limit END_LAPS_APART = Limit.length("endLapsApart", 0, 10, "#/underlayment/endLapsApart");
    public static final Limit OVERHANG = Limit.length("overhang", 0, 10, "#/underlayment/iceBarrier/overhang");
    public static final Limit INSIDE_WALL = Limit.length("insideWall", 0, 10, "#/underlayment/iceBarrier/insideWall");
    public static final Limit ALONG_SLOPE = Limit.length("alongSlope", 0, 10, "#/underlayment/iceBarrier/alongSlope");
    public static final Limit VALLEY_WIDTH = Limit.length("valleyWidth", 0, 5, "#/underlayment/iceBarrier/valleyWidth");
    public static final Limit RIVET_SPACING = Limit.length("rivetSpacing", 0.005, 1, "#/sealing/rivetSpacing");
    public static final Limit BEAD = Limit.length("beadPerCartridge", 0.1, 1_000, "#/sealing/beadPerCartridge");

    public static final Limit CLIP_LOAD = new Limit("clipLoad", 10, 100_000, "N", "#/wind/clipLoad", OUTSIDE);
    public static final Limit CLIP_ULTIMATE =
            new Limit("clipUltimate", 10, 100_000, "N", "#/wind/clipUltimate", OUTSIDE);

    /** The published tables of low buildings end there. */
    public static final Limit MEAN_ROOF_HEIGHT =
            Limit.length("meanRoofHeight", 1, LowRiseWind.HIGHEST.metres(), "#/wind/meanRoofHeight");

    public static final Limit ZONE_WIDTH = Limit.length("zoneWidth", 0.1, 100, "#/wind/zoneWidth");
    public static final Limit UPLIFT = new Limit("uplift", 10, 50_000, "Pa", "#/wind/pressures/*", OUTSIDE);
    public static final Limit WIND_SPEED = new Limit("windSpeed", 5, 150, "m/s", "#/wind/site/speed", OUTSIDE);
    public static final Limit EFFECTIVE_AREA =
            new Limit("effectiveArea", 0.01, 1_000, "m2", "#/wind/site/effectiveArea", OUTSIDE);
    public static final Limit WIND_FIELD_MOST = Limit.length("windFieldMost", 0.01, 3, "#/wind/fieldMost");
    public static final Limit WIND_EDGE_MOST = Limit.length("windEdgeMost", 0.01, 3, "#/wind/edgeMost");

    /** In an hour. */
    public static final Limit RAINFALL = Limit.length("rainfall", 0.0001, 2, "#/climate/rainfall");

    public static final Limit CAP_LEG = Limit.length("capLeg", 0.02, 1, "#/hipCap/leg");
    public static final Limit CLOSURE_INSET = Limit.length("closureInset", 0, 1, "#/hipCap/closureInset");
    public static final Limit PACK_LENGTH = Limit.length("packLength", 0.1, 10_000, "#/ordering/items/*/packLength");
    public static final Limit COIL_DIAMETER = Limit.length("coilDiameter", 0.1, 3, "#/ordering/coil/outerDiameter");
    public static final Limit CORE_DIAMETER = Limit.length("coreDiameter", 0.05, 3, "#/ordering/coil/coreDiameter");
    public static final Limit CORNER_RUN = Limit.length("cornerRun", 0.05, 1_000, "#/corner/run");

    public static final Limit TRIM_THICKNESS = Limit.length("trimThickness", 0, 0.005, "#/trims/sheet/thickness");
    public static final Limit INSIDE_RADIUS = Limit.length("insideRadius", 0, 0.05, "#/trims/sheet/insideRadius");
    public static final Limit TRIM_COIL = Limit.length("trimCoilWidth", 0.05, 3, "#/trims/sheet/coilWidth");
    public static final Limit TRIM_PIECE = Limit.length("trimPieceLength", 0.3, 20, "#/trims/stock/pieceLength");
    public static final Limit TRIM_SHORTEST = Limit.length("trimShortestPiece", 0, 3, "#/trims/stock/shortestPiece");
    public static final Limit TRIM_PAST = Limit.length("trimPast", 0, 0.5, "#/trims/past");
    public static final Limit TRIM_LAP = Limit.length("trimLap", 0, 2, "#/trims/kinds/*/lap");
    public static final Limit TRIM_LEG = Limit.length("trimLeg", 0.001, 2, "#/trims/kinds/*/profile/legs/*");
    public static final Limit TRIM_HEIGHT = Limit.length("trimHeight", 0, 0.3, "#/trims/kinds/*/profile/height");
    public static final Limit TRIM_HEM =
            Limit.length("trimHem", 0.001, 0.5, "#/trims/kinds/*/profile/hems/first/girth");
    public static final Limit TRIM_HEM_GAP =
            Limit.length("trimHemGap", 0, 0.05, "#/trims/kinds/*/profile/hems/first/gap");
    public static final Limit TRIM_RUN = Limit.length("trimRun", 0.01, 1_000, "#/profiles/*/lengths/*/length");

    public static final Limit STOCK_LENGTH = Limit.length("stockLength", 0.01, 200, "#/stock/*/length");
    public static final Limit CUT_LENGTH = Limit.length("cutLength", 0.001, 1_000, "#/pieces/*/length");
    public static final Limit END_OFFSET = Limit.length("endOffset", -50, 50, "#/pieces/*/leftOffset");
    public static final Limit KERF = Limit.length("kerf", 0, 0.05, "#/kerf");
    public static final Limit KEEPABLE = Limit.length("keepableOffcut", 0.001, 200, "#/keepableOffcut");
    public static final Limit STOCK_WIDTH = Limit.length("stockWidth", 0.005, 3, "#/width");

    public static final Limit BOOK_THICKNESS =
            Limit.length("bookThickness", 0.0001, 0.005, "#/priceBook/items/*/thickness");
    public static final Limit BOOK_WIDTH = Limit.length("bookWidth", 0.001, 5, "#/priceBook/items/*/width");
    public static final Limit PRICE = Limit.atMost("price", 1e9, "1", "#/priceBook/items/*/price", OUTSIDE);
    public static final Limit PACK = new Limit("pack", 1e-6, 1e9, "1", "#/priceBook/items/*/pack", OUTSIDE);
    public static final Limit BREAK_FROM =
            Limit.atMost("breakFrom", 1e12, "1", "#/priceBook/items/*/breaks/*/from", OUTSIDE);
    public static final Limit PERCENT = Limit.atMost("percent", 1_000, "1", "#/priceBook/markups/*/percent", OUTSIDE);
    public static final Limit QUANTITY = Limit.atMost("quantity", 1e12, "1", "#/takeoff/orderLines/*/ordered", OUTSIDE);

    public static final Limit WAS = Limit.atMost("was", Pricing.MOST, "1", "#/was/amount", OUTSIDE);

    private static final String MANY = "400 TOO_MANY";
    private static final String LONG = "400 TOO_LONG";

    /** All of them, in the order a request meets them. */
    public static final List<Limit> ALL = List.of(
            Limit.atMost("bodyBytes", BODY_BYTES, "byte", "#", "413 TOO_LARGE"),
            Limit.atMost("nesting", NESTING, "1", "#", "400 TOO_DEEP"),
            Limit.atMost("tokens", TOKENS, "1", "#", MANY),
            Limit.atMost("stringLength", STRING_LENGTH, "character", "#/*", LONG),
            Limit.atMost("nameBytes", NAME_BYTES, "byte", "#/*", LONG),
            Limit.atMost("numberLength", NUMBER_LENGTH, "character", "#/*", LONG),
            Limit.atMost("errors", ERRORS, "1", "#", "the rest are counted in errorCount"),
            new Limit("jobLength", 1, ID_LENGTH, "character", "#/job", LONG),
            new Limit("points", LEAST_CORNERS, POINTS, "1", "#/roof/points", MANY),
            COORDINATE,
            new Limit("planes", 1, PLANES, "1", "#/roof/planes", MANY),
            new Limit("cornersOfARing", LEAST_CORNERS, CORNERS_OF_A_RING, "1", "#/roof/planes/*/outline", MANY),
            Limit.atMost("corners", CORNERS, "1", "#/roof/planes", MANY),
            Limit.atMost("openings", OPENINGS, "1", "#/roof/planes/*/openings", MANY),
            Limit.atMost("namedEdges", NAMED_EDGES, "1", "#/roof/edges", MANY),
            new Limit(
                    "planHeight",
                    -RaisedPlan.FURTHEST_HEIGHT,
                    RaisedPlan.FURTHEST_HEIGHT,
                    "m",
                    "#/roof/plan/planes/*",
                    "422 HEIGHT_OUT_OF_REACH"),
            Limit.atMost("footprintSides", FOOTPRINT_SIDES, "1", "#/roof/footprint", MANY),
            Limit.atMost("footprintHoles", FOOTPRINT_HOLES, "1", "#/roof/footprint/holes", MANY),
            Limit.atMost("footprintChanges", FOOTPRINT_CHANGES, "1", "#/roof/footprint/sides/*/above", MANY),
            new Limit("sideIdLength", 1, SIDE_ID_LENGTH, "character", "#/roof/footprint/sides/*/id", LONG),
            new Limit(
                    "footprintReach",
                    -Footprints.FURTHEST.metres(),
                    Footprints.FURTHEST.metres(),
                    "m",
                    "#/roof/footprint/outline/*",
                    "422 FOOTPRINT_TOO_LARGE"),
            Limit.atMost("footprintSteps", Footprints.MOST_STEPS, "1", "#/roof/footprint", "422 FOOTPRINT_TOO_LARGE"),
            new Limit(
                    "footprintPitch",
                    Footprints.FLATTEST,
                    Footprints.STEEPEST,
                    "1",
                    "#/roof/footprint/pitch",
                    "422 PITCH_EXTREME"),
            ROOF_OVERHANG,
            new Limit("idLength", 1, ID_LENGTH, "character", "#/roof/planes/*/id", LONG),
            new Limit("tapeLength", 1, TAPE_LENGTH, "character", "#/*", LONG),
            RISE,
            RUN,
            TOLERANCE,
            COVER,
            SEAM_HEIGHT,
            GIRTH,
            THICKNESS,
            LONGEST,
            SHORTEST,
            ORDER_INCREMENT,
            NARROWEST_RIP,
            new Limit("metalLength", 1, METAL_LENGTH, "character", "#/panel/metal", LONG),
            END_LAP,
            STAGGER,
            START_OFFSET,
            Limit.atMost("treatments", TREATMENTS, "1", "#/edgeTreatments", MANY),
            SETBACK,
            HEM,
            TURN_UP,
            Limit.atMost("layings", PLANES, "1", "#/laying", MANY),
            Limit.atMost("fallDeg", FULL_TURN_DEG, "deg", "#/laying/*/fallDeg", "400 OUT_OF_RANGE"),
            COIL_WIDTH,
            RIB_LEG,
            EDGE_RETURN,
            HOLD_BACK,
            PAN_COVER,
            WIDENING,
            PIECE_LENGTH,
            SHORTEST_PIECE,
            LAP,
            EAVE_PROJECTION,
            WALL_TURN_UP,
            RIB_PAST_EAVE,
            RIB_PAST_TOP,
            RIB_PAST_VALLEY,
            PAN_SPACING,
            EDGE_INSET,
            CLEAT_LENGTH,
            WATER_MARGIN,
            Limit.atMost("stations", STATIONS, "1", "#/valleyPan/stations", MANY),
            STATION,
            EAVE_SPACING,
            VALLEY_SPACING,
            CLEAT_SPACING,
            CLOSURE_SPACING,
            STRIP_SPACING,
            OPENING_SPACING,
            LAP_SPACING,
            CLIP_SPACING,
            CLIP_END_DISTANCE,
            FASTENER_INSET,
            RIB_CLEARANCE,
            EDGE_DISTANCE,
            SCREW_PLAY,
            CLIP_TRAVEL,
            HEM_ENGAGEMENT,
            ROLL_WIDTH,
            ROLL_LENGTH,
            ROLL_SIDE_LAP,
            ROLL_END_LAP,
            END_LAPS_APART,
            OVERHANG,
            INSIDE_WALL,
            ALONG_SLOPE,
            VALLEY_WIDTH,
            Limit.atMost("sealingLines", LINES, "1", "#/sealing/*", "400 OUT_OF_RANGE"),
            RIVET_SPACING,
            BEAD,
            CLIP_LOAD,
            CLIP_ULTIMATE,
            MEAN_ROOF_HEIGHT,
            ZONE_WIDTH,
            UPLIFT,
            WIND_SPEED,
            EFFECTIVE_AREA,
            WIND_FIELD_MOST,
            WIND_EDGE_MOST,
            new Limit("temperature", COLDEST, WARMEST, "deg", "#/climate/lowest", "400 OUT_OF_RANGE"),
            RAINFALL,
            CAP_LEG,
            CLOSURE_INSET,
            COIL_DIAMETER,
            CORE_DIAMETER,
            Limit.atMost("orderItems", ORDER_ITEMS, "1", "#/ordering/items", MANY),
            new Limit("itemLength", 1, ITEM_LENGTH, "character", "#/ordering/items", LONG),
            Limit.atMost("extraPercent", MOST_EXTRA, "1", "#/ordering/items/*/extraPercent", "400 OUT_OF_RANGE"),
            new Limit("packCount", 1, MOST_IN_A_PACK, "1", "#/ordering/items/*/packCount", "400 OUT_OF_RANGE"),
            PACK_LENGTH,
            new Limit("planAngleDeg", 1, HALF_TURN_DEG, "deg", "#/corner/planAngleDeg", "400 OUT_OF_RANGE"),
            CORNER_RUN,
            TRIM_THICKNESS,
            INSIDE_RADIUS,
            Limit.atMost("kFactor", 1, "1", "#/trims/sheet/kFactor", "400 OUT_OF_RANGE"),
            TRIM_COIL,
            TRIM_PIECE,
            TRIM_SHORTEST,
            TRIM_PAST,
            Limit.atMost("trimKinds", EDGE_KINDS, "1", "#/trims/kinds", MANY),
            TRIM_LAP,
            new Limit("profileName", 1, PROFILE_NAME, "character", "#/trims/kinds/*/profile/name", LONG),
            new Limit("trimLegs", 2, TRIM_LEGS, "1", "#/trims/kinds/*/profile/legs", MANY),
            TRIM_LEG,
            new Limit(
                    "trimBendDeg",
                    -HALF_TURN_DEG,
                    HALF_TURN_DEG,
                    "deg",
                    "#/trims/kinds/*/profile/bendsDeg/*",
                    "400 OUT_OF_RANGE"),
            TRIM_HEIGHT,
            TRIM_HEM,
            TRIM_HEM_GAP,
            new Limit("profiles", 1, PROFILES, "1", "#/profiles", MANY),
            Limit.atMost("trimRuns", RUNS, "1", "#/profiles/*/lengths", MANY),
            TRIM_RUN,
            new Limit("trimRunCount", 1, RUN_COUNT, "1", "#/profiles/*/lengths/*/count", "400 OUT_OF_RANGE"),
            new Limit("stockSorts", 1, STOCK_SORTS, "1", "#/stock", MANY),
            STOCK_LENGTH,
            Limit.atMost("stockCost", STOCK_COST, "1", "#/stock/*/cost", "400 OUT_OF_RANGE"),
            new Limit("stockCount", 1, CUT_COUNT, "1", "#/stock/*/count", "400 OUT_OF_RANGE"),
            new Limit("cutPieces", 1, CUT_PIECES, "1", "#/pieces", MANY),
            Limit.atMost("cutKinds", CUT_KINDS, "1", "#/pieces", MANY),
            CUT_LENGTH,
            new Limit("cutCount", 1, CUT_COUNT, "1", "#/pieces/*/count", "400 OUT_OF_RANGE"),
            Limit.atMost("cutCounts", CUT_COUNT, "1", "#/pieces", MANY),
            Limit.atMost("coilPanels", COIL_PANELS, "1", "#/pieces", MANY),
            new Limit("endMitreDeg", -MITRE_DEG, MITRE_DEG, "deg", "#/pieces/*/leftMitreDeg", "400 OUT_OF_RANGE"),
            END_OFFSET,
            KERF,
            KEEPABLE,
            STOCK_WIDTH,
            Limit.atMost("cutGroups", CUT_GROUPS, "1", "#/together", MANY),
            Limit.atMost("deadlineMs", DEADLINE_MS, "ms", "#/deadlineMs", "400 OUT_OF_RANGE"),
            Limit.atMost("cuttingMs", CUTTING_MS, "ms", "#/cutting/deadlineMs", "400 OUT_OF_RANGE"),
            Limit.atMost("cuttingLengths", CUT_KINDS, "1", "#/cutting", "422 TOO_MANY_LENGTHS"),
            Limit.atMost("orderLines", QUOTED_LINES, "1", "#/takeoff/orderLines", MANY),
            Limit.atMost("quotedTotals", QUOTED_TOTALS, "1", "#/takeoff/totals", MANY),
            QUANTITY,
            new Limit("engineLength", 1, ENGINE_LENGTH, "character", "#/takeoff/engine", LONG),
            new Limit("digestLength", DIGEST_LENGTH, DIGEST_LENGTH, "character", "#/takeoff/digest", LONG),
            new Limit("symbolLength", 1, SYMBOL_LENGTH, "character", "#/takeoff/orderLines/*/mass/unit", LONG),
            Limit.atMost("savedThickness", SAVED_THICKNESS, "1", "#/takeoff/orderLines/*/made/thickness", OUTSIDE),
            Limit.atMost("savedWidth", SAVED_WIDTH, "1", "#/takeoff/orderLines/*/made/width/value", OUTSIDE),
            new Limit("currencyCode", CURRENCY_CODE, CURRENCY_CODE, "character", "#/priceBook/currency", LONG),
            Limit.atMost("bookItems", BOOK_ITEMS, "1", "#/priceBook/items", MANY),
            BOOK_THICKNESS,
            BOOK_WIDTH,
            new Limit("unitCode", 1, UNIT_CODE, "character", "#/priceBook/items/*/unit", LONG),
            PRICE,
            Limit.atMost("decimals", DECIMALS, "1", "#/priceBook/items/*/price", LONG),
            new Limit("breaks", 1, BREAKS, "1", "#/priceBook/items/*/breaks", MANY),
            BREAK_FROM,
            PACK,
            new Limit("gtinLength", 1, GTIN_LENGTH, "character", "#/priceBook/items/*/gtin", LONG),
            new Limit("supplierCode", 1, SUPPLIER_CODE, "character", "#/priceBook/items/*/code", LONG),
            Limit.atMost("labour", LABOUR_ITEMS, "1", "#/priceBook/labour", MANY),
            Limit.atMost("markups", MARKUPS, "1", "#/priceBook/markups", MANY),
            Limit.atMost("taxes", TAXES, "1", "#/priceBook/taxes", MANY),
            PERCENT,
            Limit.atMost("percentDecimals", PERCENT_DECIMALS, "1", "#/priceBook/markups/*/percent", LONG),
            Limit.atMost("repricingLineBytes", REPRICING_LINE_BYTES, "byte", "#", "413 TOO_LARGE of the line"),
            Limit.atMost("repricingJobs", REPRICING_JOBS, "1", "#/jobs", MANY),
            Limit.atMost("repricingStreams", REPRICING_STREAMS, "1", "#", "503 BUSY"),
            WAS,
            Limit.atMost("quoteTotal", Pricing.MOST, "1", "#/priceBook", "422 TOTAL_TOO_LARGE"),
            Limit.atMost("trimPieces", TRIM_PIECES, "1", "#/roof", "422 TOO_MANY_TRIM_PIECES"),
            Limit.atMost("panPieces", PAN_PIECES, "1", "#/roof", "422 TOO_MANY_PIECES"),
            Limit.atMost("valleySteps", ValleyWork.MOST_STEPS, "1", "#/roof", "422 TOO_MANY_PIECES"),
            Limit.atMost("fasteners", Layouts.MOST_FASTENERS, "1", "#/roof", "422 TOO_MANY_FASTENERS"),
            Limit.atMost("sheets", SHEETS, "1", "#/roof", "422 TOO_MANY_SHEETS"),
            Limit.atMost("drawnSheets", DRAWN_SHEETS, "1", "#/roof", "422 PACKET_TOO_LONG"),
            Limit.atMost("drawings", DRAWINGS_WAITING, "1", "#", "503 BUSY"),
            Limit.atMost("windMeetings", WindZones.MOST_MEETINGS, "1", "#/roof", "422 WIND_TOO_LARGE"),
            Limit.atMost("windParts", WindZones.MOST_PARTS, "1", "#/roof/planes/*", "422 WIND_TOO_LARGE"),
            Limit.atMost("windSteps", LaidWind.MOST_STEPS, "1", "#/roof", "422 WIND_TOO_LARGE"),
            Limit.atMost("cuts", Roofs.MOST_CUTS, "1", "#/roof/planes", "422 TOO_CROWDED"),
            Limit.atMost("panels", PanelWork.MOST_PIECES, "1", "#/roof", "422 TOO_MANY_PANELS"),
            Limit.atMost("searchSteps", PanelWork.MOST_SEARCH_STEPS, "1", "#/roof/planes/*", "422 SEARCH_TOO_LARGE"),
            Limit.atMost("includes", INCLUDES, "1", "#/include", MANY));

    private Limits() {}
}
