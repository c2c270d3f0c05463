package org.thalweg.packet;

import org.thalweg.fastening.HeldPanel;
import org.thalweg.movement.MovingPanel;

/**
 * One panel: where it is fixed, and how far it moves from there.
 *
 * @param held  its pieces and its fixed point
 * @param moves how far its ends move, and what lets them
 */
public record PanelMovement(HeldPanel held, MovingPanel moves) {}
