package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.api.wire.MarkedLength;
import org.thalweg.api.wire.MovementAnswer;
import org.thalweg.api.wire.MovementAnswer.AllowedMovement;
import org.thalweg.api.wire.MovementAnswer.EndMovement;
import org.thalweg.api.wire.MovementAnswer.FreePart;
import org.thalweg.fastening.HeldPanel;
import org.thalweg.movement.Growth;
import org.thalweg.movement.HeldEnd;
import org.thalweg.packet.PanelMovement;
import org.thalweg.packet.RoofMovement;
import org.thalweg.panel.Cut;
import org.thalweg.panel.Panel;
import org.thalweg.roof.Roof;
import org.thalweg.units.Length;
import org.thalweg.units.Units;

/** Writes how panels move, in the caller's units. */
final class MovementWriter {

    private final Units units;
    private final Roof roof;
    private final LineWriter lines;

    MovementWriter(Units units, Roof roof) {
        this.units = units;
        this.roof = roof;
        this.lines = new LineWriter(units);
    }

    List<MovementAnswer> write(RoofMovement movement) {
        Optional<MarkedLength> longest = lines.marked(movement.longest());
        List<MovementAnswer> written = new ArrayList<>(movement.panels().size());
        for (PanelMovement panel : movement.panels()) {
            HeldPanel held = panel.held();
            written.add(new MovementAnswer(
                    roof.planes().get(held.plane()).id(),
                    held.pieces().stream().map(Panel::mark).toList(),
                    lines.point(held.fixed()),
                    part(held.below(), panel.moves().below()),
                    part(held.above(), panel.moves().above()),
                    length(panel.moves().travelNeeded()),
                    longest,
                    panel.moves().ends().stream().map(this::end).toList()));
        }
        return written;
    }

    private FreePart part(Length free, Growth growth) {
        return new FreePart(lines.marked(free), length(growth.longer()), length(growth.shorter()));
    }

    private EndMovement end(HeldEnd end) {
        return new EndMovement(
                end.edge().id(),
                end.lower() ? Cut.End.LOWER : Cut.End.UPPER,
                end.hold(),
                length(end.moves().longer()),
                length(end.moves().shorter()),
                end.allowed()
                        .map(may -> new AllowedMovement(
                                length(may.longer()),
                                length(may.shorter()),
                                may.source().text())),
                end.within());
    }

    private double length(Length length) {
        return units.length().round(length);
    }
}
