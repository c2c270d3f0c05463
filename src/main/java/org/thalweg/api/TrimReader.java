package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.problem.Nearest;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.TrimsForm;
import org.thalweg.api.wire.TrimsForm.BendFormula;
import org.thalweg.api.wire.TrimsForm.EdgeProfileForm;
import org.thalweg.api.wire.TrimsForm.HemForm;
import org.thalweg.api.wire.TrimsForm.KindForm;
import org.thalweg.api.wire.TrimsForm.SheetForm;
import org.thalweg.api.wire.TrimsForm.StockForm;
import org.thalweg.api.wire.WireLength;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.roof.EdgeKind;
import org.thalweg.trim.BendAllowance;
import org.thalweg.trim.Hand;
import org.thalweg.trim.Hem;
import org.thalweg.trim.TrimOrder;
import org.thalweg.trim.TrimShape;
import org.thalweg.trim.TrimShape.Turn;
import org.thalweg.trim.TrimSpec;
import org.thalweg.trim.TrimSpec.Sheet;
import org.thalweg.trim.TrimStock;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/** Reads what edges are trimmed with: units in, defaults filled in. */
final class TrimReader {

    static final TrimsForm NONE = new TrimsForm(null, null, null, null, null, null);
    static final SheetForm NO_SHEET = new SheetForm(null, null, null, null, null);
    static final StockForm NO_STOCK = new StockForm(null, null);

    private static final Origin TRIMS = Origin.REQUEST.at("trims");
    private static final KindForm USUAL = new KindForm(null, null, null);

    /** By how much more than its lap a piece is longer, so that a roof can't ask for pieces without number. */
    private static final double LEAST_GAIN = 0.1;

    /** What can't be read has been noted; this stands in until the reading is done. */
    private static final Length UNREAD = Length.metres(1);

    private final TapeReader tape;
    private final TrimDefaults defaults;

    TrimReader(LengthUnit unit, TapeReader tape) {
        this.tape = tape;
        this.defaults = TrimDefaults.of(unit);
    }

    /**
     * The trims of a roof.
     *
     * @param seamHeight of the panels, if it is known
     * @param hipLeg     of the cap of hips, which their plain trim is
     * @param thickness  of the panels' metal, which trims are bent of unless the caller says otherwise
     */
    TrimSpec spec(@Nullable TrimsForm given, Optional<Length> seamHeight, Length hipLeg, Length thickness) {
        TrimsForm form = given == null ? NONE : given;
        TrimStock stock = stock(form.stock(), TRIMS.at("stock"));
        return new TrimSpec(
                seamHeight.orElse(defaults.seamHeight()),
                Boolean.TRUE.equals(form.ventedRidge()),
                hipLeg,
                sheet(form.sheet(), TRIMS.at("sheet"), thickness),
                stock,
                tape.length(form.past(), defaults.past(), TRIMS.at("past"), Limits.TRIM_PAST),
                form.laidFrom() == null ? Hand.LEFT : form.laidFrom(),
                orders(form.kinds(), stock));
    }

    Sheet sheet(@Nullable SheetForm given, Origin at, Length usualThickness) {
        SheetForm form = given == null ? NO_SHEET : given;
        Length thickness = tape.length(form.thickness(), usualThickness, at.at("thickness"), Limits.TRIM_THICKNESS);
        return new Sheet(
                thickness,
                tape.length(form.insideRadius(), thickness, at.at("insideRadius"), Limits.INSIDE_RADIUS),
                allowance(form, at),
                tape.length(form.coilWidth(), defaults.coilWidth(), at.at("coilWidth"), Limits.TRIM_COIL));
    }

    private BendAllowance allowance(SheetForm form, Origin at) {
        if (form.kFactor() != null && form.bendFormula() != null) {
            tape.note(() -> Fault.of(
                    ReadingCode.EITHER_OR,
                    at.at("bendFormula").pointer(),
                    "Give a K-factor, or the formula that says what bends take up, not both."));
        }
        if (form.bendFormula() != null) {
            return form.bendFormula() == BendFormula.HANDBOOK ? BendAllowance.HANDBOOK : new BendAllowance.Din6935();
        }
        Double k = form.kFactor();
        return k == null || !(k >= 0 && k <= 1) ? BendAllowance.USUAL : new BendAllowance.KFactor(k, Source.REQUEST);
    }

    TrimStock stock(@Nullable StockForm given, Origin at) {
        StockForm form = given == null ? NO_STOCK : given;
        Length read = tape.length(form.pieceLength(), defaults.pieceLength(), at.at("pieceLength"), Limits.TRIM_PIECE);
        Length piece = read.metres() > 0 ? read : defaults.pieceLength();
        Length shortest = tape.length(
                form.shortestPiece(),
                least(defaults.shortestPiece(), piece),
                at.at("shortestPiece"),
                Limits.TRIM_SHORTEST);
        if (shortest.metres() > piece.metres()) {
            tape.notePassed(
                    at.at("shortestPiece"),
                    shortest,
                    piece,
                    "The shortest piece is %s; it must be at most %s, the longest.");
        }
        return new TrimStock(piece, least(shortest, piece));
    }

    private static Length least(Length one, Length other) {
        return one.compareTo(other) <= 0 ? one : other;
    }

    Length lap(@Nullable WireLength given, Length usual, Origin at, TrimStock stock) {
        Length lap = tape.length(given, usual, at, Limits.TRIM_LAP);
        Length most = Length.metres(stock.length().metres() - LEAST_GAIN);
        if (lap.metres() <= most.metres()) {
            return lap;
        }
        tape.notePassed(at, lap, most, "The lap is %s; it must be at most %s, 0.1 m less than the longest piece.");
        return Length.ZERO;
    }

