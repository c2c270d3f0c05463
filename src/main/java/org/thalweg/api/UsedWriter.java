package org.thalweg.api;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.wire.BarForm;
import org.thalweg.api.wire.ClimateForm;
import org.thalweg.api.wire.FasteningForm;
import org.thalweg.api.wire.HipCapForm;
import org.thalweg.api.wire.LayoutRequest.TreatmentForm;
import org.thalweg.api.wire.LayoutUsed.OrderRuleUsed;
import org.thalweg.api.wire.LayoutUsed.OrderingUsed;
import org.thalweg.api.wire.LayoutUsed.TreatmentUsed;
import org.thalweg.api.wire.MarkedLength;
import org.thalweg.api.wire.OrderingForm;
import org.thalweg.api.wire.RiseAndRun;
import org.thalweg.api.wire.StockCutRequest.StockKind;
import org.thalweg.api.wire.ValleyPanForm;
import org.thalweg.api.wire.ValleyUsed.ClimateUsed;
import org.thalweg.api.wire.ValleyUsed.FasteningUsed;
import org.thalweg.api.wire.ValleyUsed.HipCapUsed;
import org.thalweg.api.wire.ValleyUsed.PanUsed;
import org.thalweg.api.wire.WindForm;
import org.thalweg.fastening.FastenerKind;
import org.thalweg.fastening.FasteningRules;
import org.thalweg.movement.Temperatures;
import org.thalweg.packet.LayoutCase.EdgeException;
import org.thalweg.packet.PanelEnd;
import org.thalweg.packet.ValleyTerms;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.PanelHold;
import org.thalweg.takeoff.OrderItem;
import org.thalweg.takeoff.OrderRule;
import org.thalweg.takeoff.Ordering;
import org.thalweg.takeoff.Quantity;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.TemperatureScale;
import org.thalweg.units.Units;
import org.thalweg.valley.PanSpec;

/** Writes the figures valleys, hips and panel ends were laid out with, given or default. */
final class UsedWriter {

    private final Units units;

    UsedWriter(Units units) {
        this.units = units;
    }

    PanUsed pan(ValleyTerms terms) {
        PanSpec pan = terms.pan();
        List<MarkedLength> stations = terms.stations().stream()
                .map(at -> RoofWriter.marked(at, units))
                .toList();
        return new PanUsed(
                length(pan.coilWidth()),
                length(pan.ribLeg()),
                length(pan.edgeReturn()),
                length(pan.heldBack()),
                new RiseAndRun(pan.widening().rise(), pan.widening().run()),
                length(pan.pieceLength()),
                length(pan.shortestPiece()),
                length(pan.lap()),
                length(pan.pastEave()),
                length(pan.wallTurnUp()),
                length(pan.ribPastEave()),
                length(pan.ribPastTop()),
                length(pan.ribPastValley()),
                spacing(terms.rules(), FastenerKind.PAN_EDGE),
                length(terms.rules().of(FastenerKind.PAN_EDGE).inset()),
                length(pan.cleatLength()),
                length(terms.margin()),
                stations);
    }

    FasteningUsed fastening(ValleyTerms terms) {
        FasteningRules rules = terms.rules();
        return new FasteningUsed(
                spacing(rules, FastenerKind.EAVE),
                spacing(rules, FastenerKind.VALLEY),
                spacing(rules, FastenerKind.CLEAT),
                spacing(rules, FastenerKind.CLOSURE),
                spacing(rules, FastenerKind.RAKE),
                spacing(rules, FastenerKind.OPENING),
                spacing(rules, FastenerKind.END_LAP),
                length(rules.of(FastenerKind.VALLEY).inset()),
                length(rules.ribClearance()),
                length(rules.edgeDistance()),
                length(rules.clips().maxSpacing()),
                length(rules.clips().endDistance()),
                length(terms.movement().screwPlay().eachWay()),
                terms.movement().fixed(),
                terms.movement().clipTravel().map(travel -> RoofWriter.marked(travel.eachWay(), units)),
                terms.movement().engagement().map(given -> RoofWriter.marked(given, units)));
    }

    ClimateUsed climate(ValleyTerms terms, @Nullable ClimateForm given) {
        TemperatureScale scale = scale(given, units.length());
        Temperatures temperatures = terms.temperatures();
        return new ClimateUsed(
                scale.round(temperatures.lowest()),
                scale.round(temperatures.highest()),
                scale.round(temperatures.installedAt()),
                scale,
                terms.temperaturesSource().text(),
                terms.rainfall().map(rain -> FigureWriter.write(rain, units)));
    }

