package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.api.wire.HipAnswer;
import org.thalweg.api.wire.HipAnswer.HipSideAnswer;
import org.thalweg.roof.Edge;
import org.thalweg.units.Units;
import org.thalweg.valley.HipLayout;
import org.thalweg.valley.HipLayout.HipSide;

/** Writes hips in the caller's units. */
final class HipWriter {

    private final LineWriter lines;

    HipWriter(Units units) {
        this.lines = new LineWriter(units);
    }

    List<HipAnswer> write(List<HipLayout> hips) {
        List<HipAnswer> written = new ArrayList<>(hips.size());
        for (HipLayout hip : hips) {
            written.add(write(hip));
        }
        return written;
    }

    private HipAnswer write(HipLayout hip) {
        Edge edge = hip.edge().edge();
        return new HipAnswer(
                edge.id(),
                lines.marked(edge.length()),
                edge.slope().roundedDegrees(),
                edge.bend().roundedDegrees(),
                List.of(side(hip.left()), side(hip.right())));
    }

    private HipSideAnswer side(HipSide side) {
        return new HipSideAnswer(
                side.seen().id(),
                LineWriter.hand(side.seen().onLeft()),
                lines.pitch(side.seen()),
                side.seen().plan().roundedDegrees(),
                side.seen().mitre().roundedDegrees(),
                lines.marked(side.riseAcrossCover()),
                lines.marked(side.setback()),
                lines.end(side.seen().bottom()),
                lines.end(side.seen().top()),
                lines.low(side.seen()),
                lines.line(side.panelLine()),
                lines.line(side.closureLine()),
                lines.line(side.capLine()));
    }
}
