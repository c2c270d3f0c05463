package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.thalweg.api.wire.MarkedLength;
import org.thalweg.api.wire.PanelAnswer;
import org.thalweg.api.wire.PanelAnswer.CutAnswer;
import org.thalweg.api.wire.PanelAnswer.PanelOpening;
import org.thalweg.api.wire.PanelAnswer.PanelShape;
import org.thalweg.api.wire.PlanePoint;
import org.thalweg.api.wire.WorldPoint;
import org.thalweg.geometry.Frame;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Remainder;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Tolerance;
import org.thalweg.panel.Cut;
import org.thalweg.panel.Panel;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.Roof;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.Units;

/** Writes panels in the caller's units. */
final class PanelWriter {

    static final String LAP = "lap";

    private final Units units;
    private final Roof roof;
    private final List<EdgeTreatment> treatments;
    private final Tolerance tolerance;
    private final Length cover;

    /** @param treatments how panels end at each edge, in the roof's order */
    PanelWriter(Units units, Roof roof, List<EdgeTreatment> treatments, Length cover) {
        this.units = units;
        this.roof = roof;
        this.treatments = treatments;
        this.tolerance = roof.tolerance();
        this.cover = cover;
    }

    /** One panel, with its off-cuts and its corners in the world if they are asked for. */
    PanelAnswer write(Panel panel, Frame frame, boolean offcuts, boolean world) {
        PanelShape finished = shape(panel.finished());
        List<CutAnswer> cuts = new ArrayList<>(panel.cuts().size());
        for (Cut cut : panel.cuts()) {
            cuts.add(write(cut));
        }
        return new PanelAnswer(
                panel.mark(),
                roof.planes().get(panel.plane()).id(),
                panel.strip(),
                panel.piece(),
                point(panel.place().across(), panel.place().up()),
                marked(panel.width()),
                panel.width().metres() < cover.metres() - tolerance.hair(),
                marked(panel.blankLength()),
                finished,
                panel.cut() == panel.finished() ? finished : shape(panel.cut()),
                cuts,
                offcuts ? Optional.of(offcuts(panel)) : Optional.empty(),
                world ? Optional.of(world(panel, frame)) : Optional.empty());
    }

    private CutAnswer write(Cut cut) {
        return new CutAnswer(
                cut.end(),
                cut.edge() < 0 ? LAP : roof.edges().get(cut.edge()).id(),
                point(cut.from().across(), cut.from().up()),
                point(cut.to().across(), cut.to().up()),
                mark(cut.left(tolerance)),
                mark(cut.right(cover.metres(), tolerance)),
                marked(Length.metres(cut.rise())),
                new Angle(cut.mitre()).roundedDegrees(),
                notch(cut));
    }

    private Optional<MarkedLength> notch(Cut cut) {
        if (cut.edge() < 0 || !cut.across()) {
            return Optional.empty();
        }
        double extra = treatments.get(cut.edge()).extra().metres();
        return extra > 0 ? Optional.of(marked(Length.metres(cut.notch(extra)))) : Optional.empty();
    }

    private Optional<MarkedLength> mark(OptionalDouble metres) {
        return metres.isPresent() ? Optional.of(marked(Length.metres(metres.getAsDouble()))) : Optional.empty();
    }

    private List<PanelShape> offcuts(Panel panel) {
        return Remainder.of(cover.metres(), panel.blankLength().metres(), panel.cut(), tolerance).stream()
                .map(this::shape)
                .toList();
    }

    private List<WorldPoint> world(Panel panel, Frame frame) {
        Ring ring = panel.finished().outer();
        List<WorldPoint> corners = new ArrayList<>(ring.size());
        int corner = ring.lowestLeft();
        for (int i = 0; i < ring.size(); i++) {
            Point2 onPlane = new Point2(
                    ring.across(corner) + panel.place().across(),
                    ring.up(corner) + panel.place().up());
            corners.add(RoofWriter.point(frame.inWorld(onPlane), units));
            corner = ring.next(corner);
        }
        return corners;
    }

    private PanelShape shape(Region region) {
        List<PanelOpening> openings = List.of();
        if (!region.openings().isEmpty()) {
            openings = region.openings().stream()
                    .map(opening -> new PanelOpening(ring(opening)))
                    .toList();
        }
        return new PanelShape(ring(region.outer()), openings);
    }

    private List<PlanePoint> ring(Ring ring) {
        List<PlanePoint> corners = new ArrayList<>(ring.size());
        int corner = ring.lowestLeft();
        for (int i = 0; i < ring.size(); i++) {
            corners.add(point(ring.across(corner), ring.up(corner)));
            corner = ring.next(corner);
        }
        return corners;
    }

    private PlanePoint point(double across, double up) {
        return new PlanePoint(
                units.length().round(Length.metres(across)), units.length().round(Length.metres(up)));
    }

    private MarkedLength marked(Length length) {
        return RoofWriter.marked(length, units);
    }
}
