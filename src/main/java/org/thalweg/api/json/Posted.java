package org.thalweg.api.json;

/**
 * A request as it came in.
 *
 * @param request what it says; of the right shape
 * @param digest  SHA-256 of its canonical form (RFC 8785), in lower-case hexadecimal
 */
public record Posted<T>(T request, String digest) {}
