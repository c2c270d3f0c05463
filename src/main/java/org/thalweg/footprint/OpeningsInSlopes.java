package org.thalweg.footprint;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Vector3;
import org.thalweg.roof.PlaneOutline.OpeningOutline;

/** Puts openings that are drawn in plan up onto the slope that covers them. */
final class OpeningsInSlopes {

    private final FootprintSurvey survey;
    private final List<List<Point3>> slopes;
    /** Least x, most x, least y, most y of each slope, so that most are passed over quickly. */
    private final List<double[]> boxes = new ArrayList<>();

    /** @param slopes the ring of every slope, counter-clockwise seen from above */
    OpeningsInSlopes(FootprintSurvey survey, List<List<Point3>> slopes) {
        this.survey = survey;
        this.slopes = slopes;
        for (List<Point3> ring : slopes) {
            DoubleSummaryStatistics x = ring.stream().mapToDouble(Point3::x).summaryStatistics();
            DoubleSummaryStatistics y = ring.stream().mapToDouble(Point3::y).summaryStatistics();
            boxes.add(new double[] {x.getMin(), x.getMax(), y.getMin(), y.getMax()});
        }
    }

    /**
     * The openings of each slope, in the caller's order.
     *
     * @throws Refused with every opening that lies in no slope
     */
    List<List<OpeningOutline>> bySlope() {
        List<List<OpeningOutline>> bySlope = new ArrayList<>();
        slopes.forEach(slope -> bySlope.add(new ArrayList<>(0)));
        List<Refusal> refusals = new ArrayList<>(0);
        for (OpeningOutline opening : survey.openings()) {
            int slope = coveringMost(opening.outline());
            int outside = firstOutside(opening.outline(), slope);
            if (outside < opening.outline().size()) {
                refusals.add(
                        Refusal.of(
                                RefusalCode.OPENING_OUTSIDE,
                                opening.outlineAt().at(outside),
                                "An opening lies in one slope of the roof, and this corner is outside the slope of the others, or of"
                                        + " the roof. Move it, or draw the roof as points and planes and give each plane its part."));
            } else {
                bySlope.get(slope).add(putUp(opening, slopes.get(slope)));
            }
        }
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        return bySlope;
    }

    /** On a hip a corner lies in both slopes; the others tell in which of them the opening lies. */
    private int coveringMost(List<Point3> outline) {
        int best = 0;
        long most = -1;
        for (int slope = 0; slope < slopes.size(); slope++) {
            int of = slope;
            long covered = outline.stream().filter(corner -> covers(of, corner)).count();
            if (covered > most) {
                best = slope;
                most = covered;
            }
        }
        return best;
    }

    private int firstOutside(List<Point3> outline, int slope) {
        int corner = 0;
        while (corner < outline.size() && covers(slope, outline.get(corner))) {
            corner++;
        }
        return corner;
    }

    /** Whether a place lies in a slope seen from above, or no further than the tolerance beside it. */
    private boolean covers(int slope, Point3 place) {
        double near = survey.tolerance().metres();
        double[] box = boxes.get(slope);
        boolean away = place.x() < box[0] - near
                || place.x() > box[1] + near
                || place.y() < box[2] - near
                || place.y() > box[3] + near;
        return !away && covers(slopes.get(slope), place, near);
    }

    private static boolean covers(List<Point3> ring, Point3 place, double near) {
        boolean inside = false;
        for (int i = 0; i < ring.size(); i++) {
            Point3 a = ring.get(i);
            Point3 b = ring.get((i + 1) % ring.size());
            double runX = b.x() - a.x();
            double runY = b.y() - a.y();
            double x = place.x() - a.x();
            double y = place.y() - a.y();
            double along = Math.max(0, Math.min(1, (x * runX + y * runY) / (runX * runX + runY * runY)));
            if (Math.hypot(x - along * runX, y - along * runY) <= near) {
                return true;
            }
            boolean leftOfSide = runX * y - runY * x > 0;
            if (a.y() > place.y() != b.y() > place.y() && leftOfSide == b.y() > a.y()) {
                inside = !inside;
            }
        }
        return inside;
    }

    private static OpeningOutline putUp(OpeningOutline opening, List<Point3> ring) {
        Vector3 normal = normal(ring);
        Point3 on = ring.get(0);
        List<Point3> rim = opening.outline().stream()
                .map(corner -> new Point3(corner.x(), corner.y(), on.z() - fall(normal, corner.minus(on))))
                .toList();
        return new OpeningOutline(opening.id(), rim, opening.outlineAt());
    }

    private static double fall(Vector3 normal, Vector3 run) {
        return (normal.x() * run.x() + normal.y() * run.y()) / normal.z();
    }

    /** Square to the slope, upward, twice as long as it has area. */
    static Vector3 normal(List<Point3> ring) {
        Point3 first = ring.get(0);
        Vector3 normal = new Vector3(0, 0, 0);
        for (int i = 1; i + 1 < ring.size(); i++) {
            normal = normal.plus(ring.get(i).minus(first).cross(ring.get(i + 1).minus(first)));
        }
        return normal;
    }
}
