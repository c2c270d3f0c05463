package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.api.wire.FindingAnswer;
import org.thalweg.api.wire.LayoutRequest.Include;
import org.thalweg.api.wire.LayoutRequest.PanelForm;
import org.thalweg.api.wire.RiseAndRun;
import org.thalweg.api.wire.ValleyRequest;
import org.thalweg.api.wire.ValleysAnswer;
import org.thalweg.api.wire.ValleysAnswer.AloneUsed;
import org.thalweg.packet.LaidValley;
import org.thalweg.packet.ValleyCase;
import org.thalweg.packet.ValleyJobs.ValleyJob;
import org.thalweg.packet.ValleyTerms;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;
import org.thalweg.units.Tape;
import org.thalweg.units.Units;

/** Writes the answer to a request for one valley. */
final class ValleyAloneWriter {

    private final Units units;

    ValleyAloneWriter(Units units) {
        this.units = units;
    }

    ValleysAnswer answer(ValleyJob job, ValleyCase asked, ValleyRequest request, String engine, String digest) {
        List<FindingAnswer> findings = new ArrayList<>();
        for (LaidValley valley : job.valleys()) {
            findings.addAll(FindingWriter.findings(valley.findings(), units));
        }
        CuttingWriter cutting = new CuttingWriter(units);
        findings.addAll(cutting.findings(job.cuts()));
        return new ValleysAnswer(
                engine,
                digest,
                Optional.ofNullable(request.job()),
                request.units(),
                used(asked, request),
                new ValleyWriter(units, asked.terms(), working(asked, request)).write(job.valleys()),
                cutting.cuts(asked.stock(), job.cuts()),
                findings,
                Cautions.ALL);
    }

    private Optional<WorkingWriter> working(ValleyCase asked, ValleyRequest request) {
        return request.include() != null && request.include().contains(Include.WORKING)
                ? Optional.of(new WorkingWriter(units, WorkingCase.of(request, asked)))
                : Optional.empty();
    }

    private AloneUsed used(ValleyCase asked, ValleyRequest request) {
        ValleyTerms terms = asked.terms();
        Pitch least = asked.survey().leastSlope();
        UsedWriter used = new UsedWriter(units);
        List<String> left = defaults(request);
        return new AloneUsed(
                length(Length.metres(asked.survey().tolerance().metres())),
                length(terms.panelCover()),
                terms.metal().key(),
                new RiseAndRun(least.rise(), least.run()),
                used.pan(terms),
                used.fastening(terms),
                used.climate(terms, request.climate()),
                used.treatments(request.edgeTreatments(), asked.byKind(), asked.byEdge(), terms),
                new CuttingWriter(units).used(request.cutting(), asked.stock(), left),
                Tape.rule(units.length()),
                left);
    }

    private static List<String> defaults(ValleyRequest request) {
        PanelForm panel = request.panel();
        List<String> left = new ArrayList<>();
        UsedWriter.ifAbsent(request.tolerance(), "#/tolerance", left);
        FootprintReader.defaults(request.roof() == null ? null : request.roof().footprint(), left);
        UsedWriter.ifAbsent(panel.metal(), "#/panel/metal", left);
        UsedWriter.ifAbsent(panel.minimumSlope(), "#/panel/minimumSlope", left);
        UsedWriter.defaults(request.valleyPan(), request.fastening(), request.climate(), left);
        return left;
    }

    private double length(Length length) {
        return units.length().round(length);
    }
}
