package org.thalweg.underlayment;

import org.thalweg.units.Area;
import org.thalweg.units.Length;

/**
 * A roll of sheet and how its sheets lap.
 *
 * @param width     of the sheet; above 0
 * @param length    of a whole roll; more than two end laps
 * @param sideLap   how far a course lies over the one below; 0 or more, below the width
 * @param endLap    how far one sheet of a course lies over the next; 0 or more
 * @param lapsApart how far the end laps of a course stay from those of the course below; 0 or more
 */
public record Roll(Length width, Length length, Length sideLap, Length endLap, Length lapsApart) {

    public Roll {
        if (!(sideLap.metres() >= 0 && sideLap.metres() < width.metres())) {
            throw new IllegalArgumentException(
                    "a side lap (%s) is 0 or more and below the width (%s)".formatted(sideLap, width));
        }
        if (!(endLap.metres() >= 0 && length.metres() > 2 * endLap.metres()) || lapsApart.metres() < 0) {
            throw new IllegalArgumentException(
                    "a roll (%s) is longer than two end laps (%s), and those 0 or more apart (%s)"
                            .formatted(length, endLap, lapsApart));
        }
    }

    /** How much sheet is on it. */
    public Area area() {
        return new Area(width.metres() * length.metres());
    }

    /** How much of the slope each course adds. Metres, above 0. */
    double exposure() {
        return width.metres() - sideLap.metres();
    }

    /**
     * The shortest rest of a roll that is worth beginning a run with: half of what end laps stay apart, at least two end laps.
     * [common practice, no source] Metres.
     */
    double shortest() {
        return Math.max(lapsApart.metres() / 2, 2 * endLap.metres());
    }
}
