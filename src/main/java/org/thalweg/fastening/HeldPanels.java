package org.thalweg.fastening;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.fastening.HeldPanel.FreeEnd;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Side;
import org.thalweg.geometry.Tolerance;
import org.thalweg.panel.Panel;
import org.thalweg.panel.PlanePanels;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;

/**
 * Every panel of a laid roof with the one place that holds it.
 *
 * @param panels plane by plane, strip by strip as laid, from the lowest up
 */
public record HeldPanels(List<HeldPanel> panels) {

    public HeldPanels {
        panels = List.copyOf(panels);
    }

    public static HeldPanels of(FasteningCase asked) {
        List<HeldPanel> held = new ArrayList<>();
        for (PlanePanels laid : asked.panels().planes()) {
            for (List<Panel> pieces : lapped(laid.panels(), asked.roof().tolerance())) {
                held.add(held(pieces, asked));
            }
        }
        return new HeldPanels(held);
    }

    /** Pieces put together over their laps, each set in the order of its lowest piece. */
    private static List<List<Panel>> lapped(List<Panel> panels, Tolerance tolerance) {
        List<List<Panel>> sets = new ArrayList<>(panels.size());
        for (Panel panel : panels) {
            List<Panel> own = new ArrayList<>(1);
            // A piece comes after every piece below it, and may lap two that an opening parts.
            for (int i = sets.size() - 1; i >= 0 && sets.get(i).get(0).strip() == panel.strip(); i--) {
                if (sets.get(i).stream().anyMatch(below -> laps(panel, below, tolerance))) {
                    own.addAll(0, sets.remove(i));
                }
            }
            own.add(panel);
            sets.add(own);
        }
        return sets;
    }

    private static boolean laps(Panel upper, Panel lower, Tolerance tolerance) {
        Ring above = upper.finished().outer();
        Ring below = lower.finished().outer();
        for (int i = 0; i < above.size(); i++) {
            for (int j = 0; j < below.size(); j++) {
                if (above.tag(i) == Side.LAP
                        && below.tag(j) == Side.LAP
                        && tolerance.same(
                                above.up(i) + upper.place().up(),
                                below.up(j) + lower.place().up())
                        && overlap(above, i, below, j) > tolerance.metres()) {
                    return true;
                }
            }
        }
        return false;
    }

    /** How far the lower end of the one and the upper end of the other run together; they run in opposite ways. */
    private static double overlap(Ring above, int lowerEnd, Ring below, int upperEnd) {
        return Math.min(above.across(above.next(lowerEnd)), below.across(upperEnd))
                - Math.max(above.across(lowerEnd), below.across(below.next(upperEnd)));
    }

    private static HeldPanel held(List<Panel> pieces, FasteningCase asked) {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        double leftmost = Double.POSITIVE_INFINITY;
        double rightmost = Double.NEGATIVE_INFINITY;
        for (Panel piece : pieces) {
            Ring shown = piece.finished().outer();
            lowest = Math.min(lowest, piece.place().up() + shown.leastUp());
            highest = Math.max(highest, piece.place().up() + shown.mostUp());
            leftmost = Math.min(leftmost, piece.place().across() + shown.leastAcross());
            rightmost = Math.max(rightmost, piece.place().across() + shown.mostAcross());
        }
        Length below = asked.fixed().up(Length.metres(highest - lowest));
        double at = lowest + below.metres();
        return new HeldPanel(
                pieces.get(0).plane(),
                pieces,
                new Point2((leftmost + rightmost) / 2, at),
                below,
                // Fixed at its upper end, rounding may leave less than nothing.
                Length.metres(Math.max(0, highest - at)),
                ends(pieces, at, asked.roof().tolerance()));
    }

    private static List<FreeEnd> ends(List<Panel> pieces, double fixed, Tolerance tolerance) {
        List<FreeEnd> ends = new ArrayList<>(2);
        for (Panel piece : pieces) {
            double from = fixed - piece.place().up();
            addEnds(piece.finished().outer(), from, tolerance, ends);
            for (Ring opening : piece.finished().openings()) {
                addEnds(opening, from, tolerance, ends);
            }
        }
        return ends;
    }

    private static void addEnds(Ring ring, double fixed, Tolerance tolerance, List<FreeEnd> ends) {
        for (int side = 0; side < ring.size(); side++) {
            int next = ring.next(side);
            double across = ring.across(next) - ring.across(side);
            if (ring.tag(side) >= 0 && !tolerance.same(across, 0)) {
                double free = Math.max(Math.abs(ring.up(side) - fixed), Math.abs(ring.up(next) - fixed));
                ends.add(new FreeEnd(
                        ring.tag(side),
                        across > 0,
                        Length.metres(free),
                        Angle.atan2(Math.abs(ring.up(next) - ring.up(side)), Math.abs(across))));
            }
        }
    }
}
