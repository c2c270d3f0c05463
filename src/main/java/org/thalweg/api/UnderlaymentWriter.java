package org.thalweg.api;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.wire.LayoutAnswer.Total;
import org.thalweg.api.wire.UnderlaymentAnswer;
import org.thalweg.api.wire.UnderlaymentAnswer.CourseAnswer;
import org.thalweg.api.wire.UnderlaymentAnswer.CoveredPlane;
import org.thalweg.api.wire.UnderlaymentAnswer.IceStripAnswer;
import org.thalweg.api.wire.UnderlaymentAnswer.RollOrderAnswer;
import org.thalweg.api.wire.UnderlaymentAnswer.RunAnswer;
import org.thalweg.api.wire.UnderlaymentForm;
import org.thalweg.api.wire.UnderlaymentForm.IceBarrierForm;
import org.thalweg.api.wire.UnderlaymentUsed;
import org.thalweg.api.wire.UnderlaymentUsed.IceBarrierUsed;
import org.thalweg.roof.Roof;
import org.thalweg.underlayment.Course;
import org.thalweg.underlayment.Course.Run;
import org.thalweg.underlayment.IceBarrier;
import org.thalweg.underlayment.IceBarrier.IceStrip;
import org.thalweg.underlayment.IceSpec;
import org.thalweg.underlayment.Roll;
import org.thalweg.underlayment.Underlay;
import org.thalweg.underlayment.Underlay.RollOrder;
import org.thalweg.underlayment.UnderlayCase;
import org.thalweg.units.Area;
import org.thalweg.units.Length;
import org.thalweg.units.Units;

/** Writes the sheets under the metal in the caller's units. */
final class UnderlaymentWriter {

    private final Units units;

    UnderlaymentWriter(Units units) {
        this.units = units;
    }

    UnderlaymentAnswer write(Roof roof, Underlay underlay, Optional<IceBarrier> ice) {
        return new UnderlaymentAnswer(
                underlay.planes().stream()
                        .map(plane -> new CoveredPlane(
                                roof.planes().get(plane.plane()).id(), area(plane.net()), courses(plane.courses())))
                        .toList(),
                order(underlay.order()),
                ice.map(barrier -> strips(roof, barrier)).orElse(List.of()),
                ice.map(IceBarrier::order).map(this::order));
    }

    private List<IceStripAnswer> strips(Roof roof, IceBarrier barrier) {
        return barrier.strips().stream().map(strip -> strip(roof, strip)).toList();
    }

    private IceStripAnswer strip(Roof roof, IceStrip strip) {
        double length = strip.courses().stream()
                .mapToDouble(course -> course.rolledOut().metres())
                .sum();
        return new IceStripAnswer(
                roof.edges().get(strip.edge()).id(),
                RoofWriter.marked(strip.width(), units),
                length(Length.metres(length)),
                courses(strip.courses()));
    }

    private List<CourseAnswer> courses(List<Course> courses) {
        return courses.stream()
                .map(course -> new CourseAnswer(
                        RoofWriter.marked(course.from(), units),
                        RoofWriter.marked(course.to(), units),
                        course.runs().stream().map(this::run).toList()))
                .toList();
    }

    private RunAnswer run(Run run) {
        return new RunAnswer(
                length(run.from()),
                length(run.to()),
                run.sheets().stream()
                        .map(sheet -> RoofWriter.marked(sheet.length(), units))
                        .toList());
    }

    private RollOrderAnswer order(RollOrder order) {
        return new RollOrderAnswer(
                order.rolls(),
                length(order.rolledOut()),
                area(order.area()),
                length(order.setAside()),
                length(order.rest()),
                order.nearest().map(this::length));
    }

    /** What is ordered of both. */
    static List<Total> totals(Underlay underlay, Optional<IceBarrier> ice) {
        Total sheet = Total.of("underlaymentRolls", underlay.order().rolls(), OrderWriter.PIECE);
        return ice.map(barrier -> List.of(
                        sheet, Total.of("iceBarrierRolls", barrier.order().rolls(), OrderWriter.PIECE)))
                .orElse(List.of(sheet));
    }

    UnderlaymentUsed used(UnderlayCase asked) {
        Roll roll = asked.roll();
        return new UnderlaymentUsed(
                length(roll.width()),
                length(roll.length()),
                length(roll.sideLap()),
                length(roll.endLap()),
                length(roll.lapsApart()),
                asked.ice().map(this::used));
    }

    private IceBarrierUsed used(IceSpec ice) {
        return new IceBarrierUsed(
                length(ice.overhang()),
                length(ice.insideWall()),
                length(ice.alongSlope()),
                length(ice.valley()),
                length(ice.roll().width()),
                length(ice.roll().length()),
                length(ice.roll().sideLap()),
                length(ice.roll().endLap()));
    }

    /** Pointers to what a request left out of it. */
    static void defaults(@Nullable UnderlaymentForm form, List<String> left) {
        UnderlaymentForm of = form == null ? UnderlaymentReader.NONE : form;
        UsedWriter.ifAbsent(of.rollWidth(), "#/underlayment/rollWidth", left);
        UsedWriter.ifAbsent(of.rollLength(), "#/underlayment/rollLength", left);
        UsedWriter.ifAbsent(of.sideLap(), "#/underlayment/sideLap", left);
        UsedWriter.ifAbsent(of.endLap(), "#/underlayment/endLap", left);
        UsedWriter.ifAbsent(of.endLapsApart(), "#/underlayment/endLapsApart", left);
        IceBarrierForm ice = of.iceBarrier();
        if (ice != null) {
            UsedWriter.ifAbsent(ice.insideWall(), "#/underlayment/iceBarrier/insideWall", left);
            UsedWriter.ifAbsent(ice.alongSlope(), "#/underlayment/iceBarrier/alongSlope", left);
            UsedWriter.ifAbsent(ice.valleyWidth(), "#/underlayment/iceBarrier/valleyWidth", left);
            UsedWriter.ifAbsent(ice.rollWidth(), "#/underlayment/iceBarrier/rollWidth", left);
            UsedWriter.ifAbsent(ice.rollLength(), "#/underlayment/iceBarrier/rollLength", left);
            UsedWriter.ifAbsent(ice.sideLap(), "#/underlayment/iceBarrier/sideLap", left);
            UsedWriter.ifAbsent(ice.endLap(), "#/underlayment/iceBarrier/endLap", left);
        }
    }

    private double length(Length length) {
        return units.length().round(length);
    }

    private double area(Area area) {
        return units.area().round(area);
    }
}
