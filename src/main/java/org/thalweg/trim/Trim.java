package org.thalweg.trim;

import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Finding;
import org.thalweg.geometry.Point2;
import org.thalweg.roof.Edge;
import org.thalweg.units.Length;

/**
 * The trim of one edge.
 *
 * @param index    of the edge in {@link org.thalweg.roof.Roof#edges}
 * @param edge     the edge
 * @param seat     how the trim sits there
 * @param profile  as it is bent
 * @param flat     the profile rolled out
 * @param section  its mould lines at the edge, from the first edge to the last, one more than it has legs
 * @param hand     which of two trims that mirror each other it is: that of the rake or the wall to the left or to the right of
 *                 its plane, seen looking up; nothing on a level edge or where it lies on two planes
 * @param start    its left end, on a sloped edge its lower one
 * @param finish   the other
 * @param run      the length its pieces make up: the edge and what both ends reach past it
 * @param pieces   in the order they are laid; none where the cuts at its ends leave nothing
 * @param findings what a crew should know of it
 */
public record Trim(
        int index,
        Edge edge,
        Seat seat,
        Profile profile,
        FlatTrim flat,
        List<Point2> section,
        Optional<Hand> hand,
        TrimEnd start,
        TrimEnd finish,
        Length run,
        List<TrimPiece> pieces,
        List<Finding> findings) {

    public Trim {
        section = List.copyOf(section);
        pieces = List.copyOf(pieces);
        findings = List.copyOf(findings);
    }
}
