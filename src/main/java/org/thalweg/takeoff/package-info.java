/**
 * What to order. An estimator counts equal blanks, adds up areas and lengths, and wants to know what is thrown away and
 * what it weighs. Sums are sums of what is listed: a total never disagrees with the lines above it.
 */
@NullMarked
package org.thalweg.takeoff;

import org.jspecify.annotations.NullMarked;
