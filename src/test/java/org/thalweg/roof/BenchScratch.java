package org.thalweg.roof;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Pitch;

public class BenchScratch {
    static Point3 p(double x, double y, double z) {
        return new Point3(x, y, z);
    }

    static RoofSurvey house() {
        // L-plan: main 12 x 8, wing 6 wide; 6 planes
        Point3 a = p(0, 0, 0),
                b = p(12, 0, 0),
                c = p(12, 8, 0),
                d = p(8, 8, 0),
                e = p(8, 13, 0),
                f = p(2, 13, 0),
                g = p(2, 8, 0),
                h = p(0, 8, 0);
        Point3 r1 = p(0, 4, 2), r2 = p(12, 4, 2);
        Point3 w1 = p(5, 13, 1.5), w2 = p(5, 5, 1.5);
        List<List<Point3>> rings = List.of(
                List.of(a, b, r2, r1),
                List.of(c, d, w2, g, h, r1, r2),
                List.of(d, e, w1, w2),
                List.of(w1, f, g, w2),
                List.of(p(20, 0, 0), p(24, 0, 0), p(24, 3, 1), p(20, 3, 1)),
                List.of(p(20, 3, 1), p(24, 3, 1), p(24, 6, 0), p(20, 6, 0)));
        List<PlaneOutline> planes = new ArrayList<>();
        for (int i = 0; i < rings.size(); i++) {
            Origin at = Origin.REQUEST.at("planes").at(i);
            planes.add(new PlaneOutline("p" + i, rings.get(i), List.of(), at, at.at("outline")));
        }
        return new RoofSurvey(planes, List.of(), Tolerance.DEFAULT, new Pitch(0.25, 12), Source.COMMON_PRACTICE);
    }

    static RoofSurvey grid(int nx, int ny, double turn) {
        List<PlaneOutline> planes = new ArrayList<>();
        double co = Math.cos(turn), si = Math.sin(turn);
        for (int i = 0; i < nx; i++)
            for (int j = 0; j < ny; j++) {
                double z0 = (j % 2) * 1.0, z1 = 1 - z0;
                List<Point3> ring = new ArrayList<>();
                double[][] xy = {
                    {i * 5, j * 3, z0}, {i * 5 + 5, j * 3, z0}, {i * 5 + 5, j * 3 + 3, z1}, {i * 5, j * 3 + 3, z1}
                };
                for (double[] q : xy) ring.add(p(q[0] * co - q[1] * si, q[0] * si + q[1] * co, q[2]));
                Origin at = Origin.REQUEST.at("planes").at(planes.size());
                planes.add(new PlaneOutline("p" + planes.size(), ring, List.of(), at, at.at("outline")));
            }
        return new RoofSurvey(planes, List.of(), Tolerance.DEFAULT, new Pitch(0.25, 12), Source.COMMON_PRACTICE);
    }

    static RoofSurvey ring(List<Point3> ring) {
        Origin at = Origin.REQUEST.at("planes").at(0);
        return new RoofSurvey(
                List.of(new PlaneOutline("p", ring, List.of(), at, at.at("outline"))),
                List.of(),
                Tolerance.DEFAULT,
                new Pitch(0.25, 12),
                Source.COMMON_PRACTICE);
    }

    public static void main(String[] args) {
        RoofSurvey house = house();
        System.out.println(Roofs.read(house).edges().stream().map(e -> e.id()).toList());
        System.out.println(Roofs.read(house).findings());
        for (int k = 0; k < 8; k++) {
            long t = System.nanoTime();
            int sum = 0;
            int n = 100000;
            for (int i = 0; i < n; i++) sum += Roofs.read(house).edges().size();
            System.out.printf("house %.2f us %d%n", (System.nanoTime() - t) / 1e3 / n, sum);
        }
        for (int k = 0; k < 3; k++)
            for (int[] s : new int[][] {{10, 10}, {32, 32}, {70, 72}, {1, 5000}, {5000, 1}, {160, 160}})
                for (double turn : new double[] {0, 0.7853981}) {
                    RoofSurvey g = grid(s[0], s[1], turn);
                    long t = System.nanoTime();
                    Roof r = Roofs.read(g);
                    System.out.printf(
                            "grid %d x %d turn %.2f: %.1f ms, %d edges %d findings%n",
                            s[0],
                            s[1],
                            turn,
                            (System.nanoTime() - t) / 1e6,
                            r.edges().size(),
                            r.findings().size());
                }
        int n = 100000;
        for (int k = 0; k < 2; k++) {
            List<Point3> circle = new ArrayList<>(),
                    comb = new ArrayList<>(),
                    star = new ArrayList<>(),
                    random = new ArrayList<>();
            java.util.Random rnd = new java.util.Random(1);
            for (int i = 0; i < n; i++) {
                double a = 2 * Math.PI * i / n;
                double r = 1000 + (i % 2) * 5;
                circle.add(p(r * Math.cos(a), r * Math.sin(a), 0));
                double q = i % 2 == 0 ? 100 : 1000;
                star.add(p(q * Math.cos(a), q * Math.sin(a), 0));
                random.add(p(rnd.nextDouble() * 1000, rnd.nextDouble() * 1000, 0));
            }
            for (int i = 0; i < n / 4 - 1; i++) {
                comb.add(p(1000, i * 0.1, 0));
                comb.add(p(0.05, i * 0.1, 0));
                comb.add(p(0.05, i * 0.1 + 0.05, 0));
                comb.add(p(1000, i * 0.1 + 0.05, 0));
            }
            comb.add(p(1000.1, comb.get(comb.size() - 1).y(), 0));
            comb.add(p(1000.1, -1, 0));
            comb.add(p(0, -1, 0));
            List<Point3> comb2 = new ArrayList<>();
            for (Point3 c : comb) comb2.add(p(c.x() * 0.7 - c.y() * 0.7, c.x() * 0.7 + c.y() * 0.7, 0));
            int w = 0;
            for (List<Point3> ring : List.of(circle, comb, comb2, star, random)) {
                long t = System.nanoTime();
                String what;
                try {
                    what = Roofs.read(ring(ring)).edges().size() + "";
                } catch (org.thalweg.finding.Refused e) {
                    what = e.refusals().get(0).detail();
                }
                System.out.printf("ring %d: %.1f ms %s%n", w++, (System.nanoTime() - t) / 1e6, what);
            }
        }
    }
}
