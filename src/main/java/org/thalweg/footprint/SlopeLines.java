package org.thalweg.footprint;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The lines round every slope, noted one by one as eaves rise, each with the slope to its left; then put together to rings. */
final class SlopeLines {

    /** What each slope became part of, itself if of none. */
    private final List<Integer> united = new ArrayList<>();

    /** The face of each slope. Above a change one face may be several slopes, where its eave was parted below. */
    private final List<Integer> faceOf = new ArrayList<>();

    private final Faces faces;
    private final List<Line> lines = new ArrayList<>();

    /** Nothing is on the other side: an eave. */
    static final int NONE = -1;

    /** A line as it was noted: what united later is not yet in it. */
    record Line(int slope, int beside, int from, int to) {}

    SlopeLines(Faces faces) {
        this.faces = faces;
        for (int face = 0; face < faces.all().size(); face++) {
            begin(face);
        }
    }

    private int begin(int face) {
        united.add(united.size());
        faceOf.add(face);
        return united.size() - 1;
    }

    /** A new slope on the face above that of another. */
    int above(int slope) {
        return begin(faceOf.get(slope) + 1);
    }

    int face(int slope) {
        return faceOf.get(slope);
    }

    /**
     * A line with the slope to its left, from one node to another.
     *
     * @param beside the slope or gable on its other side, {@link #NONE} at an eave
     */
    void add(int slope, int beside, int from, int to) {
        lines.add(new Line(slope, beside, from, to));
    }

    /** Two slopes turned out to be one. */
    void unite(int one, int other) {
        int a = slopeOf(one);
        int b = slopeOf(other);
        united.set(Math.max(a, b), Math.min(a, b));
    }

    /** The number of the slope this one became part of; itself, if of none. */
    int slopeOf(int slope) {
        int root = slope;
        while (united.get(root) != root) {
            // What has been looked up once is found sooner: of equal teeth, hundreds become part of one another.
            united.set(root, united.get(united.get(root)));
            root = united.get(root);
        }
        return root;
    }

    /** The faces of every slope by its number, in order; none for those that are part of another. */
    List<Set<Integer>> faces() {
        List<Set<Integer>> faces = new ArrayList<>();
        for (int slope = 0; slope < united.size(); slope++) {
            faces.add(new LinkedHashSet<>());
            faces.get(slopeOf(slope)).add(face(slope));
        }
        return faces;
    }

    /** The ring of lines round every slope by its number; empty for walls and for those that are part of another. */
    List<List<Line>> rings() {
        List<List<Line>> bySlope = new ArrayList<>();
        for (int i = 0; i < united.size(); i++) {
            bySlope.add(new ArrayList<>());
        }
        for (Line line : lines) {
            bySlope.get(slopeOf(line.slope)).add(line);
        }
        List<List<Line>> rings = new ArrayList<>();
        for (int slope = 0; slope < united.size(); slope++) {
            rings.add(ring(slope, bySlope.get(slope)));
        }
        return rings;
    }

    private List<Line> ring(int slope, List<Line> lines) {
        List<Line> ring = new ArrayList<>();
        int side = faces.side(face(slope));
        if (lines.isEmpty()) {
            return ring;
        }
        Map<Integer, Line> next = new HashMap<>();
        for (Line line : lines) {
            if (next.put(line.from, line) != null) {
                throw notSimple(side, "touches itself").stop();
            }
        }
        int start = lines.get(0).from;
        int node = start;
        do {
            Line line = next.remove(node);
            if (line == null) {
                throw notSimple(side, "is not closed").stop();
            }
            ring.add(line);
            node = line.to;
        } while (node != start);
        if (!next.isEmpty()) {
            throw notSimple(side, "surrounds another part of the roof").stop();
        }
        return ring;
    }

    /** @param side whose slope it is */
    static NoRoof notSimple(int side, String what) {
        String detail =
                "What rises from {side} would be no simple surface: it %s. Give the sides round it other pitches, or"
                        + " draw the roof as points and planes.";
        return NoRoof.because(NoRoof.Reason.SLOPE_NOT_SIMPLE, side, detail.formatted(what));
    }
}
