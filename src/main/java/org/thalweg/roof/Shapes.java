package org.thalweg.roof;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;

/** The planes as they lie, every side tagged with its edge. */
record Shapes(Outlines outlines, Pieces pieces, PlaneReader reader, Lines lines, EdgeList list) {

    Region of(int plane) {
        int outer = outlines.firstRing[plane];
        int end = outlines.firstRing[plane + 1];
        if (end == outer + 1) {
            return new Region(ring(outer), List.of());
        }
        List<Ring> openings = new ArrayList<>();
        for (int r = outer + 1; r < end; r++) {
            openings.add(ring(r));
        }
        return new Region(ring(outer), openings);
    }

    /** A ring with a corner wherever one edge ends and the next begins. */
    private Ring ring(int ring) {
        int first = pieces.first[outlines.firstSlot[ring]];
        int end = pieces.first[outlines.firstSlot[ring + 1]];
        int size = 0;
        for (int p = first; p < end; p++) {
            size += starts(p) ? 1 : 0;
        }
        double[] across = new double[size];
        double[] up = new double[size];
        int[] tag = new int[size];
        int at = 0;
        for (int p = first; p < end; p++) {
            if (starts(p)) {
                across[at] = along(reader.across, p);
                up[at] = along(reader.up, p);
                tag[at] = edge(p);
                at++;
            }
        }
        return new Ring(across, up, tag);
    }

    /** Whether an edge starts with a piece: the first of its side, or another edge than the piece before. */
    private boolean starts(int piece) {
        return pieces.start[piece] == 0 || edge(piece) != edge(piece - 1);
    }

    private int edge(int piece) {
        return list.edgeOfLine[lines.line[piece]];
    }

    private double along(double[] values, int piece) {
        int slot = pieces.slot[piece];
        double start = values[slot];
        double at = pieces.start[piece];
        return at == 0 ? start : start + at * (values[outlines.next(slot)] - start);
    }
}
