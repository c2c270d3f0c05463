package org.thalweg.valley;

import java.util.Optional;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Length;

/**
 * The cleat along one chalk line: an offset strip fastened to the pan, end to end, round which the hems of the panels go.
 *
 * @param length       of the whole run
 * @param piece        of every piece but the last
 * @param last         of the last piece
 * @param count        of all pieces, the last included
 * @param notchSpacing from rib to rib along the run, where the hems are notched: w / cos φ; nothing when the valley runs
 *                     along the ribs
 */
public record CleatRun(Length length, Length piece, Length last, int count, Optional<Length> notchSpacing) {

    static CleatRun of(OffsetLine chalk, SlopedEdge.Side side, PanSpec spec, Length panelCover, Tolerance tolerance) {
        double piece = spec.cleatLength().metres();
        double length = chalk.length().metres();
        int count = (int) Math.max(1, tolerance.ceil(length, piece));
        double perPanel = panelCover.metres() / side.mitre().cos();
        return new CleatRun(
                chalk.length(),
                Length.metres(count == 1 ? length : piece),
                Length.metres(length - (count - 1) * piece),
                count,
                side.rise(panelCover, tolerance).map(rise -> Length.metres(perPanel)));
    }
}
