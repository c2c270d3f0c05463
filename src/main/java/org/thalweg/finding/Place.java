package org.thalweg.finding;

/**
 * What a finding is about.
 *
 * @param kind what sort of thing
 * @param id   its id or mark in the answer
 * @param at   what in the request it came from
 */
public record Place(Kind kind, String id, Origin at) {
    /** The sorts of thing a finding may be about. */
    public enum Kind {
        PLANE,
        EDGE,
        PANEL,
        PROFILE,
        PIECE,
        ORDER_LINE,
        LABOUR
    }
}
