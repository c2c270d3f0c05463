package org.thalweg.packet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.thalweg.fastening.FastenerKind;
import org.thalweg.fastening.FasteningRules;
import org.thalweg.finding.Source;
import org.thalweg.movement.Temperatures;
import org.thalweg.reference.Metal;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.PanelHold;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.units.Length;
import org.thalweg.units.Rainfall;
import org.thalweg.valley.HipLayout.HipCap;
import org.thalweg.valley.PanSpec;
import org.thalweg.valley.Valleys.ValleyAsked;

/**
 * What the valleys and hips of one job have in common.
 *
 * @param pan                 the pan, unless a valley's treatment says another hold-back
 * @param panelCover          w, cover of the panels
 * @param rules               how far apart everything is fastened, and how far inside
 * @param cleatHem            hem of panels held by a cleat, unless a treatment says another
 * @param metal               of the panels
 * @param temperatures        of the metal
 * @param temperaturesSource  where those come from
 * @param movement            what lets panels and pans move
 * @param rainfall            what comes down, if it is known
 * @param margin              how far inside the panels' edge water must stay, on the pan
 * @param stations            where water is looked at, up the valley from its foot; below the foot and past the head left out.
 *                            None: at the foot and each quarter
 * @param cap                 the cap of hips
 */
public record ValleyTerms(
        PanSpec pan,
        Length panelCover,
        FasteningRules rules,
        Length cleatHem,
        Metal metal,
        Temperatures temperatures,
        Source temperaturesSource,
        MovementTerms movement,
        Optional<Rainfall> rainfall,
        Length margin,
        List<Length> stations,
        HipCap cap) {

    public ValleyTerms {
        stations = List.copyOf(stations);
    }

    /** What a valley's lines are measured by, on a roof as surveyed. */
    ValleyAsked asked(RoofSurvey survey) {
        return new ValleyAsked(
                panelCover,
                rules.of(FastenerKind.VALLEY).inset(),
                rules.of(FastenerKind.PAN_EDGE).inset(),
                survey.leastSlope(),
                survey.leastSlopeSource());
    }

    /** How panels are held at a valley. */
    public PanelHold hold(PanelEnd end) {
        return end.hold().orElse(PanelHold.FIXED);
    }

    /** The pan of a valley, as asked for. */
    public PanSpec pan(PanelEnd end) {
        return end.setback().map(pan::heldBack).orElse(pan);
    }

    /** How panels end at a valley this long with this pan. */
    public EdgeTreatment treatment(PanelEnd end, PanSpec of, Length valley) {
        Length hem = end.hem().orElse(hold(end) == PanelHold.CLEATED ? cleatHem : Length.ZERO);
        return new EdgeTreatment(
                of.heldBack(), of.heldBackAtTop(valley), hem, end.turnUp().orElse(Length.ZERO));
    }

    /** Where water is looked at in a valley this long: its foot first, then upward. */
    List<Length> stations(Length valley) {
        double length = valley.metres();
        if (stations.isEmpty()) {
            return List.of(
                    Length.ZERO, Length.metres(length / 4), Length.metres(length / 2), Length.metres(length * 3 / 4));
        }
        return Stream.concat(
                        Stream.of(Length.ZERO), stations.stream().filter(at -> at.metres() > 0 && at.metres() < length))
                .distinct()
                .sorted()
                .toList();
    }
}
