package org.thalweg.valley;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Tolerance;
import org.thalweg.reference.Rules;
import org.thalweg.reference.Sourced;
import org.thalweg.roof.PanelHold;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/** Lays out valleys. */
public final class Valleys {

    private final SlopedEdge edge;
    private final PanSpec spec;
    private final ValleyAsked asked;
    private final Tolerance tolerance;
    private final List<Finding> findings = new ArrayList<>(0);

    private Valleys(SlopedEdge edge, PanSpec spec, ValleyAsked asked, Tolerance tolerance) {
        this.edge = edge;
        this.spec = spec;
        this.asked = asked;
        this.tolerance = tolerance;
    }

    /**
     * What all valleys of a job have in common.
     *
     * @param panelCover    w, the panels' cover
     * @param fastenerInset how far inside the panels' edge the sealant and the screws lie
     * @param panScrewInset how far inside its outer fold the pan itself is fastened
     * @param leastSlope    flattest slope the panel system allows
     * @param slopeSource   where that figure comes from
     */
    public record ValleyAsked(
            Length panelCover, Length fastenerInset, Length panScrewInset, Pitch leastSlope, Source slopeSource) {}

    /**
     * Lays out one valley.
     *
     * @param edge      where it lies
     * @param spec      its pan
     * @param hold      how the panels' ends are held
     * @param asked     what it has in common with the others
     * @param tolerance of the roof
     */
    public static ValleyLayout layOut(
            SlopedEdge edge, PanSpec spec, PanelHold hold, ValleyAsked asked, Tolerance tolerance) {
        return new Valleys(edge, spec, asked, tolerance).layOut(hold);
    }

    private ValleyLayout layOut(PanelHold hold) {
        checkSlope();
        checkWidths();
        PanShape shape = new PanShape(edge, spec, tolerance);
        ValleySide left = side(edge.left(), shape.left(), hold);
        ValleySide right = side(edge.right(), shape.right(), hold);
        List<PanPiece> pieces = new PanPieces(edge, spec, shape, tolerance, findings).pieces();
        return new ValleyLayout(edge, spec, hold, left, right, pieces, findings);
    }

    private ValleySide side(SlopedEdge.Side seen, OffsetLine.Ends ends, PanelHold hold) {
        double atFoot = spec.heldBack().metres();
        double atHead = spec.heldBackAtTop(edge.length()).metres();
        double flat = spec.flat().metres();
        double inset = asked.fastenerInset().metres();
        double panInset = asked.panScrewInset().metres();
        Optional<OffsetLine> chalk = line(seen, ends, atFoot, atHead);
        return new ValleySide(
                seen,
                seen.rise(asked.panelCover(), tolerance),
                Length.metres(atFoot),
                Length.metres(atHead),
                Length.metres(flat - atFoot),
                chalk,
                line(seen, ends, atFoot + inset, atHead + inset),
                line(seen, ends, flat, flat),
                panInset < flat ? line(seen, ends, flat - panInset, flat - panInset) : Optional.empty(),
                hold == PanelHold.CLEATED
                        ? chalk.map(run -> CleatRun.of(run, seen, spec, asked.panelCover(), tolerance))
                        : Optional.empty());
    }

    private Optional<OffsetLine> line(SlopedEdge.Side seen, OffsetLine.Ends ends, double atFoot, double atHead) {
        return OffsetLine.of(seen, edge.length().metres(), ends, atFoot, atHead, tolerance);
    }

    private void checkSlope() {
        Pitch least = asked.leastSlope();
        double shortfall =
                (least.tan() - edge.edge().slope().tan()) * edge.length().metres();
        if (shortfall > tolerance.hair()) {
            findings.add(Finding.of(
                    FindingCode.VALLEY_TOO_FLAT,
                    edge.place(),
                    "Valley {place} slopes {actual}, less than the {limit} the panel system allows. Seal or solder every lap"
                            + " of its pan, or change the roof.",
                    Pitch.ofSlope(edge.edge().slope()),
                    least,
                    asked.slopeSource()));
        }
    }

    private void checkWidths() {
        Length cover = Length.metres(spec.flat().metres() - spec.heldBack().metres());
        Sourced<Length> leastCover = Rules.valleyLeastCover();
        if (less(cover, leastCover.value())) {
            findings.add(Finding.of(
                            FindingCode.COVER_TOO_SMALL,
                            edge.place(),
                            "The pan of valley {place} reaches {actual} under the panels where {limit} is the least. A coil"
                                    + " {coilWidth} wide would do.",
                            cover,
                            leastCover.value(),
                            leastCover.source())
                    .needs("coilWidth", spec.coilFor(spec.heldBack())));
        }
        Length open = Length.metres(2 * spec.heldBackAtTop(edge.length()).metres());
        Sourced<Length> leastOpen = Rules.valleyLeastExposure();
        if (less(open, leastOpen.value())) {
            findings.add(Finding.of(
                    FindingCode.EXPOSURE_TOO_SMALL,
                    edge.place(),
                    "At its top the pan of valley {place} lies open {actual} wide, both sides together, where {limit} is the"
                            + " least. Hold the panels further back.",
                    open,
                    leastOpen.value(),
                    leastOpen.source()));
        }
        Sourced<Length> leastLap = Rules.valleyLeastLap();
        if (less(spec.lap(), leastLap.value())) {
            findings.add(Finding.of(
                    FindingCode.PAN_LAP_TOO_SMALL,
                    edge.place(),
                    "The pieces of the pan of valley {place} lap by {actual} where {limit} is the least. Lap them further, or"
                            + " seal or solder the laps.",
                    spec.lap(),
                    leastLap.value(),
                    leastLap.source()));
        }
    }

    private boolean less(Length length, Length least) {
        return length.metres() < least.metres() - tolerance.hair();
    }
}
