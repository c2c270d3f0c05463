package org.thalweg.roof;

import org.thalweg.finding.Origin;
import org.thalweg.geometry.Point3;

/**
 * An edge whose kind the caller knows and the planes can't show: a side wall, a head wall, an expansion joint.
 *
 * @param from one end; world, metres
 * @param to   the other end
 * @param kind what the caller says it is
 * @param at   where in the request it is named
 */
public record NamedEdge(Point3 from, Point3 to, EdgeKind kind, Origin at) {}
