package org.thalweg.panel;

import org.thalweg.geometry.Tolerance;

/** Where ribs run up a plane. */
final class RibLines {

    private RibLines() {}

    /**
     * The lines between and beside the strips, from the left.
     *
     * @param from   the plane's left end, metres
     * @param to     its right end
     * @param cover  rib to rib
     * @param offset width of the first panel, in [0, cover); 0 for a whole one
     * @param lead   the end where the first panel lies
     */
    static double[] of(double from, double to, double cover, double offset, Lead lead, Tolerance tolerance) {
        double beyond = offset > tolerance.hair() ? cover - offset : 0;
        int strips = (int) Math.max(1, tolerance.ceil(to - from + beyond, cover));
        double[] lines = new double[strips + 1];
        for (int i = 0; i <= strips; i++) {
            if (lead == Lead.LEFT) {
                lines[i] = from - beyond + i * cover;
            } else {
                lines[strips - i] = to + beyond - i * cover;
            }
        }
        return lines;
    }

    /** Offset that makes the first and the last panel equally wide and at least half a cover; 0 when whole panels fit. */
    static double centred(double width, double cover, Tolerance tolerance) {
        double rest = width - Math.floor((width + tolerance.hair()) / cover) * cover;
        if (rest <= tolerance.hair()) {
            return 0;
        }
        return width < cover ? rest : (cover + rest) / 2;
    }
}
