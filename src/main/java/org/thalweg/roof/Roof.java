package org.thalweg.roof;

import java.util.List;
import org.thalweg.finding.Finding;
import org.thalweg.geometry.Tolerance;

/**
 * A good roof: every plane simple, flat and framed, every edge named. One that exists needs no further check.
 *
 * @param planes    in the caller's order
 * @param edges     in the order of the planes and their corners
 * @param findings  what a crew should know of it
 * @param tolerance the tolerance it was read with
 */
public record Roof(List<Plane> planes, List<Edge> edges, List<Finding> findings, Tolerance tolerance) {

    public Roof {
        planes = List.copyOf(planes);
        edges = List.copyOf(edges);
        findings = List.copyOf(findings);
    }
}
