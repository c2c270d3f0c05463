package org.thalweg.fastening;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.fastening.FasteningRules.ClipRule;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Side;
import org.thalweg.geometry.Tolerance;
import org.thalweg.panel.Lead;
import org.thalweg.panel.Panel;
import org.thalweg.panel.PlanePanels;
import org.thalweg.units.Length;

/**
 * Every seam of a laid roof and its clips. A seam runs where the panels on both sides of a rib line exist, as they show: it
 * goes on past an end lap, and an opening breaks it in two. Its clips stand evenly, an end distance from either end; a seam
 * too short for two has one in its middle, so every seam has one.
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
        Tolerance tolerance = asked.roof().tolerance();
        for (PlanePanels laid : asked.panels().planes()) {
            new OfPlane(laid, asked.spec().cover().metres(), asked.rules().clips(), tolerance, seams).add();
        }
        return new Seams(seams);
    }

    /** How many clips there are. */
    public int clipCount() {
        return seams.stream().mapToInt(seam -> seam.clips().count()).sum();
    }

    /** The seams of one plane. */
    private static final class OfPlane {

        private final PlanePanels laid;
        private final double cover;
        private final ClipRule rule;
        private final Tolerance tolerance;
        private final List<Seam> seams;
        private final boolean fromLeft;

        OfPlane(PlanePanels laid, double cover, ClipRule rule, Tolerance tolerance, List<Seam> seams) {
            this.laid = laid;
            this.cover = cover;
            this.rule = rule;
            this.tolerance = tolerance;
            this.seams = seams;
            this.fromLeft = laid.lead() == Lead.LEFT;
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
            Stretches seam = rib(strip, fromLeft);
            Stretches other = rib(nextStrip, !fromLeft);
            seam.keep(other);
            double across = strip.get(0).place().across() + (fromLeft ? cover : 0);
            for (int i = 0; i < seam.count(); i++) {
                double length = seam.to(i) - seam.from(i);
                if (length > tolerance.metres()) {
                    seams.add(new Seam(
                            laid.plane(),
                            strip.get(0).strip(),
                            new Point2(across, seam.from(i)),
                            new Point2(across, seam.to(i)),
                            row(length)));
                }
            }
        }

        /** Clips: the free length is what two end distances leave. */
        private EvenRow row(double length) {
            double free = length - 2 * rule.endDistance().metres();
            EvenRow between =
                    EvenRow.between(Length.metres(Math.max(0, free)), rule.maxSpacing(), rule.endDistance(), tolerance);
            return between.count() == 1
                    ? EvenRow.middle(Length.metres(length))
                    : new EvenRow(between.count(), rule.endDistance(), between.spacing());
        }

        /** Where a strip's panels have a rib on one hand; laps do not break it. */
        private Stretches rib(List<Panel> strip, boolean onRight) {
            Stretches found = new Stretches(tolerance.hair());
            for (Panel panel : strip) {
                addRib(panel.finished().outer(), panel.place().up(), onRight, found);
            }
            found.join();
            return found;
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
