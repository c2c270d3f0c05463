package org.thalweg.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Tolerance;
import org.thalweg.panel.Lead;
import org.thalweg.panel.PanelSpec;
import org.thalweg.panel.PlaneLaying;
import org.thalweg.panel.Start;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.EdgeTreatments;
import org.thalweg.roof.PlaneOutline;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/**
 * The house the benchmarks lay: a 16 m by 10 m hip roof of 6:12 with a gabled wing 8 m wide, so six planes, two valleys,
 * four hips, and with a 0.48 m cover about 150 panels.
 */
final class SixPlaneHouse {

    static final double COVER = 0.48;

    private SixPlaneHouse() {}

    static RoofSurvey survey() {
        double[][][] planes = {
            {{0, 0, 0}, {4, 0, 0}, {8, 4, 2}, {12, 0, 0}, {16, 0, 0}, {11, 5, 2.5}, {5, 5, 2.5}},
            {{16, 10, 0}, {0, 10, 0}, {5, 5, 2.5}, {11, 5, 2.5}},
            {{0, 10, 0}, {0, 0, 0}, {5, 5, 2.5}},
            {{16, 0, 0}, {16, 10, 0}, {11, 5, 2.5}},
            {{4, 0, 0}, {4, -6, 0}, {8, -6, 2}, {8, 4, 2}},
            {{12, -6, 0}, {12, 0, 0}, {8, 4, 2}, {8, -6, 2}},
        };
        List<PlaneOutline> outlines = IntStream.range(0, planes.length)
                .mapToObj(i -> new PlaneOutline(
                        "p" + i,
                        Stream.of(planes[i])
                                .map(c -> new Point3(c[0], c[1], c[2]))
                                .toList(),
                        List.of(),
                        Origin.REQUEST.at("planes").at(i),
                        Origin.REQUEST.at("planes").at(i).at("outline")))
                .toList();
        return new RoofSurvey(outlines, List.of(), Tolerance.DEFAULT, new Pitch(0.25, 12), Source.REQUEST);
    }

    static PanelSpec spec() {
        return new PanelSpec(
                Length.metres(COVER),
                Length.metres(12),
                Length.ZERO,
                Length.metres(0.005),
                Length.metres(0.1),
                Length.metres(0.15),
                Length.metres(0.6));
    }

    static EdgeTreatments treatments() {
        return new EdgeTreatments(
                Map.of(
                        EdgeKind.EAVE, treatment(-0.025, 0.025),
                        EdgeKind.VALLEY, treatment(0.32, 0.025),
                        EdgeKind.RIDGE, treatment(0.025, 0.025),
                        EdgeKind.HIP, treatment(0.025, 0.025)),
                Map.of());
    }

    private static EdgeTreatment treatment(double setback, double hem) {
        return new EdgeTreatment(Length.metres(setback), Length.metres(hem), Length.ZERO);
    }

    static List<PlaneLaying> laying(int planes, Start start) {
        return IntStream.range(0, planes)
                .mapToObj(i -> new PlaneLaying(Lead.LEFT, start, Optional.empty()))
                .toList();
    }
}
