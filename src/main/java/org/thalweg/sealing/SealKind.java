package org.thalweg.sealing;

import java.util.Optional;
import org.thalweg.fastening.FastenerKind;

/** What a run makes tight. The list is open: callers must expect kinds that are added later. */
public enum SealKind {
    /** Panels screwed down at a valley, on its pan. */
    VALLEY("valley", SealItem.TAPE),
    /** The continuous cleat of a valley, on its pan. */
    CLEAT("cleat", SealItem.TAPE),
    /** The closures under a ridge, a hip or a peak: below them on the panel, above them under the trim. */
    CLOSURE("closure", SealItem.TAPE),
    /** The closures below a wall, likewise. */
    HEAD_WALL("headWall", SealItem.TAPE),
    /** One piece of a panel, on the piece that goes under it. */
    END_LAP("endLap", SealItem.TAPE),
    /** The flashing of a chimney, skylight or other opening, and the panel. */
    OPENING("opening", SealItem.TAPE),
    /** One piece of a pan, on the piece below. */
    PAN_LAP("panLap", SealItem.SEALANT),
    /** One piece of a trim, on the piece before. */
    TRIM_LAP("trimLap", SealItem.SEALANT);

    private final String wire;
    private final SealItem item;

    SealKind(String wire, SealItem item) {
        this.wire = wire;
        this.item = item;
    }

    /** How callers write the kind. */
    public String wire() {
        return wire;
    }

    /** What makes it tight: tape, or beads of sealant. */
    public SealItem item() {
        return item;
    }

    /** Whether closures are set there. */
    boolean closed() {
        return this == CLOSURE || this == HEAD_WALL;
    }

    /** What is laid along a row of fasteners through panels; nothing along an eave, which water runs off. */
    static Optional<SealKind> along(FastenerKind row) {
        return switch (row) {
            case VALLEY -> Optional.of(VALLEY);
            case CLOSURE -> Optional.of(CLOSURE);
            case HEAD_WALL -> Optional.of(HEAD_WALL);
            case END_LAP -> Optional.of(END_LAP);
            case OPENING -> Optional.of(OPENING);
            case EAVE, PAN_EDGE, CLEAT, RAKE, SIDE_WALL -> Optional.empty();
        };
    }
}
