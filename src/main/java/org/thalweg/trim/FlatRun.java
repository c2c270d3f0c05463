package org.thalweg.trim;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Length;

/**
 * A whole trim lying flat, both ends cut, as if it were one piece. Reaches are marked on the bend lines and cuts run straight from
 * one to the next. A hem is cut as the leg it lies on when folded, so the other way. In line with a bend two cuts may end that do
 * not meet: what lies before it and what lies beyond it end on different things.
 *
 * <p><b>Known limit.</b> In truth a cut runs straight across the leg and not from the middle of one bend to the middle of the
 * next, half of what the bend takes off away: about the thickness of the metal where bends are tight.
 */
public final class FlatRun {

    private final Profile profile;
    private final FlatTrim flat;
    private final Length edge;
    private final TrimEnd start;
    private final TrimEnd finish;
    private final Tolerance tolerance;

    /** Only looked at when a piece is drawn. */
    private @Nullable Cuts cuts;

    /** @param edge how long the edge is */
    FlatRun(Profile profile, FlatTrim flat, Length edge, TrimEnd start, TrimEnd finish, Tolerance tolerance) {
        this.profile = profile;
        this.flat = flat;
        this.edge = edge;
        this.start = start;
        this.finish = finish;
        this.tolerance = tolerance;
    }

    /** Both ends, from the first edge to the last; and whether they are left square. */
    private record Cuts(List<Point2> low, List<Point2> high, boolean square) {}

    private Cuts cuts() {
        if (cuts == null) {
            List<Point2> low = new ArrayList<>();
            for (Point2 mark : marks(profile, flat, start)) {
                low.add(new Point2(mark.across(), -mark.up()));
            }
            List<Point2> high = new ArrayList<>();
            for (Point2 mark : marks(profile, flat, finish)) {
                high.add(new Point2(mark.across(), edge.metres() + mark.up()));
            }
            boolean square = flat.missing().isPresent();
            for (int i = 0; i < low.size(); i++) {
                square |= high.get(i).up() < low.get(i).up() - tolerance.hair();
            }
            cuts = new Cuts(low, high, square);
        }
        return cuts;
    }

    /** Across the flat, and how far the end reaches there. */
    private static List<Point2> marks(Profile profile, FlatTrim flat, TrimEnd end) {
        List<Double> lines = lines(profile, flat);
        List<Point2> marks = new ArrayList<>();
        LegCut first = end.cuts().get(0);
        LegCut last = end.cuts().get(end.cuts().size() - 1);
        Length firstGirth = profile.girths().get(0);
        Length lastGirth = profile.girths().get(profile.girths().size() - 1);
        profile.first()
                .ifPresent(
                        hem -> marks.add(new Point2(0, along(first.inner(), first.outer(), hem.girth(), firstGirth))));
        for (LegCut cut : end.cuts()) {
            marks.add(new Point2(lines.get(cut.leg()), cut.inner().metres()));
            marks.add(new Point2(lines.get(cut.leg() + 1), cut.outer().metres()));
        }
        profile.last()
                .ifPresent(hem -> marks.add(
                        new Point2(flat.width().metres(), along(last.outer(), last.inner(), hem.girth(), lastGirth))));
        return marks;
    }

    private static double along(Length from, Length to, Length on, Length girth) {
        return from.metres() + (to.metres() - from.metres()) * on.metres() / girth.metres();
    }

    /** Where the mould lines lie on the flat: on the middle of each bend, or on the edge of the sheet where there is no hem. */
    private static List<Double> lines(Profile profile, FlatTrim flat) {
        List<Double> lines = new ArrayList<>(profile.girths().size() + 1);
        if (profile.first().isEmpty()) {
            lines.add(0.0);
        }
        flat.folds().forEach(fold -> lines.add(fold.at().metres()));
        if (profile.last().isEmpty()) {
            lines.add(flat.width().metres());
        }
        return lines;
    }

    /** The piece from one place to another, both from the corner the edge starts at; metres. */
    TrimBlank piece(double from, double to) {
        Cuts ends = cuts();
        double width = flat.width().metres();
        List<Point2> around = new ArrayList<>();
        if (ends.square) {
            around.addAll(
                    List.of(new Point2(0, from), new Point2(width, from), new Point2(width, to), new Point2(0, to)));
        } else {
            around.addAll(between(from, to, ends.low));
            List<Point2> back = between(from, to, ends.high);
            for (int i = back.size() - 1; i >= 0; i--) {
                around.add(back.get(i));
            }
        }
        List<Point2> outline = new ArrayList<>(around.size());
        for (Point2 corner : corners(around)) {
            outline.add(new Point2(corner.across(), corner.up() - from));
        }
        return new TrimBlank(outline);
    }

    /** What of a cut runs through a piece; where the piece ends before it, along its square end. */
    private static List<Point2> between(double from, double to, List<Point2> cut) {
        List<Point2> line = new ArrayList<>();
        for (int i = 0; i < cut.size(); i++) {
            if (i > 0) {
                line.addAll(crossings(cut.get(i - 1), cut.get(i), from, to));
            }
            Point2 mark = cut.get(i);
            line.add(new Point2(mark.across(), Math.max(from, Math.min(to, mark.up()))));
        }
        return line;
    }

    /** Where a cut passes the square ends of a piece, in the order it does. */
    private static List<Point2> crossings(Point2 one, Point2 other, double from, double to) {
        List<Point2> passed = new ArrayList<>(2);
        boolean rises = other.up() > one.up();
        for (double end : rises ? new double[] {from, to} : new double[] {to, from}) {
            double before = end - one.up();
            double after = other.up() - end;
            if (before * after > 0) {
                double part = before / (before + after);
                passed.add(new Point2(one.across() + part * (other.across() - one.across()), end));
            }
        }
        return passed;
    }

    /** Without those that lie on another or in line between their neighbours. */
    private List<Point2> corners(List<Point2> around) {
        List<Point2> kept = new ArrayList<>(around);
        for (int i = 0; i < kept.size() && kept.size() > 3; ) {
            Point2 before = kept.get((i + kept.size() - 1) % kept.size());
            Point2 after = kept.get((i + 1) % kept.size());
            if (between(before, kept.get(i), after)) {
                kept.remove(i);
                i = Math.max(0, i - 1);
            } else {
                i++;
            }
        }
        return kept;
    }

    private boolean between(Point2 before, Point2 at, Point2 after) {
        double across = after.across() - before.across();
        double up = after.up() - before.up();
        double length = Math.hypot(across, up);
        double ahead = (at.across() - before.across()) * across + (at.up() - before.up()) * up;
        double aside = (at.across() - before.across()) * up - (at.up() - before.up()) * across;
        double hair = tolerance.hair();
        if (length <= hair) {
            return Math.hypot(at.across() - before.across(), at.up() - before.up()) <= hair;
        }
        return Math.abs(aside) <= hair * length && ahead >= -hair * length && ahead <= (length + hair) * length;
    }
}
