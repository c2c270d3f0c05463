package org.thalweg.sealing;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.thalweg.units.Length;

/**
 * How many lines of tape or beads of sealant lie side by side at each place, and how laps of trims are riveted. That laps are
 * sealed is published (UFGS 07 41 2, sheet metal laps sealed watertight within the lap area); with how much is common practice,
 * no source, and a caller's figures win.
 *
 * @param lines            for every kind; 0 for none, as where laps of a pan are soldered
 * @param rivetSpacing     greatest distance between rivets, across a trim's flat width; above 0
 * @param edgeDistance     from the edges of a trim to the first and the last rivet; 0 or more
 * @param beadPerCartridge how long a bead one cartridge gives; above 0
 */
public record SealingRules(
        Map<SealKind, Integer> lines, Length rivetSpacing, Length edgeDistance, Length beadPerCartridge) {

    /**
     * For crews who read inches: one line of tape, two with a closure, one under it and one above; two beads across a pan, one
     * across a trim; rivets 2 in apart at most; 24 ft of bead a cartridge.
     */
    public static final SealingRules INCHES =
            new SealingRules(usual(), Length.inches(2), Length.inches(1), Length.feet(24));

    /** The same in round millimetres. */
    public static final SealingRules METRIC =
            new SealingRules(usual(), Length.millimetres(50), Length.millimetres(25), Length.metres(7.5));

    public SealingRules {
        lines = Collections.unmodifiableMap(new EnumMap<>(lines));
        if (!lines.keySet().containsAll(Arrays.asList(SealKind.values()))
                || lines.values().stream().anyMatch(count -> count < 0)) {
            throw new IllegalArgumentException("every kind needs a count of 0 or more, and there are " + lines);
        }
        if (rivetSpacing.metres() <= 0 || edgeDistance.metres() < 0 || beadPerCartridge.metres() <= 0) {
            throw new IllegalArgumentException(
                    "rivetSpacing (%s) and beadPerCartridge (%s) must be above 0, edgeDistance (%s) not below"
                            .formatted(rivetSpacing, beadPerCartridge, edgeDistance));
        }
    }

    private static Map<SealKind, Integer> usual() {
        Map<SealKind, Integer> lines = new EnumMap<>(SealKind.class);
        for (SealKind kind : SealKind.values()) {
            lines.put(
                    kind,
                    switch (kind) {
                        case CLOSURE, HEAD_WALL, PAN_LAP -> 2;
                        case VALLEY, CLEAT, END_LAP, OPENING, TRIM_LAP -> 1;
                    });
        }
        return lines;
    }

    /** How many lines or beads lie side by side. */
    public int of(SealKind kind) {
        return Objects.requireNonNull(lines.get(kind));
    }
}
