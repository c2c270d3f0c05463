package org.thalweg.drainage;

import org.thalweg.roof.Edge;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;
import org.thalweg.units.Angle;

/**
 * One flat of a valley pan as water meets it. It lies in its roof plane.
 *
 * @param pitch θ, the plane's angle from level, in [0°, 90°)
 * @param mitre φ, the angle in the plane from the level line to the valley, in [0°, 90°]
 * @param falls whether the plane's water runs to the valley; else the flat falls away from it, or lies level
 */
public record PanFlat(Angle pitch, Angle mitre, boolean falls) {

    /**
     * The flat of a plane at one of its edges.
     *
     * @param plane index in {@link Roof#planes}
     * @param edge  index in {@link Roof#edges}; one of the plane's
     */
    public static PanFlat of(Roof roof, int plane, int edge) {
        Plane of = roof.planes().get(plane);
        Edge at = roof.edges().get(edge);
        Angle mitre = at.sides().stream()
                .filter(side -> side.plane() == plane)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("plane %s has no edge %s".formatted(of.id(), at.id())))
                .mitre();
        return new PanFlat(of.slope(), mitre, !of.level() && fallsTo(of, edge));
    }

    private static boolean fallsTo(Plane plane, int edge) {
        return FallLines.rings(plane).stream().anyMatch(ring -> FallLines.low(ring, edge, 0) >= 0);
    }

    /**
     * ψ, how far the flat rises outward in the section square to the valley: sin ψ = cos φ · sin θ / cos θv. [geometry]
     *
     * @param bed θv, the valley's own slope
     * @return in [−90°, 90°]; not above 0 where the plane does not fall to the valley
     */
    public Angle rise(Angle bed) {
        double sin = Math.min(1, mitre.cos() * pitch.sin() / bed.cos());
        return new Angle(falls ? Math.asin(sin) : -Math.asin(sin));
    }
}
