package org.thalweg.takeoff;

import java.util.Arrays;
import java.util.Optional;

/** What can be ordered, in the order of the list. It is open: callers must expect items that are added later. */
public enum OrderItem {
    /** Panels, cut to length by who forms them; as long as all blanks together. */
    PANEL("panel", Quantity.Kind.LENGTH),
    /** Coil that panels are formed from on site. */
    COIL("coil", Quantity.Kind.LENGTH),
    /** Pans of valleys, braked from sheet. */
    VALLEY_PAN("valleyPan", Quantity.Kind.LENGTH),
    /** Flashings along edges, braked from sheet. */
    TRIM("trim", Quantity.Kind.LENGTH),
    /** The continuous strip that hems of panels go round. */
    CLEAT("cleat", Quantity.Kind.LENGTH),
    /** Clips in the seams. */
    CLIP("clip", Quantity.Kind.COUNT),
    /** Screws through panels, seen from outside, with a sealing washer. */
    PANEL_SCREW("panelScrew", Quantity.Kind.COUNT),
    /** Screws under the panels: of clips, cleats, strips and the edges of pans. */
    DECK_SCREW("deckScrew", Quantity.Kind.COUNT),
    /** Rivets in the laps of trims. */
    RIVET("rivet", Quantity.Kind.COUNT),
    /** Closures between ribs. */
    CLOSURE("closure", Quantity.Kind.COUNT),
    /** Strips of sealant tape. */
    SEALANT_TAPE("sealantTape", Quantity.Kind.LENGTH),
    /** Beads of sealant. */
    SEALANT("sealant", Quantity.Kind.LENGTH),
    /** Sheets under the metal. */
    UNDERLAYMENT("underlayment", Quantity.Kind.AREA),
    /** Sheets that keep out water that ice dams up. */
    ICE_BARRIER("iceBarrier", Quantity.Kind.AREA);

    private final String key;
    private final Quantity.Kind kind;

    OrderItem(String key, Quantity.Kind kind) {
        this.key = key;
        this.kind = kind;
    }

    /** How callers and price books write the item. */
    public String key() {
        return key;
    }

    /** What it is measured by. */
    public Quantity.Kind kind() {
        return kind;
    }

    /** The item callers write as {@code key}; letter case counts. */
    public static Optional<OrderItem> of(String key) {
        return Arrays.stream(values()).filter(item -> item.key.equals(key)).findFirst();
    }
}
