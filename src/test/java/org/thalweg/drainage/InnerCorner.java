package org.thalweg.drainage;

import org.thalweg.roof.Drawn;
import org.thalweg.roof.Edge;

/**
 * The inner corner of a house, drawn: V to W is the valley, VBCW the main house's south slope beside it, VWDE the wing's
 * east slope below it; both 6:12. The valley is 6 m long and takes a corner of 8 m² of either slope.
 */
final class InnerCorner {

    private InnerCorner() {}

    static Drawn drawn() {
        return Drawn.plan("""
                W       C



                    V   B





                D   E
                """).height(2, "WCD");
    }

    static Drawn.Read read() {
        return drawn().planes("VBCW", "VWDE").read();
    }

    static int index(Drawn.Read read, String ends) {
        Edge edge = read.edge(ends);
        return read.roof().edges().indexOf(edge);
    }

    static Catchment catchment(Drawn.Read read, String ends, String plane) {
        return Catchment.of(read.roof(), read.roof().planes().indexOf(read.plane(plane)), index(read, ends));
    }

    static WaterSide side(Drawn.Read read, String ends, String plane) {
        return WaterSide.of(read.roof(), read.roof().planes().indexOf(read.plane(plane)), index(read, ends));
    }
}
