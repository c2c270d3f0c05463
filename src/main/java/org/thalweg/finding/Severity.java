package org.thalweg.finding;

/** How much a finding matters: {@code NOTE} to know, {@code WARNING} to look into, {@code STOP} before cutting. */
public enum Severity {
    NOTE,
    WARNING,
    STOP
}
