package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.wire.FindingAnswer;
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
        String message = FigureWriter.fill(finding.message(), actual, limit).replace("{place}", Echo.of(place.id()));
        return new FindingAnswer(
                finding.code().name(),
                finding.severity(),
                new PlaceAnswer(place.kind(), place.id(), place.at().pointer()),
                message,
                actual,
                limit,
                finding.source().text());
    }
}
