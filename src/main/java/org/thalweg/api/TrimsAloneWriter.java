package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.api.wire.FindingAnswer;
import org.thalweg.api.wire.LayoutRequest.Include;
import org.thalweg.api.wire.ProfileAnswer;
import org.thalweg.api.wire.SheetCutAnswer;
import org.thalweg.api.wire.TrimAnswer;
import org.thalweg.api.wire.TrimsAnswer;
import org.thalweg.api.wire.TrimsAnswer.AloneUsed;
import org.thalweg.api.wire.TrimsRequest;
import org.thalweg.packet.LoneProfile;
import org.thalweg.takeoff.SheetCut;
import org.thalweg.trim.Trim;
import org.thalweg.trim.TrimSpec.Sheet;
import org.thalweg.units.Length;
import org.thalweg.units.Tape;
import org.thalweg.units.Units;

/** Writes the answer to a request for trims alone. */
final class TrimsAloneWriter {

    private final Units units;
    private final TrimsRequest request;
    private final String engine;
    private final String digest;
    private final TrimUsedWriter used;
    private final CuttingWriter cutting;

    TrimsAloneWriter(Units units, TrimsRequest request, String engine, String digest) {
        this.units = units;
        this.request = request;
        this.engine = engine;
        this.digest = digest;
        this.used = new TrimUsedWriter(units);
        this.cutting = new CuttingWriter(units);
    }

    /** Of a roof. */
    TrimsAnswer answer(TrimsReader.OfRoof asked, List<Trim> trims, List<SheetCut> cuts) {
        List<String> left = new ArrayList<>();
        UsedWriter.ifAbsent(request.tolerance(), "#/tolerance", left);
        FootprintReader.defaults(request.roof() == null ? null : request.roof().footprint(), left);
        UsedWriter.ifAbsent(request.hipCap() == null ? null : request.hipCap().leg(), "#/hipCap/leg", left);
        TrimUsedWriter.defaults(request.trims(), request.panel(), left);
        Length tolerance = Length.metres(asked.survey().tolerance().metres());
        AloneUsed figures = new AloneUsed(
                Optional.of(units.length().round(tolerance)),
                Optional.of(used.used(asked.spec())),
                Optional.empty(),
                Optional.empty(),
                cutting.used(request.cutting(), asked.stock(), left),
                Tape.rule(units.length()),
                left);
        List<FindingAnswer> findings = new ArrayList<>();
        trims.forEach(trim -> findings.addAll(FindingWriter.findings(trim.findings(), units)));
        findings.addAll(cutting.findings(cuts));
        return answer(
                figures,
                writer(asked.spec().sheet()).write(trims),
                List.of(),
                cutting.cuts(asked.stock(), cuts),
                findings);
    }

    /** Of profiles by themselves. */
    TrimsAnswer answer(TrimsReader.Alone asked, List<LoneProfile.Made> made, List<SheetCut> cuts) {
        List<String> left = new ArrayList<>();
        TrimUsedWriter.defaults(request.sheet(), "#/sheet", left);
        TrimUsedWriter.defaults(request.stock(), "#/stock", left);
        AloneUsed figures = new AloneUsed(
                Optional.empty(),
                Optional.empty(),
                Optional.of(used.sheet(asked.sheet())),
                Optional.of(used.stock(asked.stock())),
                cutting.used(request.cutting(), asked.cutting(), left),
                Tape.rule(units.length()),
                left);
        TrimWriter writer = writer(asked.sheet());
        List<ProfileAnswer> profiles = new ArrayList<>(made.size());
        List<FindingAnswer> findings = new ArrayList<>();
        for (LoneProfile.Made each : made) {
            profiles.add(writer.write(each));
            findings.addAll(FindingWriter.findings(each.findings(), units));
        }
        findings.addAll(cutting.findings(cuts));
        return answer(figures, List.of(), profiles, cutting.cuts(asked.cutting(), cuts), findings);
    }

    private TrimWriter writer(Sheet sheet) {
        boolean working = request.include() != null && request.include().contains(Include.WORKING);
        return new TrimWriter(units, sheet, working);
    }

    private TrimsAnswer answer(
            AloneUsed figures,
            List<TrimAnswer> trims,
            List<ProfileAnswer> profiles,
            Optional<List<SheetCutAnswer>> cuts,
            List<FindingAnswer> findings) {
        return new TrimsAnswer(engine, digest, request.units(), figures, trims, profiles, cuts, findings, Cautions.ALL);
    }
}