    Length usualLap() {
        return defaults.lap();
    }

    private Map<EdgeKind, TrimOrder> orders(@Nullable Map<String, KindForm> given, TrimStock stock) {
        Map<String, KindForm> kinds = given == null ? Map.of() : given;
        Map<EdgeKind, TrimOrder> orders = TrimOrder.usual();
        List<String> known = orders.keySet().stream().map(EdgeKind::wire).toList();
        for (String name : kinds.keySet()) {
            if (!known.contains(name)) {
                tape.note(() -> Fault.of(
                        ReadingCode.UNKNOWN_MEMBER,
                        TRIMS.at("kinds").at(name).pointer(),
                        "%s is no kind of edge that gets a trim.%s Known: %s."
                                .formatted(Echo.of(name), Nearest.hint(name, known), String.join(", ", known))));
            }
        }
        for (EdgeKind kind : List.copyOf(orders.keySet())) {
            KindForm form = kinds.getOrDefault(kind.wire(), USUAL);
            Origin at = TRIMS.at("kinds").at(kind.wire());
            boolean none = Boolean.TRUE.equals(form.none());
            if (none) {
                nothingElse(form, at);
                orders.remove(kind);
            } else {
                orders.computeIfPresent(
                        kind,
                        (same, usual) -> new TrimOrder(
                                Optional.ofNullable(form.profile())
                                        .map(profile -> shape(profile, kind.wire(), at.at("profile"))),
                                lap(form.lap(), usual.lap(), at.at("lap"), stock)));
            }
        }
        return orders;
    }

    private void nothingElse(KindForm form, Origin at) {
        if (form.lap() != null || form.profile() != null) {
            tape.note(() -> Fault.of(
                    ReadingCode.EITHER_OR,
                    at.pointer(),
                    "Leave these edges without trim, or say what trim they get, not both."));
        }
    }

    private TrimShape shape(EdgeProfileForm form, String usualName, Origin at) {
        List<Length> legs = legs(form.legs(), at.at("legs"));
        int bends = legs.size() - 1;
        oneFewer(form.bendsDeg(), legs, at.at("bendsDeg"));
        int atEdge = form.atEdge() == null ? 1 : bendNumber(form.atEdge().intValue(), bends, at.at("atEdge"));
        List<Boolean> follow = follow(form.withEdge(), atEdge, bends, at.at("withEdge"));
        List<Turn> turns = new ArrayList<>(bends);
        for (int i = 0; i < bends; i++) {
            double degrees = i < form.bendsDeg().size() ? form.bendsDeg().get(i) : 0;
            turns.add(new Turn(Angle.degrees(degrees), follow.get(i)));
        }
        return new TrimShape(
                form.name() == null ? usualName : form.name(),
                legs,
                turns,
                atEdge - 1,
                tape.length(form.height(), Length.ZERO, at.at("height"), Limits.TRIM_HEIGHT),
                hem(
                        form.hems() == null ? null : form.hems().first(),
                        at.at("hems").at("first")),
                hem(
                        form.hems() == null ? null : form.hems().last(),
                        at.at("hems").at("last")));
    }

    private List<Boolean> follow(@Nullable List<Long> given, int atEdge, int bends, Origin at) {
        List<Boolean> follow = new ArrayList<>(bends);
        for (int i = 1; i <= bends; i++) {
            follow.add(given == null ? i == atEdge : given.contains((long) i));
        }
        if (given != null) {
            for (int i = 0; i < given.size(); i++) {
                bendNumber(given.get(i).intValue(), bends, at.at(i));
            }
        }
        return follow;
    }

    /** One of the bends of a profile, counted from 1. */
    private int bendNumber(int given, int bends, Origin at) {
        if (given >= 1 && given <= bends) {
            return given;
        }
        tape.note(() -> Fault.of(
                ReadingCode.OUT_OF_RANGE,
                at.pointer(),
                "There is no bend %d: the profile has %d, counted from 1.".formatted(given, bends),
                Figure.of(given),
                Figure.of(given < 1 ? 1 : bends)));
        return 1;
    }

    List<Length> legs(List<WireLength> given, Origin at) {
        List<Length> legs = new ArrayList<>(given.size());
        for (WireLength leg : given) {
            Length girth = tape.length(leg, at.at(legs.size()), Limits.TRIM_LEG);
            legs.add(girth.metres() > 0 ? girth : UNREAD);
        }
        return legs;
    }

    void oneFewer(List<Double> bends, List<Length> legs, Origin at) {
        int needed = legs.size() - 1;
        if (bends.size() != needed) {
            tape.note(() -> Fault.of(
                    bends.size() < needed ? ReadingCode.TOO_FEW : ReadingCode.TOO_MANY,
                    at.pointer(),
                    "%d legs have one bend fewer between them, %d; here are %d."
                            .formatted(legs.size(), needed, bends.size()),
                    Figure.of(bends.size()),
                    Figure.of(needed)));
        }
    }

    Optional<Hem> hem(@Nullable HemForm form, Origin at) {
        if (form == null) {
            return Optional.empty();
        }
        Length read = tape.length(form.girth(), at.at("girth"), Limits.TRIM_HEM);
        Length girth = read.metres() > 0 ? read : UNREAD;
        double radius = tape.length(form.gap(), Length.ZERO, at.at("gap"), Limits.TRIM_HEM_GAP)
                        .metres()
                / 2;
        return Optional.of(new Hem(
                radius > 0 ? Hem.Kind.OPEN : Hem.Kind.CLOSED,
                girth,
                Boolean.TRUE.equals(form.up()),
                Length.metres(radius)));
    }
}
