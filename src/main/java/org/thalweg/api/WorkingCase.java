package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.api.wire.ClimateForm;
import org.thalweg.api.wire.FasteningForm;
import org.thalweg.api.wire.LayoutRequest;
import org.thalweg.api.wire.ValleyPanForm;
import org.thalweg.api.wire.ValleyRequest;
import org.thalweg.api.wire.ValleyRequest.CornerForm;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.packet.LayoutCase;
import org.thalweg.packet.LayoutCase.EdgeException;
import org.thalweg.packet.PanelEnd;
import org.thalweg.packet.ValleyCase;
import org.thalweg.packet.ValleyTerms;
import org.thalweg.reference.Rules;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/**
 * What the working of a valley has to know of its request: which figures are the caller's own, and from what the valley was
 * given.
 *
 * @param corner    the corner, where the valley was asked for by one
 * @param pan       the pan as the request has it
 * @param fastening the fastening as the request has it
 * @param climate   heat and rain as the request has them
 * @param survey    the roof as measured
 * @param terms     what valleys were laid out by
 * @param holdBacks every hold-back the request has
 */
record WorkingCase(
        Optional<Corner> corner,
        ValleyPanForm pan,
        FasteningForm fastening,
        ClimateForm climate,
        RoofSurvey survey,
        ValleyTerms terms,
        List<Length> holdBacks) {

    WorkingCase {
        holdBacks = List.copyOf(holdBacks);
    }

    /**
     * An inner corner.
     *
     * @param angle γ, between the eaves
     * @param run   level run of the valley along the left eave, if the caller gave that and not its length
     */
    record Corner(Angle angle, Optional<Length> run) {

        static Corner of(CornerForm form, LengthUnit unit) {
            Origin at = Origin.REQUEST.at("corner").at("run");
            return new Corner(
                    Angle.degrees(form.planAngleDeg()), new TapeReader(unit).given(form.run(), at, Limits.CORNER_RUN));
        }
    }

    static WorkingCase of(ValleyRequest request, ValleyCase asked) {
        LengthUnit unit = request.units().length();
        return new WorkingCase(
                Optional.ofNullable(request.corner()).map(form -> Corner.of(form, unit)),
                request.valleyPan() == null ? ValleyTermsReader.NO_PAN : request.valleyPan(),
                request.fastening() == null ? FasteningReader.NONE : request.fastening(),
                request.climate() == null ? ValleyTermsReader.NO_CLIMATE : request.climate(),
                asked.survey(),
                asked.terms(),
                holdBacks(asked.terms(), asked.byKind(), asked.byEdge()));
    }

    static WorkingCase of(LayoutRequest request, LayoutCase asked) {
        return new WorkingCase(
                Optional.empty(),
                request.valleyPan() == null ? ValleyTermsReader.NO_PAN : request.valleyPan(),
                request.fastening() == null ? FasteningReader.NONE : request.fastening(),
                request.climate() == null ? ValleyTermsReader.NO_CLIMATE : request.climate(),
                asked.survey(),
                asked.valleys(),
                holdBacks(asked.valleys(), asked.byKind(), asked.byEdge()));
    }

    private static List<Length> holdBacks(
            ValleyTerms terms, Map<EdgeKind, PanelEnd> byKind, List<EdgeException> byEdge) {
        List<Length> all = new ArrayList<>();
        terms.pan().holdBack().ifPresent(all::add);
        byKind.getOrDefault(EdgeKind.VALLEY, PanelEnd.NONE).setback().ifPresent(all::add);
        byEdge.forEach(exception -> exception.end().setback().ifPresent(all::add));
        return all;
    }

    /** Noise that is taken off before something is rounded up: a hair. */
    Length hair() {
        return Length.metres(survey.tolerance().hair());
    }

    /** Whether two computed lengths are one; metres. */
    boolean same(double a, double b) {
        return survey.tolerance().same(a, b);
    }

    /** Where the lap of the pieces comes from. */
    String lapSource(LengthUnit unit) {
        Source usual = unit.inInches()
                ? Rules.valleyUsualLap().source()
                : Rules.valleyUsualMetricLap().source();
        return WorkingSheet.whose(pan.lap(), usual);
    }
}
