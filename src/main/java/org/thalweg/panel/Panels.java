package org.thalweg.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Place;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Frame;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;
import org.thalweg.units.Length;

/** Lays panels on the planes of a roof. */
public final class Panels {

    private final Roof roof;
    private final PanelSpec spec;
    private final List<EdgeTreatment> treatments;
    private final EndLaps laps;
    private final Tolerance tolerance;
    private final Marks marks;
    private final List<Finding> findings = new ArrayList<>();

    private Panels(Roof roof, PanelSpec spec, List<EdgeTreatment> treatments) {
        this.roof = roof;
        this.spec = spec;
        this.treatments = treatments;
        this.tolerance = roof.tolerance();
        this.laps = new EndLaps(spec, tolerance);
        this.marks = new Marks(spec.cover(), tolerance);
    }

    /**
     * Lays every plane. A level plane that is given no fall gets a finding and no panels.
     *
     * @param roof       a good roof
     * @param spec       the panel
     * @param treatments how panels end at its edges, one an edge, in the roof's order
     * @param laying     how each plane is laid, one a plane, in the roof's order
     * @throws org.thalweg.finding.Refused when that is more work than one request may cost; see {@link PanelWork}
     */
    public static PanelLayout layOut(
            Roof roof, PanelSpec spec, List<EdgeTreatment> treatments, List<PlaneLaying> laying) {
        PanelWork.check(roof, spec, laying);
        Panels panels = new Panels(roof, spec, treatments);
        List<PlanePanels> planes = new ArrayList<>(roof.planes().size());
        for (int plane = 0; plane < roof.planes().size(); plane++) {
            panels.lay(plane, laying.get(plane)).ifPresent(planes::add);
        }
        return new PanelLayout(planes, panels.findings);
    }

    private Optional<PlanePanels> lay(int index, PlaneLaying laying) {
        Plane plane = roof.planes().get(index);
        if (plane.level() && laying.fall().isEmpty()) {
            note(
                    FindingCode.NO_FALL_LINE,
                    plane,
                    "Plane {place} is level, so no panels are laid on it. Say which way water shall run and it is laid"
                            + " that way, or roof it with something else.");
            return Optional.empty();
        }
        Frame frame =
                laying.fall().map(fall -> FallFrame.of(plane.frame(), fall)).orElse(plane.frame());
        Region shape = frame.from(plane.frame(), plane.shape());
        PlaneStrips strips = new PlaneStrips(shape, treatments, spec.cover().metres(), laying.lead(), tolerance);
        if (strips.finished().isEmpty()) {
            note(
                    FindingCode.NOTHING_LEFT,
                    plane,
                    "The set-backs leave nothing of plane {place}. Check them against the size of the plane.");
            return Optional.of(new PlanePanels(index, frame, laying.lead(), Length.ZERO, List.of(), List.of()));
        }
        double offset = offset(strips, laying.start());
        List<Panel> panels = panels(index, strips, offset);
        for (Panel panel : panels) {
            check(panel, plane);
        }
        return Optional.of(
                new PlanePanels(index, frame, laying.lead(), Length.metres(offset), strips.finished(), panels));
    }

    private double offset(PlaneStrips strips, Start start) {
        if (start instanceof Start.Offset given) {
            return given.width().metres();
        }
        return start instanceof Start.Centred
                ? RibLines.centred(strips.width(), spec.cover().metres(), tolerance)
                : StartSearch.leastWaste(strips, spec, laps, tolerance);
    }

    private List<Panel> panels(int plane, PlaneStrips strips, double offset) {
        List<PlaneStrips.Blank> blanks = strips.at(offset);
        int count = strips.strips(offset);
        List<Panel> panels = new ArrayList<>(blanks.size());
        boolean fromLeft = strips.lead() == Lead.LEFT;
        int first = fromLeft ? 0 : blanks.size();
        while (fromLeft ? first < blanks.size() : first > 0) {
            int strip = blanks.get(fromLeft ? first : first - 1).strip();
            int other = first;
            while (fromLeft
                    ? other < blanks.size() && blanks.get(other).strip() == strip
                    : other > 0 && blanks.get(other - 1).strip() == strip) {
                other += fromLeft ? 1 : -1;
            }
            List<PlaneStrips.Blank> ofStrip = blanks.subList(Math.min(first, other), Math.max(first, other));
            addStrip(plane, fromLeft ? strip + 1 : count - strip, ofStrip, panels);
            first = other;
        }
        return panels;
    }

