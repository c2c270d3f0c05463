package org.thalweg.pricing;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A total as a takeoff prints it.
 *
 * @param item     of what
 * @param of       of which kind of it, where kinds are told apart
 * @param quantity how much; 0 or more
 * @param unit     in which unit; none where it is no measure of goods or work, as per cent
 */
public record PrintedTotal(String item, Optional<String> of, BigDecimal quantity, Optional<BookUnit> unit) {}
