package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.api.wire.FlatAnswer.BendLine;
import org.thalweg.api.wire.FlatAnswer.HemAnswer;
import org.thalweg.api.wire.FlatAnswer.HemsAnswer;
import org.thalweg.api.wire.MarkedLength;
import org.thalweg.api.wire.PlanePoint;
import org.thalweg.finding.Finding;
import org.thalweg.geometry.Point2;
import org.thalweg.trim.Bend;
import org.thalweg.trim.FlatTrim;
import org.thalweg.trim.FlatTrim.FlatFold;
import org.thalweg.trim.Hem;
import org.thalweg.trim.Profile;
import org.thalweg.units.Length;
import org.thalweg.units.Units;

/** Writes what is told of any profile, whether it is a roof's or by itself. */
final class FlatWriter {

    private final LineWriter lines;

    FlatWriter(Units units) {
        this.lines = new LineWriter(units);
    }

    List<MarkedLength> legs(Profile profile) {
        return marked(profile.girths());
    }

    List<MarkedLength> marked(List<Length> lengths) {
        return lengths.stream().map(lines::marked).toList();
    }

    List<Double> bends(Profile profile) {
        return profile.bends().stream().map(FlatWriter::signed).toList();
    }

    HemsAnswer hems(Profile profile) {
        return new HemsAnswer(profile.first().map(this::hem), profile.last().map(this::hem));
    }

    private HemAnswer hem(Hem hem) {
        return new HemAnswer(
                hem.kind(),
                lines.marked(hem.girth()),
                lines.length(2 * hem.insideRadius().metres()),
                hem.up());
    }

    List<BendLine> bendLines(FlatTrim flat) {
        List<BendLine> written = new ArrayList<>(flat.folds().size());
        for (FlatFold fold : flat.folds()) {
            written.add(new BendLine(
                    lines.marked(fold.at()),
                    signed(fold.bend()),
                    fold.hem(),
                    lines.length(fold.allowance().metres()),
                    lines.length(fold.deduction().metres())));
        }
        return written;
    }

    /** Above 0 up; no bend at all is 0 whichever way. */
    private static double signed(Bend bend) {
        double degrees = bend.turn().roundedDegrees();
        return bend.up() || degrees == 0 ? degrees : -degrees;
    }

    List<PlanePoint> points(List<Point2> points) {
        return points.stream().map(lines::point).toList();
    }

    static List<String> codes(List<Finding> findings) {
        return findings.stream()
                .map(finding -> finding.code().name())
                .distinct()
                .toList();
    }

    MarkedLength marked(Length length) {
        return lines.marked(length);
    }
}
