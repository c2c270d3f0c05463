package org.thalweg.api.wire;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * A corner as the caller wrote it: {@code [x, y, z]}.
 *
 * @param x level
 * @param y level, square to x, to the left of it seen from above
 * @param z up
 */
@Schema(ref = "Point")
public record WirePoint(WireLength x, WireLength y, WireLength z) {}
