package org.thalweg.api.wire;

import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/**
 * A length as the caller wrote it: a number in the request's unit, or a tape string such as {@code 12' 3 1/2"} or
 * {@code 1050 mm}, which may bring a unit of its own.
 *
 * @param number the number; 0 when it is a tape string
 * @param tape   the tape string, if it is one
 */
@Schema(ref = "Length")
public record WireLength(double number, @Nullable String tape) {

    public static WireLength of(double number) {
        return new WireLength(number, null);
    }

    public static WireLength of(String tape) {
        return new WireLength(0, tape);
    }
}
