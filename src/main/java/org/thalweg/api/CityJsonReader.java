package org.thalweg.api;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Vector3;
import org.thalweg.roof.PlaneOutline;
import org.thalweg.roof.PlaneOutline.OpeningOutline;
import org.thalweg.units.Angle;
import org.thalweg.units.Count;

/**
 * Reads the roof of one building out of a CityJSON document (OGC CityJSON 1.0, 1.1, 2.0, and CityJSONSeq): the faces its
 * file labels RoofSurface at the highest level of detail 2; in a building where none is, the unlabelled faces that look
 * up. Nothing is done about objects that were not chosen, however many a document holds.
 */
final class CityJsonReader {

    /** Most roof planes of one building. */
    static final int PLANES_AT_MOST = 2_000;

    /** Most corners of one building's roof, holes included. */
    static final int CORNERS_AT_MOST = 20_000;

    /** Unlabelled faces steeper than this are walls; from level. */
    static final Angle STEEPEST_ROOF = Angle.degrees(80);

    /** Faces smaller than this carry no metal: files hold some that have shrunk to a line. Square metres; 1 mm². */
    private static final double LEAST_AREA = 1e-6;

    /** Longest name a file may give a plane; longer ones are numbered. */
    private static final int LONGEST_ID = 100;

    /** Most refusals of one answer. */
    private static final int REFUSALS_AT_MOST = 20;

    /** What planes without a name of their own are called. */
    private static final Pattern NUMBERED = Pattern.compile("r[0-9]+");

    private final CityVertices vertices;
    private int corners;

    private CityJsonReader(CityVertices vertices) {
        this.vertices = vertices;
    }

    /**
     * The roof planes of one building, in the order of the document; never none. Planes are called by their file's id of
     * the surface, if it has one that is no other plane's, else r1, r2 … by place.
     *
     * @param cityjson a document, or {@code {"metadata": first line, "feature": line}} of a CityJSONSeq file
     * @param building id of a Building or BuildingPart; empty means the only Building
     * @param at       where in the request {@code cityjson} stands
     * @throws Refused when the document can't be read, the building isn't clear, or it has no roof
     */
    static List<PlaneOutline> read(JsonNode cityjson, Optional<String> building, Origin at) {
        CityModel model = CityModel.read(new CityValue(cityjson, at));
        List<CityValue> objects = CityBuilding.objects(model.objects(), building);
        CityJsonReader reader = new CityJsonReader(model.vertices());
        List<PlaneOutline> planes = reader.planes(reader.roofFaces(objects));
        if (planes.isEmpty()) {
            throw objects.get(0)
                    .refused(
                            RefusalCode.CITYJSON_NO_ROOF,
                            "The building has no RoofSurface, and no face that looks up, at a level of detail 2.");
        }
        return planes;
    }

    private List<CityFace> roofFaces(List<CityValue> objects) {
        List<CityFace> faces = new ArrayList<>();
        objects.forEach(object -> faces.addAll(CityFace.of(object)));
        List<CityFace> labelled = faces.stream().filter(CityFace::labelledRoof).toList();
        return labelled.isEmpty()
                ? faces.stream()
                        .filter(face -> face.label().isEmpty() && looksUp(face))
                        .toList()
                : labelled;
    }

    /** Faces of a solid run counter-clockwise seen from outside, so one that looks up has the sky above it. */
    private boolean looksUp(CityFace face) {
        Vector3 normal = normal(ring(face.rings().list("A face").item(0)));
        return normal.z() > normal.length() * STEEPEST_ROOF.cos();
    }

    /** Twice the area, square to the ring, by Newell's sum over the corners seen from the first. */
    private static Vector3 normal(List<Point3> ring) {
        Vector3 sum = new Vector3(0, 0, 0);
        for (int i = 2; i < ring.size(); i++) {
            Vector3 before = ring.get(i - 1).minus(ring.get(0));
            sum = sum.plus(before.cross(ring.get(i).minus(ring.get(0))));
        }
        return sum;
    }

    private List<PlaneOutline> planes(List<CityFace> faces) {
        if (faces.size() > PLANES_AT_MOST) {
            throw tooMany(faces.get(PLANES_AT_MOST).rings().at(), "planes", faces.size(), PLANES_AT_MOST);
        }
        List<String> ids = ids(faces);
        List<PlaneOutline> planes = new ArrayList<>();
        List<Refusal> refusals = new ArrayList<>();
        for (int i = 0; i < faces.size() && refusals.size() < REFUSALS_AT_MOST; i++) {
            try {
                PlaneOutline plane = plane(ids.get(i), faces.get(i).rings());
                if (normal(plane.outline()).length() / 2 >= LEAST_AREA) {
                    planes.add(plane);
                }
            } catch (Refused refused) {
                refusals.addAll(refused.refusals());
            }
        }
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        return planes;
    }

    private PlaneOutline plane(String id, CityValue rings) {
        CityValue outer = rings.list("A face").item(0);
        List<Point3> outline = counted(outer);
        List<OpeningOutline> openings = new ArrayList<>();
        for (int i = 1; i < rings.size(); i++) {
            CityValue ring = rings.item(i);
            openings.add(new OpeningOutline("o" + i, counted(ring), ring.at()));
        }
        return new PlaneOutline(id, outline, openings, rings.at(), outer.at());
    }

    private List<Point3> counted(CityValue ring) {
        corners += ring.size();
        if (corners > CORNERS_AT_MOST) {
            throw tooMany(ring.at(), "corners", corners, CORNERS_AT_MOST);
        }
        return ring(ring);
    }

    private List<Point3> ring(CityValue ring) {
        if (ring.list("A ring").size() < 3) {
            throw ring.unreadable("A ring needs at least 3 corners.");
        }
        List<Point3> points = new ArrayList<>(ring.size());
        for (int i = 0; i < ring.size(); i++) {
            points.add(vertices.corner(ring, i));
        }
        return points;
    }

    private static Refused tooMany(Origin at, String what, long actual, long limit) {
        return new Refused(Refusal.of(
                RefusalCode.CITYJSON_UNREADABLE,
                at,
                "The roof has {actual} " + what + " or more; at most {limit} are read.",
                new Count(actual),
                new Count(limit)));
    }

    private static List<String> ids(List<CityFace> faces) {
        List<String> own = faces.stream().map(CityJsonReader::ownId).toList();
        Map<String, Integer> uses = new HashMap<>();
        own.forEach(id -> uses.merge(id, 1, Integer::sum));
        List<String> ids = new ArrayList<>();
        for (String id : own) {
            boolean good = !id.isEmpty() && uses.getOrDefault(id, 0) == 1;
            ids.add(good ? id : "r" + (ids.size() + 1));
        }
        return ids;
    }

    /** What the file calls the surface; empty when it has no name, or one that could be taken for another plane's. */
    private static String ownId(CityFace face) {
        String id = face.label()
                .map(surface -> surface.json().path("id").textValue())
                .orElse("");
        return id.length() > LONGEST_ID || NUMBERED.matcher(id).matches() ? "" : id;
    }
}
