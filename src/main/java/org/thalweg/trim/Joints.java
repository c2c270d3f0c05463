package org.thalweg.trim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Tolerance;
import org.thalweg.geometry.Vector3;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Roof;
import org.thalweg.trim.CutPlane.Arm;
import org.thalweg.trim.Meeting.How;
import org.thalweg.trim.RingSides.Met;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;

/**
 * How trims end where edges meet. A trim round the roof, along walls or round an opening runs on into the next of its family;
 * each leg of a cap, and of a flashing at a pitch break, into what its own plane ends on next. Legs that lie at different
 * heights lap over one another instead, each cut along the line of the other's edge.
 */
final class Joints {

    private static final Vector3 PLUMB = new Vector3(0, 0, 1);

    private final Roof roof;
    private final RingSides rings;
    private final List<Optional<SeatedEdge>> seated;
    private final Length past;

    Joints(Roof roof, RingSides rings, List<Optional<SeatedEdge>> seated, Length past) {
        this.roof = roof;
        this.rings = rings;
        this.seated = seated;
        this.past = past;
    }

    /** A trim that is met, and which side of its bend. */
    private record Mate(SeatedEdge trim, boolean beyond, boolean atStart) {

        Arm arm() {
            return Joints.arm(trim, beyond, atStart);
        }
    }

    private record Side(Meeting meeting, CutPlane plane) {}

    TrimEnd end(SeatedEdge own, boolean atStart) {
        Side first = side(own, false, atStart);
        Side last = side(own, true, atStart);
        List<LegCut> cuts = new ArrayList<>(own.section().size() - 1);
        for (int leg = 0; leg + 1 < own.section().size(); leg++) {
            CutPlane plane = own.beyond(leg) ? last.plane : first.plane;
            cuts.add(cut(own, atStart, leg, plane));
        }
        Hand hand = atStart != own.seat().mirrored() ? Hand.LEFT : Hand.RIGHT;
        return new TrimEnd(hand, first.meeting, last.meeting, cuts);
    }

    private static LegCut cut(SeatedEdge own, boolean atStart, int leg, CutPlane plane) {
        double inner = plane.reach(onCorner(own, own.section().get(leg), atStart), own.out(atStart));
        double outer = plane.reach(onCorner(own, own.section().get(leg + 1), atStart), own.out(atStart));
        double girth = own.shape().girths().get(leg).metres();
        return new LegCut(leg, Length.metres(inner), Length.metres(outer), Angle.atan2(outer - inner, girth));
    }

    private static Point3 onCorner(SeatedEdge own, Point2 line, boolean atStart) {
        return own.seat().inWorld(line, atStart ? Length.ZERO : own.seat().length());
    }

    private static Arm arm(SeatedEdge trim, boolean beyond, boolean atStart) {
        return new Arm(onCorner(trim, trim.fold(), atStart), trim.out(atStart), trim.face(beyond));
    }

    private Side side(SeatedEdge own, boolean beyond, boolean atStart) {
        Optional<Mate> mate = mate(own, beyond, atStart);
        if (mate.isPresent()) {
            Optional<CutPlane> plane =
                    CutPlane.mitre(arm(own, beyond, atStart), mate.get().arm());
            int met = mate.get().trim().index();
            return new Side(
                    meeting(own, beyond, atStart, met, plane.isPresent() ? How.MITRED : How.SQUARE),
                    plane.orElseGet(() -> CutPlane.square(own.corner(atStart), own.out(atStart), 0)));
        }
        return endsOn(own, beyond, atStart);
    }

    private Side endsOn(SeatedEdge own, boolean beyond, boolean atStart) {
        int met = next(own, beyond, atStart).side().edge();
        double runsPast = runsPast(own.family(), roof.edges().get(met).kind()) ? past.metres() : 0;
        boolean onRoof = !beyond || own.family().onTwoPlanes();
        Optional<CutPlane> plane = CutPlane.along(
                own.corner(atStart),
                away(met, own.corner(atStart)),
                onRoof ? own.face(beyond) : PLUMB,
                own.out(atStart),
                runsPast);
        return new Side(
                meeting(own, beyond, atStart, met, plane.isPresent() ? How.ENDS_ON : How.SQUARE),
                plane.orElseGet(() -> CutPlane.square(own.corner(atStart), own.out(atStart), runsPast)));
    }

