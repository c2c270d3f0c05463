/**
 * What keeps water out where metal meets metal: strips of sealant tape, beads of sealant, closures between the ribs, and the
 * rivets of lapped trims. Every run belongs to a row of fasteners, a cleat or a lap that is listed elsewhere, so that a reader
 * can count it again.
 *
 * <pre>
 *    rib        rib        Along a row of fasteners through a panel, tape and closure go from rib to rib, or to where
 *     |  o  o  o |         the metal ends: as far as the row's line lies on the panel. Ribs have no width here, so the
 *     |==========|         stretches of neighbouring panels are one line that runs on under the ribs.
 *     |   tape   |
 * </pre>
 */
@NullMarked
package org.thalweg.sealing;

import org.jspecify.annotations.NullMarked;
