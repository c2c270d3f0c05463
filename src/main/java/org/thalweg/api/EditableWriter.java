package org.thalweg.api;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.api.wire.EditableRoof;
import org.thalweg.api.wire.EditableRoof.EditableEdge;
import org.thalweg.api.wire.EditableRoof.EditableOpening;
import org.thalweg.api.wire.EditableRoof.EditablePlane;
import org.thalweg.api.wire.WorldPoint;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.NamedEdge;
import org.thalweg.roof.PlaneOutline;
import org.thalweg.roof.PlaneOutline.OpeningOutline;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/** Writes a survey as a roof of points and planes, for a caller to change and post again. */
final class EditableWriter {

    /** Far finer than answers are printed, so that what comes back is read as the same roof. */
    private static final double PLACES = 1e12;

    private final LengthUnit unit;
    private final Map<Point3, String> names = new LinkedHashMap<>();

    private EditableWriter(LengthUnit unit) {
        this.unit = unit;
    }

    static EditableRoof write(RoofSurvey survey, LengthUnit unit) {
        return new EditableWriter(unit).write(survey);
    }

    private EditableRoof write(RoofSurvey survey) {
        List<EditablePlane> planes = new ArrayList<>(survey.planes().size());
        for (PlaneOutline plane : survey.planes()) {
            planes.add(new EditablePlane(plane.id(), ring(plane.outline()), openings(plane)));
        }
        List<EditableEdge> edges = new ArrayList<>(survey.named().size());
        for (NamedEdge edge : survey.named()) {
            edges.add(new EditableEdge(ring(List.of(edge.from(), edge.to())), edge.kind()));
        }
        Map<String, WorldPoint> points = new LinkedHashMap<>();
        names.forEach((point, name) -> points.put(name, written(point)));
        return new EditableRoof(points, planes, edges.isEmpty() ? Optional.empty() : Optional.of(edges));
    }

    private Optional<List<EditableOpening>> openings(PlaneOutline plane) {
        if (plane.openings().isEmpty()) {
            return Optional.empty();
        }
        List<EditableOpening> openings = new ArrayList<>();
        for (OpeningOutline opening : plane.openings()) {
            openings.add(new EditableOpening(opening.id(), ring(opening.outline())));
        }
        return Optional.of(openings);
    }

    private List<String> ring(List<Point3> corners) {
        return corners.stream()
                .map(corner -> names.computeIfAbsent(corner, each -> "P" + (names.size() + 1)))
                .toList();
    }

    private WorldPoint written(Point3 point) {
        return new WorldPoint(coordinate(point.x()), coordinate(point.y()), coordinate(point.z()));
    }

    /** Adding 0 makes -0.0 a plain 0. */
    private double coordinate(double metres) {
        return Math.rint(unit.from(Length.metres(metres)) * PLACES) / PLACES + 0.0;
    }
}
