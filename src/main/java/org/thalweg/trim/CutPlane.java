package org.thalweg.trim;

import java.util.Optional;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Vector3;

/**
 * The plane the legs on one side of a trim's bend are cut by.
 *
 * @param through a place on it; world, metres
 * @param normal  square to it, out through the end of the trim; one long
 */
record CutPlane(Point3 through, Vector3 normal) {

    /** A cut that comes within a degree of running along the trim is none that can be made. [common practice] */
    private static final double LEAST_SINE = Math.sin(Math.toRadians(1));

    /** Faces that lie within a degree of each other are one: the line they meet in could be anywhere. [common practice] */
    private static final double ONE_FACE = LEAST_SINE;

    /**
     * One side of a trim at one end.
     *
     * @param fold the bend at the edge, where it passes the corner
     * @param out  along the trim, out through the end; one long
     * @param face off the roof plane or face its legs lie in; one long
     */
    record Arm(Point3 fold, Vector3 out, Vector3 face) {}

    /**
     * The mitre plane of two trims. Where both lie in one face it stands square to that face, half-way between them; else it
     * holds the line in which the faces meet and halves the angle between them. [geometry] So the cut ends of legs that lie in
     * those faces come together; where the two are mirror images in that plane, as at two eaves of one pitch, all legs do.
     *
     * @return nothing where it would run along one of them
     */
    static Optional<CutPlane> mitre(Arm own, Arm other) {
        Vector3 apart = own.out.plus(other.out.times(-1));
        if (own.face.cross(other.face).length() < ONE_FACE) {
            return between(meetingInFace(own, other), apart, own, other);
        }
        Vector3 one = own.face.plus(other.face.times(-1)).unit();
        Vector3 two = own.face.plus(other.face).unit();
        boolean first = Math.abs(one.dot(apart)) >= Math.abs(two.dot(apart));
        return between(meetingOfFaces(own, other), first ? one : two, own, other);
    }

    /** Both trims can be cut by it, or neither is. */
    private static Optional<CutPlane> between(Point3 through, Vector3 square, Arm own, Arm other) {
        return facing(through, square, other.out).flatMap(plane -> facing(through, square, own.out));
    }

    /** The plane that stands on a face along a line in it, {@code past} further out. */
    static Optional<CutPlane> along(Point3 corner, Vector3 line, Vector3 face, Vector3 out, double past) {
        return facing(corner, face.cross(line), out)
                .map(plane -> new CutPlane(corner.plus(plane.normal.times(past)), plane.normal));
    }

    static CutPlane square(Point3 corner, Vector3 out, double past) {
        return new CutPlane(corner.plus(out.times(past)), out);
    }

    /** How far past {@code place} the plane lies, along the trim; below 0 before it. Metres. */
    double reach(Point3 place, Vector3 out) {
        return through.minus(place).dot(normal) / out.dot(normal);
    }

    private static Optional<CutPlane> facing(Point3 through, Vector3 square, Vector3 out) {
        double length = square.length();
        double ahead = square.dot(out);
        return Math.abs(ahead) <= LEAST_SINE * length
                ? Optional.empty()
                : Optional.of(new CutPlane(through, square.times(Math.signum(ahead) / length)));
    }

    /** Where the folds of two trims in one face meet; half-way between the places they pass the corner at, when in line. */
    private static Point3 meetingInFace(Arm own, Arm other) {
        double sine = own.out.cross(other.out).dot(own.face);
        Vector3 between = other.fold.minus(own.fold);
        if (Math.abs(sine) < LEAST_SINE) {
            return own.fold.plus(between.times(0.5));
        }
        double ahead = between.cross(other.out).dot(own.face) / sine;
        return own.fold.plus(own.out.times(ahead));
    }

    /** The place nearest the own fold on the line in which two faces meet. */
    private static Point3 meetingOfFaces(Arm own, Arm other) {
        Vector3 towards = other.face.plus(own.face.times(-own.face.dot(other.face)));
        double off = other.fold.minus(own.fold).dot(other.face);
        return own.fold.plus(towards.times(off / towards.dot(other.face)));
    }
}
