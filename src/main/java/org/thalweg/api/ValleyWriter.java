package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.api.wire.LineAnswer.LowAnswer;
import org.thalweg.api.wire.PieceAnswer;
import org.thalweg.api.wire.PieceAnswer.BlankAnswer;
import org.thalweg.api.wire.PieceAnswer.FoldAnswer;
import org.thalweg.api.wire.PieceAnswer.PieceMovementAnswer;
import org.thalweg.api.wire.PlanePoint;
import org.thalweg.api.wire.ValleyAnswer;
import org.thalweg.api.wire.ValleyAnswer.CleatAnswer;
import org.thalweg.api.wire.ValleyAnswer.MovementAnswer;
import org.thalweg.api.wire.ValleyAnswer.PanAnswer;
import org.thalweg.api.wire.ValleyAnswer.RowAnswer;
import org.thalweg.api.wire.ValleyAnswer.SideAnswer;
import org.thalweg.api.wire.ValleyWaterAnswer;
import org.thalweg.api.wire.ValleyWaterAnswer.StationAnswer;
import org.thalweg.api.wire.ValleyWaterAnswer.WaterSideAnswer;
import org.thalweg.drainage.Channel;
import org.thalweg.drainage.SideWater;
import org.thalweg.drainage.StationWater;
import org.thalweg.fastening.ValleyRows.Row;
import org.thalweg.fastening.ValleyRows.RowKind;
import org.thalweg.geometry.Point2;
import org.thalweg.movement.LappedPiece;
import org.thalweg.packet.LaidValley;
import org.thalweg.packet.ValleyTerms;
import org.thalweg.roof.Edge;
import org.thalweg.roof.PanelHold;
import org.thalweg.units.Length;
import org.thalweg.units.Units;
import org.thalweg.valley.CleatRun;
import org.thalweg.valley.PanBlank;
import org.thalweg.valley.PanPiece;
import org.thalweg.valley.PanSpec;
import org.thalweg.valley.ValleyLayout;
import org.thalweg.valley.ValleySide;

/** Writes valleys in the caller's units; a layout and an answer about one valley alone both come from here. */
final class ValleyWriter {

    private static final double DOUBLED_BACK_DEG = 180;

    private final Units units;
    private final ValleyTerms terms;
    private final Optional<WorkingWriter> working;
    private final LineWriter lines;

    /** @param working tells how figures came about, if that is asked for */
    ValleyWriter(Units units, ValleyTerms terms, Optional<WorkingWriter> working) {
        this.units = units;
        this.terms = terms;
        this.working = working;
        this.lines = new LineWriter(units);
    }

    List<ValleyAnswer> write(List<LaidValley> valleys) {
        List<ValleyAnswer> written = new ArrayList<>(valleys.size());
        for (LaidValley valley : valleys) {
            written.add(write(valley));
        }
        return written;
    }

    private ValleyAnswer write(LaidValley valley) {
        ValleyLayout layout = valley.layout();
        Edge edge = layout.edge().edge();
        List<SideAnswer> sides = new ArrayList<>(2);
        layout.sides().forEach(side -> sides.add(side(side, layout.spec().flat())));
        List<PieceAnswer> pieces = new ArrayList<>(layout.pieces().size());
        for (int i = 0; i < layout.pieces().size(); i++) {
            pieces.add(piece(layout.pieces().get(i), valley.pan().pieces().get(i)));
        }
        List<RowAnswer> rows = new ArrayList<>(valley.rows().size());
        valley.rows().forEach(row -> rows.add(row(row, layout)));
        return new ValleyAnswer(
                edge.id(),
                lines.marked(edge.length()),
                edge.slope().roundedDegrees(),
                edge.bend().roundedDegrees(),
                layout.hold(),
                pan(layout),
                sides,
                pieces,
                rows,
                movement(valley),
                water(valley),
                working.map(writer -> writer.write(valley)));
    }

    private PanAnswer pan(ValleyLayout layout) {
        PanSpec spec = layout.spec();
        return new PanAnswer(
                lines.marked(spec.coilWidth()),
                lines.marked(spec.flat()),
                lines.marked(spec.ribLeg()),
                lines.marked(spec.edgeReturn()),
                layout.bendAtLow().roundedDegrees(),
                DOUBLED_BACK_DEG,
                DOUBLED_BACK_DEG);
    }

