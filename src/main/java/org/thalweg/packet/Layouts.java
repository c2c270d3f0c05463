package org.thalweg.packet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.thalweg.fastening.FastenerRow;
import org.thalweg.fastening.FastenerRows;
import org.thalweg.fastening.FasteningCase;
import org.thalweg.fastening.Seam;
import org.thalweg.fastening.Seams;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.panel.PanelLayout;
import org.thalweg.panel.Panels;
import org.thalweg.panel.PlaneLaying;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.PanelHold;
import org.thalweg.roof.Roof;
import org.thalweg.roof.Roofs;
import org.thalweg.sealing.Sealing;
import org.thalweg.sealing.SealingCase;
import org.thalweg.takeoff.OrderCase;
import org.thalweg.takeoff.OrderLines;
import org.thalweg.takeoff.PanelTakeoff;
import org.thalweg.trim.Trim;
import org.thalweg.underlayment.IceBarrier;
import org.thalweg.underlayment.Underlay;
import org.thalweg.underlayment.UnderlayWork;
import org.thalweg.units.Count;
import org.thalweg.units.Length;
import org.thalweg.valley.HipLayout;
import org.thalweg.valley.SlopedEdge;
import org.thalweg.valley.ValleyLayout;
import org.thalweg.valley.Valleys.ValleyAsked;

/** Lays out one job. */
public final class Layouts {

    /** Most fasteners and clips of one request. */
    public static final int MOST_FASTENERS = 200_000;

    private Layouts() {}

    /**
     * Reads the roof, lays out its panels, valleys and hips and counts what is ordered.
     *
     * @throws Refused when what was measured is no roof, or an edge or plane is named that it does not have
     */
    public static Layout layOut(LayoutCase asked) {
        Job job = job(asked);
        List<LaidValley> valleys = valleys(job.roof, job.ends, asked);
        TakenOff takenOff =
                takeOff(job, valleys.stream().map(LaidValley::layout).toList());
        return new Layout(
                takenOff,
                valleys,
                hips(job.roof, job.treatments, asked.valleys()),
                RoofMovement.of(takenOff.laid(), takenOff.seams(), valleys, asked.valleys()));
    }

    /**
     * Lays out as much as has to be counted to order it: no hips, no water, nothing of how metal moves. What is counted, and
     * what is refused, is what {@link #layOut} counts and refuses.
     *
     * @throws Refused when what was measured is no roof, or an edge or plane is named that it does not have
     */
    public static TakenOff takeOff(LayoutCase asked) {
        Job job = job(asked);
        List<ValleyLayout> valleys = new ArrayList<>();
        ValleyAsked common = asked.valleys().asked(asked.survey());
        for (SlopedEdge edge : sloped(job.roof, EdgeKind.VALLEY)) {
            valleys.add(LaidValley.pan(job.roof, edge, job.ends, asked.valleys(), common));
        }
        return takeOff(job, valleys);
    }

    /** A roof with its panels and trims, before anything is fastened. */
    private record Job(
            LayoutCase asked,
            Roof roof,
            PanelEnds ends,
            List<EdgeTreatment> treatments,
            PanelLayout panels,
            List<Trim> trims) {}

    private static Job job(LayoutCase asked) {
        Roof roof = Roofs.read(asked.survey());
        List<Refusal> refusals = new ArrayList<>(0);
        PanelEnds ends = new PanelEnds(roof, asked.byKind(), asked.byEdge(), refusals);
        List<PlaneLaying> laying = laying(roof, asked, refusals);
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        ValleyWork.check(roof, sloped(roof), asked.valleys().pan(), Origin.REQUEST.at("roof"));
        List<EdgeTreatment> treatments = ends.treatments(asked.valleys());
        PanelLayout panels = Panels.layOut(roof, asked.spec(), treatments, laying);
        List<Trim> trims = TrimWork.layOut(roof, asked.trims());
        UnderlayWork.check(roof, asked.underlay(), Origin.REQUEST.at("roof"));
        return new Job(asked, roof, ends, treatments, panels, trims);
    }

    private static TakenOff takeOff(Job job, List<ValleyLayout> valleys) {
        LayoutCase asked = job.asked;
        Roof roof = job.roof;
        Optional<LaidWind> wind = asked.wind()
                .map(terms -> LaidWind.of(roof, terms, job.panels, asked.spec().cover()));
        FasteningCase unlifted = fastening(job, valleys);
        FasteningCase fastening =
                wind.map(lifted -> unlifted.with(lifted.clips())).orElse(unlifted);
        FastenerRows rows = FastenerRows.of(fastening);
        Seams seams = Seams.of(fastening);
        checkCount(rows, seams);
        Underlay underlay = Underlay.of(roof, asked.underlay().roll());
        Optional<IceBarrier> ice = asked.underlay().ice().map(spec -> IceBarrier.of(roof, spec));
        Sealing sealing = Sealing.of(new SealingCase(rows, valleys, job.trims, asked.sealing(), roof.tolerance()));
        return new TakenOff(
                fastening,
                wind,
                rows,
                seams,
                job.trims,
                underlay,
                ice,
                sealing,
                PanelTakeoff.of(roof, job.panels, asked.spec(), asked.sheet()),
                OrderLines.of(new OrderCase(
                        fastening, asked.sheet(), rows, seams, job.trims, underlay, ice, sealing, asked.ordering())));
    }

