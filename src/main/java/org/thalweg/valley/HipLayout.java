package org.thalweg.valley;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.EdgeKind;
import org.thalweg.units.Length;

/**
 * One hip, laid out: a valley turned over. The panels stop short of it, a closure stands on them, and the legs of the cap
 * reach over both; the cap is bent by the bend of the edge.
 *
 * @param edge     where it lies
 * @param left     the plane to the left, seen looking up
 * @param right    the plane to the right
 * @param findings what a crew should know of it
 */
public record HipLayout(SlopedEdge edge, HipSide left, HipSide right, List<Finding> findings) {

    public HipLayout {
        findings = List.copyOf(findings);
    }

    /**
     * The cap.
     *
     * @param leg          from its bend to its edge, along the panels; above 0
     * @param closureInset how far inside that edge the closure stands; less than {@code leg}
     */
    public record HipCap(Length leg, Length closureInset) {

        /** How far from the hip the outer side of the closure stands. */
        public Length closure() {
            return Length.metres(leg.metres() - closureInset.metres());
        }
    }

    /**
     * One of its planes.
     *
     * @param seen            the plane as it lies at the hip
     * @param riseAcrossCover how much the cut across a whole panel rises; nothing when the hip runs along the ribs
     * @param setback         how far the panels stop short of it
     * @param panelLine       the panels' edge
     * @param closureLine     the outer side of the closure
     * @param capLine         the edge of the cap
     */
    public record HipSide(
            SlopedEdge.Side seen,
            Optional<Length> riseAcrossCover,
            Length setback,
            Optional<OffsetLine> panelLine,
            Optional<OffsetLine> closureLine,
            Optional<OffsetLine> capLine) {}

    /** Both sides, the left one first. */
    public List<HipSide> sides() {
        return List.of(left, right);
    }

    /** Lays out one hip whose panels stop short of it by {@code setback}. */
    public static HipLayout of(SlopedEdge edge, HipCap cap, Length setback, Length panelCover, Tolerance tolerance) {
        double closure = cap.closure().metres();
        List<Finding> findings = new ArrayList<>(0);
        if (setback.metres() > closure + tolerance.hair()) {
            findings.add(Finding.of(
                            FindingCode.CLOSURE_OFF_PANEL,
                            edge.place(),
                            "The panels stop {actual} short of hip {place} and the closure stands {limit} from it, beyond their"
                                    + " end. Set them back less, or take a cap with legs of {leg}.",
                            setback,
                            Length.metres(closure),
                            Source.GEOMETRY)
                    .needs(
                            "leg",
                            Length.metres(setback.metres() + cap.closureInset().metres())));
        }
        return new HipLayout(
                edge,
                side(edge, edge.left(), cap, setback, panelCover, tolerance),
                side(edge, edge.right(), cap, setback, panelCover, tolerance),
                findings);
    }

    private static HipSide side(
            SlopedEdge edge, SlopedEdge.Side seen, HipCap cap, Length setback, Length panelCover, Tolerance tolerance) {
        OffsetLine.Ends ends = OffsetLine.Ends.of(seen, EdgeKind.HIP);
        double leg = cap.leg().metres();
        return new HipSide(
                seen,
                seen.rise(panelCover, tolerance),
                setback,
                line(edge, seen, ends, setback.metres(), tolerance),
                line(edge, seen, ends, cap.closure().metres(), tolerance),
                line(edge, seen, ends, leg, tolerance));
    }

    private static Optional<OffsetLine> line(
            SlopedEdge edge, SlopedEdge.Side seen, OffsetLine.Ends ends, double out, Tolerance tolerance) {
        return OffsetLine.of(seen, edge.length().metres(), ends, out, out, tolerance);
    }
}
