package org.thalweg.api.wire;

import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/**
 * A pitch as the caller wrote it: {@code {"rise": 6, "run": 12}} or {@code "6:12"}.
 *
 * @param rise rise, any unit; 0 when it is a string
 * @param run  level run, in the unit of the rise; 0 when it is a string
 * @param text the string, if it is one
 */
@Schema(ref = "Pitch")
public record WirePitch(double rise, double run, @Nullable String text) {

    public static WirePitch of(double rise, double run) {
        return new WirePitch(rise, run, null);
    }

    public static WirePitch of(String text) {
        return new WirePitch(0, 0, text);
    }
}
