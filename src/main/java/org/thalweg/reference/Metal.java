package org.thalweg.reference;

/**
 * A metal panels are made of, with the figures used for it.
 *
 * @param key         how callers name it: {@code galvanized-steel}
 * @param gaugeSystem the table its sheets are listed in; see {@link Gauge#system}
 * @param density     what a sheet weighs for its thickness, where its table has no row for that thickness
 * @param expansion   how far it grows when it warms
 */
public record Metal(String key, String gaugeSystem, Sourced<Density> density, Sourced<Expansion> expansion) {}
