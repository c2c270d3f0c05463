package org.thalweg.roof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Which planes of a plan meet at which corner, and so stand equally high there.
 *
 * <p>All that touch a corner meet in it, be it a corner of theirs or a place on one of their sides, as long as no wall ends
 * or passes there. Where one does, two planes meet if they share a side that starts there and is no wall: the dormer and
 * the roof below meet along the valley, and not along the dormer's cheek.
 *
 * <pre>
 *        T             U T  valley: both stand equally high in U and in T
 *      / |             Q U  side wall of the roof below: Q belongs to it alone
 *    U   |
 *    |   |
 *    Q---W
 * </pre>
 */
final class PlanMeetings {

    /** Numbers of the planes that meet at a corner, ascending; two or more. */
    record Meeting(int corner, int[] planes) {
        boolean has(int plane) {
            return Arrays.binarySearch(planes, plane) >= 0;
        }
    }

    private final Pieces pieces;
    private final boolean[] wall;

    /** The ends of pieces at each corner: 2p where piece p starts, 2p + 1 where it stops; linked. */
    private final int[] firstEnd;

    private final int[] nextEnd;

    /** The meetings at each corner. */
    private final List<List<Meeting>> at;

    /**
     * @param corners seen from above
     * @param wall    whether each slot's side is a wall
     */
    PlanMeetings(Corners corners, Pieces pieces, boolean[] wall) {
        this.pieces = pieces;
        this.wall = wall;
        firstEnd = new int[corners.count];
        nextEnd = new int[2 * pieces.count()];
        Arrays.fill(firstEnd, -1);
        for (int end = nextEnd.length - 1; end >= 0; end--) {
            nextEnd[end] = firstEnd[corner(end)];
            firstEnd[corner(end)] = end;
        }
        at = new ArrayList<>(corners.count);
        for (int c = 0; c < corners.count; c++) {
            at.add(walled(c) ? alongSides(c) : allTogether(c));
        }
    }

    private int corner(int end) {
        return end % 2 == 0 ? pieces.from[end / 2] : pieces.to[end / 2];
    }

    private boolean walled(int corner) {
        for (int end = firstEnd[corner]; end >= 0; end = nextEnd[end]) {
            if (wall[pieces.slot[end / 2]]) {
                return true;
            }
        }
        return false;
    }

    private List<Meeting> allTogether(int corner) {
        TreeSet<Integer> planes = new TreeSet<>();
        for (int end = firstEnd[corner]; end >= 0; end = nextEnd[end]) {
            planes.add(pieces.plane(end / 2));
        }
        return planes.size() < 2 ? List.of() : List.of(meeting(corner, planes));
    }

    private List<Meeting> alongSides(int corner) {
        Map<Integer, TreeSet<Integer>> sides = new TreeMap<>();
        for (int end = firstEnd[corner]; end >= 0; end = nextEnd[end]) {
            if (!wall[pieces.slot[end / 2]]) {
                sides.computeIfAbsent(corner(end ^ 1), c -> new TreeSet<>()).add(pieces.plane(end / 2));
            }
        }
        Map<Integer, TreeSet<Integer>> groups = new HashMap<>();
        for (TreeSet<Integer> planes : sides.values()) {
            TreeSet<Integer> together = new TreeSet<>(planes);
            planes.stream().filter(groups::containsKey).map(groups::get).forEach(together::addAll);
            together.forEach(plane -> groups.put(plane, together));
        }
        return groups.values().stream()
                .filter(planes -> planes.size() > 1)
                .distinct()
                .map(planes -> meeting(corner, planes))
                .toList();
    }

    private static Meeting meeting(int corner, TreeSet<Integer> planes) {
        return new Meeting(corner, planes.stream().mapToInt(Integer::intValue).toArray());
    }

    /** The meetings of one plane, corner by corner in the order of its rings; a corner it passes twice comes twice. */
    List<Meeting> of(int plane, int firstPiece, int endPiece) {
        List<Meeting> found = new ArrayList<>();
        for (int p = firstPiece; p < endPiece; p++) {
            for (Meeting meeting : at.get(pieces.from[p])) {
                if (meeting.has(plane)) {
                    found.add(meeting);
                }
            }
        }
        return found;
    }
}
