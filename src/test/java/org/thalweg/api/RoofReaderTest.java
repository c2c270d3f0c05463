package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.NoAnswer;
import org.thalweg.api.wire.NamedEdgeKind;
import org.thalweg.api.wire.RoofForm;
import org.thalweg.api.wire.RoofForm.NamedEdgeForm;
import org.thalweg.api.wire.RoofForm.OpeningForm;
import org.thalweg.api.wire.RoofForm.PlaneForm;
import org.thalweg.api.wire.RoofRequest;
import org.thalweg.api.wire.UnitsForm;
import org.thalweg.api.wire.WireLength;
import org.thalweg.api.wire.WirePitch;
import org.thalweg.api.wire.WirePoint;
import org.thalweg.finding.Refused;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.units.AreaUnit;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.MassUnit;
import org.thalweg.units.Pitch;

class RoofReaderTest {

    private static final UnitsForm FEET = new UnitsForm(LengthUnit.FOOT, AreaUnit.SQUARE_FOOT, MassUnit.POUND);

    private static final Map<String, WirePoint> POINTS =
            Map.of("A", point(0, 0, 0), "B", point(10, 0, 0), "R", point(5, 5, 2.5));

    private static final PlaneForm SOUTH =
            new PlaneForm("south", List.of("A", "B", "R"), List.of(new OpeningForm("hole", List.of("R", "B", "A"))));

    private static final NamedEdgeForm WALL = new NamedEdgeForm(List.of("A", "B"), NamedEdgeKind.SIDE_WALL);

    @Test
    void pointsAreLookedUpAndTurnedIntoMetres() {
        RoofSurvey survey = RoofReader.read(request(List.of(SOUTH), List.of(WALL), null, null));
        Point3 b = survey.planes().get(0).outline().get(1);
        assertThat(b.x()).isCloseTo(3.048, within(1e-12));
        assertThat(survey.planes().get(0).openings().get(0).outline().get(1)).isEqualTo(b);
        assertThat(survey.named().get(0).to()).isEqualTo(b);
        assertThat(survey.named().get(0).kind()).isEqualTo(EdgeKind.SIDE_WALL);
    }

    @Test
    void everythingKnowsWhereInTheRequestItCameFrom() {
        RoofSurvey survey = RoofReader.read(request(List.of(SOUTH, SOUTH), List.of(WALL), null, null));
        assertThat(survey.planes().get(1).at().pointer()).isEqualTo("#/roof/planes/1");
        assertThat(survey.planes().get(1).outlineAt().pointer()).isEqualTo("#/roof/planes/1/outline");
        assertThat(survey.planes().get(1).openings().get(0).outlineAt().pointer())
                .isEqualTo("#/roof/planes/1/openings/0/outline");
        assertThat(survey.named().get(0).at().pointer()).isEqualTo("#/roof/edges/0");
    }

    @Test
    void withoutFiguresOfTheCallersTheDefaultsHold() {
        RoofSurvey survey = RoofReader.read(request(List.of(SOUTH), List.of(), null, null));
        assertThat(survey.tolerance().metres()).isEqualTo(0.001);
        // Published: IBC 1507.4.2 and IRC R905.10.2, standing-seam panels, 1/4 in 12.
        assertThat(survey.leastSlope().tan()).isCloseTo(0.25 / 12, within(1e-15));
        assertThat(survey.leastSlopeSource().text()).contains("1507.4.2");
    }

    @Test
    void figuresOfTheCallersAreTakenAndNamedAsTheirSource() {
        RoofSurvey survey =
                RoofReader.read(request(List.of(SOUTH), List.of(), WireLength.of("5 mm"), WirePitch.of(3, 12)));
        assertThat(survey.tolerance().metres()).isCloseTo(0.005, within(1e-15));
        assertThat(survey.leastSlope()).isEqualTo(new Pitch(3, 12));
        assertThat(survey.leastSlopeSource()).isEqualTo(Source.REQUEST);
    }

    @Test
    void namesThatAreNotGivenAreToldAtOnceEachWhereItIsUsed() {
        PlaneForm dangling =
                new PlaneForm("p", List.of("A", "X", "R"), List.of(new OpeningForm("o", List.of("A", "B", "r"))));
        RoofRequest request = request(
                List.of(dangling), List.of(new NamedEdgeForm(List.of("A", "Y"), NamedEdgeKind.HEAD_WALL)), null, null);
        Refused refused = catchThrowableOfType(Refused.class, () -> RoofReader.read(request));
        assertThat(refused.refusals())
                .extracting(refusal -> refusal.code() + " " + refusal.at().pointer())
                .containsExactly(
                        "UNKNOWN_POINT #/roof/planes/0/openings/0/outline/2",
                        "UNKNOWN_POINT #/roof/planes/0/outline/1",
                        "UNKNOWN_POINT #/roof/edges/0/between/1");
        assertThat(refused.refusals().get(0).detail()).isEqualTo("No point is called \"r\". Did you mean \"R\"?");
    }

    @Test
    void coordinatesOutOfReachAreRefusedWithTheirPlace() {
        Map<String, WirePoint> far = Map.of("A", point(0, 0, 0), "B", point(1e9, 0, 0), "R", point(5, -1e9, 2.5));
        RoofRequest request =
                new RoofRequest(FEET, new RoofForm(far, List.of(SOUTH), null, null, null, null, null), null, null);
        NoAnswer refusal = catchThrowableOfType(NoAnswer.class, () -> RoofReader.read(request));
        assertThat(refusal.answer().errors())
                .extracting(Fault::pointer)
                .containsExactlyInAnyOrder("#/roof/points/B/0", "#/roof/points/R/1");
    }

    @Test
    void moreCornersInAllThanAreReadAreRefused() {
        PlaneForm large = new PlaneForm("p", Collections.nCopies(Limits.CORNERS_OF_A_RING, "A"), null);
        RoofRequest request = request(Collections.nCopies(5, large), List.of(), null, null);
        NoAnswer refusal = catchThrowableOfType(NoAnswer.class, () -> RoofReader.read(request));
        Fault fault = refusal.answer().errors().get(0);
        assertThat(fault.code()).isEqualTo("TOO_MANY");
        assertThat(fault.pointer()).isEqualTo("#/roof/planes");
        assertThat(fault.detail()).isEqualTo("The roof has 25000 corners in all; at most 20000 are read.");
    }

    private static RoofRequest request(
            List<PlaneForm> planes,
            List<NamedEdgeForm> edges,
            @Nullable WireLength tolerance,
            @Nullable WirePitch minimumSlope) {
        return new RoofRequest(
                FEET, new RoofForm(POINTS, planes, edges, null, null, null, null), tolerance, minimumSlope);
    }

    private static WirePoint point(double x, double y, double z) {
        return new WirePoint(WireLength.of(x), WireLength.of(y), WireLength.of(z));
    }
}
