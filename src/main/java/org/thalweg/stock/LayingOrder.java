package org.thalweg.stock;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The run when panels come off the coil in the order they are laid: each is turned or not, whichever loses less in all. */
final class LayingOrder {

    private LayingOrder() {}

    static CoilRun run(List<MitredPanel> panels, Turning turning) {
        if (turning == Turning.FORBIDDEN) {
            return CoilRun.of(panels, Collections.nCopies(panels.size(), false));
        }
        boolean[][] fromTurned = new boolean[panels.size() + 1][2];
        long[] lost = {0, Long.MAX_VALUE / 2};
        long[] ends = {0, 0};
        for (int i = 0; i < panels.size(); i++) {
            long[] starts = {panels.get(i).left(), panels.get(i).right()};
            long[] next = new long[2];
            for (int way = 0; way < 2; way++) {
                long plain = lost[0] + Math.abs(starts[way] - ends[0]);
                long turned = lost[1] + Math.abs(starts[way] - ends[1]);
                fromTurned[i][way] = turned < plain;
                next[way] = Math.min(plain, turned);
            }
            lost = next;
            ends = new long[] {panels.get(i).right(), panels.get(i).left()};
        }
        fromTurned[panels.size()][0] = lost[1] + Math.abs(ends[1]) < lost[0] + Math.abs(ends[0]);
        return back(panels, fromTurned);
    }

    private static CoilRun back(List<MitredPanel> panels, boolean[][] fromTurned) {
        List<MitredPanel> lying = new ArrayList<>();
        List<Boolean> turned = new ArrayList<>();
        int way = 0;
        for (int i = panels.size(); i > 0; i--) {
            way = fromTurned[i][way] ? 1 : 0;
            turned.add(way == 1);
            lying.add(way == 1 ? panels.get(i - 1).turned() : panels.get(i - 1));
        }
        Collections.reverse(lying);
        Collections.reverse(turned);
        return CoilRun.of(lying, turned);
    }
}
