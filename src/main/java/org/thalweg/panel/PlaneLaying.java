package org.thalweg.panel;

import java.util.Optional;
import org.thalweg.units.Angle;

/**
 * How one plane is laid.
 *
 * @param lead  from which side
 * @param start where the first rib goes
 * @param fall  for a level plane, which way water shall run: in plan, counter-clockwise from +x
 */
public record PlaneLaying(Lead lead, Start start, Optional<Angle> fall) {}
