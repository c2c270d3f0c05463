package org.thalweg.api.wire;

import org.jspecify.annotations.Nullable;
import org.thalweg.api.wire.StockCutRequest.StockKind;

/** One sort of stock as callers give it, whatever is cut from it. */
public interface BarForm {

    /** The caller's name for it. */
    String id();

    /** What it is; a bar unless it says otherwise. */
    @Nullable
    StockKind kind();

    /** Of one; a coil has none. */
    @Nullable
    WireLength length();

    /** Of one, in the smallest coin. */
    @Nullable
    Long cost();

    /** How many there are. */
    @Nullable
    Long count();

    /** A bar unless it says otherwise. */
    default StockKind kindOrBar() {
        StockKind kind = kind();
        return kind == null ? StockKind.BAR : kind;
    }
}
