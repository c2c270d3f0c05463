package org.thalweg.panel;

import java.util.List;
import org.thalweg.geometry.Frame;
import org.thalweg.geometry.Region;
import org.thalweg.units.Area;
import org.thalweg.units.Length;

/**
 * One plane, laid.
 *
 * @param plane    index in the roof's planes
 * @param frame    the frame panels are placed in: the plane's own, or one turned to the given fall for a level plane
 * @param lead     from which side it is laid
 * @param start    how wide the first panel is; 0 for a whole panel
 * @param finished the plane with every edge moved by its set-back; none when nothing is left
 * @param panels   by strip, then from the lowest up
 */
public record PlanePanels(int plane, Frame frame, Lead lead, Length start, List<Region> finished, List<Panel> panels) {

    public PlanePanels {
        finished = List.copyOf(finished);
        panels = List.copyOf(panels);
    }

    /** What the panels show. */
    public Area finishedArea() {
        return new Area(finished.stream().mapToDouble(Region::area).sum());
    }
}
