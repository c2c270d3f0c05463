package org.thalweg.api.sheet;

import java.util.List;
import java.util.Optional;
import org.thalweg.api.wire.CoilAnswer;
import org.thalweg.api.wire.SheetCutAnswer;
import org.thalweg.drawing.Packet;
import org.thalweg.units.LengthUnit;

/** How bars and coil are cut up. */
final class CuttingSheets {

    private CuttingSheets() {}

    static void add(Packet packet, Optional<List<SheetCutAnswer>> cuts, Optional<CoilAnswer> coil, LengthUnit unit) {}
}
