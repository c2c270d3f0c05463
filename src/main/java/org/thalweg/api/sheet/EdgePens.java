package org.thalweg.api.sheet;

import org.thalweg.drawing.Pen;
import org.thalweg.roof.EdgeKind;

/** Which pen draws which edge. */
final class EdgePens {

    private EdgePens() {}

    static Pen of(EdgeKind kind) {
        return switch (kind) {
            case RIDGE -> Pen.RIDGE;
            case HIP -> Pen.HIP;
            case VALLEY, LEVEL_VALLEY -> Pen.VALLEY;
            case PITCH_BREAK, STACKED, EXPANSION_JOINT -> Pen.BREAK;
            case FLUSH -> Pen.HIDDEN;
            case EAVE, HIGH_EAVE, ANGLED_EAVE -> Pen.EAVE;
            case RAKE, ANGLED_RAKE, OPENING -> Pen.RAKE;
            case SIDE_WALL, HEAD_WALL -> Pen.WALL;
        };
    }

    /** Kinds drawn by one pen, as a legend tells them. */
    static String meaning(Pen pen) {
        return switch (pen) {
            case RIDGE -> "ridge (R)";
            case HIP -> "hip (H)";
            case VALLEY -> "valley (V), level valley (LV)";
            case BREAK -> "pitch break (B), stacked (X), joint (J)";
            case HIDDEN -> "flush (F)";
            case EAVE -> "eave (E), high eave (T), angled eave (AE)";
            case RAKE -> "rake (K), angled rake (AK), opening (O)";
            case WALL -> "side wall (S), head wall (W)";
            default -> "";
        };
    }
}
