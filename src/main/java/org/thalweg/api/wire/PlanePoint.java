package org.thalweg.api.wire;

import com.fasterxml.jackson.annotation.JsonFormat;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A place on a plane, written {@code [across, up]}. */
@JsonFormat(shape = JsonFormat.Shape.ARRAY)
@JsonPropertyOrder({"across", "up"})
@Schema(ref = "PlanePoint")
public record PlanePoint(double across, double up) {}
