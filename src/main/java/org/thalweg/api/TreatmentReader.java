package org.thalweg.api;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.LayoutRequest.TreatmentForm;
import org.thalweg.api.wire.RoofForm;
import org.thalweg.api.wire.WirePoint;
import org.thalweg.finding.Origin;
import org.thalweg.geometry.Point3;
import org.thalweg.packet.EdgeName;
import org.thalweg.packet.LayoutCase.EdgeException;
import org.thalweg.packet.PanelEnd;
import org.thalweg.roof.EdgeKind;
import org.thalweg.units.LengthUnit;

/** Reads how panels end at edges, by kind and by name. */
final class TreatmentReader {

    private static final Origin TREATMENTS = Origin.REQUEST.at("edgeTreatments");

    private static final Map<String, EdgeKind> KINDS = new LinkedHashMap<>();

    static {
        for (EdgeKind kind : EdgeKind.values()) {
            KINDS.put(kind.wire(), kind);
        }
    }

    private final Map<String, WirePoint> points;
    private final LengthUnit unit;
    private final TapeReader tape;
    private final Map<EdgeKind, PanelEnd> byKind = new EnumMap<>(EdgeKind.class);
    private final List<EdgeException> byEdge = new ArrayList<>();

    /** @param roof whose points edges may be named by; none when the request has no roof */
    TreatmentReader(@Nullable RoofForm roof, LengthUnit unit, TapeReader tape) {
        this.points = roof == null ? Map.of() : orNone(roof.points());
        this.unit = unit;
        this.tape = tape;
    }

    void read(@Nullable Map<String, TreatmentForm> treatments) {
        orNone(treatments).forEach(this::read);
    }

    Map<EdgeKind, PanelEnd> byKind() {
        return byKind;
    }

    List<EdgeException> byEdge() {
        return byEdge;
    }

    private void read(String name, TreatmentForm form) {
        Origin at = TREATMENTS.at(name);
        PanelEnd end = new PanelEnd(
                tape.given(form.setback(), at.at("setback"), Limits.SETBACK),
                tape.given(form.hem(), at.at("hem"), Limits.HEM),
                tape.given(form.turnUp(), at.at("turnUp"), Limits.TURN_UP),
                Optional.ofNullable(form.hold()));
        EdgeKind kind = KINDS.get(name);
        if (kind != null) {
            byKind.put(kind, end);
        } else {
            byEdge.add(new EdgeException(edge(name, at), end, at));
        }
    }

    /** The line between two of the roof's points; nothing when one of them is not there. */
    Optional<EdgeName> between(String one, String other) {
        WirePoint from = points.get(one);
        WirePoint to = points.get(other);
        return from == null || to == null
                ? Optional.empty()
                : Optional.of(new EdgeName.Between(point(from), point(to)));
    }

    /** Two points of the roof with a hyphen between them, or else the name an edge has in an answer. */
    private EdgeName edge(String name, Origin at) {
        List<EdgeName> found = new ArrayList<>(1);
        for (int hyphen = name.indexOf('-'); hyphen >= 0; hyphen = name.indexOf('-', hyphen + 1)) {
            between(name.substring(0, hyphen), name.substring(hyphen + 1)).ifPresent(found::add);
        }
        if (found.size() > 1) {
            tape.note(() -> Fault.of(
                    ReadingCode.UNKNOWN_VALUE,
                    at.pointer(),
                    "%s can be read as more than one pair of points. Rename a point, or use the edge's own name."
                            .formatted(Echo.of(name))));
        }
        return found.isEmpty() ? new EdgeName.ById(name) : found.get(0);
    }

    /** Read again with the roof, where what is wrong with it is noted. */
    private Point3 point(WirePoint given) {
        TapeReader again = new TapeReader(unit);
        return new Point3(
                again.length(given.x(), Origin.REQUEST, Limits.COORDINATE).metres(),
                again.length(given.y(), Origin.REQUEST, Limits.COORDINATE).metres(),
                again.length(given.z(), Origin.REQUEST, Limits.COORDINATE).metres());
    }

    private static <T> Map<String, T> orNone(@Nullable Map<String, T> map) {
        return map == null ? Map.of() : map;
    }
}
