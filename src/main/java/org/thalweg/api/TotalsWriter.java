package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.wire.LayoutAnswer.Total;
import org.thalweg.api.wire.OrderLineAnswer;
import org.thalweg.fastening.FastenerKind;
import org.thalweg.packet.TakenOff;
import org.thalweg.panel.Cut;
import org.thalweg.panel.Panel;
import org.thalweg.panel.PanelLayout;
import org.thalweg.panel.PlanePanels;
import org.thalweg.takeoff.PanelTakeoff;
import org.thalweg.units.Area;
import org.thalweg.units.Length;
import org.thalweg.units.Tape;
import org.thalweg.units.Units;

/** Writes the sums of what a layout lists. */
final class TotalsWriter {

    /** UN/CEFACT Recommendation 20. */
    private static final String PER_CENT = "P1";

    private final Units units;
    private final List<Total> totals = new ArrayList<>();

    TotalsWriter(Units units) {
        this.units = units;
    }

    List<Total> totals(TakenOff job, List<OrderLineAnswer> order) {
        panels(job.takeoff());
        mitres(job.laid().panels());
        count("valleys", job.laid().valleys().size());
        count(
                "valleyPieces",
                job.laid().valleys().stream()
                        .mapToInt(valley -> valley.pieces().size())
                        .sum());
        count("seams", job.seams().seams().size());
        count("clips", job.seams().clipCount());
        Map<FastenerKind, Integer> counts = job.fasteners().counts();
        int fasteners = 0;
        for (FastenerKind kind : FastenerKind.values()) {
            int count = counts.getOrDefault(kind, 0);
            fasteners += count;
            if (count > 0) {
                totals.add(new Total("fasteners", Optional.of(kind.wire()), count, OrderWriter.PIECE));
            }
        }
        count("fasteners", fasteners);
        count(
                "trimPieces",
                job.trims().stream().mapToInt(trim -> trim.pieces().size()).sum());
        totals.addAll(UnderlaymentWriter.totals(job.underlay(), job.ice()));
        totals.addAll(new SealingWriter(units)
                .totals(job.sealing(), order, job.laid().roof().tolerance()));
        mass(order);
        return totals;
    }

    private void panels(PanelTakeoff takeoff) {
        count("panels", takeoff.panelCount());
        area("roofArea", takeoff.roofArea());
        area("finishedArea", takeoff.finishedArea());
        add(
                "orderedLength",
                units.length().round(takeoff.orderedLength()),
                units.length().code());
        area("orderedArea", takeoff.orderedArea());
        area("sheetArea", takeoff.sheetArea());
        add("waste", Math.max(0, Math.rint(takeoff.waste() * 1e4) / 1e2), PER_CENT);
        add("mass", units.mass().round(takeoff.mass()), units.mass().code());
    }

    /** Ends of panels that a tape shows as not square, and how long they are cut. */
    private void mitres(PanelLayout panels) {
        double shown = Tape.finest(units.length()).metres() / 2;
        int ends = 0;
        double length = 0;
        for (PlanePanels plane : panels.planes()) {
            for (Panel panel : plane.panels()) {
                List<Cut> cuts = panel.cuts();
                for (Cut.End end : List.of(Cut.End.LOWER, Cut.End.UPPER)) {
                    boolean slants = false;
                    double along = 0;
                    for (Cut cut : cuts) {
                        if (cut.end() == end) {
                            slants = slants || cut.rise() >= shown;
                            along += cut.length();
                        }
                    }
                    if (slants) {
                        ends++;
                        length += along;
                    }
                }
            }
        }
        count("mitredEnds", ends);
        add(
                "mitreLength",
                units.length().round(Length.metres(length)),
                units.length().code());
    }

    /** A sum of printed masses, so that it is the sum of what is printed. */
    private void mass(List<OrderLineAnswer> order) {
        double sum = order.stream()
                .flatMap(line -> line.mass().stream())
                .mapToDouble(Figure::value)
                .sum();
        add(
                "orderedMass",
                units.mass().round(units.mass().of(sum)),
                units.mass().code());
    }

    private void count(String item, int count) {
        add(item, count, OrderWriter.PIECE);
    }

    private void area(String item, Area area) {
        add(item, units.area().round(area), units.area().code());
    }

    private void add(String item, double quantity, String unit) {
        totals.add(Total.of(item, quantity, unit));
    }
}
