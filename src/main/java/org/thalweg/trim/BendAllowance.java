package org.thalweg.trim;

import org.thalweg.finding.Source;
import org.thalweg.units.Length;

/** How much sheet a bend takes up, from the end of one flat to the start of the next: BA. */
public sealed interface BendAllowance {

    /**
     * The formula of the aircraft handbooks, fitted to bends of aluminium sheet: (0.01743 R + 0.0078 T) N, with N in degrees.
     * [published: FAA-H-8083-31]
     */
    BendAllowance HANDBOOK = new Empirical(
            0.01743, 0.0078, new Source("FAA-H-8083-31 Airframe vol. 1, empirical formula of bend allowance"));

    /**
     * The same formula as a K-factor: K = 0.0078 · 180/π = 0.4469, with 0.01743 for π/180. Used unless a caller gives another:
     * no figure for thin roofing sheet was found in print. [geometry, from the published formula]
     */
    BendAllowance USUAL = new KFactor(
            Math.toDegrees(0.0078), new Source("K = 0.4469, the empirical formula of FAA-H-8083-31 as a K-factor"));

    /** Length of the bend in the flat sheet, of metal {@code thickness} thick. */
    Length of(Bend bend, Length thickness);

    /** Where the formula or its factor stands. */
    Source source();

    /** What is taken off the sum of the two girths beside a bend: BD = 2 · setback − BA. [published] */
    default Length deduction(Bend bend, Length thickness) {
        return Length.metres(
                2 * bend.setback(thickness).metres() - of(bend, thickness).metres());
    }

    /**
     * BA = β (r + K t): the line that neither stretches nor shrinks lies K of the thickness from the inner face. [published]
     *
     * @param k      in [0, 1]; 0.5 is the middle of the sheet
     * @param source who says so
     */
    record KFactor(double k, Source source) implements BendAllowance {

        public KFactor {
            if (!(k >= 0 && k <= 1)) {
                throw new IllegalArgumentException("a K-factor (%s) is 0 to 1".formatted(k));
            }
        }

        @Override
        public Length of(Bend bend, Length thickness) {
            return Length.metres(bend.turn().radians() * (bend.insideRadius().metres() + k * thickness.metres()));
        }
    }

    /**
     * A formula fitted to bends that were measured: (a R + b T) N, with N in degrees. [published]
     *
     * @param perRadius    a, 0 or more; near π/180
     * @param perThickness b, 0 or more
     * @param source       who measured them
     */
    record Empirical(double perRadius, double perThickness, Source source) implements BendAllowance {

        @Override
        public Length of(Bend bend, Length thickness) {
            return Length.metres(bend.turn().inDegrees()
                    * (perRadius * bend.insideRadius().metres() + perThickness * thickness.metres()));
        }
    }

    /**
     * The German standard's: β (r + k t / 2) with k = 0.65 + 0.5 log₁₀(r/t), at most 1. [published: DIN 6935] For bends sharper
     * than a twentieth of the thickness k would fall below 0, which no metal does: it is 0 there.
     */
    record Din6935() implements BendAllowance {

        @Override
        public Length of(Bend bend, Length thickness) {
            double half = factor(bend.insideRadius(), thickness) * thickness.metres() / 2;
            return Length.metres(bend.turn().radians() * (bend.insideRadius().metres() + half));
        }

        /** k, in [0, 1]. */
        public double factor(Length insideRadius, Length thickness) {
            if (insideRadius.metres() == 0) {
                return 0;
            }
            double k = 0.65 + 0.5 * Math.log10(insideRadius.metres() / thickness.metres());
            return Math.max(0, Math.min(1, k));
        }

        @Override
        public Source source() {
            return new Source("DIN 6935, formula of the developed length (read in public technical notes)");
        }
    }
}