    private void addStrip(int plane, int strip, List<PlaneStrips.Blank> blanks, List<Panel> panels) {
        List<EndLaps.Part> parts = new ArrayList<>(blanks.size());
        for (PlaneStrips.Blank blank : blanks) {
            if (laps.pieces(blank.length()) == 1) {
                parts.add(new EndLaps.Part(blank.finished(), blank.cut()));
            } else {
                parts.addAll(laps.lap(blank.finished(), blank.cut(), strip));
                lapped(plane, strip, blank);
            }
        }
        String mark = roof.planes().get(plane).id() + "-" + strip;
        for (int i = 0; i < parts.size(); i++) {
            String pieceMark = parts.size() == 1 ? mark : mark + "." + (i + 1);
            panels.add(panel(pieceMark, plane, strip, i + 1, blanks.get(0).left(), parts.get(i)));
        }
    }

    private Panel panel(String mark, int plane, int strip, int piece, double left, EndLaps.Part part) {
        double bottom = part.cut().outer().leastUp();
        Region finished = part.finished().moved(-left, -bottom);
        Region cut = part.cut() == part.finished() ? finished : part.cut().moved(-left, -bottom);
        Ring shown = finished.outer();
        return new Panel(
                mark,
                plane,
                strip,
                piece,
                new Point2(left, bottom),
                Length.metres(shown.mostAcross() - shown.leastAcross()),
                Length.metres(laps.rounded(cut.outer().mostUp())),
                finished,
                cut,
                marks);
    }

    private void check(Panel panel, Plane plane) {
        if (panel.width().metres() < spec.narrowestRip().metres() - tolerance.hair()) {
            findings.add(Finding.of(
                    FindingCode.SLIVER,
                    place(panel, plane),
                    "Panel {place} is only {actual} wide where {limit} is the narrowest rip. Start elsewhere, or make"
                            + " its neighbour wider.",
                    panel.width(),
                    spec.narrowestRip(),
                    Source.REQUEST));
        }
        if (panel.blankLength().metres() < spec.shortest().metres() - tolerance.hair()) {
            findings.add(Finding.of(
                    FindingCode.PANEL_TOO_SHORT,
                    place(panel, plane),
                    "Panel {place} is {actual} long where {limit} is the shortest that can be made. Cut it from a longer"
                            + " blank or from an off-cut.",
                    panel.blankLength(),
                    spec.shortest(),
                    Source.REQUEST));
        }
        checkRips(panel, plane);
    }

    private static Place place(Panel panel, Plane plane) {
        return new Place(Place.Kind.PANEL, panel.mark(), plane.at());
    }

    /** A rip close to the rib has no metal left for its hem or turn-up. */
    private void checkRips(Panel panel, Plane plane) {
        Ring shown = panel.finished().outer();
        double cover = spec.cover().metres();
        for (int i = 0; i < shown.size(); i++) {
            if (shown.tag(i) >= 0 && tolerance.same(shown.across(i), shown.across(shown.next(i)))) {
                boolean right = shown.up(shown.next(i)) > shown.up(i);
                double needed = treatments.get(shown.tag(i)).extra().metres();
                double there = right ? cover - shown.across(i) : shown.across(i);
                if (needed > there + tolerance.hair()) {
                    findings.add(Finding.of(
                            FindingCode.WIDER_THAN_BLANK,
                            place(panel, plane),
                            "Panel {place} needs {actual} beyond its rip for a hem or turn-up and has {limit} before the"
                                    + " end of its cover. Start elsewhere, or bend that edge from a wider blank.",
                            Length.metres(needed),
                            Length.metres(there),
                            Source.GEOMETRY));
                }
            }
        }
    }

    private void lapped(int plane, int strip, PlaneStrips.Blank blank) {
        Plane of = roof.planes().get(plane);
        findings.add(Finding.of(
                FindingCode.PANEL_TOO_LONG,
                new Place(Place.Kind.PANEL, of.id() + "-" + strip, of.at()),
                "Panel {place} is {actual} long where {limit} is the longest that can be made or carried, so it is"
                        + " lapped. Make it on site in one length if you can: a lap is where a roof leaks.",
                Length.metres(blank.length()),
                spec.longest(),
                Source.REQUEST));
    }

    private void note(FindingCode code, Plane plane, String message) {
        findings.add(Finding.of(code, new Place(Place.Kind.PLANE, plane.id(), plane.at()), message, Source.GEOMETRY));
    }
}
