package org.thalweg.fastening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.fastening.FasteningRules.ClipRule;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Side;
import org.thalweg.geometry.Tolerance;
import org.thalweg.panel.Lead;
import org.thalweg.panel.Panel;
import org.thalweg.panel.PlanePanels;
import org.thalweg.units.Length;
import org.thalweg.wind.UpliftStretch;

/**
 * Every seam of a laid roof and its clips. A seam runs where the panels on both sides of a rib line exist, as they show: it
 * goes on past an end lap, and an opening breaks it in two. Its clips stand evenly, an end distance from either end; where they
 * are spaced for the wind, evenly in each part. A seam too short for two has one in its middle, so every seam has one.
 *
 * <p>The outer ribs of a plane have no neighbour and no clips: what lies beside them, a rake or a wall, is fastened along its
 * edge. Where a rib line lies on an edge of the roof there is no seam either.
 *
 * @param seams plane by plane, strip by strip as laid, from the lowest up
 */
public record Seams(List<Seam> seams) {

    public Seams {
        seams = List.copyOf(seams);
    }

    public static Seams of(FasteningCase asked) {
        List<Seam> seams = new ArrayList<>();
        for (PlanePanels laid : asked.panels().planes()) {
            new OfPlane(laid, asked, seams).add();
        }
        return new Seams(seams);
    }

    /** How many clips there are. */
    public int clipCount() {
        return seams.stream().mapToInt(Seam::count).sum();
    }

    /** The seams of one plane. */
    private static final class OfPlane {

        private final PlanePanels laid;
        private final double cover;
        private final ClipRule rule;
        private final Optional<WindClips> wind;
        private final Tolerance tolerance;
        private final List<Seam> seams;
        private final boolean fromLeft;

        // Kept, and filled anew for every seam.
        private final Stretches seam;
        private final Stretches other;

        OfPlane(PlanePanels laid, FasteningCase asked, List<Seam> seams) {
            this.laid = laid;
            this.cover = asked.spec().cover().metres();
            this.rule = asked.rules().clips();
            this.wind = asked.wind();
            this.tolerance = asked.roof().tolerance();
            this.seams = seams;
            this.fromLeft = laid.lead() == Lead.LEFT;
            this.seam = new Stretches(tolerance.hair());
            this.other = new Stretches(tolerance.hair());
        }

        void add() {
            List<Panel> panels = laid.panels();
            int first = 0;
            int next = endOfStrip(panels, 0);
            while (next < panels.size()) {
                int end = endOfStrip(panels, next);
                if (panels.get(next).strip() == panels.get(first).strip() + 1) {
                    add(panels.subList(first, next), panels.subList(next, end));
                }
                first = next;
                next = end;
            }
        }

        private static int endOfStrip(List<Panel> panels, int first) {
            int end = first;
            while (end < panels.size()
                    && panels.get(end).strip() == panels.get(first).strip()) {
                end++;
            }
            return end;
        }

        private void add(List<Panel> strip, List<Panel> nextStrip) {
            rib(strip, fromLeft, seam);
            rib(nextStrip, !fromLeft, other);
            seam.keep(other);
            double across = strip.get(0).place().across() + (fromLeft ? cover : 0);
            for (int i = 0; i < seam.count(); i++) {
                double length = seam.to(i) - seam.from(i);
                if (length > tolerance.metres()) {
                    Point2 from = new Point2(across, seam.from(i));
                    Point2 to = new Point2(across, seam.to(i));
                    seams.add(new Seam(
                            laid.plane(),
                            strip.get(0).strip(),
                            from,
                            to,
                            new ClipRuns(length, rule, tolerance).of(parts(from, to))));
                }
            }
        }

        /** How far apart clips may stand along a seam: for the wind where that is known, else as the table of rules has it. */
        private List<ClipRuns.Part> parts(Point2 from, Point2 to) {
            List<ClipRuns.Part> parts = new ArrayList<>(1);
            wind.ifPresent(clips -> {
                for (UpliftStretch part : clips.uplift().along(laid.plane(), laid.frame(), from, to)) {
                    parts.add(new ClipRuns.Part(
                            part.from().metres(),
                            part.to().metres(),
                            clips.spacing(part.zone(), part.uplift(), Length.metres(cover)),
                            Optional.of(part.zone())));
                }
            });
            if (parts.isEmpty()) {
                parts.add(new ClipRuns.Part(0, from.distance(to), rule.maxSpacing(), Optional.empty()));
            }
            return parts;
        }

        /** Where a strip's panels have a rib on one hand; laps do not break it. */
        private void rib(List<Panel> strip, boolean onRight, Stretches found) {
            found.start(0, 0);
            for (Panel panel : strip) {
                addRib(panel.finished().outer(), panel.place().up(), onRight, found);
            }
            found.join();
        }

        /** Metal lies to the left of a side, so a rib on its right runs up. An opening inside it touches no rib. */
        private void addRib(Ring ring, double upBy, boolean onRight, Stretches found) {
            double rib = onRight ? cover : 0;
            for (int side = 0; side < ring.size(); side++) {
                int next = ring.next(side);
                if (ring.tag(side) == Side.RIB
                        && ring.up(next) > ring.up(side) == onRight
                        && tolerance.same(ring.across(side), rib)
                        && tolerance.same(ring.across(next), rib)) {
                    found.add(
                            upBy + Math.min(ring.up(side), ring.up(next)),
                            upBy + Math.max(ring.up(side), ring.up(next)));
                }
            }
        }
    }
}
