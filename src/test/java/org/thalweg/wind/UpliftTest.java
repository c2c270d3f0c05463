package org.thalweg.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Point3;
import org.thalweg.reference.WindTables;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;
import org.thalweg.units.AreaUnit;
import org.thalweg.units.Length;
import org.thalweg.units.PressureUnit;
import org.thalweg.units.SpeedUnit;
import org.thalweg.wind.LowRiseWind.SpeedMap;

class UpliftTest {

    private static Uplift lowRise(Roof roof) {
        LowRiseWind wind = new LowRiseWind(
                SpeedUnit.MILE_PER_HOUR.of(180),
                SpeedMap.STRENGTH,
                WindTables.exposure("B").orElseThrow(),
                Length.feet(30),
                AreaUnit.SQUARE_FOOT.of(10));
        return Uplift.lowRise(roof, WindZones.of(roof, Length.metres(1)), wind);
    }

    private static List<UpliftStretch> upTheMiddle(Uplift uplift, Roof roof) {
        Plane plane = roof.planes().get(0);
        return uplift.along(
                0,
                plane.frame(),
                new Point2(6, 0),
                new Point2(6, plane.shape().outer().mostUp()));
    }

    /** IRC 2018 table R301.2(2), 180 mph, over 7 to 27 degrees, 10 ft²: zone 1 lifts 32.0 psf. */
    @Test
    void aLineIsToldHowHardTheWindLiftsEachPartOfIt() {
        Roof roof = Houses.read(Houses.gable(0.25));
        List<UpliftStretch> line = upTheMiddle(lowRise(roof), roof);
        assertThat(line).extracting(UpliftStretch::zone).containsExactly(WindZone.EDGE, WindZone.FIELD, WindZone.EDGE);
        assertThat(line.get(1).uplift().in(PressureUnit.POUND_FORCE_PER_SQUARE_FOOT))
                .isCloseTo(32.0, within(0.05));
        assertThat(line.get(0).uplift()).isGreaterThan(line.get(1).uplift());
    }

    @Test
    void pressuresWorkedOutAreToldAsPreliminaryOnce() {
        Uplift uplift = lowRise(Houses.read(Houses.hip(0.25)));
        assertThat(uplift.preliminary()).isTrue();
        assertThat(uplift.findings()).extracting(Finding::code).containsExactly(FindingCode.WIND_PRELIMINARY);
    }

    @Test
    void theEngineersPressuresAreTakenAsTheyAre() {
        Roof roof = Houses.read(Houses.gable(2));
        ZonePressures named = ZonePressures.everywhere(PressureUnit.POUND_FORCE_PER_SQUARE_FOOT.of(40));
        Uplift uplift = Uplift.given(roof, WindZones.of(roof, Length.metres(1)), named);
        assertThat(uplift.preliminary()).isFalse();
        assertThat(uplift.findings()).isEmpty();
        assertThat(uplift.source()).isEqualTo(Source.REQUEST);
        assertThat(upTheMiddle(uplift, roof)).allSatisfy(part -> assertThat(part.uplift())
                .isEqualTo(PressureUnit.POUND_FORCE_PER_SQUARE_FOOT.of(40)));
    }

    /** 63.4 degrees. */
    @Test
    void aPlaneSteeperThanTheTableHasNothingButAFinding() {
        Roof roof = Houses.read(Houses.gable(2));
        Uplift uplift = lowRise(roof);
        assertThat(upTheMiddle(uplift, roof)).isEmpty();
        assertThat(uplift.findings())
                .extracting(Finding::code)
                .containsOnly(FindingCode.WIND_OUTSIDE_TABLE)
                .hasSize(2);
    }

    @Test
    void aSingleSlopeIsLeftToOtherFigures() {
        Roof roof = Houses.read(List.of(Houses.plane(
                "shed", new Point3(0, 0, 0), new Point3(12, 0, 0), new Point3(12, 4, 1), new Point3(0, 4, 1))));
        Uplift uplift = lowRise(roof);
        assertThat(uplift.planes()).allSatisfy(plane -> assertThat(plane).isEmpty());
        assertThat(uplift.findings()).extracting(Finding::code).containsExactly(FindingCode.WIND_OUTSIDE_TABLE);
        assertThat(uplift.findings().get(0).message()).contains("single slope");
    }
}
