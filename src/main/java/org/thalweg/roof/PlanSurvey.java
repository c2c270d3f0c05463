package org.thalweg.roof;

import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/**
 * A roof as drawn in a plan: what each plane covers seen from above, how steep it is, and how high one corner stands.
 *
 * @param planes           in the caller's order; at least one
 * @param heights          of single corners, at least one
 * @param named            sides whose kind the caller gives
 * @param tolerance        how close two corners must be to be one, in plan and in height
 * @param leastSlope       flattest slope the panel system allows
 * @param leastSlopeSource where that figure comes from
 */
public record PlanSurvey(
        List<PlanPlane> planes,
        List<Given> heights,
        List<NamedSide> named,
        Tolerance tolerance,
        Pitch leastSlope,
        Source leastSlopeSource) {

    public PlanSurvey {
        planes = List.copyOf(planes);
        heights = List.copyOf(heights);
        named = List.copyOf(named);
    }

    /**
     * The height of one corner.
     *
     * @param plane  the id of its plane
     * @param corner which corner of the caller's outline it is
     * @param z      how high it stands
     * @param at     where in the request this stands
     */
    public record Given(String plane, int corner, Length z, Origin at) {}

    /**
     * A side whose kind the plan can't show. Along a side wall or a head wall planes do not meet.
     *
     * @param plane   the id of its plane
     * @param opening the id of the opening it is a side of; empty for the outline
     * @param side    runs from this corner of the caller's ring to the next
     * @param kind    what stands there
     * @param at      where in the request it is named
     */
    public record NamedSide(String plane, Optional<String> opening, int side, EdgeKind kind, Origin at) {
        boolean wall() {
            return kind == EdgeKind.SIDE_WALL || kind == EdgeKind.HEAD_WALL;
        }
    }

    /** The planes as drawn. */
    List<PlaneOutline> drawn() {
        return planes.stream().map(PlanPlane::drawn).toList();
    }
}
