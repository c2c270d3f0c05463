package org.thalweg.trim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Place;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Tolerance;
import org.thalweg.trim.FlatTrim.FlatFold;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/** Profiles rolled out flat: worked examples in print, hems worked by hand, and the laws of a strip. */
class FlatTrimTest {

    private static final double NOTHING = 1e-12;
    private static final Place PLACE = new Place(Place.Kind.EDGE, "E1", Origin.REQUEST);

    /** FAA-H-8083-31, the channel of R 0.16 and T 0.040: mould lines 1.00, 2.00, 1.00, flats 0.8, 1.6, 0.8. */
    @Test
    void theFlatsOfTheHandbooksChannelAreThosePrinted() {
        FlatTrim channel = FlatTrim.of(channel(), BendAllowance.HANDBOOK);
        assertThat(channel.flats())
                .extracting(FlatTrimTest::inches)
                .satisfiesExactly(
                        first -> assertThat(first).isCloseTo(0.8, within(NOTHING)),
                        web -> assertThat(web).isCloseTo(1.6, within(NOTHING)),
                        last -> assertThat(last).isCloseTo(0.8, within(NOTHING)));
    }

    /** Flats of 3.2 and two allowances of 0.27907: 3.75814. The 3.74 printed does not follow from the formula printed. */
    @Test
    void theHandbooksChannelIsAsWideAsItsFormulaMakesIt() {
        assertThat(inches(FlatTrim.of(channel(), BendAllowance.HANDBOOK).width()))
                .isCloseTo(3.75814, within(0.00001));
    }

    private static Profile channel() {
        return profile(0.040, 0.16, new double[] {1, 2, 1}, 90, 90);
    }

    /** A public sheet-metal workbook: outside sizes .740 .420 1.050 1.000, three bends of .079, 2.973 in all. */
    @Test
    void theStretchOutOfAShopTextIsThatPrinted() {
        Profile shop = profile(0.050, 0.032, new double[] {0.740, 0.420, 1.050, 1.000}, 90, 90, 90);
        // The text takes the rounded 0.079 three times, which is 0.0009 more than the deduction before rounding.
        assertThat(inches(FlatTrim.of(shop, BendAllowance.HANDBOOK).width()))
                .isCloseTo(2.973, within(0.0005 + 3 * 0.0005));
    }

    /** Sheets and pans of folded seams; old manuals measure along the metal and take nothing off for bends. */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/published/seam-allowance.csv", useHeadersInDisplayName = true)
    void aPanAndTheEdgesItTurnsUpAreTheSheet(
            String id, double sheet, double turnedUp, double turnedUpOther, double cover, String unit) {
        LengthUnit in = unit.equals("in") ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
        double[] girths =
                cover > 0 ? new double[] {turnedUp, cover, turnedUpOther} : new double[] {turnedUp, turnedUpOther};
        double[] square = new double[girths.length - 1];
        Arrays.fill(square, 90);
        Profile pan = profile(in, 0, 0, girths, square);
        assertThat(FlatTrim.of(pan, BendAllowance.USUAL).width().in(in)).isCloseTo(sheet, within(1e-9));
    }

    /**
     * By hand: a leg of 2 in with a closed hem of 1/2 in, sheet of 0.03 in. Each loses 0.03 to the fold, which takes up
     * π · 0.4469 · 0.03 = 0.04212: 1.97 + 0.47 + 0.04212.
     */
    @Test
    void aClosedHemIsItsGirthAndAFoldOfItsOwnThickness() {
        Profile hemmed = new Profile(
                "strip",
                List.of(Length.inches(2)),
                List.of(),
                Optional.empty(),
                Optional.of(Hem.closed(Length.inches(0.5))),
                Length.inches(0.03));
        FlatTrim flat = FlatTrim.of(hemmed, BendAllowance.USUAL);
        assertThat(inches(flat.width())).isCloseTo(2.48212, within(0.000005));
        assertThat(flat.folds()).singleElement().satisfies(fold -> {
            assertThat(inches(fold.at())).isCloseTo(1.97 + 0.02106, within(0.000005));
            assertThat(fold.turn().inDegrees()).isCloseTo(180, within(NOTHING));
            assertThat(fold.up()).isFalse();
            assertThat(fold.hem()).isTrue();
        });
    }

