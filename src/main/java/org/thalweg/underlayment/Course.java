package org.thalweg.underlayment;

import java.util.List;
import java.util.stream.DoubleStream;
import org.thalweg.units.Length;

/**
 * One course: a sheet as wide as the roll, rolled out across the slope. The top one keeps the width of the roll; what stands
 * over the plane's top is turned over the ridge or cut off.
 *
 * @param from where its lower edge lies, up the plane, or off the edge the courses of an ice barrier follow
 * @param to   where its upper edge lies: one width of the roll further
 * @param runs unbroken stretches of it, from the left; apart from each other
 */
public record Course(Length from, Length to, List<Run> runs) {

    public Course {
        runs = List.copyOf(runs);
    }

    /**
     * One unbroken stretch.
     *
     * @param from   its left end, across the plane, or along that edge
     * @param to     its right end
     * @param sheets it is made of, from the left; the first starts at its left end, each next one laps the one before, the
     *               last ends at its right end
     */
    public record Run(Length from, Length to, List<Sheet> sheets) {

        public Run {
            sheets = List.copyOf(sheets);
        }

        public Length length() {
            return Length.metres(to.metres() - from.metres());
        }
    }

    /**
     * One sheet of a run.
     *
     * @param from   its left end
     * @param length of it, with its lap over the sheet before
     */
    public record Sheet(Length from, Length length) {

        /** Where its right end lies: there the lap of the next one is. Metres. */
        double end() {
            return from.metres() + length.metres();
        }
    }

    /** All its sheets end to end. */
    public Length rolledOut() {
        double[] lengths = new double[sheets()];
        int at = 0;
        for (Run run : runs) {
            for (Sheet sheet : run.sheets()) {
                lengths[at++] = sheet.length().metres();
            }
        }
        return Length.metres(DoubleStream.of(lengths).sum());
    }

    /** All its runs end to end. */
    public Length covered() {
        return Length.metres(
                runs.stream().mapToDouble(run -> run.length().metres()).sum());
    }

    /** Where its end laps are: the right end of every sheet but the last of each run. Metres, ascending. */
    double[] laps() {
        double[] laps = new double[sheets() - runs.size()];
        int at = 0;
        for (Run run : runs) {
            for (int i = 0; i + 1 < run.sheets().size(); i++) {
                laps[at++] = run.sheets().get(i).end();
            }
        }
        return laps;
    }

    private int sheets() {
        int sheets = 0;
        for (Run run : runs) {
            sheets += run.sheets().size();
        }
        return sheets;
    }
}
