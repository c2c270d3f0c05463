package org.thalweg.api.sheet;

import static java.util.stream.Collectors.groupingBy;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.thalweg.api.wire.FastenerAnswer;
import org.thalweg.api.wire.FastenerAnswer.ClipAnswer;
import org.thalweg.api.wire.LayoutAnswer;
import org.thalweg.api.wire.MarkedLength;
import org.thalweg.api.wire.PlanePoint;
import org.thalweg.drawing.Area;
import org.thalweg.drawing.Dot;
import org.thalweg.drawing.Flow;
import org.thalweg.drawing.Legend;
import org.thalweg.drawing.Packet;
import org.thalweg.drawing.Pen;
import org.thalweg.drawing.Sheet;
import org.thalweg.drawing.Table;
import org.thalweg.fastening.FastenerKind;

/** Every plane with the places of its fasteners and clips, and how they are spaced. */
final class FastenerSheets {

    private static final double LEGEND = 120;
    private static final double MARGIN = 26;

    private FastenerSheets() {}

    static void add(Packet packet, LayoutAnswer answer, List<LaidPlaneView> views) {
        Map<String, List<FastenerAnswer>> rows = answer.fasteners().stream().collect(groupingBy(FastenerAnswer::plane));
        Map<String, List<ClipAnswer>> clips = answer.clips().stream().collect(groupingBy(ClipAnswer::plane));
        for (LaidPlaneView view : views) {
            List<FastenerAnswer> own = rows.getOrDefault(view.plane().id(), List.of());
            List<ClipAnswer> seams = clips.getOrDefault(view.plane().id(), List.of());
            if (!own.isEmpty() || !seams.isEmpty()) {
                draw(packet, answer, view, own, seams);
            }
        }
        if (!answer.fasteners().isEmpty() || !answer.clips().isEmpty()) {
            table(packet, answer);
        }
    }

    private static void draw(
            Packet packet, LayoutAnswer answer, LaidPlaneView view, List<FastenerAnswer> rows, List<ClipAnswer> clips) {
        Area field = packet.field();
        Sheet sheet = packet.open(
                View.FASTENERS.word(),
                "Fasteners and clips, plane " + view.plane().id());
        Area area = field.leftPart(field.width() - LEGEND);
        PlaneBoard board = new PlaneBoard(view, sheet, answer.units().length(), area.inside(MARGIN));
        board.panels(Pen.RULE);
        board.edges(edge -> edge.id());
        board.bearings(area);

        Map<FastenerKind, List<PlanePoint>> places = new EnumMap<>(FastenerKind.class);
        rows.forEach(row ->
                places.computeIfAbsent(row.kind(), kind -> new ArrayList<>()).addAll(row.places()));
        Legend legend = new Legend(sheet, field.beyond(field.width() - LEGEND).inside(4));
        legend.heading("On this plane");
        places.forEach((kind, points) -> {
            sheet.dots(board.fit().corners(Places.of(points)), dot(kind));
            legend.dot(
                    dot(kind),
                    points.size() + " " + Lettered.word(kind) + (kind.throughPanel() ? "" : ", under the panels"));
        });
        List<PlanePoint> points =
                clips.stream().flatMap(seam -> seam.places().stream()).toList();
        if (!points.isEmpty()) {
            sheet.dots(board.fit().corners(Places.of(points)), Dot.BAR);
            legend.dot(Dot.BAR, points.size() + " clips in the seams");
        }
    }

    private static Dot dot(FastenerKind kind) {
        return switch (kind) {
            case EAVE -> Dot.DISC;
            case VALLEY -> Dot.DIAMOND;
            case PAN_EDGE -> Dot.RING;
            case CLEAT, RAKE -> Dot.SQUARE;
            case CLOSURE -> Dot.TRIANGLE;
            case HEAD_WALL, SIDE_WALL -> Dot.CROSS;
            case OPENING, END_LAP -> Dot.WEDGE;
        };
    }

    /** Rows that hold the same down along the same edge of the same plane, told together. */
    private static void table(Packet packet, LayoutAnswer answer) {
        Flow flow = new Flow(packet, View.FASTENERS.word(), "Fasteners and clips");
        flow.heading("Rows, by plane and edge", 40);
        Table table = new Table()
                .words("plane", 160)
                .words("holds down", 90)
                .words("along", 70)
                .figures("rows")
                .figures("count")
                .figures("closest")
                .figures("widest");
        Map<List<String>, Row> rows = new LinkedHashMap<>();
        for (FastenerAnswer row : answer.fasteners()) {
            rows.computeIfAbsent(List.of(row.plane(), Lettered.word(row.kind()), row.edge()), key -> new Row())
                    .add(row.count(), row.spacing());
        }
        for (ClipAnswer seam : answer.clips()) {
            rows.computeIfAbsent(List.of(seam.plane(), "clip", "seams"), key -> new Row())
                    .add(seam.count(), seam.spacing());
        }
        rows.forEach((key, row) -> table.row(
                key.get(0),
                key.get(1),
                key.get(2),
                Integer.toString(row.rows),
                Integer.toString(row.count),
                row.closest(),
                row.widest()));
        table.on(flow);
    }

    /** What rows of one kind along one edge come to. */
    private static final class Row {

        private int rows;
        private int count;
        private final List<MarkedLength> spacings = new ArrayList<>();

        void add(int more, MarkedLength spacing) {
            rows++;
            count += more;
            if (spacing.value() > 0) {
                spacings.add(spacing);
            }
        }

        String closest() {
            return spacings.stream()
                    .min((a, b) -> Double.compare(a.value(), b.value()))
                    .map(MarkedLength::tape)
                    .orElse("");
        }

        String widest() {
            return spacings.stream()
                    .max((a, b) -> Double.compare(a.value(), b.value()))
                    .map(MarkedLength::tape)
                    .orElse("");
        }
    }
}
