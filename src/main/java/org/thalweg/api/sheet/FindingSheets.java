package org.thalweg.api.sheet;

import java.util.List;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.wire.CautionAnswer;
import org.thalweg.api.wire.FindingAnswer;
import org.thalweg.drawing.Flow;
import org.thalweg.drawing.Ink;
import org.thalweg.drawing.Packet;
import org.thalweg.drawing.Table;
import org.thalweg.drawing.Type;

/** What a crew should know of this roof, with what each limit rests on, and what holds for every roof. */
final class FindingSheets {

    private FindingSheets() {}

    static void add(Packet packet, List<FindingAnswer> findings, List<CautionAnswer> cautions, String tapeRule) {
        Flow flow = new Flow(packet, View.FINDINGS.word(), "Findings and cautions");
        flow.heading("Findings", 30);
        if (findings.isEmpty()) {
            flow.text("None.", Type.TEXT, Ink.BLACK);
        } else {
            table(findings).on(flow);
        }
        flow.skip(12);
        flow.heading("Cautions, for every roof", 60);
        for (CautionAnswer caution : cautions) {
            flow.text(caution.text(), Type.TEXT, Ink.BLACK);
            flow.skip(3);
        }
        flow.skip(6);
        flow.text(tapeRule, Type.SMALL, Ink.GREY);
    }

    private static Table table(List<FindingAnswer> findings) {
        Table table = new Table()
                .words("severity", 50)
                .words("where", 100)
                .words("what, and what to do", 330)
                .figures("found")
                .figures("limit")
                .words("the limit rests on", 140);
        for (FindingAnswer finding : findings) {
            table.row(
                    Lettered.word(finding.severity()),
                    Lettered.word(finding.place().kind()) + " "
                            + finding.place().id(),
                    finding.message() + " (" + finding.code() + ")",
                    finding.actual().map(Figure::text).orElse(""),
                    finding.limit().map(Figure::text).orElse(""),
                    finding.source());
        }
        return table;
    }
}
