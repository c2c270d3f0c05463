package org.thalweg.takeoff;

import java.util.List;
import org.thalweg.fastening.FastenerRows;
import org.thalweg.fastening.FasteningRules;
import org.thalweg.fastening.Seams;
import org.thalweg.panel.PanelLayout;
import org.thalweg.panel.PanelSpec;
import org.thalweg.roof.Roof;
import org.thalweg.valley.ValleyLayout;

/**
 * A laid roof that is to be ordered.
 *
 * @param roof      as read
 * @param panels    as laid
 * @param spec      the panel
 * @param sheet     what it is formed from
 * @param valleys   with their pans
 * @param rows      of fasteners
 * @param seams     with their clips
 * @param rules     what everything was fastened by
 * @param ordering  how it is bought
 */
public record OrderCase(
        Roof roof,
        PanelLayout panels,
        PanelSpec spec,
        PanelSheet sheet,
        List<ValleyLayout> valleys,
        FastenerRows rows,
        Seams seams,
        FasteningRules rules,
        Ordering ordering) {

    public OrderCase {
        valleys = List.copyOf(valleys);
    }
}
