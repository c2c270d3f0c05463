package org.thalweg.packet;

import org.thalweg.panel.PanelLayout;
import org.thalweg.roof.Roof;
import org.thalweg.takeoff.PanelTakeoff;

/**
 * One job, laid out.
 *
 * @param roof    the roof as read
 * @param panels  every panel to cut
 * @param takeoff what to order
 */
public record Layout(Roof roof, PanelLayout panels, PanelTakeoff takeoff) {}