    /** Caps and wall flashings run past the outside of the roof, over what trims it. */
    private static boolean runsPast(Family family, EdgeKind met) {
        return (family.onTwoPlanes() || family == Family.WALL)
                && Family.of(met).filter(Family.PERIMETER::equals).isPresent();
    }

    private static Met next(SeatedEdge own, boolean beyond, boolean atStart) {
        return RingSides.next(own.ringSide(beyond), atStart == own.ringSameWay(beyond));
    }

    private Optional<Mate> mate(SeatedEdge own, boolean beyond, boolean atStart) {
        return met(own, beyond, atStart).flatMap(met -> seated.get(met.side().edge())
                .map(trim -> mate(own, beyond, trim, met))
                .filter(mate -> levelWith(own, beyond, mate)));
    }

    private Optional<Met> met(SeatedEdge own, boolean beyond, boolean atStart) {
        if (own.family() == Family.PERIMETER || own.family() == Family.WALL) {
            return rings.around(own.first(), atStart == own.sameWay(), edge -> mates(own, edge));
        }
        return Optional.of(next(own, beyond, atStart))
                .filter(met -> mates(own, met.side().edge()));
    }

    private boolean mates(SeatedEdge own, int edge) {
        return edge != own.index()
                && seated.get(edge)
                        .filter(trim -> trim.family() == own.family())
                        .isPresent();
    }

    /** On two planes, the other trim's side on the same plane; else the same side of the bend. */
    private static Mate mate(SeatedEdge own, boolean beyond, SeatedEdge trim, Met met) {
        boolean onFirst = trim.first().same(met.side());
        boolean ringSameWay = onFirst == trim.sameWay();
        return new Mate(trim, own.family().onTwoPlanes() ? !onFirst : beyond, met.atStart() == ringSameWay);
    }

    /**
     * Legs on the roof meet only when they lie as high off it; a fascia or a wall is one for all. Under a pitch break a plane's
     * panels lie over the leg, above it the leg lies over them: the two never meet.
     */
    private boolean levelWith(SeatedEdge own, boolean beyond, Mate mate) {
        Tolerance tolerance = roof.tolerance();
        if (own.family() == Family.BREAK && mate.beyond() != beyond) {
            return false;
        }
        return (beyond && !own.family().onTwoPlanes())
                || tolerance.same(
                        own.shape().height().metres(),
                        mate.trim().shape().height().metres());
    }

    private Meeting meeting(SeatedEdge own, boolean beyond, boolean atStart, int met, How how) {
        Point3 corner = own.corner(atStart);
        Vector3 here = own.out(atStart).times(-1);
        Vector3 there = away(met, corner);
        double cross = here.x() * there.y() - here.y() * there.x();
        double dot = here.x() * there.x() + here.y() * there.y();
        // A ring has its metal to the left: one that ends here goes on along the other edge, one that starts here came
        // along it.
        boolean ends = atStart != own.ringSameWay(beyond);
        Edge edge = roof.edges().get(met);
        double off = (ends ? cross : -cross) * edge.length().metres();
        return new Meeting(
                how,
                met,
                edge.id(),
                edge.kind(),
                Angle.atan2(Math.abs(cross), dot),
                Angle.atan2(here.cross(there).length(), here.dot(there)),
                off > roof.tolerance().hair());
    }

    /** Along an edge away from the corner it was met at; one long. */
    private Vector3 away(int edge, Point3 corner) {
        Edge met = roof.edges().get(edge);
        Vector3 way = met.to().minus(met.from()).unit();
        return met.from().distance(corner) <= met.to().distance(corner) ? way : way.times(-1);
    }
}
