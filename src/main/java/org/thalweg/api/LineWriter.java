package org.thalweg.api;

import java.util.Optional;
import org.thalweg.api.wire.LineAnswer;
import org.thalweg.api.wire.LineAnswer.EndAnswer;
import org.thalweg.api.wire.LineAnswer.Hand;
import org.thalweg.api.wire.LineAnswer.LineMark;
import org.thalweg.api.wire.LineAnswer.LowAnswer;
import org.thalweg.api.wire.MarkedLength;
import org.thalweg.api.wire.PlanePoint;
import org.thalweg.api.wire.RiseAndRun;
import org.thalweg.geometry.Point2;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;
import org.thalweg.units.Units;
import org.thalweg.valley.OffsetLine;
import org.thalweg.valley.SlopedEdge;

/** Writes what valleys and hips have in common: their sides, ends and lines. */
final class LineWriter {

    private final Units units;

    LineWriter(Units units) {
        this.units = units;
    }

    static Hand hand(boolean onLeft) {
        return onLeft ? Hand.LEFT : Hand.RIGHT;
    }

    RiseAndRun pitch(SlopedEdge.Side side) {
        return new RiseAndRun(Pitch.ofSlope(side.pitch()).roundedPer12(), 12);
    }

    EndAnswer end(SlopedEdge.End end) {
        return new EndAnswer(end.id(), end.kind(), end.corner().roundedDegrees());
    }

    LowAnswer low(SlopedEdge.Side side) {
        return new LowAnswer(point(side.foot()), point(side.head()));
    }

    Optional<LineAnswer> line(Optional<OffsetLine> line) {
        return line.map(each -> new LineAnswer(
                point(each.from()), point(each.to()), marked(each.length()), mark(each.lower()), mark(each.upper())));
    }

    private LineMark mark(OffsetLine.Mark mark) {
        return new LineMark(marked(mark.up()), marked(mark.out()), mark.edge(), marked(mark.along()));
    }

    PlanePoint point(Point2 point) {
        return new PlanePoint(length(point.across()), length(point.up()));
    }

    MarkedLength marked(Length length) {
        return RoofWriter.marked(length, units);
    }

    Optional<MarkedLength> marked(Optional<Length> length) {
        return length.map(this::marked);
    }

    double length(double metres) {
        return units.length().round(Length.metres(metres));
    }
}
