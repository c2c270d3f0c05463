package org.thalweg.stock;

/**
 * A panel as it lies on the coil: as wide as the coil, its two ends cut at any slant.
 *
 * <pre>
 *      left &gt; 0                right &lt; 0
 *        ____upper____________          upper edge of the coil
 *       /                     \
 *      /                       \
 *     /_________lower___________\       lower edge; the coil is drawn from left to right
 * </pre>
 *
 * Turning a panel end for end (half a turn in its own plane, painted side still up) swaps {@code left} and {@code right}, signs
 * and all, and swaps the lower and the upper edge with their ribs. [geometry] A mirrored panel has both signs changed, and no
 * turning makes one out of the other.
 *
 * @param id    the caller's name for it
 * @param lower along the lower edge of the coil, grid steps; 0 or more
 * @param left  how far the upper corner of the left end lies to the right of its lower corner, grid steps; signed
 * @param right the same of the right end
 */
public record MitredPanel(String id, long lower, long left, long right) {

    /** Longest edge and largest offset, so that sums are sure to fit. */
    public static final long LONGEST = 1L << 31;

    public MitredPanel {
        long upper = lower + right - left;
        if (lower < 0 || upper < 0 || lower + upper == 0) {
            throw new IllegalArgumentException("panel %s: edges of %d and %d".formatted(id, lower, upper));
        }
        if (Math.max(lower, Math.max(Math.abs(left), Math.abs(right))) > LONGEST) {
            throw new IllegalArgumentException("panel %s is longer than can be counted".formatted(id));
        }
    }

    /** Along the upper edge of the coil. */
    public long upper() {
        return lower + right - left;
    }

    /** Lower and upper edge together: twice the panel's area over the coil's width. */
    public long bothEdges() {
        return lower + upper();
    }

    /** End for end. */
    MitredPanel turned() {
        return new MitredPanel(id, upper(), right, left);
    }

    /** How long a square-ended blank must be. */
    public long blank() {
        return Math.max(lower, upper() + left) - Math.min(0, left);
    }
}
