package org.thalweg.fastening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.fastening.FasteningRules.ClipRule;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Length;
import org.thalweg.wind.WindZone;

/**
 * Clips of one seam, part by part. There is a clip at both ends and where two parts meet, and between those each part is
 * divided evenly, so no gap is wider than any place in it allows.
 *
 * <p>A part shorter than the end distance is no part: it joins a neighbour that asks for no wider spacing, or else takes as much
 * of one as it lacks.
 *
 * <p>Known limit: from the end of the seam to its first clip is the end distance whatever the wind; the panel's end is held by
 * its own row or cleat.
 */
final class ClipRuns {

    /** One part as asked for. */
    record Part(double from, double to, Length most, Optional<WindZone> zone) {

        double length() {
            return to - from;
        }

        boolean tighterThan(Part other) {
            return most.compareTo(other.most) < 0;
        }

        /** Both as one, as tight as this one. */
        Part with(Part other) {
            return new Part(Math.min(from, other.from), Math.max(to, other.to), most, zone);
        }

        Part between(double low, double high) {
            return new Part(low, high, most, zone);
        }

        Part harder(Part other) {
            boolean otherIs = zone.isPresent()
                    && other.zone.isPresent()
                    && other.zone.get().compareTo(zone.get()) > 0;
            return otherIs ? other.with(this) : with(other);
        }
    }

    private final double length;
    private final double end;
    private final Tolerance tolerance;

    /**
     * @param length of the seam, metres
     */
    ClipRuns(double length, ClipRule rule, Tolerance tolerance) {
        this.length = length;
        this.end = rule.endDistance().metres();
        this.tolerance = tolerance;
    }

    /**
     * @param asked in order, together the whole seam; at least one
     */
    List<ClipRun> of(List<Part> asked) {
        double free = Math.max(0, length - 2 * end);
        Part tightest = asked.get(0);
        for (Part other : asked) {
            tightest = other.tighterThan(tightest) ? other : tightest;
        }
        List<Part> parts = asked.size() == 1 ? asked : longEnough(merged(inside(asked)));
        Part sole = parts.size() == 1 ? parts.get(0) : tightest;
        EvenRow even = EvenRow.between(Length.metres(free), sole.most, Length.metres(end), tolerance);
        if (even.count() == 1) {
            return List.of(run(sole.between(0, length), EvenRow.middle(Length.metres(length))));
        }
        return parts.size() == 1
                ? List.of(run(sole.between(0, length), new EvenRow(even.count(), Length.metres(end), even.spacing())))
                : runs(parts);
    }

    /** What lies between the two end distances. */
    private List<Part> inside(List<Part> asked) {
        List<Part> inside = new ArrayList<>(asked.size());
        for (Part part : asked) {
            Part free = part.between(Math.max(part.from, end), Math.min(part.to, length - end));
            if (free.length() > tolerance.hair()) {
                inside.add(free);
            }
        }
        return inside;
    }

    private static List<Part> merged(List<Part> parts) {
        List<Part> merged = new ArrayList<>(parts.size());
        for (Part part : parts) {
            int last = merged.size() - 1;
            if (last >= 0 && merged.get(last).most.equals(part.most)) {
                merged.set(last, merged.get(last).harder(part));
            } else {
                merged.add(part);
            }
        }
        return merged;
    }

    /** The first part that is too short first; whatever lies below one that is looked at is long enough. */
    private List<Part> longEnough(List<Part> parts) {
        List<Part> left = new ArrayList<>(parts);
        int i = 0;
        while (i < left.size() && left.size() > 1) {
            if (left.get(i).length() < end - tolerance.hair()) {
                i = lengthen(left, i);
            } else {
                i++;
            }
        }
        return left;
    }

    /**
     * Leaves fewer parts, or this one long enough.
     *
     * @return where to look on
     */
    private int lengthen(List<Part> parts, int i) {
        int beside =
                i == 0 ? 1 : i + 1 == parts.size() || parts.get(i - 1).tighterThan(parts.get(i + 1)) ? i - 1 : i + 1;
        Part part = parts.get(i);
        Part other = parts.get(beside);
        double lacks = end - part.length();
        if (other.tighterThan(part)) {
            return joined(parts, Math.min(i, beside), other.with(part));
        }
        if (other.length() - lacks < end) {
            return joined(parts, Math.min(i, beside), part.with(other));
        }
        if (beside > i) {
            parts.set(i, part.between(part.from, part.to + lacks));
            parts.set(beside, other.between(other.from + lacks, other.to));
        } else {
            parts.set(beside, other.between(other.from, other.to - lacks));
            parts.set(i, part.between(part.from - lacks, part.to));
        }
        return i;
    }

    /** Puts one part in the place of two, and takes neighbours that ask for as much into it. */
    private static int joined(List<Part> parts, int low, Part one) {
        parts.set(low, one);
        parts.remove(low + 1);
        int at = low;
        if (at > 0 && parts.get(at - 1).most.equals(parts.get(at).most)) {
            parts.set(at - 1, parts.get(at - 1).harder(parts.get(at)));
            parts.remove(at);
            at--;
        }
        if (at + 1 < parts.size() && parts.get(at).most.equals(parts.get(at + 1).most)) {
            parts.set(at, parts.get(at).harder(parts.get(at + 1)));
            parts.remove(at + 1);
        }
        return at;
    }

    private List<ClipRun> runs(List<Part> parts) {
        List<ClipRun> runs = new ArrayList<>(parts.size());
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            int intervals = (int) Math.max(1, tolerance.ceil(part.length(), part.most.metres()));
            Length spacing = Length.metres(part.length() / intervals);
            boolean last = i + 1 == parts.size();
            double to = last ? length : part.to;
            runs.add(
                    i == 0
                            ? run(part.between(0, to), new EvenRow(intervals + 1, Length.metres(end), spacing))
                            : run(part.between(part.from, to), new EvenRow(intervals, spacing, spacing)));
        }
        return runs;
    }

    private static ClipRun run(Part part, EvenRow row) {
        return new ClipRun(Length.metres(part.from), Length.metres(part.to), part.most, part.zone, row);
    }
}
