package org.thalweg.fastening;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Frame;
import org.thalweg.geometry.Point3;
import org.thalweg.panel.Lead;
import org.thalweg.panel.PanelSpec;
import org.thalweg.panel.Panels;
import org.thalweg.panel.PlaneLaying;
import org.thalweg.panel.PlanePanels;
import org.thalweg.panel.Start;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.EdgeTreatments;
import org.thalweg.roof.PanelHold;
import org.thalweg.roof.Roof;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;
import org.thalweg.valley.PanSpec;
import org.thalweg.valley.SlopedEdge;
import org.thalweg.valley.ValleyLayout;
import org.thalweg.valley.Valleys;

/** A roof of 18 in panels over pans of 48 in coil, laid and ready to be fastened. */
public record Fastened(Roof roof, PanelSpec spec, EdgeTreatments ends, PanelHold hold, Lead lead, Length offset) {

    static final Length COVER = Length.inches(18);
    static final Length HELD_BACK = Length.inches(12.75);

    /** Panels reach an inch over eaves, stop an inch short on top and at openings, and are held back at valleys. */
    public static final EdgeTreatments USUAL = new EdgeTreatments(
            Map.of(
                    EdgeKind.EAVE, ends(-1, 1),
                    EdgeKind.ANGLED_EAVE, ends(-1, 1),
                    EdgeKind.VALLEY, ends(12.75, 0),
                    EdgeKind.RIDGE, ends(1, 0),
                    EdgeKind.HIP, ends(1, 0),
                    EdgeKind.HIGH_EAVE, ends(1, 0),
                    EdgeKind.OPENING, ends(0.5, 1)),
            Map.of());

    private static final PanSpec PAN = new PanSpec(
            Length.inches(48),
            Length.inches(4.25),
            Length.inches(1),
            Optional.of(HELD_BACK),
            Optional.empty(),
            new Pitch(0, 12),
            Length.inches(120),
            Length.inches(12),
            Length.inches(8),
            Length.ZERO,
            Length.inches(4),
            Length.inches(2),
            Length.inches(2),
            Length.inches(24),
            Length.inches(120));

    public static EdgeTreatment ends(double setback, double hem) {
        return new EdgeTreatment(Length.inches(setback), Length.inches(hem), Length.ZERO);
    }

    static PanelSpec panels(double longest) {
        return new PanelSpec(
                COVER,
                Length.inches(longest),
                Length.ZERO,
                Length.inches(0.25),
                Length.ZERO,
                Length.inches(6),
                Length.inches(24));
    }

    public static Fastened of(Roof roof) {
        return new Fastened(roof, panels(1000), USUAL, PanelHold.FIXED, Lead.LEFT, Length.ZERO);
    }

    public Fastened cleated() {
        return new Fastened(roof, spec, ends, PanelHold.CLEATED, lead, offset);
    }

    public Fastened treated(EdgeTreatments others) {
        return new Fastened(roof, spec, others, hold, lead, offset);
    }

    public Fastened longest(double inches) {
        return new Fastened(roof, panels(inches), ends, hold, lead, offset);
    }

    Fastened from(Lead side, double inches) {
        return new Fastened(roof, spec, ends, hold, side, Length.inches(inches));
    }

    public FasteningCase asked(FasteningRules rules) {
        return asked(rules, PAN);
    }

    FasteningCase asked(FasteningRules rules, PanSpec pan) {
        PlaneLaying laying = new PlaneLaying(lead, new Start.Offset(offset), Optional.empty());
        return new FasteningCase(
                roof,
                spec,
                Panels.layOut(
                        roof,
                        spec,
                        ends.of(roof),
                        Collections.nCopies(roof.planes().size(), laying)),
                ends.of(roof),
                Collections.nCopies(roof.edges().size(), hold),
                valleys(pan),
                rules,
                FixedPoint.EAVE);
    }

    private List<ValleyLayout> valleys(PanSpec pan) {
        Valleys.ValleyAsked common = new Valleys.ValleyAsked(
                spec.cover(), Length.inches(2), Length.inches(1), new Pitch(0.25, 12), Source.REQUEST);
        List<ValleyLayout> valleys = new ArrayList<>();
        for (int i = 0; i < roof.edges().size(); i++) {
            if (roof.edges().get(i).kind() == EdgeKind.VALLEY) {
                SlopedEdge.of(roof, i)
                        .ifPresent(edge -> valleys.add(Valleys.layOut(edge, pan, hold, common, roof.tolerance())));
            }
        }
        return valleys;
    }

    static PanSpec pan(double coil, double heldBack, double widening) {
        return new PanSpec(
                Length.inches(coil),
                PAN.ribLeg(),
                PAN.edgeReturn(),
                Optional.of(Length.inches(heldBack)),
                Optional.empty(),
                new Pitch(widening, 12),
                PAN.pieceLength(),
                PAN.shortestPiece(),
                PAN.lap(),
                PAN.pastEave(),
                PAN.wallTurnUp(),
                PAN.ribPastEave(),
                PAN.ribPastTop(),
                PAN.ribPastValley(),
                PAN.cleatLength());
    }

    public FastenerRows rows() {
        return FastenerRows.of(asked(FasteningRules.INCHES));
    }

    Seams seams() {
        return Seams.of(asked(FasteningRules.INCHES));
    }

    /** Where the fasteners of a kind stand in the world, in no order. */
    static List<Point3> inWorld(FasteningCase asked, FastenerKind kind) {
        List<Point3> places = new ArrayList<>();
        for (FastenerRow row : FastenerRows.of(asked).rows()) {
            if (row.kind() == kind) {
                Frame frame = frame(asked, row.plane());
                row.places().forEach(place -> places.add(frame.inWorld(place)));
            }
        }
        return places;
    }

    static List<Point3> clipsInWorld(FasteningCase asked) {
        List<Point3> places = new ArrayList<>();
        for (Seam seam : Seams.of(asked).seams()) {
            Frame frame = frame(asked, seam.plane());
            seam.places().forEach(place -> places.add(frame.inWorld(place)));
        }
        return places;
    }

    static PlanePanels laid(FasteningCase asked, int plane) {
        return asked.panels().planes().stream()
                .filter(laid -> laid.plane() == plane)
                .findFirst()
                .orElseThrow();
    }

    private static Frame frame(FasteningCase asked, int plane) {
        return laid(asked, plane).frame();
    }
}