    private SideAnswer side(ValleySide side, Length flat) {
        return new SideAnswer(
                side.seen().id(),
                LineWriter.hand(side.seen().onLeft()),
                lines.pitch(side.seen()),
                side.seen().plan().roundedDegrees(),
                side.seen().mitre().roundedDegrees(),
                lines.marked(side.riseAcrossCover()),
                lines.marked(flat),
                lines.marked(side.heldBack()),
                lines.marked(side.heldBackAtTop()),
                lines.marked(side.cover()),
                lines.end(side.seen().bottom()),
                lines.end(side.seen().top()),
                lines.low(side.seen()),
                lines.line(side.chalkLine()),
                lines.line(side.fastenerLine()),
                lines.line(side.panEdge()),
                side.cleat().map(this::cleat),
                lines.marked(side.sealant()));
    }

    private CleatAnswer cleat(CleatRun cleat) {
        return new CleatAnswer(
                lines.marked(cleat.length()),
                lines.marked(cleat.piece()),
                lines.marked(cleat.last()),
                cleat.count(),
                lines.marked(cleat.notchSpacing()));
    }

    private PieceAnswer piece(PanPiece piece, LappedPiece moves) {
        return new PieceAnswer(
                piece.mark(),
                lines.marked(piece.from()),
                lines.marked(piece.length()),
                lines.marked(piece.lap()),
                new PieceMovementAnswer(
                        length(moves.growth().longer()),
                        length(moves.growth().shorter()),
                        moves.lapLeft().map(this::length)),
                blank(piece.blank()));
    }

    private BlankAnswer blank(PanBlank blank) {
        List<PlanePoint> outline = new ArrayList<>(blank.outline().size());
        for (Point2 corner : blank.outline()) {
            outline.add(lines.point(corner));
        }
        List<FoldAnswer> folds = new ArrayList<>(blank.folds().size());
        for (PanBlank.Fold fold : blank.folds()) {
            folds.add(new FoldAnswer(
                    fold.kind(),
                    lines.point(fold.from()),
                    lines.point(fold.to()),
                    fold.angle().roundedDegrees(),
                    fold.up()));
        }
        List<LowAnswer> slits = new ArrayList<>(blank.slits().size());
        for (PanBlank.Slit slit : blank.slits()) {
            slits.add(new LowAnswer(lines.point(slit.from()), lines.point(slit.to())));
        }
        return new BlankAnswer(outline, folds, slits);
    }

    private RowAnswer row(Row row, ValleyLayout layout) {
        ValleySide side = row.onLeft() ? layout.left() : layout.right();
        return new RowAnswer(
                row.kind(),
                side.seen().id(),
                LineWriter.hand(row.onLeft()),
                lines.point(row.from()),
                lines.point(row.to()),
                lines.marked(row.row().first()),
                lines.marked(row.row().spacing()),
                row.row().count(),
                row.kind() == RowKind.VALLEY);
    }

    private MovementAnswer movement(LaidValley valley) {
        return new MovementAnswer(
                lines.marked(valley.longest()),
                lines.length(valley.growth().longer().metres()),
                lines.length(valley.growth().shorter().metres()),
                lines.length(valley.advice().limit().metres()),
                valley.advice().fixedWillDo() ? PanelHold.FIXED : PanelHold.CLEATED,
                valley.advice().source().text());
    }

    private ValleyWaterAnswer water(LaidValley valley) {
        List<WaterSideAnswer> sides = new ArrayList<>(2);
        for (SideWater side : valley.water().sides()) {
            sides.add(waterSide(side, valley.layout()));
        }
        return new ValleyWaterAnswer(
                terms.rainfall().map(rain -> FigureWriter.write(rain, units)),
                Channel.ROUGHNESS,
                Channel.ROUGHNESS_SOURCE.text(),
                sides);
    }

    private WaterSideAnswer waterSide(SideWater side, ValleyLayout layout) {
        List<StationAnswer> stations = new ArrayList<>(side.stations().size());
        for (StationWater station : side.stations()) {
            stations.add(new StationAnswer(
                    length(station.along()),
                    units.area().round(station.area()),
                    length(station.spreadLimit()),
                    station.flow().map(flow -> FigureWriter.write(flow, units)),
                    station.depth().map(this::length),
                    station.spread().map(this::length)));
        }
        ValleySide seen = side.left() ? layout.left() : layout.right();
        return new WaterSideAnswer(
                LineWriter.hand(side.left()),
                seen.seen().id(),
                units.area().round(side.catchment().planArea()),
                side.channel().map(channel -> channel.panRise().roundedDegrees()),
                side.ribHeight().map(this::length),
                stations,
                side.reachesPanel().map(rain -> FigureWriter.write(rain, units)),
                side.reachesRib().map(rain -> FigureWriter.write(rain, units)));
    }

    private double length(Length length) {
        return units.length().round(length);
    }
}
