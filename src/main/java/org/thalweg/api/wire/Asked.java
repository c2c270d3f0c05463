package org.thalweg.api.wire;

/** Any request: whatever is asked, the caller says in which units. */
public interface Asked {
    UnitsForm units();
}
