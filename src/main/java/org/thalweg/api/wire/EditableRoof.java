package org.thalweg.api.wire;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.roof.EdgeKind;

/**
 * A roof written as callers post it: its members are those of {@link RoofForm} in the form of points and planes, whose schema
 * it has in the contract.
 *
 * @param points corners by name
 * @param planes planes by their corners' names
 * @param edges  walls along them; left out when there are none
 */
public record EditableRoof(
        Map<String, WorldPoint> points, List<EditablePlane> planes, Optional<List<EditableEdge>> edges) {

    /**
     * A plane by its corners.
     *
     * @param id       its name
     * @param outline  its corners
     * @param openings its holes; left out when there are none
     */
    public record EditablePlane(String id, List<String> outline, Optional<List<EditableOpening>> openings) {}

    /**
     * A hole in a plane.
     *
     * @param id      its name
     * @param outline its corners
     */
    public record EditableOpening(String id, List<String> outline) {}

    /**
     * An edge that is named.
     *
     * @param between its two ends
     * @param kind    what it is
     */
    public record EditableEdge(List<String> between, EdgeKind kind) {}
}
