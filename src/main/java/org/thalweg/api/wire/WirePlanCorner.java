package org.thalweg.api.wire;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * A corner seen from above as the caller wrote it: {@code [x, y]}.
 *
 * @param x level
 * @param y level, square to x, to the left of it seen from above
 */
@Schema(ref = "PlanCorner")
public record WirePlanCorner(WireLength x, WireLength y) {}
