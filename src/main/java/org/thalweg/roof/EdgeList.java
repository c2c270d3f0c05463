package org.thalweg.roof;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.thalweg.roof.Edge.EdgeSide;
import org.thalweg.units.Length;

/**
 * The edges of a roof in their order, with their names: plane by plane, each plane's rings as the caller drew them, an
 * edge where it is first met. A name is the kind's letter and how many of the kind there are so far.
 *
 * <p>A side that was cut only because something touches it is one edge again: two pieces are one when their sides are
 * the same in every plane and so is their kind.
 */
final class EdgeList {

    /** The edge each line became part of. */
    final int[] edgeOfLine;

    /** How many planes meet at each edge; 0 where no more than two do, −1 for those that found no neighbour there. */
    final int[] crowd;

    private final Corners corners;
    private final Outlines outlines;
    private final Pieces pieces;
    private final Lines lines;
    private final Edge[] edges;
    private int count;
    private final Map<EdgeKind, Integer> numbers = new EnumMap<>(EdgeKind.class);

    EdgeList(Corners corners, Outlines outlines, Pieces pieces, Lines lines) {
        this.corners = corners;
        this.outlines = outlines;
        this.pieces = pieces;
        this.lines = lines;
        edges = new Edge[lines.count];
        crowd = new int[lines.count];
        edgeOfLine = new int[lines.count];
        Arrays.fill(edgeOfLine, -1);
        for (int ring = 0; ring < outlines.plane.length; ring++) {
            list(ring);
        }
    }

    List<Edge> edges() {
        return List.of(Arrays.copyOf(edges, count));
    }

    private void list(int ring) {
        int from = outlines.firstSlot[ring];
        int size = outlines.corners(ring);
        for (int i = 0; i < size; i++) {
            if (outlines.reversed[ring]) {
                // The caller's first corner is now the last one, and its first side ends there.
                listBackward(from + (2 * size - 2 - i) % size);
            } else {
                listForward(from + i);
            }
        }
    }

    private void listForward(int slot) {
        int end = pieces.first[slot + 1];
        for (int first = pieces.first[slot], last; first < end; first = last + 1) {
            last = first;
            while (last + 1 < end && oneEdge(last, last + 1)) {
                last++;
            }
            list(first, last);
        }
    }

    private void listBackward(int slot) {
        int start = pieces.first[slot];
        for (int last = pieces.first[slot + 1] - 1, first; last >= start; last = first - 1) {
            first = last;
            while (first - 1 >= start && oneEdge(first - 1, first)) {
                first--;
            }
            list(first, last);
        }
    }

    /** Whether two pieces of one side that follow each other have the same sides in every plane, and the same kind. */
    private boolean oneEdge(int piece, int following) {
        int line = lines.line[piece];
        int next = lines.line[following];
        if (lines.kind[line] != lines.kind[next] || lines.pieceCount[line] != lines.pieceCount[next]) {
            return false;
        }
        int q = lines.firstPiece[next];
        for (int p = lines.firstPiece[line]; p >= 0; p = lines.nextOnLine[p], q = lines.nextOnLine[q]) {
            if (pieces.slot[p] != pieces.slot[q]) {
                return false;
            }
        }
        return true;
    }

    /** Lists the edge of the pieces from {@code first} to {@code last} of one side, unless a plane before has it. */
    private void list(int first, int last) {
        int line = lines.line[first];
        if (edgeOfLine[line] >= 0) {
            return;
        }
        for (int p = first; p <= last; p++) {
            edgeOfLine[lines.line[p]] = count;
        }
        crowd[count] = lines.crowd[line];
        EdgeKind kind = lines.kind[line];
        edges[count++] = new Edge(
                kind.letter() + numbers.merge(kind, 1, Integer::sum),
                kind,
                sides(line),
                corners.inWorld(pieces.from[first]),
                corners.inWorld(pieces.to[last]),
                Length.metres(corners.distance(pieces.from[first], pieces.to[last])),
                lines.slope[line],
                lines.bend[line],
                lines.convex[line],
                outlines.sideOrigin(pieces.slot[first]));
    }

    private List<EdgeSide> sides(int line) {
        int one = lines.firstPiece[line];
        if (lines.pieceCount[line] == 1) {
            return List.of(side(one));
        }
        if (lines.pieceCount[line] == 2) {
            return List.of(side(one), side(lines.nextOnLine[one]));
        }
        EdgeSide[] sides = new EdgeSide[lines.pieceCount[line]];
        for (int i = 0, p = one; p >= 0; p = lines.nextOnLine[p]) {
            sides[i++] = side(p);
        }
        return List.of(sides);
    }

    private EdgeSide side(int piece) {
        return new EdgeSide(pieces.plane(piece), lines.mitre[piece]);
    }
}
