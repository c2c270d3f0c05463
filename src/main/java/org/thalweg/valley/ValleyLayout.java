package org.thalweg.valley;

import java.util.List;
import org.thalweg.finding.Finding;
import org.thalweg.roof.PanelHold;
import org.thalweg.units.Angle;

/**
 * One valley, laid out.
 *
 * @param edge     where it lies
 * @param spec     its pan
 * @param hold     how the panels' ends are held
 * @param left     the plane to the left, seen looking up
 * @param right    the plane to the right
 * @param pieces   of the pan, from the foot up
 * @param findings what a crew should know of it
 */
public record ValleyLayout(
        SlopedEdge edge,
        PanSpec spec,
        PanelHold hold,
        ValleySide left,
        ValleySide right,
        List<PanPiece> pieces,
        List<Finding> findings) {

    public ValleyLayout {
        pieces = List.copyOf(pieces);
        findings = List.copyOf(findings);
    }

    /** Both sides, the left one first. */
    public List<ValleySide> sides() {
        return List.of(left, right);
    }

    /** How far the metal is turned from flat at each low; see {@link SlopedEdge}. */
    public Angle bendAtLow() {
        return edge.bendAtLow();
    }
}