    /** Open by 1/8 in: the radius is 1/16, the fold takes up π (0.0625 + 0.4469 · 0.03) = 0.23847 and each leg loses 0.0925. */
    @Test
    void anOpenHemTakesUpMore() {
        Profile hooked = new Profile(
                "strip",
                List.of(Length.inches(2)),
                List.of(),
                Optional.of(Hem.open(Length.inches(0.5), Length.inches(0.125))),
                Optional.empty(),
                Length.inches(0.03));
        assertThat(inches(FlatTrim.of(hooked, BendAllowance.USUAL).width()))
                .isCloseTo(1.9075 + 0.4075 + 0.23847, within(0.000005));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void flatsAndBendsAreTheWholeWidthAndEveryFoldLiesBetweenItsFlats(long seed) {
        Profile made = made(seed, 1);
        FlatTrim flat = FlatTrim.of(made, BendAllowance.HANDBOOK);
        assertThat(flat.folds()).hasSize(flat.flats().size() - 1);
        double at = 0;
        for (int i = 0; i < flat.folds().size(); i++) {
            FlatFold fold = flat.folds().get(i);
            at += flat.flats().get(i).metres();
            assertThat(fold.at().metres()).isCloseTo(at + fold.allowance().metres() / 2, within(NOTHING));
            at += fold.allowance().metres();
        }
        at += flat.flats().get(flat.flats().size() - 1).metres();
        assertThat(flat.width().metres()).isCloseTo(at, within(NOTHING));
    }

    /** The other way to the same width: girths less a deduction for each bend. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void theWidthIsTheGirthsLessADeductionForEachBend(long seed) {
        Profile made = made(seed, 1);
        double width = 0;
        for (Length girth : made.girths()) {
            width += girth.metres();
        }
        List<Bend> bends = new ArrayList<>(made.bends());
        for (Hem hem : List.of(made.first().orElseThrow(), made.last().orElseThrow())) {
            width += hem.girth().metres();
            bends.add(hem.fold());
        }
        for (Bend bend : bends) {
            width -= BendAllowance.USUAL.deduction(bend, made.thickness()).metres();
        }
        assertThat(FlatTrim.of(made, BendAllowance.USUAL).width().metres()).isCloseTo(width, within(NOTHING));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aProfileThreeTimesAsLargeIsThreeTimesAsWide(long seed) {
        double small =
                FlatTrim.of(made(seed, 1), new BendAllowance.Din6935()).width().metres();
        double large =
                FlatTrim.of(made(seed, 3), new BendAllowance.Din6935()).width().metres();
        assertThat(large).isCloseTo(3 * small, within(NOTHING));
    }

    private static Profile made(long seed, double scale) {
        Random random = new Random(seed);
        double[] girths =
                random.doubles(2 + random.nextInt(5), 1, 8).map(g -> g * scale).toArray();
        double[] turns = random.doubles(girths.length - 1, -150, 150).toArray();
        Profile plain = profile(0.03 * scale, 0.06 * scale, girths, turns);
        return new Profile(
                plain.name(),
                plain.girths(),
                plain.bends(),
                Optional.of(Hem.closed(Length.inches(0.5 * scale))),
                Optional.of(Hem.open(Length.inches(0.75 * scale), Length.inches(0.2 * scale))),
                plain.thickness());
    }

    @Test
    void aBendOfNothingJoinsItsLegs() {
        Profile straight = profile(0.03, 0.06, new double[] {2, 3}, 0);
        assertThat(inches(FlatTrim.of(straight, BendAllowance.USUAL).width())).isCloseTo(5, within(NOTHING));
    }

    /** A leg of 1/8 in between two square bends of radius 1/8 in and 0.03 in sheet loses 0.31 in: 0.185 too short. */
    @Test
    void aLegShorterThanItsBendsTakeIsFound() {
        Profile tight = profile(0.03, 0.125, new double[] {1, 0.125, 1}, 90, -90);
        List<Finding> found =
                FlatTrim.of(tight, BendAllowance.USUAL).check(PLACE, Length.inches(20), Tolerance.DEFAULT);
        assertThat(found).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.TRIM_LEG_TOO_SHORT);
            assertThat(inches((Length) finding.actual().orElseThrow())).isCloseTo(-0.185, within(NOTHING));
        });
    }

    @ParameterizedTest
    @CsvSource({"12, false", "11.9999, true"})
    void aTrimWiderThanTheCoilNamesTheCoilThatWouldDo(double coil, boolean found) {
        Profile wide = profile(0, 0, new double[] {6, 6}, 90);
        List<Finding> findings =
                FlatTrim.of(wide, BendAllowance.USUAL).check(PLACE, Length.inches(coil), Tolerance.DEFAULT);
        if (!found) {
            assertThat(findings).isEmpty();
            return;
        }
        assertThat(findings).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.TRIM_WIDER_THAN_COIL);
            assertThat(finding.source()).isEqualTo(Source.REQUEST);
            assertThat(finding.needed()).singleElement().satisfies(needed -> {
                assertThat(needed.name()).isEqualTo("coilWidth");
                assertThat(inches((Length) needed.figure())).isCloseTo(12, within(NOTHING));
            });
        });
    }

    @Test
    void legsAndBendsMustFit() {
        assertThatThrownBy(() -> profile(0, 0, new double[] {1, 1, 1}, 90))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("one bend fewer");
        assertThatThrownBy(() -> profile(0, 0, new double[] {1, 0}, 90))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("girth");
        assertThatThrownBy(() -> new Hem(Hem.Kind.CLOSED, Length.inches(1), false, Length.inches(0.1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("CLOSED");
        assertThatThrownBy(() -> Hem.open(Length.inches(1), Length.ZERO))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("OPEN");
    }

    private static Profile profile(double thickness, double radius, double[] girths, double... turnsDeg) {
        return profile(LengthUnit.INCH, thickness, radius, girths, turnsDeg);
    }

    private static Profile profile(
            LengthUnit in, double thickness, double radius, double[] girths, double... turnsDeg) {
        return new Profile(
                "strip",
                Arrays.stream(girths).mapToObj(in::of).toList(),
                Arrays.stream(turnsDeg)
                        .mapToObj(turn -> new Bend(Angle.degrees(Math.abs(turn)), turn > 0, in.of(radius)))
                        .toList(),
                Optional.empty(),
                Optional.empty(),
                in.of(thickness));
    }

    private static double inches(Length length) {
        return length.in(LengthUnit.INCH);
    }
}
