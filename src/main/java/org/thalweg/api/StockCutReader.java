package org.thalweg.api;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.StockCutRequest;
import org.thalweg.api.wire.StockCutRequest.PieceForm;
import org.thalweg.api.wire.StockCutRequest.StockForm;
import org.thalweg.api.wire.StockCutRequest.StockKind;
import org.thalweg.api.wire.WireLength;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.stock.Budget;
import org.thalweg.stock.CutPiece;
import org.thalweg.stock.CuttingCase;
import org.thalweg.stock.Grid;
import org.thalweg.stock.MitredPanel;
import org.thalweg.stock.Turning;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;

/** Reads the wire's request to cut stock: units in and on the grid, defaults filled in, pointers kept. */
final class StockCutReader {

    /** [common practice, no source] */
    static final Length KEEPABLE = Length.inches(12);

    private static final long DEADLINE_MS = 500;

    private static final Origin STOCK = Origin.REQUEST.at("stock");
    private static final Origin PIECES = Origin.REQUEST.at("pieces");

    private final StockCutRequest request;
    private final TapeReader tape;

    private StockCutReader(StockCutRequest request) {
        this.request = request;
        this.tape = new TapeReader(request.units().length());
    }

    /**
     * Pieces from bars, as asked for.
     *
     * @param cutting    what is cut from what, on the grid
     * @param width      how wide the pieces are
     * @param deadlineMs how long to think
     */
    record Bars(CuttingCase cutting, Optional<Length> width, long deadlineMs) {}

    /**
     * Panels from a coil, as asked for.
     *
     * @param stock   the coil's name
     * @param panels  one by one, in the order they are laid
     * @param turning whether they may be turned end for end
     * @param width   how wide they are
     */
    record Coil(String stock, List<MitredPanel> panels, Turning turning, Optional<Length> width) {}

    /** A piece on the grid: its lower edge and how far its ends lean. */
    private record Shape(PieceForm form, long lower, long left, long right) {

        long upper() {
            return lower + right - left;
        }

        /** The square blank it is cut from. */
        long blank() {
            return Math.max(lower, upper() + left) - Math.min(0, left);
        }

        int count() {
            return form.count() == null ? 1 : form.count().intValue();
        }
    }

    static boolean ofCoil(StockCutRequest request) {
        return request.stock().stream().anyMatch(stock -> stock.kindOrBar() == StockKind.COIL);
    }

    static Bars bars(StockCutRequest request, LongSupplier clock) {
        return new StockCutReader(request).bars(clock);
    }

    static Coil coil(StockCutRequest request) {
        return new StockCutReader(request).coil();
    }

    private Bars bars(LongSupplier clock) {
        StockReader stock = new StockReader(request.stock(), STOCK, tape);
        List<Length> lengths = stock.lengths();
        Optional<Length> width = width();
        List<Shape> shapes = shapes(width);
        tooMany(shapes.size(), Limits.CUT_KINDS, "different pieces");
        tooMany(count(shapes), Limits.CUT_COUNT, "pieces");
        Length kerf = tape.length(request.kerf(), Length.ZERO, Origin.REQUEST.at("kerf"), Limits.KERF);
        Length keepable =
                tape.length(request.keepableOffcut(), KEEPABLE, Origin.REQUEST.at("keepableOffcut"), Limits.KEEPABLE);
        Map<String, String> together = groups("together", request.together(), Map.of());
        Map<String, String> apart = groups("apart", request.apart(), together);
        end();
        long deadlineMs = request.deadlineMs() == null ? DEADLINE_MS : request.deadlineMs();
        CuttingCase cutting = new CuttingCase(
                stock.bars(lengths),
                pieces(shapes, together, apart),
                Grid.atLeast(kerf),
                Grid.atLeast(keepable),
                Budget.milliseconds((int) deadlineMs, clock));
        return new Bars(cutting, width, deadlineMs);
    }

    private Coil coil() {
        coilIsAlone();
        Optional<Length> width = width();
        List<Shape> shapes = shapes(width);
        tooMany(count(shapes), Limits.COIL_PANELS, "panels from one coil");
        Length kerf = tape.length(request.kerf(), Length.ZERO, Origin.REQUEST.at("kerf"), Limits.KERF);
        if (kerf.metres() > 0) {
            tape.note(
                    ReadingCode.EITHER_OR,
                    Origin.REQUEST.at("kerf"),
                    "A coil is cut with a shear, which takes no kerf. Leave the kerf out.");
        }
        notOfCoil(request.together(), "together");
        notOfCoil(request.apart(), "apart");
        end();
        List<MitredPanel> panels = new ArrayList<>();
        for (Shape shape : shapes) {
            MitredPanel panel = new MitredPanel(shape.form().id(), shape.lower(), shape.left(), shape.right());
            for (int i = 0; i < shape.count(); i++) {
                panels.add(panel);
            }
        }
        Turning turning = request.turning() == null ? Turning.FORBIDDEN : request.turning();
        return new Coil(request.stock().get(0).id(), panels, turning, width);
    }

    private void coilIsAlone() {
        if (request.stock().size() > 1) {
            tape.note(
                    ReadingCode.EITHER_OR,
                    STOCK,
                    "A coil is cut by itself. Give one coil and nothing else, or bars and rack.");
        }
        for (int i = 0; i < request.stock().size(); i++) {
            StockForm form = request.stock().get(i);
            if (form.kindOrBar() == StockKind.COIL
                    && (form.length() != null || form.cost() != null || form.count() != null)) {
                tape.note(
                        ReadingCode.EITHER_OR,
                        STOCK.at(i),
                        "A coil is as long as it need be: it has no length, cost or count.");
            }
        }
    }

