package org.thalweg.panel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Side;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Length;

/**
 * Where a panel is marked for cutting: on every side that is not as the panel comes.
 *
 * @param cover     how wide it comes
 * @param tolerance of the roof
 */
public record Marks(Length cover, Tolerance tolerance) {

    private static final Comparator<Cut> BY_END = Comparator.comparing(Cut::end)
            .thenComparingDouble(cut -> cut.from().across())
            .thenComparingDouble(cut -> cut.from().up());

    /** By end, then from the left. */
    List<Cut> of(Region cut) {
        List<Cut> cuts = new ArrayList<>(4);
        addCuts(cut.outer(), cuts);
        for (Ring opening : cut.openings()) {
            addCuts(opening, cuts);
        }
        if (cuts.size() > 1) {
            cuts.sort(BY_END);
        }
        return List.copyOf(cuts);
    }

    private void addCuts(Ring ring, List<Cut> cuts) {
        for (int i = 0; i < ring.size(); i++) {
            if (ring.tag(i) != Side.RIB) {
                Point2 a = ring.corner(i);
                Point2 b = ring.corner(ring.next(i));
                if (tolerance.same(a.across(), b.across())) {
                    if (onRib(a.across())) {
                        continue;
                    }
                    boolean rising = b.up() > a.up();
                    cuts.add(new Cut(
                            rising ? Cut.End.RIGHT : Cut.End.LEFT, ring.tag(i), rising ? a : b, rising ? b : a));
                } else {
                    boolean rightward = b.across() > a.across();
                    cuts.add(new Cut(
                            rightward ? Cut.End.LOWER : Cut.End.UPPER,
                            ring.tag(i),
                            rightward ? a : b,
                            rightward ? b : a));
                }
            }
        }
    }

    /** A panel is as wide as it comes there: nothing to rip. */
    private boolean onRib(double across) {
        return tolerance.same(across, 0) || tolerance.same(across, cover.metres());
    }
}
