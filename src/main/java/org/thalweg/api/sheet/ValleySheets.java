package org.thalweg.api.sheet;

import java.util.List;
import org.thalweg.api.wire.HipAnswer;
import org.thalweg.api.wire.ValleyAnswer;
import org.thalweg.drawing.Packet;
import org.thalweg.units.LengthUnit;

/** A sheet or two for every valley and hip. */
final class ValleySheets {

    private ValleySheets() {}

    static void add(Packet packet, List<ValleyAnswer> valleys, List<HipAnswer> hips, LengthUnit unit) {}
}
