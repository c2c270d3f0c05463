package org.thalweg.panel;

import java.util.List;
import org.thalweg.finding.Finding;

/**
 * All panels of a roof.
 *
 * @param planes   the planes that could be laid, in the order of the roof's planes
 * @param findings what a crew should know of them
 */
public record PanelLayout(List<PlanePanels> planes, List<Finding> findings) {

    public PanelLayout {
        planes = List.copyOf(planes);
        findings = List.copyOf(findings);
    }
}
