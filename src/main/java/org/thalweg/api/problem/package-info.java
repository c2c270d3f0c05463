/**
 * No answer, and why. Every refusal of the service, from a bad address to planes that make no roof, leaves through this
 * package as an RFC 9457 problem: a code that never changes its meaning, where in the request it stands, the figures,
 * and what to do. Nothing about the inside of the service is said.
 */
@NullMarked
package org.thalweg.api.problem;

import org.jspecify.annotations.NullMarked;
