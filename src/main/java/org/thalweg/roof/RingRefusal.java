package org.thalweg.roof;

import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.geometry.RingChecks;

/**
 * Says in the caller's own numbers what is wrong with a ring: which side, from which corner to which, as the caller
 * listed them.
 */
record RingRefusal(Outlines outlines, int plane, RingChecks.Conflict conflict) {

    private static final String COUNTED = " Sides, corners and openings are counted from 0.";

    Refusal refusal() {
        return switch (conflict.fault()) {
            case CROSSES -> met("crosses");
            case RUNS_ALONG -> met("runs along");
            case OUTSIDE ->
                Refusal.of(
                        RefusalCode.OPENING_OUTSIDE,
                        corner(),
                        "This corner of the opening lies outside its plane. Move the opening, or give it to the plane "
                                + "it lies in.");
            case WITHIN ->
                Refusal.of(
                        RefusalCode.OPENINGS_OVERLAP,
                        corner(),
                        "This opening and opening %d lie one in the other. Leave the inner one out, or make it a plane."
                                .formatted(conflict.otherRing() - 1));
        };
    }

    private Refusal met(String how) {
        int one = slot(conflict.ring(), conflict.side());
        int two = slot(conflict.otherRing(), conflict.otherSide());
        if (conflict.ring() == conflict.otherRing()) {
            boolean inOrder = outlines.sideStart(one) > outlines.sideStart(two);
            int later = inOrder ? one : two;
            return Refusal.of(
                    RefusalCode.RING_CROSSES_ITSELF,
                    outlines.sideOrigin(later),
                    "Side %s %s side %s. Maybe two corners are in the wrong order, or one is given twice.%s"
                            .formatted(side(later), how, side(inOrder ? two : one), COUNTED));
        }
        String meets = "Side %s %s side %s of ".formatted(side(one), how, side(two));
        return conflict.otherRing() == 0
                ? Refusal.of(
                        RefusalCode.OPENING_OUTSIDE,
                        outlines.sideOrigin(one),
                        meets + "the outline. Move the opening inside, or draw it as a notch of the outline." + COUNTED)
                : Refusal.of(
                        RefusalCode.OPENINGS_OVERLAP,
                        outlines.sideOrigin(one),
                        meets
                                + "opening %d. Draw them apart, or as one opening.%s"
                                        .formatted(conflict.otherRing() - 1, COUNTED));
    }

    private int slot(int ring, int side) {
        return outlines.firstSlot[outlines.firstRing[plane] + ring] + side;
    }

    private String side(int slot) {
        int start = outlines.sideStart(slot);
        return "%d (corner %d to %d)".formatted(start, start, outlines.sideEnd(slot));
    }

    /** The corner a conflict that is about a corner names. */
    private Origin corner() {
        return outlines.cornerOrigin(slot(conflict.ring(), conflict.side()));
    }
}
