package org.thalweg.underlayment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;
import org.thalweg.units.Area;
import org.thalweg.units.Length;

/**
 * The underlayment of a roof: every plane covered from its lowest place up.
 *
 * <p>What is always true: the courses of a plane cover it, each laps the one below by the side lap, and no sheet is longer than
 * a roll. The whole of every plane is covered: an ice barrier comes besides, though codes let it take the place of the sheet.
 *
 * <p>Known limits: sheets are not turned over hips and ridges or up walls, and one row of courses is laid. The doubled rows
 * printed for shingles on low slopes are laid by giving a side lap of half the width and more.
 * Of a mirrored roof every run is as long, but rolls end at other places in it.
 *
 * @param roll   what it is laid of
 * @param planes every plane, in the order of the roof
 * @param order  what it takes, all planes together; rolled out plane by plane, course by course, run by run from the left
 */
public record Underlay(Roll roll, List<PlaneUnderlay> planes, RollOrder order) {

    public Underlay {
        planes = List.copyOf(planes);
    }

    /**
     * One plane.
     *
     * @param plane   index in the roof's planes
     * @param net     its true area, openings left out
     * @param courses from the lowest up
     */
    public record PlaneUnderlay(int plane, Area net, List<Course> courses) {

        public PlaneUnderlay {
            courses = List.copyOf(courses);
        }
    }

    /** Lays it. */
    public static Underlay of(Roof roof, Roll roll) {
        Tolerance tolerance = roof.tolerance();
        Rolling rolling = new Rolling(roll, tolerance);
        List<PlaneUnderlay> planes = new ArrayList<>(roof.planes().size());
        for (int i = 0; i < roof.planes().size(); i++) {
            Plane plane = roof.planes().get(i);
            Region turned = plane.shape().turned();
            List<Course> courses = rolling.courses(
                    Bands.of(turned, roll, count(roll, turned.outer().mostAcross(), tolerance), tolerance));
            planes.add(new PlaneUnderlay(i, plane.area(), courses));
        }
        return new Underlay(
                roll,
                planes,
                RollOrder.of(
                        roll,
                        rolling,
                        planes.stream().map(PlaneUnderlay::courses).toList()));
    }

    /** How many courses reach so far: n = ceil((height − side lap) / (width − side lap)), 1 at least. [geometry] */
    static int count(Roll roll, double height, Tolerance tolerance) {
        return (int) Math.max(1, tolerance.ceil(height - roll.sideLap().metres(), roll.exposure()));
    }

    /** True area of all planes. */
    public Area net() {
        return new Area(
                planes.stream().mapToDouble(plane -> plane.net().squareMetres()).sum());
    }

    /** What lies over other sheets: the end laps of every run, and every course but the lowest of a plane by its side lap. */
    public Area laps() {
        double laps = 0;
        for (PlaneUnderlay plane : planes) {
            for (int i = 0; i < plane.courses().size(); i++) {
                double runs = plane.courses().get(i).covered().metres();
                laps += (plane.courses().get(i).rolledOut().metres() - runs)
                        * roll.width().metres();
                laps += i == 0 ? 0 : runs * roll.sideLap().metres();
            }
        }
        return new Area(laps);
    }

    /**
     * What it takes.
     *
     * @param rolls     whole rolls, opened one after another
     * @param rolledOut all sheets end to end, laps included
     * @param area      of all sheets: that length by the width of the roll
     * @param setAside  what was cut off, or left and too short to begin a run with
     * @param rest      what is left of the last roll
     * @param nearest   the least distance between end laps of courses that lie over each other, if any do
     */
    public record RollOrder(
            int rolls, Length rolledOut, Area area, Length setAside, Length rest, Optional<Length> nearest) {

        static RollOrder of(Roll roll, Rolling rolling, List<List<Course>> laid) {
            double rolledOut = laid.stream()
                    .flatMap(List::stream)
                    .mapToDouble(course -> course.rolledOut().metres())
                    .sum();
            Optional<Length> nearest = laid.stream()
                    .flatMapToDouble(courses -> Rolling.nearest(courses).stream())
                    .boxed()
                    .min(Double::compare)
                    .map(Length::metres);
            return new RollOrder(
                    rolling.rolls(),
                    Length.metres(rolledOut),
                    new Area(rolledOut * roll.width().metres()),
                    rolling.setAside(),
                    rolling.rest(),
                    nearest);
        }
    }
}
