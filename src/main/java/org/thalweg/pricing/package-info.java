/**
 * Money. An estimator takes the order of a roof as it is printed and a supplier's price book, and finds line by line what it
 * costs; then labour, mark-ups and taxes, each in its stated order.
 *
 * <p>Everything is an exact decimal or a ratio of two. The one rounding rule: an amount is rounded once, half up, to the minor
 * unit of its currency (ISO 4217), when it is printed; every sum is the sum of printed amounts, and a percentage is taken of
 * printed amounts. So whoever adds up a quote with a pencil finds the same total.
 *
 * <p>Never a silent nought: what has no price is a line without an amount and a finding, and then there is no total.
 */
@NullMarked
package org.thalweg.pricing;

import org.jspecify.annotations.NullMarked;
