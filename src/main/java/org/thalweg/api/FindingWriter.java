package org.thalweg.api;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.wire.FindingAnswer;
import org.thalweg.api.wire.FindingAnswer.PanelsAnswer;
import org.thalweg.api.wire.FindingAnswer.PlaceAnswer;
import org.thalweg.finding.Finding;
import org.thalweg.finding.Place;
import org.thalweg.units.Units;

/** Writes findings, with their figures in the caller's units. */
final class FindingWriter {

    private FindingWriter() {}

    static List<FindingAnswer> findings(List<Finding> findings, Units units) {
        List<FindingAnswer> written = new ArrayList<>(findings.size());
        for (Finding finding : findings) {
            written.add(write(finding, units));
        }
        return written;
    }

    private static FindingAnswer write(Finding finding, Units units) {
        Optional<Figure> actual = FigureWriter.write(finding.actual(), units);
        Optional<Figure> limit = FigureWriter.write(finding.limit(), units);
        Place place = finding.place();
        String message = FigureWriter.fill(finding.message(), actual, limit);
        Map<String, Figure> needed = new LinkedHashMap<>();
        for (Finding.Needed each : finding.needed()) {
            Figure figure = FigureWriter.write(each.figure(), units);
            needed.put(each.name(), figure);
            message = message.replace("{" + each.name() + "}", figure.text());
        }
        if (finding.panels().isPresent()) {
            Finding.Panels panels = finding.panels().get();
            message = message.replace("{panelCount}", Integer.toString(panels.count()))
                    .replace("{panel}", Echo.of(panels.worst()));
        }
        return new FindingAnswer(
                finding.code().name(),
                finding.severity(),
                new PlaceAnswer(place.kind(), place.id(), place.at().pointer()),
                message.replace("{place}", Echo.of(place.id())),
                actual,
                limit,
                finding.source().text(),
                needed.isEmpty() ? Optional.empty() : Optional.of(needed),
                finding.panels().map(panels -> new PanelsAnswer(panels.worst(), panels.count())));
    }
}
