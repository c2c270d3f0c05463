package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.wire.LayoutAnswer.Total;
import org.thalweg.api.wire.OrderLineAnswer;
import org.thalweg.api.wire.SealRunAnswer;
import org.thalweg.api.wire.SealingForm;
import org.thalweg.api.wire.SealingUsed;
import org.thalweg.geometry.Tolerance;
import org.thalweg.panel.Panel;
import org.thalweg.roof.Roof;
import org.thalweg.sealing.SealItem;
import org.thalweg.sealing.SealKind;
import org.thalweg.sealing.SealRun;
import org.thalweg.sealing.Sealing;
import org.thalweg.sealing.SealingRules;
import org.thalweg.takeoff.OrderItem;
import org.thalweg.units.Units;

/** Writes tape, sealant, closures and rivets in the caller's units. */
final class SealingWriter {

    private final Units units;

    SealingWriter(Units units) {
        this.units = units;
    }

    List<SealRunAnswer> write(Roof roof, Sealing sealing) {
        List<SealRunAnswer> written = new ArrayList<>(sealing.runs().size());
        for (SealRun run : sealing.runs()) {
            written.add(new SealRunAnswer(
                    run.kind(),
                    run.item(),
                    run.plane().isPresent()
                            ? Optional.of(
                                    roof.planes().get(run.plane().getAsInt()).id())
                            : Optional.empty(),
                    run.panel().map(Panel::mark),
                    run.edge() < 0
                            ? PanelWriter.LAP
                            : roof.edges().get(run.edge()).id(),
                    run.piece(),
                    RoofWriter.marked(run.length(), units),
                    run.count()));
        }
        return written;
    }

    /**
     * Lengths of tape and sealant are the order lines' own, so that nobody finds two sums of one thing; that of closures is the sum of
     * what is printed; whole cartridges.
     */
    List<Total> totals(Sealing sealing, List<OrderLineAnswer> order, Tolerance tolerance) {
        double sealant = net(order, OrderItem.SEALANT);
        long cartridges = tolerance.ceil(
                units.length().of(sealant).metres(),
                sealing.rules().beadPerCartridge().metres());
        String unit = units.length().code();
        return List.of(
                Total.of("sealantTape", net(order, OrderItem.SEALANT_TAPE), unit),
                Total.of("sealant", sealant, unit),
                Total.of("sealantCartridges", Math.max(0, cartridges), OrderWriter.PIECE),
                Total.of("closures", sealing.count(SealItem.CLOSURE), OrderWriter.PIECE),
                Total.of("closureLength", closures(sealing), unit),
                Total.of("rivets", sealing.count(SealItem.RIVET), OrderWriter.PIECE));
    }

    private static double net(List<OrderLineAnswer> order, OrderItem item) {
        return order.stream()
                .filter(line -> line.item().equals(item.key()))
                .mapToDouble(OrderLineAnswer::net)
                .sum();
    }

    private double closures(Sealing sealing) {
        double sum = sealing.runs().stream()
                .filter(run -> run.item() == SealItem.CLOSURE)
                .mapToDouble(run -> units.length().round(run.length()) * run.count())
                .sum();
        return units.length().round(units.length().of(sum));
    }

    SealingUsed used(SealingRules rules) {
        return new SealingUsed(
                rules.of(SealKind.VALLEY),
                rules.of(SealKind.CLEAT),
                rules.of(SealKind.CLOSURE),
                rules.of(SealKind.END_LAP),
                rules.of(SealKind.OPENING),
                rules.of(SealKind.PAN_LAP),
                rules.of(SealKind.TRIM_LAP),
                units.length().round(rules.rivetSpacing()),
                units.length().round(rules.beadPerCartridge()));
    }

    /** Pointers to what a request left out of it. */
    static void defaults(@Nullable SealingForm form, List<String> left) {
        SealingForm of = form == null ? SealingReader.NONE : form;
        UsedWriter.ifAbsent(of.valleyTapeCount(), "#/sealing/valleyTapeCount", left);
        UsedWriter.ifAbsent(of.cleatTapeCount(), "#/sealing/cleatTapeCount", left);
        UsedWriter.ifAbsent(of.closureTapeCount(), "#/sealing/closureTapeCount", left);
        UsedWriter.ifAbsent(of.endLapTapeCount(), "#/sealing/endLapTapeCount", left);
        UsedWriter.ifAbsent(of.openingTapeCount(), "#/sealing/openingTapeCount", left);
        UsedWriter.ifAbsent(of.panLapBeadCount(), "#/sealing/panLapBeadCount", left);
        UsedWriter.ifAbsent(of.trimLapBeadCount(), "#/sealing/trimLapBeadCount", left);
        UsedWriter.ifAbsent(of.rivetSpacing(), "#/sealing/rivetSpacing", left);
        UsedWriter.ifAbsent(of.beadPerCartridge(), "#/sealing/beadPerCartridge", left);
    }
}
