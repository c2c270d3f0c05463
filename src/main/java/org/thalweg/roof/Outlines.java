package org.thalweg.roof;

import java.util.Arrays;
import java.util.List;
import org.thalweg.finding.Origin;

/**
 * The rings of all planes over the joined corners, one after the other: each plane's outer ring, then its openings.
 * Corners that repeat the one before are gone; what is left of a ring remembers which corner of the caller's it is.
 *
 * <p>A place in these lists is called a <em>slot</em>. The side of a slot runs from its corner to the next one.
 */
final class Outlines {

    /** The first ring of each plane, and at the end how many rings there are. */
    final int[] firstRing;

    /** The first slot of each ring, and at the end how many slots there are. */
    final int[] firstSlot;

    /** The joined corner of each slot. */
    final int[] corner;

    /** Which corner of the caller's ring each slot is. */
    final int[] drawn;

    /** The plane of each ring. */
    final int[] plane;

    /** The ring of each slot. */
    final int[] ring;

    /** Whether a ring runs against the caller's order. */
    final boolean[] reversed;

    private final List<PlaneOutline> planes;

    Outlines(List<PlaneOutline> planes, Corners corners) {
        this.planes = planes;
        firstRing = new int[planes.size() + 1];
        for (int p = 0; p < planes.size(); p++) {
            firstRing[p + 1] = firstRing[p] + 1 + planes.get(p).openings().size();
        }
        firstSlot = new int[firstRing[planes.size()] + 1];
        reversed = new boolean[firstSlot.length - 1];
        corner = new int[corners.joined.length];
        drawn = new int[corners.joined.length];
        plane = new int[reversed.length];
        ring = new int[corners.joined.length];
        fill(corners);
    }

    private void fill(Corners corners) {
        int from = 0;
        for (int p = 0; p < planes.size(); p++) {
            for (int r = firstRing[p]; r < firstRing[p + 1]; r++) {
                int size = size(p, r);
                firstSlot[r + 1] = fillRing(corners.joined, from, size, firstSlot[r]);
                plane[r] = p;
                Arrays.fill(ring, firstSlot[r], firstSlot[r + 1], r);
                from += size;
            }
        }
    }

    private int fillRing(int[] joined, int from, int size, int slot) {
        int at = slot;
        for (int i = 0; i < size; i++) {
            if (at == slot || corner[at - 1] != joined[from + i]) {
                corner[at] = joined[from + i];
                drawn[at] = i;
                at++;
            }
        }
        while (at > slot + 1 && corner[at - 1] == corner[slot]) {
            at--;
        }
        return at;
    }

    private int size(int ofPlane, int ofRing) {
        PlaneOutline outline = planes.get(ofPlane);
        return ofRing == firstRing[ofPlane]
                ? outline.outline().size()
                : outline.openings()
                        .get(ofRing - firstRing[ofPlane] - 1)
                        .outline()
                        .size();
    }

    /** Whether a ring is the rim of an opening. */
    boolean isOpening(int ofRing) {
        return ofRing != firstRing[plane[ofRing]];
    }

    private PlaneOutline.OpeningOutline opening(int ofRing) {
        return planes.get(plane[ofRing]).openings().get(ofRing - firstRing[plane[ofRing]] - 1);
    }

    /** How many slots there are. */
    int slots() {
        return firstSlot[plane.length];
    }

    /** How many corners a ring has. */
    int corners(int ofRing) {
        return firstSlot[ofRing + 1] - firstSlot[ofRing];
    }

    /** The slot after {@code slot} in its ring. */
    int next(int slot) {
        return slot + 1 == firstSlot[ring[slot] + 1] ? firstSlot[ring[slot]] : slot + 1;
    }

    /** Turns a ring round; its slots keep their corners' numbers. */
    void reverse(int ofRing) {
        reversed[ofRing] = !reversed[ofRing];
        for (int i = firstSlot[ofRing], j = firstSlot[ofRing + 1] - 1; i < j; i++, j--) {
            swap(corner, i, j);
            swap(drawn, i, j);
        }
    }

    private static void swap(int[] values, int i, int j) {
        int value = values[i];
        values[i] = values[j];
        values[j] = value;
    }

    /** Takes out a slot. */
    void drop(int slot) {
        int after = slots() - slot - 1;
        for (int r = ring[slot] + 1; r < firstSlot.length; r++) {
            firstSlot[r]--;
        }
        System.arraycopy(corner, slot + 1, corner, slot, after);
        System.arraycopy(drawn, slot + 1, drawn, slot, after);
        System.arraycopy(ring, slot + 1, ring, slot, after);
    }

    /** The caller's corner at which the caller's ring starts the side of a slot. */
    int sideStart(int slot) {
        return drawn[reversed[ring[slot]] ? next(slot) : slot];
    }

    /** The caller's corner at which the caller's ring ends the side of a slot. */
    int sideEnd(int slot) {
        return drawn[reversed[ring[slot]] ? slot : next(slot)];
    }

    /** Where in the request a ring's list of corners stands. */
    Origin origin(int ofRing) {
        return isOpening(ofRing)
                ? opening(ofRing).outlineAt()
                : planes.get(plane[ofRing]).outlineAt();
    }

    /** Where in the request the corner of a slot stands. */
    Origin cornerOrigin(int slot) {
        return origin(ring[slot]).at(drawn[slot]);
    }

    /** Where in the request the corner stands at which the caller's ring starts the side of a slot. */
    Origin sideOrigin(int slot) {
        return origin(ring[slot]).at(sideStart(slot));
    }
}
