package org.thalweg.fastening;

import java.util.Optional;
import org.thalweg.panel.Cut;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.PanelHold;

/** What a row of fasteners holds down. The list is open: callers must expect kinds that are added later. */
public enum FastenerKind {
    /** The lower ends of panels that are screwed down, at an eave or where the plane breaks to a flatter or steeper one. */
    EAVE("eave", true),
    /** Panels at a valley, through sealant and pan. */
    VALLEY("valley", true),
    /** The outer edge of a valley's pan. */
    PAN_EDGE("panEdge", false),
    /** The continuous cleat round which panels are hemmed. */
    CLEAT("cleat", false),
    /** The closure between the ribs at upper ends: under a ridge, a hip, a peak. */
    CLOSURE("closure", true),
    /** The closure between the ribs below a wall. */
    HEAD_WALL("headWall", true),
    /** The strip along a rake that its trim hooks to. */
    RAKE("rake", false),
    /** The strip along a wall beside the plane that its flashing hooks to. */
    SIDE_WALL("sideWall", false),
    /** The flashing of a chimney, skylight or other opening. */
    OPENING("opening", true),
    /** One piece of a panel, to the piece that goes under it. */
    END_LAP("endLap", true);

    private final String wire;
    private final boolean throughPanel;

    FastenerKind(String wire, boolean throughPanel) {
        this.wire = wire;
        this.throughPanel = throughPanel;
    }

    /** How callers write the kind. */
    public String wire() {
        return wire;
    }

    /**
     * Whether a panel is what is pierced. Such a row is broken at every rib; the others run on under the panels, and ribs
     * are nothing to them.
     */
    public boolean throughPanel() {
        return throughPanel;
    }

    /**
     * Whether it holds panels to the roof and so keeps them from moving. Closures are fastened to the panels and stop short of the
     * deck, so that there is one fixed place to each panel [common practice, no source]; a lap is fastened metal to metal.
     */
    public boolean pinsPanel() {
        return this == EAVE || this == VALLEY || this == OPENING;
    }

    /**
     * What is fastened where panels end.
     *
     * <pre>
     *   edge                                  lower ends      upper ends   beside
     *   eave, angled eave, level valley,
     *     pitch break, ridge, hip, stacked …  eave or cleat   closure      rake
     *   valley                                valley or cleat valley …     valley …
     *   expansion joint                       cleat           closure      rake
     *   rake                                  rake            rake         rake
     *   head wall                             head wall       head wall    side wall
     *   side wall                             side wall       side wall    side wall
     *   opening                               opening         opening      opening
     *   flush                                 end lap         nothing      nothing
     * </pre>
     *
     * <p>Nothing may pin the lower ends at an expansion joint, so a cleat holds them whatever is asked. Where two planes lie
     * in one the upper panels lap the lower ones.
     *
     * @param edge what the edge is
     * @param end  which end of the panels comes to it, or whether they lie beside it
     * @param hold how lower ends are held there
     */
    public static Optional<FastenerKind> at(EdgeKind edge, Cut.End end, PanelHold hold) {
        boolean beside = end == Cut.End.LEFT || end == Cut.End.RIGHT;
        return switch (edge) {
            case VALLEY -> Optional.of(hold == PanelHold.CLEATED ? CLEAT : VALLEY);
            case RAKE -> Optional.of(RAKE);
            case SIDE_WALL -> Optional.of(SIDE_WALL);
            case HEAD_WALL -> Optional.of(beside ? SIDE_WALL : HEAD_WALL);
            case OPENING -> Optional.of(OPENING);
            case FLUSH -> end == Cut.End.LOWER ? Optional.of(END_LAP) : Optional.empty();
            case EXPANSION_JOINT -> Optional.of(beside ? RAKE : end == Cut.End.LOWER ? CLEAT : CLOSURE);
            case EAVE, ANGLED_EAVE, LEVEL_VALLEY, PITCH_BREAK, RIDGE, HIP, HIGH_EAVE, ANGLED_RAKE, STACKED ->
                Optional.of(beside ? RAKE : end == Cut.End.UPPER ? CLOSURE : hold == PanelHold.FIXED ? EAVE : CLEAT);
        };
    }
}
