package org.thalweg.api.sheet;

import java.util.List;
import java.util.Optional;
import org.thalweg.api.wire.ValleysAnswer;
import org.thalweg.drawing.Packet;
import org.thalweg.drawing.Sheet;
import org.thalweg.units.LengthUnit;

/** A valley laid out alone, on sheets. */
public final class ValleysSheets {

    private ValleysSheets() {}

    /** Its sheets: the valley, what its metal is cut from, findings and cautions. */
    public static List<Sheet> of(ValleysAnswer answer, SheetTerms terms) {
        LengthUnit unit = answer.units().length();
        Packet packet = Packets.begin(
                terms, unit, answer.engine(), answer.digest(), answer.used().tapeRule());
        if (asked(terms, View.VALLEYS)) {
            ValleySheets.add(packet, answer.valleys(), List.of(), answer.units());
        }
        if (asked(terms, View.CUTTING)) {
            CuttingSheets.add(packet, answer.cuts(), Optional.empty(), unit);
        }
        if (asked(terms, View.FINDINGS)) {
            FindingSheets.add(
                    packet, answer.findings(), answer.cautions(), answer.used().tapeRule());
        }
        return Packets.bind(packet, terms);
    }

    private static boolean asked(SheetTerms terms, View view) {
        return terms.view().isEmpty() || terms.view().get() == view;
    }
}
