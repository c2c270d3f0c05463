package org.thalweg.api;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.api.wire.FastenerAnswer;
import org.thalweg.api.wire.FastenerAnswer.ClipAnswer;
import org.thalweg.api.wire.FastenerAnswer.ClipRunAnswer;
import org.thalweg.api.wire.PlanePoint;
import org.thalweg.api.wire.WorldPoint;
import org.thalweg.fastening.ClipRun;
import org.thalweg.fastening.FastenerRow;
import org.thalweg.fastening.FastenerRows;
import org.thalweg.fastening.Seam;
import org.thalweg.fastening.Seams;
import org.thalweg.geometry.Frame;
import org.thalweg.geometry.Point2;
import org.thalweg.panel.Panel;
import org.thalweg.panel.PanelLayout;
import org.thalweg.roof.Roof;
import org.thalweg.units.Units;

/** Writes rows of fasteners, and clips, in the caller's units. */
final class FastenerWriter {

    private final Roof roof;
    private final LineWriter lines;
    private final Units units;
    private final Map<Integer, Frame> frames = new HashMap<>();

    /** @param world whether places are told in the world too */
    FastenerWriter(Units units, Roof roof, PanelLayout panels, boolean world) {
        this.roof = roof;
        this.lines = new LineWriter(units);
        this.units = units;
        if (world) {
            panels.planes().forEach(plane -> frames.put(plane.plane(), plane.frame()));
        }
    }

    List<FastenerAnswer> rows(FastenerRows rows) {
        List<FastenerAnswer> written = new ArrayList<>(rows.rows().size());
        for (FastenerRow row : rows.rows()) {
            written.add(new FastenerAnswer(
                    row.kind(),
                    roof.planes().get(row.plane()).id(),
                    row.panel().map(Panel::mark),
                    row.edge() < 0
                            ? PanelWriter.LAP
                            : roof.edges().get(row.edge()).id(),
                    row.count(),
                    lines.marked(row.row().spacing()),
                    points(row.places()),
                    row.panel().isPresent() ? Optional.of(points(row.placesOnPanel())) : Optional.empty(),
                    world(row.plane(), row.places())));
        }
        return written;
    }

    List<ClipAnswer> clips(Seams seams) {
        List<ClipAnswer> written = new ArrayList<>(seams.seams().size());
        for (Seam seam : seams.seams()) {
            written.add(new ClipAnswer(
                    roof.planes().get(seam.plane()).id(),
                    seam.strip(),
                    lines.point(seam.from()),
                    lines.point(seam.to()),
                    seam.count(),
                    lines.marked(seam.spacing()),
                    runs(seam),
                    points(seam.places()),
                    world(seam.plane(), seam.places())));
        }
        return written;
    }

    /** Every part of a seam has a zone, or none has. */
    private Optional<List<ClipRunAnswer>> runs(Seam seam) {
        List<ClipRunAnswer> runs = new ArrayList<>(seam.runs().size());
        for (ClipRun run : seam.runs()) {
            run.zone()
                    .ifPresent(zone -> runs.add(new ClipRunAnswer(
                            zone,
                            lines.point(seam.above(run.from())),
                            lines.point(seam.above(run.to())),
                            lines.marked(run.row().spacing()),
                            lines.marked(run.most()),
                            run.row().count())));
        }
        return runs.isEmpty() ? Optional.empty() : Optional.of(runs);
    }

    /** Where places of a plane are in the world; nothing when nobody asked. */
    private Optional<List<WorldPoint>> world(int plane, List<Point2> places) {
        Frame frame = frames.get(plane);
        return frame == null
                ? Optional.empty()
                : Optional.of(places.stream()
                        .map(place -> RoofWriter.point(frame.inWorld(place), units))
                        .toList());
    }

    private List<PlanePoint> points(List<Point2> places) {
        List<PlanePoint> points = new ArrayList<>(places.size());
        for (Point2 place : places) {
            points.add(lines.point(place));
        }
        return points;
    }
}
