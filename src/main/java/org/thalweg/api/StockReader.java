package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.BarForm;
import org.thalweg.api.wire.StockCutRequest.StockKind;
import org.thalweg.finding.Origin;
import org.thalweg.stock.Grid;
import org.thalweg.stock.StockBar;
import org.thalweg.units.Length;

/** Reads bars and what lies on the rack: lengths on the grid, costs that can be compared. A coil among them is passed over. */
final class StockReader {

    private final List<? extends BarForm> forms;
    private final Origin at;
    private final TapeReader tape;
    private boolean readable = true;

    StockReader(List<? extends BarForm> forms, Origin at, TapeReader tape) {
        this.forms = forms;
        this.at = at;
        this.tape = tape;
    }

    /** As many as there are forms; of what is a coil, or can't be read, of no length. */
    List<Length> lengths() {
        List<Length> lengths = new ArrayList<>();
        for (BarForm form : forms) {
            Origin here = at.at(lengths.size());
            boolean coil = form.kindOrBar() == StockKind.COIL;
            if (form.length() == null && !coil) {
                missing(here, "\"length\" is missing here; only a coil has none.");
            }
            Length length = coil
                    ? Length.ZERO
                    : tape.length(form.length(), Length.ZERO, here.at("length"), Limits.STOCK_LENGTH);
            readable = readable && (coil || length.metres() > 0);
            lengths.add(length);
        }
        checkCosts();
        return lengths;
    }

    /** Costs of bars are compared, so either all of them have one or none has. */
    private void checkCosts() {
        boolean costs = forms.stream().anyMatch(form -> form.kindOrBar() == StockKind.BAR && form.cost() != null);
        for (int i = 0; i < forms.size(); i++) {
            BarForm form = forms.get(i);
            boolean bar = form.kindOrBar() == StockKind.BAR;
            if (costs && bar && form.cost() == null) {
                missing(at.at(i), "\"cost\" is missing here; another bar has one. Give all bars a cost, or none.");
            }
            if (bar && form.cost() != null && form.cost() == 0 && form.count() == null) {
                missing(at.at(i), "\"count\" is missing here: what costs nothing has a count.");
            }
        }
    }

    /** Whether bars can be made of what was read. */
    boolean readable() {
        return readable;
    }

    /** The bars, without what is a coil. Lengths are those of {@link #lengths}, all of them read. */
    List<StockBar> bars(List<Length> lengths) {
        long common = 0;
        for (int i = 0; i < forms.size(); i++) {
            common = forms.get(i).kindOrBar() == StockKind.BAR ? gcd(Grid.atMost(lengths.get(i)), common) : common;
        }
        List<StockBar> bars = new ArrayList<>();
        for (int i = 0; i < forms.size(); i++) {
            if (forms.get(i).kindOrBar() != StockKind.COIL) {
                bars.add(bar(forms.get(i), Grid.atMost(lengths.get(i)), common));
            }
        }
        return bars;
    }

    private static StockBar bar(BarForm form, long length, long common) {
        boolean rack = form.kindOrBar() == StockKind.RACK;
        long cost = form.cost() != null ? form.cost() : rack ? 0 : length / common;
        OptionalInt count = form.count() != null
                ? OptionalInt.of(form.count().intValue())
                : rack ? OptionalInt.of(1) : OptionalInt.empty();
        return new StockBar(form.id(), length, cost, count);
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    private void missing(Origin here, String detail) {
        readable = false;
        tape.note(ReadingCode.MISSING_MEMBER, here, detail);
    }
}
