package org.thalweg.underlayment;

import java.util.Optional;

/**
 * The underlayment as asked for.
 *
 * @param roll what it is laid of
 * @param ice  the ice barrier; nothing when no overhang is given
 */
public record UnderlayCase(Roll roll, Optional<IceSpec> ice) {}
