package org.thalweg.api.sheet;

import java.util.List;
import org.thalweg.api.Limits;
import org.thalweg.drawing.Flow;
import org.thalweg.drawing.Ink;
import org.thalweg.drawing.Packet;
import org.thalweg.drawing.Paper;
import org.thalweg.drawing.Sheet;
import org.thalweg.drawing.TitleBlock;
import org.thalweg.drawing.Type;
import org.thalweg.units.LengthUnit;

/** Empty packets, their foot filled in. */
final class Packets {

    private static final String HEED =
            "Layout figures, no structural design: local codes and the engineer decide. Read findings and cautions; measure before you cut.";

    private Packets() {}

    static Packet begin(SheetTerms terms, LengthUnit unit, String engine, String digest, String tapeRule) {
        String to = tapeRule.substring(0, tapeRule.indexOf(';'));
        TitleBlock block =
                new TitleBlock(terms.job(), digest, engine, List.of("Lengths in " + unit.symbol(), to), HEED);
        return new Packet(terms.paper().orElse(Paper.usual(unit)), block, Limits.DRAWN_SHEETS);
    }

    /**
     * Its sheets, or the one of them that is asked for; one that says so where there is nothing to draw.
     *
     * @throws NoSuchSheet when it has not so many
     */
    static List<Sheet> bind(Packet packet, SheetTerms terms) {
        if (packet.isEmpty()) {
            View view = terms.view().orElse(View.MAP);
            Flow flow = new Flow(packet, view.word(), view.title());
            flow.text("There is nothing of this to draw in the answer.", Type.TEXT, Ink.BLACK);
        }
        List<Sheet> sheets = packet.bind();
        int asked = terms.sheet().orElse(0);
        if (asked > sheets.size()) {
            throw new NoSuchSheet(asked, sheets.size());
        }
        return asked == 0 ? sheets : sheets.subList(asked - 1, asked);
    }
}
