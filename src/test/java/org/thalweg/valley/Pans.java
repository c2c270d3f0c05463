package org.thalweg.valley;

import java.util.Optional;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.InnerCorner;
import org.thalweg.roof.PanelHold;
import org.thalweg.roof.Roof;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Pitch;

/** Valleys and pans to test with: a coil of 48 in, legs of 4 1/4 in, returns of 1 in, panels of 18 in. */
final class Pans {

    static final Length COVER = Length.inches(18);
    static final Tolerance TOLERANCE = Tolerance.DEFAULT;

    private Pans() {}

    /** The usual pan, held back as its least cover allows. */
    static PanSpec pan() {
        return pan(48, Optional.empty());
    }

    static PanSpec pan(double coilInches, Optional<Length> holdBack) {
        return new PanSpec(
                Length.inches(coilInches),
                Length.inches(4.25),
                Length.inches(1),
                holdBack,
                Optional.empty(),
                new Pitch(0, 12),
                Length.inches(120),
                Length.inches(12),
                Length.inches(8),
                Length.inches(0.5),
                Length.inches(4),
                Length.inches(2),
                Length.inches(2),
                Length.inches(24),
                Length.inches(120));
    }

    static Valleys.ValleyAsked asked() {
        return new Valleys.ValleyAsked(COVER, Length.inches(2), Length.inches(1), new Pitch(0.25, 12), Source.REQUEST);
    }

    /** A roof at an inner corner, its valley {@code length} inches long. */
    static Roof corner(double rise1, double rise2, double cornerDeg, double length) {
        InnerCorner corner = new InnerCorner(
                new Pitch(rise1, 12),
                new Pitch(rise2, 12),
                Angle.degrees(cornerDeg),
                Optional.empty(),
                Optional.of(Length.inches(length)),
                EdgeKind.RIDGE,
                Origin.REQUEST);
        return Roofs.read(corner.survey(TOLERANCE, new Pitch(0.25, 12), Source.REQUEST));
    }

    static SlopedEdge valley(Roof roof) {
        for (int i = 0; i < roof.edges().size(); i++) {
            if (roof.edges().get(i).kind() == EdgeKind.VALLEY) {
                return SlopedEdge.of(roof, i).orElseThrow();
            }
        }
        throw new AssertionError("no valley among " + roof.edges());
    }

    static ValleyLayout fixed(Roof roof, PanSpec pan) {
        return laid(valley(roof), pan);
    }

    static ValleyLayout laid(SlopedEdge edge, PanSpec pan) {
        return Valleys.layOut(edge, pan, PanelHold.FIXED, asked(), TOLERANCE);
    }

    /** The usual pan in pieces of any length, the flats run past an eave by {@code pastEave} inches. */
    static PanSpec pan(double pieceInches, double pastEave) {
        return new PanSpec(
                Length.inches(48),
                Length.inches(4.25),
                Length.inches(1),
                Optional.empty(),
                Optional.empty(),
                new Pitch(0, 12),
                Length.inches(pieceInches),
                Length.inches(12),
                Length.inches(8),
                Length.inches(pastEave),
                Length.inches(4),
                Length.inches(2),
                Length.inches(2),
                Length.inches(24),
                Length.inches(120));
    }

    static double inches(Length length) {
        return length.in(LengthUnit.INCH);
    }
}
