package org.thalweg.api.sheet;

import org.thalweg.api.wire.LayoutAnswer;
import org.thalweg.drawing.Packet;

final class MapSheets {

    private MapSheets() {}

    static void add(Packet packet, LayoutAnswer answer) {}
}
