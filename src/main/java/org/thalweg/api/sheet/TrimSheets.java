package org.thalweg.api.sheet;

import java.util.List;
import org.thalweg.api.wire.TrimAnswer;
import org.thalweg.drawing.Packet;
import org.thalweg.units.LengthUnit;

/** Every profile with its girths and bends, and the pieces made of it. */
final class TrimSheets {

    private TrimSheets() {}

    static void add(Packet packet, List<TrimAnswer> trims, LengthUnit unit) {}
}
