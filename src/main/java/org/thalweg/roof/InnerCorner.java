package org.thalweg.roof;

import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/**
 * The inner corner of a house: two eaves that meet there, and the pitches that rise from them. As much of a roof as a valley
 * needs.
 *
 * <pre>
 *     ridge 1 ________ T         O  the corner, where the valley starts
 *            |       / :         T  where it ends, level with both ridges
 *            |     /   : ridge 2 γ  the angle between the eaves outside of the roof, as one measures it standing in the
 *            |   /     :            corner on the ground
 *     eave 1 |_O       :
 *            γ |_______:
 *          eave 2
 * </pre>
 *
 * @param left   θ₁, pitch of the plane to the left, seen from the corner looking up the valley
 * @param right  θ₂, pitch of the plane to the right
 * @param angle  γ, in (0°, 180°]; 180° is no corner and is refused
 * @param run    level run of the valley along the left eave, run on past the corner; above 0
 * @param length the valley's true length instead; one of the two is there
 * @param top    what both planes end on at the top
 * @param at     where in the request the corner stands
 */
public record InnerCorner(
        Pitch left, Pitch right, Angle angle, Optional<Length> run, Optional<Length> length, EdgeKind top, Origin at) {

    /** The ids of its planes. */
    public static final String LEFT = "left";

    public static final String RIGHT = "right";

    /** The eaves run on by as much as the valley is long in plan and this, further than any mark is measured along them. */
    private static final double FURTHER = 3;

    private static final double STRAIGHT = Math.toRadians(179.999);

    public InnerCorner {
        if (run.isPresent() == length.isPresent()) {
            throw new IllegalArgumentException("a corner needs a run (%s) or a length (%s)".formatted(run, length));
        }
    }

    /**
     * α₁, angle in plan from the left eave, run on past the corner, to the valley. Both planes rise alike along the valley:
     * tan θ₁ sin α₁ = tan θ₂ sin(γ − α₁). [geometry]
     */
    public Angle planAngle() {
        return Angle.atan2(right.tan() * angle.sin(), left.tan() + right.tan() * angle.cos());
    }

    /**
     * The planes at the corner, as a survey would give them: the corner at the origin, the left eave along −x.
     *
     * @throws Refused when no valley runs there
     */
    public RoofSurvey survey(Tolerance tolerance, Pitch leastSlope, Source leastSlopeSource) {
        check();
        Angle plan = planAngle();
        double level = levelLength(plan);
        double x = level * plan.cos();
        double y = level * plan.sin();
        double z = y * left.tan();
        Point3 foot = new Point3(0, 0, 0);
        Point3 head = new Point3(x, y, z);
        double eave1 = Math.min(0, x) - level - FURTHER;
        double eave2 = Math.min(0, x * angle.cos() + y * angle.sin()) - level - FURTHER;
        Point3 end1 = new Point3(eave1, 0, 0);
        Point3 end2 = new Point3(eave2 * angle.cos(), eave2 * angle.sin(), 0);
        Point3 ridge1 = new Point3(eave1, y, z);
        double back = eave2 - (x * angle.cos() + y * angle.sin());
        Point3 ridge2 = new Point3(x + back * angle.cos(), y + back * angle.sin(), z);
        return new RoofSurvey(
                List.of(plane(LEFT, end1, foot, head, ridge1), plane(RIGHT, end2, ridge2, head, foot)),
                List.of(new NamedEdge(head, ridge1, top, at), new NamedEdge(head, ridge2, top, at)),
                tolerance,
                leastSlope,
                leastSlopeSource);
    }

    private PlaneOutline plane(String id, Point3... corners) {
        return new PlaneOutline(id, List.of(corners), List.of(), at.whole(), at.whole());
    }

    private void check() {
        if (angle.radians() > STRAIGHT) {
            throw refused(
                    "The eaves run in line at {actual}, so the planes meet in no valley. Give the angle between the"
                            + " eaves as measured standing in the corner, less than {limit}.");
        }
        if (left.rise() == 0 || right.rise() == 0) {
            throw new Refused(Refusal.of(
                    RefusalCode.NO_VALLEY,
                    at.at("pitches"),
                    "A level plane does not fall to a valley. Give two pitches with a rise."));
        }
    }

    private Refused refused(String detail) {
        return new Refused(Refusal.of(RefusalCode.NO_VALLEY, at.at("planAngleDeg"), detail, angle, Angle.degrees(180)));
    }

    /** Length of the valley in plan. Metres. */
    private double levelLength(Angle plan) {
        if (length.isPresent()) {
            double rise = left.tan() * plan.sin();
            return length.get().metres() / Math.sqrt(1 + rise * rise);
        }
        if (plan.cos() <= 0 || run.get().metres() / plan.cos() > Corners.FURTHEST) {
            throw new Refused(Refusal.of(
                    RefusalCode.NO_RUN,
                    at.at("run"),
                    "The valley runs {actual} from the left eave in plan, so a run along that eave does not tell how long it"
                            + " is; only under {limit} it does. Give its length instead.",
                    plan,
                    Angle.degrees(90)));
        }
        return run.get().metres() / plan.cos();
    }
}
