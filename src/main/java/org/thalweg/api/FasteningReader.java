package org.thalweg.api;

import org.jspecify.annotations.Nullable;
import org.thalweg.api.wire.FasteningForm;
import org.thalweg.api.wire.ValleyPanForm;
import org.thalweg.api.wire.WireLength;
import org.thalweg.fastening.FastenerKind;
import org.thalweg.fastening.FasteningRules;
import org.thalweg.fastening.FasteningRules.ClipRule;
import org.thalweg.fastening.FasteningRules.RowRule;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/** Reads how far apart everything is fastened: the caller's figures in the table, the usual ones where none are given. */
final class FasteningReader {

    static final FasteningForm NONE = new FasteningForm(
            null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null);

    private static final Origin FASTENING = Origin.REQUEST.at("fastening");
    private static final Origin PAN = Origin.REQUEST.at("valleyPan");

    private final FasteningForm form;
    private final ValleyPanForm pan;
    private final TapeReader tape;
    private FasteningRules rules;

    FasteningReader(@Nullable FasteningForm form, @Nullable ValleyPanForm pan, LengthUnit unit, TapeReader tape) {
        this.form = form == null ? NONE : form;
        this.pan = pan == null ? ValleyTermsReader.NO_PAN : pan;
        this.tape = tape;
        this.rules = usual(unit);
    }

    private static FasteningRules usual(LengthUnit unit) {
        return unit.inInches() ? FasteningRules.INCHES : FasteningRules.METRIC;
    }

    FasteningRules read() {
        spaced(form.eaveSpacing(), "eaveSpacing", Limits.EAVE_SPACING, FastenerKind.EAVE);
        spaced(form.valleySpacing(), "valleySpacing", Limits.VALLEY_SPACING, FastenerKind.VALLEY);
        spaced(form.cleatSpacing(), "cleatSpacing", Limits.CLEAT_SPACING, FastenerKind.CLEAT);
        spaced(
                form.closureSpacing(),
                "closureSpacing",
                Limits.CLOSURE_SPACING,
                FastenerKind.CLOSURE,
                FastenerKind.HEAD_WALL);
        spaced(form.stripSpacing(), "stripSpacing", Limits.STRIP_SPACING, FastenerKind.RAKE, FastenerKind.SIDE_WALL);
        spaced(form.openingSpacing(), "openingSpacing", Limits.OPENING_SPACING, FastenerKind.OPENING);
        spaced(form.lapSpacing(), "lapSpacing", Limits.LAP_SPACING, FastenerKind.END_LAP);
        panEdge();
        inset();
        if (form.edgeDistance() != null || form.ribClearance() != null) {
            rules = rules.with(
                    length(form.edgeDistance(), rules.edgeDistance(), "edgeDistance", Limits.EDGE_DISTANCE),
                    length(form.ribClearance(), rules.ribClearance(), "ribClearance", Limits.RIB_CLEARANCE),
                    Source.REQUEST);
        }
        clips();
        return rules;
    }

    private Length length(@Nullable WireLength given, Length absent, String member, Limit limit) {
        return tape.length(given, absent, FASTENING.at(member), limit);
    }

    private void spaced(@Nullable WireLength given, String member, Limit limit, FastenerKind... kinds) {
        if (given == null) {
            return;
        }
        Length spacing = tape.length(given, FASTENING.at(member), limit);
        for (FastenerKind kind : kinds) {
            put(kind, spacing, rules.of(kind).inset());
        }
    }

    /** The pan's own fasteners are told beside the pan. */
    private void panEdge() {
        RowRule usual = rules.of(FastenerKind.PAN_EDGE);
        if (pan.fastenerSpacing() != null || pan.edgeInset() != null) {
            put(
                    FastenerKind.PAN_EDGE,
                    tape.length(
                            pan.fastenerSpacing(), usual.maxSpacing(), PAN.at("fastenerSpacing"), Limits.PAN_SPACING),
                    tape.length(pan.edgeInset(), usual.inset(), PAN.at("edgeInset"), Limits.EDGE_INSET));
        }
    }

    /** How far inside the panels' end screws go that hold panels down. */
    private void inset() {
        if (form.fastenerInset() != null) {
            Length inset = tape.length(form.fastenerInset(), FASTENING.at("fastenerInset"), Limits.FASTENER_INSET);
            put(FastenerKind.EAVE, rules.of(FastenerKind.EAVE).maxSpacing(), inset);
            put(FastenerKind.VALLEY, rules.of(FastenerKind.VALLEY).maxSpacing(), inset);
        }
    }

    /** What can't be read has been noted; the usual spacing stands in until the reading is done. */
    private void put(FastenerKind kind, Length spacing, Length inset) {
        Length read = spacing.metres() > 0 ? spacing : rules.of(kind).maxSpacing();
        rules = rules.with(kind, new RowRule(read, inset, Source.REQUEST));
    }

    private void clips() {
        ClipRule usual = rules.clips();
        if (form.clipSpacing() == null && form.clipEndDistance() == null) {
            return;
        }
        Length spacing = length(form.clipSpacing(), usual.maxSpacing(), "clipSpacing", Limits.CLIP_SPACING);
        rules = rules.with(new ClipRule(
                spacing.metres() > 0 ? spacing : usual.maxSpacing(),
                length(form.clipEndDistance(), usual.endDistance(), "clipEndDistance", Limits.CLIP_END_DISTANCE),
                usual.screws(),
                Source.REQUEST));
    }
}
