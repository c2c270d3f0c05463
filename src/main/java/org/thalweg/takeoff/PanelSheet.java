package org.thalweg.takeoff;

import java.util.Optional;
import org.thalweg.reference.Metal;
import org.thalweg.reference.SheetMass;
import org.thalweg.units.Length;

/**
 * The sheet panels are formed from.
 *
 * @param metal     what it is
 * @param thickness how thick
 * @param girth     width of the flat sheet of one panel, legs and seam included; above 0
 * @param seamHeight height of the rib, when it is known; trims stand over it
 * @param mass      what it weighs, and where that figure stands
 */
public record PanelSheet(Metal metal, Length thickness, Length girth, Optional<Length> seamHeight, SheetMass mass) {}
