package org.thalweg.underlayment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.thalweg.geometry.Tolerance;
import org.thalweg.underlayment.Bands.Stretch;
import org.thalweg.underlayment.Course.Run;
import org.thalweg.underlayment.Course.Sheet;
import org.thalweg.units.Length;

/**
 * Rolls out one roll after another, as a crew does: what is left of a roll at the end of a run begins the next run, and where a
 * roll ends within a run the next roll laps it. A sheet is cut short where its end lap would come nearer to a lap of the course
 * below than laps may. What is cut off then, and a rest too short to begin with, is set aside and not counted on.
 *
 * <p>Only where laps of the course below stand so close that a whole roll finds no place between them is a lap nearer than it
 * should be: at the end of the roll.
 */
final class Rolling {

    private final Roll roll;
    private final Tolerance tolerance;
    private int rolls;
    private double rest;
    private double setAside;

    Rolling(Roll roll, Tolerance tolerance) {
        this.roll = roll;
        this.tolerance = tolerance;
    }

    /** Rolls opened so far. */
    int rolls() {
        return rolls;
    }

    /** What was cut off or left and not used on. */
    Length setAside() {
        return Length.metres(setAside);
    }

    /** What is left of the last roll. */
    Length rest() {
        return Length.metres(rest);
    }

    /** The courses over stretches, each kept clear of the laps of the one below. */
    List<Course> courses(List<List<Stretch>> bands) {
        List<Course> courses = new ArrayList<>(bands.size());
        double[] below = {};
        for (int i = 0; i < bands.size(); i++) {
            double from = i * roll.exposure();
            List<Run> runs = new ArrayList<>(bands.get(i).size());
            for (Stretch stretch : bands.get(i)) {
                runs.add(run(stretch, below));
            }
            Course course = new Course(
                    Length.metres(from), Length.metres(from + roll.width().metres()), runs);
            courses.add(course);
            below = course.laps();
        }
        return courses;
    }

    private Run run(Stretch stretch, double[] below) {
        List<Sheet> sheets = new ArrayList<>(1);
        double from = stretch.from();
        while (rest < stretch.to() - from - tolerance.hair()) {
            OptionalDouble end = lapEnd(from, below);
            if (end.isPresent()) {
                sheets.add(cut(from, end.getAsDouble()));
                from = end.getAsDouble() - roll.endLap().metres();
            }
            open();
        }
        sheets.add(cut(from, stretch.to()));
        return new Run(Length.metres(stretch.from()), Length.metres(stretch.to()), sheets);
    }

    private Sheet cut(double from, double to) {
        rest = Math.max(0, rest - (to - from));
        return new Sheet(Length.metres(from), Length.metres(to - from));
    }

    private void open() {
        setAside += rest;
        rest = roll.length().metres();
        rolls++;
    }

    /** How far along a sheet from the open roll reaches, clear of the laps below; nothing if a new roll has to be opened. */
    private OptionalDouble lapEnd(double from, double[] below) {
        double apart = roll.lapsApart().metres();
        double reach = from + rest;
        double end = reach;
        int beyond = Arrays.binarySearch(below, reach + apart);
        // From the last lap that may be too near downward; once one is far enough away, all before it are.
        for (int i = (beyond < 0 ? -beyond - 1 : beyond) - 1;
                i >= 0 && below[i] > end - apart + tolerance.hair();
                i--) {
            if (below[i] < end + apart - tolerance.hair()) {
                end = below[i] - apart;
            }
        }
        if (end - from >= roll.shortest() - tolerance.hair()
                && end - from > roll.endLap().metres() + tolerance.hair()) {
            return OptionalDouble.of(end);
        }
        boolean whole = rest >= roll.length().metres();
        return whole ? OptionalDouble.of(reach) : OptionalDouble.empty();
    }

    /** The least distance between end laps of courses that lie over each other, if two such courses have laps. */
    static OptionalDouble nearest(List<Course> courses) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < courses.size(); i++) {
            double[] below = courses.get(i - 1).laps();
            for (double lap : courses.get(i).laps()) {
                int at = Arrays.binarySearch(below, lap);
                int after = at < 0 ? -at - 1 : at;
                if (after < below.length) {
                    nearest = Math.min(nearest, below[after] - lap);
                }
                if (after > 0) {
                    nearest = Math.min(nearest, lap - below[after - 1]);
                }
            }
        }
        return nearest < Double.POSITIVE_INFINITY ? OptionalDouble.of(nearest) : OptionalDouble.empty();
    }
}
