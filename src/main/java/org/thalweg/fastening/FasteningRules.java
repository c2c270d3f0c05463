package org.thalweg.fastening;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.thalweg.finding.Source;
import org.thalweg.reference.Rules;
import org.thalweg.units.Length;

/**
 * How far apart everything is fastened, in one table: by what is fastened. A caller's figures, and the engineer's, go in
 * by {@link #with}; what is not given stays as it is here.
 *
 * <pre>
 *   what             at most    line inside    source
 *   eave, valley     4 in       2 in           common practice
 *   pan edge         12 in      1 in           published, for the cleats on a valley's fold
 *   cleat            12 in      1 in           published, as above
 *   closure          6 in       1 in           common practice
 *   head wall        6 in       1 in           common practice
 *   rake, side wall  12 in      1 in           common practice
 *   opening          6 in       1 in           common practice
 *   end lap          4 in       2 in           common practice
 * </pre>
 *
 * @param rows         every kind's rule
 * @param edgeDistance from what a row ends on to its first fastener; 0 or more
 * @param ribClearance from a rib to the nearest fastener through a panel, square to the rib; 0 or more
 * @param distances    where these two come from
 * @param clips        how clips stand along seams
 */
public record FasteningRules(
        Map<FastenerKind, RowRule> rows, Length edgeDistance, Length ribClearance, Source distances, ClipRule clips) {

    /**
     * One kind of row.
     *
     * @param maxSpacing greatest distance between neighbours, along the line; above 0
     * @param inset      how far the line lies inside what it fastens, square to it: the panels' end, or where they run past
     *                   the roof line that line. 0 or more. The valley room says where the line of a pan's edge lies
     * @param source     where the spacing comes from
     */
    public record RowRule(Length maxSpacing, Length inset, Source source) {

        public RowRule {
            if (maxSpacing.metres() <= 0 || inset.metres() < 0) {
                throw new IllegalArgumentException(
                        "maxSpacing (%s) must be above 0, inset (%s) not below".formatted(maxSpacing, inset));
            }
        }
    }

    /**
     * How clips stand along a seam.
     *
     * @param maxSpacing  greatest distance between neighbours; above 0
     * @param endDistance from either end of the seam; 0 or more
     * @param screws      in each clip; 1 or more
     * @param source      where the spacing comes from
     */
    public record ClipRule(Length maxSpacing, Length endDistance, int screws, Source source) {

        public ClipRule {
            if (maxSpacing.metres() <= 0 || endDistance.metres() < 0 || screws < 1) {
                throw new IllegalArgumentException(
                        "maxSpacing (%s) must be above 0, endDistance (%s) not below, screws (%d) 1"
                                .formatted(maxSpacing, endDistance, screws));
            }
        }

        /** The same clips so far apart at most. */
        public ClipRule spaced(Length maxSpacing, Source source) {
            return new ClipRule(maxSpacing, endDistance, screws, source);
        }
    }

    private static final Source CLEATS = Rules.valleyCleatSpacing().source();

    /**
     * For crews who read inches. Clips 24 in apart, the first 6 in from the end of the panels, two screws each: common
     * practice, within the 30 in that are published as the most along edges ({@link Rules#clipEdgeSpacing}).
     */
    public static final FasteningRules INCHES = new FasteningRules(
            usual(
                    new RowRule(Length.inches(4), Length.inches(2), Source.COMMON_PRACTICE),
                    new RowRule(Length.inches(6), Length.inches(1), Source.COMMON_PRACTICE),
                    new RowRule(Length.inches(12), Length.inches(1), Source.COMMON_PRACTICE),
                    new RowRule(Rules.valleyCleatSpacing().value(), Length.inches(1), CLEATS)),
            Length.inches(1),
            Length.inches(0.75),
            Source.COMMON_PRACTICE,
            new ClipRule(Length.inches(24), Length.inches(6), 2, Source.COMMON_PRACTICE));

    /** The same in round millimetres. */
    public static final FasteningRules METRIC = new FasteningRules(
            usual(
                    new RowRule(Length.millimetres(100), Length.millimetres(50), Source.COMMON_PRACTICE),
                    new RowRule(Length.millimetres(150), Length.millimetres(25), Source.COMMON_PRACTICE),
                    new RowRule(Length.millimetres(300), Length.millimetres(25), Source.COMMON_PRACTICE),
                    new RowRule(Length.millimetres(300), Length.millimetres(25), CLEATS)),
            Length.millimetres(25),
            Length.millimetres(20),
            Source.COMMON_PRACTICE,
            new ClipRule(Length.millimetres(600), Length.millimetres(150), 2, Source.COMMON_PRACTICE));

    public FasteningRules {
        rows = Collections.unmodifiableMap(new EnumMap<>(rows));
        if (!rows.keySet().containsAll(Arrays.asList(FastenerKind.values()))) {
            throw new IllegalArgumentException("every kind needs a rule, and there are only " + rows.keySet());
        }
        if (edgeDistance.metres() < 0 || ribClearance.metres() < 0) {
            throw new IllegalArgumentException(
                    "edgeDistance (%s) and ribClearance (%s) must be 0 or more".formatted(edgeDistance, ribClearance));
        }
    }

    private static Map<FastenerKind, RowRule> usual(
            RowRule heldDown, RowRule closures, RowRule strips, RowRule cleats) {
        Map<FastenerKind, RowRule> rows = new EnumMap<>(FastenerKind.class);
        for (FastenerKind kind : FastenerKind.values()) {
            rows.put(
                    kind,
                    switch (kind) {
                        case EAVE, VALLEY, END_LAP -> heldDown;
                        case CLOSURE, HEAD_WALL, OPENING -> closures;
                        case RAKE, SIDE_WALL -> strips;
                        case PAN_EDGE, CLEAT -> cleats;
                    });
        }
        return rows;
    }

    /** What holds for one kind. */
    public RowRule of(FastenerKind kind) {
        return Objects.requireNonNull(rows.get(kind));
    }

    /** The same table but for one kind. */
    public FasteningRules with(FastenerKind kind, RowRule rule) {
        Map<FastenerKind, RowRule> changed = new EnumMap<>(rows);
        changed.put(kind, rule);
        return new FasteningRules(changed, edgeDistance, ribClearance, distances, clips);
    }

    /** The same table with other distances from ends and ribs. */
    public FasteningRules with(Length edgeDistance, Length ribClearance, Source distances) {
        return new FasteningRules(rows, edgeDistance, ribClearance, distances, clips);
    }

    /** The same table with other clips. */
    public FasteningRules with(ClipRule clips) {
        return new FasteningRules(rows, edgeDistance, ribClearance, distances, clips);
    }

    /** What a valley looked at alone, without its panels, is fastened by. */
    public ValleyRows.Spacings ofValley() {
        return new ValleyRows.Spacings(
                of(FastenerKind.PAN_EDGE).maxSpacing(),
                of(FastenerKind.VALLEY).maxSpacing(),
                of(FastenerKind.CLEAT).maxSpacing(),
                edgeDistance,
                ribClearance);
    }
}
