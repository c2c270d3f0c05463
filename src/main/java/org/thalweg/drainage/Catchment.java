package org.thalweg.drainage;

import org.thalweg.roof.Edge;
import org.thalweg.roof.Roof;
import org.thalweg.units.Area;
import org.thalweg.units.Length;

/**
 * What one plane brings to one of its edges: the part of the roof whose fall lines end there, seen from above.
 *
 * <pre>
 *     _________________         From the edge straight up the slope to where the metal ends. Water passes round a chimney
 *    |     :  _  :    /         and runs on, so what lies above it counts and the chimney does not. Where the metal ends
 *    |     : |_| :   /          at a neighbour that falls to the same line, as at a pitch break, that neighbour's water
 *    |_____:_____:__/           runs on down and counts too. An opening that other planes fill, as a dormer does, ends
 *          the edge             it: the dormer's valleys carry the water off.
 * </pre>
 *
 * <p>Always true: what the low sides of a plane catch of the plane itself, the upper rims of open openings left out,
 * adds up to its plan area. Zero at an edge the plane does not fall to.
 *
 * <p>Known limits: see the room. A level plane has no fall line, so nothing is known of where its water goes; it counts
 * nowhere, not even where it borders on a plane that falls away from it.
 */
public final class Catchment {

    private final Bands bands;
    private final int direct;
    private final double length;
    private final boolean level;

    private Catchment(Bands bands, int direct, double length, boolean level) {
        this.bands = bands;
        this.direct = direct;
        this.length = length;
        this.level = level;
    }

    /**
     * @param plane index in {@link Roof#planes}
     * @param edge  index in {@link Roof#edges}; one of the plane's
     */
    public static Catchment of(Roof roof, int plane, int edge) {
        Edge of = roof.edges().get(edge);
        FallLines lines = new FallLines(roof);
        int direct = lines.follow(plane, edge);
        return new Catchment(
                lines.bands(),
                direct,
                of.length().metres(),
                roof.planes().get(plane).level());
    }

    /** Whether the plane is level: it has no fall line, and nothing is caught. */
    public boolean level() {
        return level;
    }

    /** All that reaches the edge. */
    public Area planArea() {
        return new Area(bands.area(bands.count()));
    }

    /** What of it lies on the plane itself; the rest comes from planes above it. */
    public Area directPlanArea() {
        return new Area(bands.area(direct));
    }

    /**
     * What reaches the edge above a place on it: all of it at the bottom, nothing at the top, never more higher up.
     *
     * @param along true length from the edge's lower end; of a level edge, from where it starts
     */
    public Area planAreaAbove(Length along) {
        if (along.metres() >= length) {
            return new Area(0);
        }
        return along.metres() <= 0 ? planArea() : new Area(bands.areaAbove(along.metres()));
    }
}
