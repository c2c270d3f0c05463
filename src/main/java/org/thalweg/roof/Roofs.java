package org.thalweg.roof;

import java.util.List;
import org.thalweg.geometry.Frame;
import org.thalweg.geometry.PlanGrid;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Vector3;
import org.thalweg.units.Area;
import org.thalweg.units.Length;

/**
 * Reads a survey into a roof: joins corners, lays every plane flat and checks it, cuts sides where something touches
 * them, finds which planes meet where, and names every edge.
 *
 * <p>What is always true: the order of the planes, the corner a ring starts at and the way round it runs change no number,
 * only the order of the answer. Several thousand planes take about n log n steps.
 */
public final class Roofs {

    /** Most times corners of one plane may lie on a side of another; more are refused. */
    public static final int MOST_CUTS = Pieces.MOST_CUTS;

    private final RoofSurvey survey;
    private final Corners corners;
    private final Outlines outlines;
    private final PlaneReader reader;

    private Roofs(RoofSurvey survey) {
        this.survey = survey;
        corners = new Corners(survey.planes(), survey.tolerance());
        outlines = new Outlines(survey.planes(), corners);
        reader = new PlaneReader(survey.planes(), corners, outlines, survey.tolerance());
    }

    /**
     * Joins corners, splits edges met half-way, checks and frames every plane and names every edge.
     *
     * @param survey planes with corners within a million kilometres of the origin
     * @throws org.thalweg.finding.Refused when what was measured is no roof
     */
    public static Roof read(RoofSurvey survey) {
        if (survey.planes().isEmpty()) {
            return new Roof(List.of(), List.of(), List.of(), survey.tolerance());
        }
        return new Roofs(survey).read();
    }

    private Roof read() {
        reader.read();
        PlanGrid grid = new PlanGrid(corners.x, corners.y, corners.count);
        Pieces pieces = new Pieces(survey.planes(), corners, outlines, grid);
        Carriers carriers = new Carriers(corners, pieces);
        Lines lines = new Lines(pieces, reader.fits);
        if (!survey.named().isEmpty()) {
            new NamedLines(corners, pieces, lines, carriers).apply(survey.named(), grid);
        }
        EdgeList list = new EdgeList(corners, outlines, pieces, lines);
        List<Edge> edges = list.edges();
        Plane[] planes = new Plane[survey.planes().size()];
        RoofFindings findings = new RoofFindings(survey);
        for (int p = 0; p < planes.length; p++) {
            planes[p] = plane(p, new Shapes(outlines, pieces, reader, lines, list).of(p));
            findings.ofPlane(planes[p]);
        }
        for (int e = 0; e < edges.size(); e++) {
            findings.ofEdge(edges.get(e), list.crowd[e]);
        }
        findings.ofCorners(corners, outlines, carriers, grid);
        return new Roof(List.of(planes), edges, findings.findings(), survey.tolerance());
    }

    private Plane plane(int p, Region shape) {
        PlaneOutline outline = survey.planes().get(p);
        PlaneFit fit = reader.fits[p];
        double area = shape.area();
        return new Plane(
                outline.id(),
                frame(p),
                shape,
                fit.slope(),
                fit.level(),
                new Area(area),
                new Area(area * fit.outward().z()),
                Length.metres(reader.off[p]),
                outline.at());
    }

    private Frame frame(int p) {
        PlaneFit fit = reader.fits[p];
        Vector3 origin = fit.across()
                .times(reader.leastAcross[p])
                .plus(fit.up().times(reader.leastUp[p]))
                .plus(fit.outward().times(fit.height()));
        return new Frame(
                corners.inWorld(whole(origin.x()), whole(origin.y()), whole(origin.z())),
                fit.across(),
                fit.up(),
                fit.outward());
    }

    /** Rounding noise beside the datum is the datum. */
    private double whole(double fromDatum) {
        return Math.abs(fromDatum) <= survey.tolerance().hair() ? 0 : fromDatum;
    }
}
