package org.thalweg.packet;

import java.util.List;
import java.util.Optional;
import org.thalweg.fastening.FasteningRules;
import org.thalweg.finding.Source;
import org.thalweg.movement.Temperatures;
import org.thalweg.reference.Metals;
import org.thalweg.trim.BendAllowance;
import org.thalweg.trim.Hand;
import org.thalweg.trim.TrimOrder;
import org.thalweg.trim.TrimSpec;
import org.thalweg.trim.TrimStock;
import org.thalweg.underlayment.IceSpec;
import org.thalweg.underlayment.Roll;
import org.thalweg.underlayment.UnderlayCase;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;
import org.thalweg.units.Rainfall;
import org.thalweg.valley.HipLayout.HipCap;
import org.thalweg.valley.PanSpec;

/** What valleys and trims are laid out by in tests, in metres. */
final class Terms {

    static final UnderlayCase UNDERLAY = underlay();

    private Terms() {}

    static TrimSpec trims() {
        return new TrimSpec(
                Length.metres(0.025),
                false,
                Length.metres(0.15),
                new TrimSpec.Sheet(
                        Length.metres(0.0007), Length.metres(0.0007), BendAllowance.USUAL, Length.metres(1.22)),
                new TrimStock(Length.metres(3), Length.metres(0.3)),
                Length.metres(0.025),
                Hand.LEFT,
                TrimOrder.usual());
    }

    private static UnderlayCase underlay() {
        Roll roll = new Roll(
                Length.metres(1), Length.metres(22), Length.metres(0.05), Length.metres(0.1), Length.metres(1.8));
        return new UnderlayCase(
                roll,
                Optional.of(new IceSpec(
                        Length.metres(0.4),
                        Length.metres(0.61),
                        new Pitch(8, 12),
                        Length.metres(0.914),
                        Length.metres(0.914),
                        roll)));
    }

    static ValleyTerms usual(Length panelCover) {
        return usual(panelCover, new Pitch(0, 12));
    }

    static ValleyTerms usual(Length panelCover, Pitch widening) {
        PanSpec pan = new PanSpec(
                Length.metres(1.22),
                Length.metres(0.11),
                Length.metres(0.025),
                Optional.empty(),
                Optional.empty(),
                widening,
                Length.metres(3),
                Length.metres(0.3),
                Length.metres(0.2),
                Length.metres(0.012),
                Length.metres(0.102),
                Length.metres(0.05),
                Length.metres(0.05),
                Length.metres(0.6),
                Length.metres(3));
        return new ValleyTerms(
                pan,
                panelCover,
                FasteningRules.METRIC,
                Length.metres(0.025),
                Metals.all().get(0),
                Temperatures.USUAL,
                Source.COMMON_PRACTICE,
                MovementTerms.USUAL,
                Optional.of(Rainfall.perHour(Length.metres(0.1))),
                Length.metres(0.025),
                List.of(),
                new HipCap(Length.metres(0.15), Length.metres(0.025)));
    }
}