    private static FasteningCase fastening(Job job, List<ValleyLayout> valleys) {
        LayoutCase asked = job.asked;
        Roof roof = job.roof;
        List<PanelHold> holds = new ArrayList<>(roof.edges().size());
        for (int i = 0; i < roof.edges().size(); i++) {
            holds.add(asked.valleys().hold(job.ends.of(i)));
        }
        return new FasteningCase(
                        roof,
                        asked.spec(),
                        job.panels,
                        job.treatments,
                        holds,
                        valleys,
                        asked.valleys().rules(),
                        asked.valleys().movement().fixed())
                .withHipClosure(asked.valleys().cap().closure());
    }

    /** Rows cost next to nothing until their places are written. */
    private static void checkCount(FastenerRows rows, Seams seams) {
        long count = 0;
        for (FastenerRow row : rows.rows()) {
            count += row.count();
        }
        for (Seam seam : seams.seams()) {
            count += seam.count();
        }
        if (count > MOST_FASTENERS) {
            throw new Refused(Refusal.of(
                    RefusalCode.TOO_MANY_FASTENERS,
                    Origin.REQUEST.at("roof"),
                    "The roof takes {actual} fasteners and clips; at most {limit} are placed in one request. Check the units"
                            + " and the spacings, or lay the roof in parts.",
                    new Count(count),
                    new Count(MOST_FASTENERS)));
        }
    }

    private static List<LaidValley> valleys(Roof roof, PanelEnds ends, LayoutCase asked) {
        ValleyTerms terms = asked.valleys();
        ValleyAsked common = terms.asked(asked.survey());
        List<LaidValley> valleys = new ArrayList<>();
        for (SlopedEdge edge : sloped(roof, EdgeKind.VALLEY)) {
            valleys.add(LaidValley.of(roof, edge, ends, terms, common));
        }
        return valleys;
    }

    private static List<HipLayout> hips(Roof roof, List<EdgeTreatment> treatments, ValleyTerms terms) {
        List<HipLayout> hips = new ArrayList<>();
        for (SlopedEdge edge : sloped(roof, EdgeKind.HIP)) {
            Length setback = treatments.get(edge.index()).setback();
            hips.add(HipLayout.of(edge, terms.cap(), setback, terms.panelCover(), roof.tolerance()));
        }
        return hips;
    }

    private static List<Integer> sloped(Roof roof) {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < roof.edges().size(); i++) {
            EdgeKind kind = roof.edges().get(i).kind();
            if (kind == EdgeKind.VALLEY || kind == EdgeKind.HIP) {
                found.add(i);
            }
        }
        return found;
    }

    private static List<SlopedEdge> sloped(Roof roof, EdgeKind kind) {
        List<SlopedEdge> found = new ArrayList<>();
        for (int i = 0; i < roof.edges().size(); i++) {
            if (roof.edges().get(i).kind() == kind) {
                SlopedEdge.of(roof, i).ifPresent(found::add);
            }
        }
        return found;
    }

    private static List<PlaneLaying> laying(Roof roof, LayoutCase asked, List<Refusal> refusals) {
        List<PlaneLaying> laying =
                new ArrayList<>(Collections.nCopies(roof.planes().size(), asked.laying()));
        for (LayoutCase.PlaneException exception : asked.byPlane()) {
            int plane = index(roof, exception.plane());
            if (plane < 0) {
                refusals.add(Refusal.of(
                        RefusalCode.NO_SUCH_PLANE,
                        exception.at(),
                        "The roof has no plane of this id. Name one of its planes."));
            } else if (exception.laying().fall().isPresent()
                    && !roof.planes().get(plane).level()) {
                refusals.add(Refusal.of(
                        RefusalCode.FALL_NOT_FREE,
                        exception.at().at("fallDeg"),
                        "The plane slopes, so water runs down its own fall line. Leave fallDeg out; it is for level"
                                + " planes."));
            } else {
                laying.set(plane, exception.laying());
            }
        }
        return laying;
    }

    private static int index(Roof roof, String id) {
        for (int i = 0; i < roof.planes().size(); i++) {
            if (roof.planes().get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }
}
