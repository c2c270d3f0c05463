package org.thalweg.sealing;

/** What is laid, set or driven. The list is open: callers must expect items that are added later. */
public enum SealItem {
    /** A strip of sealant tape, off a roll. */
    TAPE,
    /** A bead of sealant, out of a cartridge. */
    SEALANT,
    /** A closure that fills the gap between two ribs. */
    CLOSURE,
    /** A rivet. */
    RIVET
}