    OrderingUsed ordering(Ordering ordering) {
        Map<String, OrderRuleUsed> items = new LinkedHashMap<>();
        ordering.rules().forEach((item, rule) -> items.put(item.key(), ordered(item, rule)));
        return new OrderingUsed(
                ordering.formed() == Ordering.Formed.ON_SITE
                        ? OrderingForm.Formed.ON_SITE
                        : OrderingForm.Formed.BY_SUPPLIER,
                items);
    }

    private OrderRuleUsed ordered(OrderItem item, OrderRule rule) {
        Optional<Double> pack =
                rule.pack().isPresent() ? Optional.of(rule.pack().getAsDouble()) : Optional.empty();
        boolean counted = item.kind() == Quantity.Kind.COUNT;
        return new OrderRuleUsed(
                rule.extra() / 100.0,
                counted ? pack.map(Math::round) : Optional.empty(),
                counted ? Optional.empty() : pack.map(metres -> length(Length.metres(metres))));
    }

    private double spacing(FasteningRules rules, FastenerKind kind) {
        return length(rules.of(kind).maxSpacing());
    }

    /** The scale the caller gave; without one Fahrenheit for callers who measure in inches or feet. */
    static TemperatureScale scale(@Nullable ClimateForm given, LengthUnit tape) {
        if (given != null && given.temperature() != null) {
            return given.temperature();
        }
        return tape.inInches() ? TemperatureScale.FAHRENHEIT : TemperatureScale.CELSIUS;
    }

    HipCapUsed hipCap(ValleyTerms terms) {
        return new HipCapUsed(length(terms.cap().leg()), length(terms.cap().closureInset()));
    }

    /** Every treatment of the request, by its name there, filled in. */
    Map<String, TreatmentUsed> treatments(
            @Nullable Map<String, TreatmentForm> given,
            Map<EdgeKind, PanelEnd> byKind,
            List<EdgeException> byEdge,
            ValleyTerms terms) {
        Map<String, TreatmentUsed> used = new LinkedHashMap<>();
        if (given != null) {
            byKind.forEach(
                    (kind, end) -> used.put(kind.wire(), kind == EdgeKind.VALLEY ? valley(end, terms) : other(end)));
            byEdge.forEach(exception -> used.put(exception.at().name(), other(exception.end())));
            return inOrder(given, used);
        }
        return used;
    }

    private static Map<String, TreatmentUsed> inOrder(
            Map<String, TreatmentForm> given, Map<String, TreatmentUsed> used) {
        Map<String, TreatmentUsed> ordered = new LinkedHashMap<>();
        for (String name : given.keySet()) {
            TreatmentUsed treatment = used.get(name);
            if (treatment != null) {
                ordered.put(name, treatment);
            }
        }
        return ordered;
    }

    private TreatmentUsed valley(PanelEnd end, ValleyTerms terms) {
        return used(terms.treatment(end, terms.pan(end), Length.ZERO), Optional.of(terms.hold(end)));
    }

    private TreatmentUsed other(PanelEnd end) {
        return used(end.treatment(), end.hold());
    }

    private TreatmentUsed used(EdgeTreatment treatment, Optional<PanelHold> hold) {
        return new TreatmentUsed(
                length(treatment.setback()), length(treatment.hem()), length(treatment.turnUp()), hold);
    }

