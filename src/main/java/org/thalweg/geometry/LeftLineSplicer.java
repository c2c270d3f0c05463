package org.thalweg.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Opens the pieces of one strip where the shape ends on the strip's left line. A corner on a line counts as lying right of it, so
 * a bite out of the strip that reaches just to its left line has been walked round without crossing that line, and the piece
 * still runs down the line past the bite:
 *
 * <pre>
 *   |  _________       The side down the line and the side of the bite up it lie on each other. Each takes
 *   | |                the other's way on, and what hung together by nothing comes apart; an opening that
 *   | |  bite          touches the line becomes a bite.
 *   | |_________
 *   |
 * </pre>
 */
final class LeftLineSplicer {

    private final double line;
    private double[] across = new double[16];
    private double[] up = new double[16];
    private int[] tag = new int[16];
    private int[] next = new int[16];
    private int corners;

    private LeftLineSplicer(double line) {
        this.line = line;
    }

    /**
     * Puts the rings of a strip together anew.
     *
     * @param line  the strip's left line
     * @param rings pieces, counter-clockwise, and openings, clockwise
     * @return the same, apart where they must be
     */
    static List<Ring> splice(double line, List<Ring> rings) {
        LeftLineSplicer splicer = new LeftLineSplicer(line);
        rings.forEach(splicer::add);
        for (int side = 0; side < splicer.corners; side++) {
            if (splicer.onLine(side) && splicer.up[splicer.next[side]] > splicer.up[side]) {
                splicer.splice(side);
            }
        }
        return splicer.rings();
    }

    private void add(Ring ring) {
        int first = corners;
        for (int i = 0; i < ring.size(); i++) {
            if (corners == next.length) {
                across = Arrays.copyOf(across, 2 * corners);
                up = Arrays.copyOf(up, 2 * corners);
                tag = Arrays.copyOf(tag, 2 * corners);
                next = Arrays.copyOf(next, 2 * corners);
            }
            across[corners] = ring.across(i);
            up[corners] = ring.up(i);
            tag[corners] = ring.tag(i);
            next[corners] = corners + 1;
            corners++;
        }
        next[corners - 1] = first;
    }

    private boolean onLine(int side) {
        return across[side] == line && across[next[side]] == line;
    }

    /** Where a side down the line lies along all of this one up it, they change their ends. */
    private void splice(int upward) {
        for (int down = 0; down < corners; down++) {
            if (onLine(down) && up[down] >= up[next[upward]] && up[next[down]] <= up[upward]) {
                int end = next[upward];
                next[upward] = next[down];
                next[down] = end;
                tag[upward] = tag[down];
                return;
            }
        }
    }

    private List<Ring> rings() {
        List<Ring> rings = new ArrayList<>();
        boolean[] taken = new boolean[corners];
        RingBuilder ring = new RingBuilder();
        for (int first = 0; first < corners; first++) {
            ring.empty();
            for (int corner = first; !taken[corner]; corner = next[corner]) {
                taken[corner] = true;
                ring.add(across[corner], up[corner], tag[corner]);
            }
            ring.dropSpikes();
            Ring closed = ring.closed();
            if (closed.size() > 2 && closed.mostAcross() > closed.leastAcross()) {
                rings.add(closed);
            }
        }
        return rings;
    }
}
