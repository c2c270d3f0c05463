package org.thalweg.api.sheet;

import org.thalweg.api.wire.LayoutAnswer;
import org.thalweg.drawing.Packet;

final class PlaneSheets {

    private PlaneSheets() {}

    static void add(Packet packet, LayoutAnswer answer) {}
}
