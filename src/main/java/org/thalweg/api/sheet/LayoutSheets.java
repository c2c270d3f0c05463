package org.thalweg.api.sheet;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.thalweg.api.wire.LayoutAnswer;
import org.thalweg.drawing.Packet;
import org.thalweg.drawing.Sheet;
import org.thalweg.units.LengthUnit;

/** A roof, laid, on sheets. */
public final class LayoutSheets {

    private LayoutSheets() {}

    /**
     * Its sheets, in the order of a packet.
     *
     * @throws Packet.TooManySheets when there are too many to leaf through
     */
    public static List<Sheet> of(LayoutAnswer answer, SheetTerms terms) {
        LengthUnit unit = answer.units().length();
        Packet packet = Packets.begin(
                terms, unit, answer.engine(), answer.digest(), answer.used().tapeRule());
        List<LaidPlaneView> planes = LaidPlaneView.of(answer);
        Set<View> asked = terms.view().map(EnumSet::of).orElse(EnumSet.allOf(View.class));
        Arrays.stream(View.values()).filter(asked::contains).forEach(view -> add(view, packet, answer, planes));
        return Packets.bind(packet, terms);
    }

    private static void add(View view, Packet packet, LayoutAnswer answer, List<LaidPlaneView> planes) {
        LengthUnit unit = answer.units().length();
        switch (view) {
            case MAP -> MapSheets.add(packet, answer, planes);
            case PLANES -> PlaneSheets.add(packet, answer, planes);
            case TICKETS -> TicketSheets.add(packet, answer);
            case VALLEYS -> ValleySheets.add(packet, answer.valleys(), answer.hips(), answer.units());
            case TRIMS -> TrimSheets.add(packet, answer.trims(), unit);
            case CUTTING -> CuttingSheets.add(packet, answer.cuts(), answer.coil(), unit);
            case FASTENERS -> FastenerSheets.add(packet, answer, planes);
            case ORDER -> OrderSheets.add(packet, answer);
            case FINDINGS ->
                FindingSheets.add(
                        packet,
                        answer.findings(),
                        answer.cautions(),
                        answer.used().tapeRule());
        }
    }
}
