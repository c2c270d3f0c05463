package org.thalweg.api.wire;

import com.fasterxml.jackson.annotation.JsonFormat;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A place in the world, written {@code [x, y, z]}. */
@JsonFormat(shape = JsonFormat.Shape.ARRAY)
@JsonPropertyOrder({"x", "y", "z"})
@Schema(ref = "WorldPoint")
public record WorldPoint(double x, double y, double z) {}
