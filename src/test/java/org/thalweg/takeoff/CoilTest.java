package org.thalweg.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.reference.Gauges;
import org.thalweg.reference.Metals;
import org.thalweg.units.Area;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Mass;
import org.thalweg.units.MassUnit;

class CoilTest {

    /** Against the lengths in the file named below. Tolerance: half of the last digit it prints. */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/published/coil-lengths.csv", useHeadersInDisplayName = true)
    void aTightCoilHoldsTheLengthOfItsRing(
            String id, double outer, double core, double thickness, double length, double halfDigit) {
        Coil coil = new Coil(Length.inches(outer), Length.inches(core));
        assertThat(LengthUnit.INCH.from(coil.length(Length.inches(thickness)))).isCloseTo(length, within(halfDigit));
    }

    /** 2000 lb of No. 24 galvanized sheet 20 in wide, at the 1.156 lb/ft² its gauge table prints, are 1038.062 ft long. */
    @Test
    void theMassOfACoilIsTheMassOfItsSheet() {
        Area sheet = new Area(Length.feet(1038.062).metres() * Length.inches(20).metres());
        double pounds = MassUnit.POUND.from(
                Gauges.massPerArea(Metals.of("galvanized-steel").orElseThrow(), Length.inches(0.0276))
                        .of(sheet));
        assertThat(pounds).isCloseTo(2000, within(0.001));
    }

    /** 1000 lb of 16 oz copper 20 in wide, at 1 lb/ft², are 600 ft long. */
    @Test
    void soIsThatOfCopperByTheOunce() {
        Area sheet = new Area(Length.feet(600).metres() * Length.inches(20).metres());
        double pounds =
                MassUnit.POUND.from(Gauges.massPerArea(Metals.of("copper").orElseThrow(), Length.inches(0.0216))
                        .of(sheet));
        assertThat(pounds).isCloseTo(1000, within(0.5));
    }

    /** 2000 lb of aluminum 0.032 in thick and 24 in wide, at 0.0986 lb/in³, are 2200.952 ft long. */
    @Test
    void soIsThatOfAluminumByItsDensity() {
        double perArea =
                Metals.of("aluminum").orElseThrow().density().value().kilogramsPerSquareMetre(Length.inches(0.032));
        double sheet = Length.feet(2200.952).metres() * Length.inches(24).metres();
        // 0.0005 ft of length is half of the last digit: half a thousandth of a pound.
        assertThat(MassUnit.POUND.from(new Mass(perArea * sheet))).isCloseTo(2000, within(0.0006));
    }

    /**
     * A steel coil of 48 in on a core of 20 in weighs 424.1 lb for each inch of its width, at 0.2836 lb/in³ (from memory) and
     * tightly wound, however thick its sheet is: its length by its thickness is its ring.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.0217, 0.0276, 0.0336})
    void aCoilWeighsAsMuchForEachInchOfItsWidthWhateverItsSheet(double thickness) {
        Coil coil = new Coil(Length.inches(48), Length.inches(20));
        double ring = LengthUnit.INCH.from(coil.length(Length.inches(thickness))) * thickness;
        assertThat(ring * 0.2836).isCloseTo(424.1, within(0.05));
    }
}
