package org.thalweg.api;

import com.fasterxml.jackson.databind.JsonNode;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Vector3;

/**
 * The corners of a CityJSON document. Faces name them by place; a corner is stored as whole steps on a grid and stands at
 * step · scale + translate, or, in a document without a transform, at the stored coordinates.
 *
 * @param list      the corners as stored, each three numbers
 * @param scale     how long a step is, per axis, metres; above 0
 * @param translate where the grid begins; world, metres
 */
record CityVertices(CityValue list, Vector3 scale, Vector3 translate) {

    /** Further out than any reference system of the Earth reaches; metres. */
    static final double FURTHEST = 1e7;

    static CityVertices of(CityValue list, CityValue transform) {
        list.list("vertices");
        if (transform.absent()) {
            return new CityVertices(list, new Vector3(1, 1, 1), new Vector3(0, 0, 0));
        }
        transform.object("transform");
        CityValue scaleValue = transform.member("scale");
        Vector3 scale = three(scaleValue, "scale");
        if (scale.x() <= 0 || scale.y() <= 0 || scale.z() <= 0) {
            throw scaleValue.unreadable("The three numbers of scale must be above 0.");
        }
        return new CityVertices(list, scale, three(transform.member("translate"), "translate"));
    }

    /** Corner {@code place} of a ring of vertex places; world, metres. */
    Point3 corner(CityValue ring, int place) {
        JsonNode index = ring.json().path(place);
        if (!index.isIntegralNumber()
                || !index.canConvertToInt()
                || !list.json().has(index.intValue())) {
            throw ring.item(place)
                    .unreadable("A corner must be the place of a vertex, a whole number from 0 to below " + list.size()
                            + ". Check how deep the boundaries are nested, too.");
        }
        CityValue vertex = list.item(index.intValue());
        Vector3 steps = three(vertex, "A vertex");
        Point3 corner = new Point3(
                steps.x() * scale.x() + translate.x(),
                steps.y() * scale.y() + translate.y(),
                steps.z() * scale.z() + translate.z());
        if (!near(corner.x()) || !near(corner.y()) || !near(corner.z())) {
            throw vertex.unreadable("The vertex lies more than 10 000 km from 0. Check it and the transform.");
        }
        return corner;
    }

    private static Vector3 three(CityValue value, String what) {
        value.list(what);
        if (value.size() != 3) {
            throw value.unreadable(what + " must be three numbers.");
        }
        return new Vector3(number(value, 0), number(value, 1), number(value, 2));
    }

    private static double number(CityValue list, int place) {
        JsonNode number = list.json().path(place);
        double value = number.doubleValue();
        if (!number.isNumber() || !Double.isFinite(value)) {
            throw list.item(place).unreadable("A coordinate must be a finite number.");
        }
        return value;
    }

    private static boolean near(double coordinate) {
        return Math.abs(coordinate) <= FURTHEST;
    }
}
