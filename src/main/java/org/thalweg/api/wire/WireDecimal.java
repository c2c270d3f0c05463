package org.thalweg.api.wire;

import java.math.BigDecimal;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * A number as the caller wrote it, digit for digit: never by way of a binary fraction.
 *
 * @param number as a number or a string of digits
 */
@Schema(ref = "Decimal")
public record WireDecimal(BigDecimal number) {}