    private void notOfCoil(@Nullable Object given, String name) {
        if (given != null) {
            tape.note(
                    ReadingCode.EITHER_OR,
                    Origin.REQUEST.at(name),
                    "\"%s\" is for bars and not for a coil. Leave it out.".formatted(name));
        }
    }

    private Optional<Length> width() {
        return tape.given(request.width(), Origin.REQUEST.at("width"), Limits.STOCK_WIDTH);
    }

    // Pieces.

    private List<Shape> shapes(Optional<Length> width) {
        List<Shape> shapes = new ArrayList<>();
        for (PieceForm form : request.pieces()) {
            shapes.add(shape(form, width, PIECES.at(shapes.size())));
        }
        return shapes;
    }

    private Shape shape(PieceForm form, Optional<Length> width, Origin at) {
        long lower = Grid.atLeast(tape.length(form.length(), at.at("length"), Limits.CUT_LENGTH));
        long left = offset(form.leftMitreDeg(), form.leftOffset(), width, at, "left");
        long right = offset(form.rightMitreDeg(), form.rightOffset(), width, at, "right");
        Shape shape = new Shape(form, lower, left, right);
        if (lower > 0 && shape.upper() < 0) {
            tape.notePassed(
                    at,
                    Grid.length(shape.upper()),
                    Length.ZERO,
                    "The ends of this piece cross: its upper edge would be %s long. Make it longer, or turn a mitre the other way.");
        }
        return shape;
    }

    private long offset(
            @Nullable Double mitreDeg, @Nullable WireLength given, Optional<Length> width, Origin at, String side) {
        if (mitreDeg != null && given != null) {
            tape.note(
                    ReadingCode.EITHER_OR,
                    at,
                    "Give the %s end's \"%sMitreDeg\" or its \"%sOffset\", one of the two."
                            .formatted(side, side, side));
        }
        if (given != null) {
            return Grid.nearest(tape.length(given, at.at(side + "Offset"), Limits.END_OFFSET));
        }
        if (mitreDeg == null || mitreDeg == 0) {
            return 0;
        }
        if (request.width() == null) {
            tape.note(
                    ReadingCode.MISSING_MEMBER,
                    Origin.REQUEST,
                    "\"width\" is missing here: how far a mitre in degrees reaches depends on it.");
        }
        double tan = Angle.degrees(mitreDeg).tan();
        return width.map(wide -> Grid.nearest(Length.metres(wide.metres() * tan)))
                .orElse(0L);
    }

    private static long count(List<Shape> shapes) {
        return shapes.stream().mapToLong(Shape::count).sum();
    }

    private static List<CutPiece> pieces(List<Shape> shapes, Map<String, String> together, Map<String, String> apart) {
        return shapes.stream()
                .map(shape -> new CutPiece(
                        shape.form().id(),
                        shape.blank(),
                        shape.count(),
                        Optional.ofNullable(together.get(shape.form().id())),
                        Optional.ofNullable(apart.get(shape.form().id()))))
                .toList();
    }

    /** For every piece that stands in a list, the number of the list. */
    private Map<String, String> groups(String name, @Nullable List<List<String>> lists, Map<String, String> others) {
        Map<String, String> groups = new LinkedHashMap<>();
        Set<String> ids = new HashSet<>();
        request.pieces().forEach(piece -> ids.add(piece.id()));
        for (int i = 0; lists != null && i < lists.size(); i++) {
            List<String> list = requireNonNull(lists.get(i));
            for (int j = 0; j < list.size(); j++) {
                String id = list.get(j);
                Origin at = Origin.REQUEST.at(name).at(i).at(j);
                if (!ids.contains(id)) {
                    tape.note(
                            ReadingCode.UNKNOWN_VALUE,
                            at,
                            "No piece is called %s. Mend the name.".formatted(Echo.of(id)));
                }
                if (others.containsKey(id) || groups.put(id, Integer.toString(i)) != null) {
                    tape.note(
                            ReadingCode.EITHER_OR,
                            at,
                            "%s stands in a list already. A piece is in one list.".formatted(Echo.of(id)));
                }
            }
        }
        return groups;
    }

    // What is wrong.

    private void tooMany(long actual, int most, String what) {
        if (actual > most) {
            tape.note(() -> Fault.of(
                    ReadingCode.TOO_MANY,
                    PIECES.pointer(),
                    "These are %d %s; at most %d are cut in one request.".formatted(actual, what, most),
                    Figure.of(actual),
                    Figure.of(most)));
        }
    }

    /** First what can't be read, then names that stand for two things. */
    private void end() {
        tape.done();
        List<Refusal> refusals = new ArrayList<>(0);
        twice(request.stock(), StockForm::id, STOCK, "sort of stock", refusals);
        twice(request.pieces(), PieceForm::id, PIECES, "piece", refusals);
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
    }

    static <F> void twice(List<F> forms, Function<F, String> id, Origin at, String what, List<Refusal> refusals) {
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < forms.size(); i++) {
            String name = id.apply(forms.get(i));
            if (!ids.add(name)) {
                refusals.add(Refusal.of(
                        RefusalCode.DUPLICATE_ID,
                        at.at(i).at("id"),
                        "Another %s is called %s too. Give each its own id.".formatted(what, Echo.of(name))));
            }
        }
    }
}