    /** Pointers to what a request left out of pan, fastening, climate and cap. */
    static void defaults(
            @Nullable ValleyPanForm pan,
            @Nullable FasteningForm fastening,
            @Nullable ClimateForm climate,
            List<String> left) {
        ValleyPanForm ofPan = pan == null ? ValleyTermsReader.NO_PAN : pan;
        FasteningForm ofFastening = fastening == null ? FasteningReader.NONE : fastening;
        ClimateForm ofClimate = climate == null ? ValleyTermsReader.NO_CLIMATE : climate;
        ifAbsent(ofPan.coilWidth(), "#/valleyPan/coilWidth", left);
        ifAbsent(ofPan.ribLeg(), "#/valleyPan/ribLeg", left);
        ifAbsent(ofPan.edgeReturn(), "#/valleyPan/edgeReturn", left);
        if (ofPan.cover() == null) {
            ifAbsent(ofPan.holdBack(), "#/valleyPan/holdBack", left);
        }
        ifAbsent(ofPan.widening(), "#/valleyPan/widening", left);
        ifAbsent(ofPan.pieceLength(), "#/valleyPan/pieceLength", left);
        ifAbsent(ofPan.shortestPiece(), "#/valleyPan/shortestPiece", left);
        ifAbsent(ofPan.lap(), "#/valleyPan/lap", left);
        ifAbsent(ofPan.eaveProjection(), "#/valleyPan/eaveProjection", left);
        ifAbsent(ofPan.wallTurnUp(), "#/valleyPan/wallTurnUp", left);
        ifAbsent(ofPan.ribPastEave(), "#/valleyPan/ribPastEave", left);
        ifAbsent(ofPan.ribPastTop(), "#/valleyPan/ribPastTop", left);
        ifAbsent(ofPan.ribPastValley(), "#/valleyPan/ribPastValley", left);
        ifAbsent(ofPan.fastenerSpacing(), "#/valleyPan/fastenerSpacing", left);
        ifAbsent(ofPan.edgeInset(), "#/valleyPan/edgeInset", left);
        ifAbsent(ofPan.cleatLength(), "#/valleyPan/cleatLength", left);
        ifAbsent(ofPan.waterMargin(), "#/valleyPan/waterMargin", left);
        ifAbsent(ofPan.stations(), "#/valleyPan/stations", left);
        ifAbsent(ofFastening.eaveSpacing(), "#/fastening/eaveSpacing", left);
        ifAbsent(ofFastening.valleySpacing(), "#/fastening/valleySpacing", left);
        ifAbsent(ofFastening.cleatSpacing(), "#/fastening/cleatSpacing", left);
        ifAbsent(ofFastening.closureSpacing(), "#/fastening/closureSpacing", left);
        ifAbsent(ofFastening.stripSpacing(), "#/fastening/stripSpacing", left);
        ifAbsent(ofFastening.openingSpacing(), "#/fastening/openingSpacing", left);
        ifAbsent(ofFastening.lapSpacing(), "#/fastening/lapSpacing", left);
        ifAbsent(ofFastening.fastenerInset(), "#/fastening/fastenerInset", left);
        ifAbsent(ofFastening.ribClearance(), "#/fastening/ribClearance", left);
        ifAbsent(ofFastening.edgeDistance(), "#/fastening/edgeDistance", left);
        ifAbsent(ofFastening.clipSpacing(), "#/fastening/clipSpacing", left);
        ifAbsent(ofFastening.clipEndDistance(), "#/fastening/clipEndDistance", left);
        ifAbsent(ofFastening.screwPlay(), "#/fastening/screwPlay", left);
        ifAbsent(ofFastening.fixedPoint(), "#/fastening/fixedPoint", left);
        ifAbsent(ofFastening.hemEngagement(), "#/fastening/hemEngagement", left);
        ifAbsent(ofClimate.lowest(), "#/climate/lowest", left);
        ifAbsent(ofClimate.highest(), "#/climate/highest", left);
        ifAbsent(ofClimate.installedAt(), "#/climate/installedAt", left);
    }

    /** Without wind nothing stands for it. */
    static void windDefaults(@Nullable WindForm wind, List<String> left) {
        if (wind != null) {
            ifAbsent(wind.zoneWidth(), "#/wind/zoneWidth", left);
            ifAbsent(wind.fieldMost(), "#/wind/fieldMost", left);
            ifAbsent(wind.edgeMost(), "#/wind/edgeMost", left);
        }
    }

    static void hipCapDefaults(@Nullable HipCapForm cap, List<String> left) {
        HipCapForm of = cap == null ? ValleyTermsReader.NO_CAP : cap;
        ifAbsent(of.leg(), "#/hipCap/leg", left);
        ifAbsent(of.closureInset(), "#/hipCap/closureInset", left);
    }

    /** Pointers to what one sort of stock, which stands at {@code at}, leaves out and a default stands for. */
    static void stockDefaults(BarForm stock, String at, List<String> left) {
        ifAbsent(stock.kind(), at + "/kind", left);
        if (stock.kindOrBar() != StockKind.COIL) {
            ifAbsent(stock.cost(), at + "/cost", left);
        }
        if (stock.kindOrBar() == StockKind.RACK) {
            ifAbsent(stock.count(), at + "/count", left);
        }
    }

    static void ifAbsent(@Nullable Object given, String pointer, List<String> left) {
        if (given == null) {
            left.add(pointer);
        }
    }

    private double length(Length length) {
        return units.length().round(length);
    }
}
