package org.thalweg.footprint;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.thalweg.footprint.WallPlan.Wall;
import org.thalweg.footprint.WallPlan.WallLine;

/** Corners of walls that lie at one place or in one line. Places and tolerances in steps of the grid. */
final class InLine {

    private InLine() {}

    /** Takes out walls that are shorter than the tolerance. */
    static void join(List<Wall> walls, double tolerance) {
        for (int i = walls.size() - 1; i >= 0 && walls.size() > 1; i--) {
            Wall wall = walls.get(i);
            Wall end = walls.get((i + 1) % walls.size());
            // A tolerance of 1 takes out only walls of no length: on the grid places a step apart are apart.
            if (Math.hypot(end.onX() - wall.onX(), end.onY() - wall.onY()) < tolerance) {
                walls.remove(i);
            }
        }
    }

    /** The same ring without corners in line between walls that rise alike. */
    static List<Wall> straightened(List<Wall> corners, double tolerance) {
        List<Wall> walls = new ArrayList<>(corners);
        List<List<Wall>> passed = new ArrayList<>();
        corners.forEach(corner -> passed.add(new ArrayList<>()));
        boolean again = true;
        while (again) {
            again = false;
            for (int i = 0; i < walls.size() && walls.size() > 2; ) {
                int before = (i + walls.size() - 1) % walls.size();
                Wall wall = walls.get(i);
                List<Wall> between = new ArrayList<>(passed.get(before));
                between.add(wall);
                between.addAll(passed.get(i));
                if (wall.form().equals(walls.get(before).form())
                        && lie(walls.get(before), between, walls.get((i + 1) % walls.size()), tolerance)) {
                    passed.set(before, between);
                    walls.set(before, walls.get(before).with(wall));
                    walls.remove(i);
                    passed.remove(i);
                    again = true;
                } else {
                    i++;
                }
            }
        }
        return walls;
    }

    /** Whether corners between two others lie on the line between those, one after the other. */
    private static boolean lie(Wall from, List<Wall> between, Wall to, double tolerance) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double length = Math.hypot(dx, dy);
        double before = 0;
        for (Wall wall : between) {
            double along = (wall.x() - from.x()) * dx + (wall.y() - from.y()) * dy;
            if (Math.abs(PlanChecks.turn(from, to, wall)) > tolerance * length
                    || along <= before
                    || along >= length * length) {
                return false;
            }
            before = along;
        }
        return true;
    }

    /**
     * The line of every wall. A gable and what it is in line with run on one line, and the corners between them are put onto
     * it. Slopes in line that do not rise alike are refused.
     */
    static List<WallLine> align(List<Wall> walls, double tolerance) {
        int n = walls.size();
        boolean[] straight = new boolean[n];
        int bent = -1;
        for (int i = 0; i < n; i++) {
            Wall before = walls.get((i + n - 1) % n);
            Wall wall = walls.get(i);
            boolean alike = before.form().equals(wall.form());
            straight[i] = !alike && lie(before, List.of(wall), walls.get((i + 1) % n), tolerance);
            if (straight[i] && before.form().gable() == wall.form().gable()) {
                throw unlike(wall.sides().get(0), before.sides().get(0)).stop();
            }
            bent = straight[i] ? bent : i;
        }
        List<WallLine> lines = new ArrayList<>(Collections.nCopies(n, new WallLine(0, 0, 0)));
        for (int k = 0; k < n; ) {
            int first = (bent + k) % n;
            int walk = 0;
            while (k + walk + 1 < n && straight[(first + walk + 1) % n]) {
                walk++;
            }
            Wall from = walls.get(first);
            Wall to = walls.get((first + walk + 1) % n);
            WallLine line = WallLine.of(from, to);
            lines.set(first, line);
            for (int i = 1; i <= walk; i++) {
                int at = (first + i) % n;
                lines.set(at, line);
                walls.set(at, onLine(walls.get(at), from, to).on(line));
            }
            k += walk + 1;
        }
        return lines;
    }

    static NoRoof unlike(int side, int other) {
        return NoRoof.because(
                        NoRoof.Reason.PITCHES_IN_LINE,
                        side,
                        "{side} runs in line with {other} and rises in another way: the steeper slope would be covered by the"
                                + " flatter. Let both rise alike, or set one of them back.")
                .with(other);
    }

    private static Wall onLine(Wall corner, Wall from, Wall to) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double part = ((corner.x() - from.x()) * dx + (corner.y() - from.y()) * dy) / (dx * dx + dy * dy);
        return corner.at(from.x() + Math.round(part * dx), from.y() + Math.round(part * dy));
    }
}
