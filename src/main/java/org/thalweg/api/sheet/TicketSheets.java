package org.thalweg.api.sheet;

import org.thalweg.api.wire.LayoutAnswer;
import org.thalweg.drawing.Packet;

final class TicketSheets {

    private TicketSheets() {}

    static void add(Packet packet, LayoutAnswer answer) {}
}
