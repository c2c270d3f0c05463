package org.thalweg.api;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.wire.HipCapForm;
import org.thalweg.api.wire.LayoutRequest.PanelForm;
import org.thalweg.api.wire.TrimsRequest;
import org.thalweg.api.wire.TrimsRequest.ProfileForm;
import org.thalweg.api.wire.TrimsRequest.RunForm;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.packet.LoneProfile;
import org.thalweg.packet.LoneProfile.Run;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.takeoff.SheetStock;
import org.thalweg.trim.Bend;
import org.thalweg.trim.Profile;
import org.thalweg.trim.TrimSpec;
import org.thalweg.trim.TrimSpec.Sheet;
import org.thalweg.trim.TrimStock;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/** Reads the wire's request for trims alone: units in, defaults filled in, pointers kept. */
final class TrimsReader {

    private static final Origin PROFILES = Origin.REQUEST.at("profiles");

    private final TrimsRequest request;
    private final TapeReader tape;
    private final TrimReader trims;

    private TrimsReader(TrimsRequest request) {
        this.request = request;
        this.tape = new TapeReader(request.units().length());
        this.trims = new TrimReader(request.units().length(), tape);
    }

    /**
     * The trims of a roof, as asked for.
     *
     * @param survey the roof as measured
     * @param spec   what its edges are trimmed with
     * @param stock  what their pieces are cut from, if that is asked
     */
    record OfRoof(RoofSurvey survey, TrimSpec spec, Optional<SheetStock> stock) {}

    /**
     * Profiles by themselves, as asked for.
     *
     * @param sheet    what they are bent of
     * @param stock    what their pieces are made of
     * @param profiles in their order
     * @param cutting  what their pieces are cut from, if that is asked
     */
    record Alone(Sheet sheet, TrimStock stock, List<LoneProfile> profiles, Optional<SheetStock> cutting) {}

    static OfRoof ofRoof(TrimsRequest request) {
        return new TrimsReader(request).ofRoof();
    }

    static Alone alone(TrimsRequest request) {
        return new TrimsReader(request).alone();
    }

    private OfRoof ofRoof() {
        PanelForm panel = request.panel();
        TrimSpec spec = trims.spec(request.trims(), seamHeight(panel), hipLeg(), thickness(panel));
        Optional<SheetStock> stock = cutting();
        // The shape of the request was checked: without profiles it has a roof.
        RoofSurvey survey = RoofReader.read(
                requireNonNull(request.roof()),
                request.tolerance(),
                panel == null ? null : panel.minimumSlope(),
                PanelReader.PANEL.at("minimumSlope"),
                tape);
        CuttingReader.refuseDuplicates(request.cutting());
        return new OfRoof(survey, spec, stock);
    }

    private Optional<SheetStock> cutting() {
        return new CuttingReader(request.units().length(), tape)
                .read(
                        request.cutting(),
                        "Trims are not cut from the coil of panels. Leave the coil out; a layout takes it.");
    }

    private Length hipLeg() {
        HipCapForm cap = request.hipCap();
        LengthUnit unit = request.units().length();
        return new ValleyTermsReader(null, null, null, cap, unit, tape).hipCap().leg();
    }

    private Optional<Length> seamHeight(@Nullable PanelForm panel) {
        return panel == null
                ? Optional.empty()
                : tape.given(panel.seamHeight(), PanelReader.PANEL.at("seamHeight"), Limits.SEAM_HEIGHT);
    }

    private Length thickness(@Nullable PanelForm panel) {
        return panel == null
                ? PanelDefaults.THICKNESS
                : tape.length(
                        panel.thickness(),
                        PanelDefaults.THICKNESS,
                        PanelReader.PANEL.at("thickness"),
                        Limits.THICKNESS);
    }

    private Alone alone() {
        Sheet sheet = trims.sheet(request.sheet(), Origin.REQUEST.at("sheet"), PanelDefaults.THICKNESS);
        TrimStock stock = trims.stock(request.stock(), Origin.REQUEST.at("stock"));
        Optional<SheetStock> cutting = cutting();
        List<LoneProfile> profiles = new ArrayList<>();
        List<Refusal> refusals = new ArrayList<>(0);
        Set<String> ids = new HashSet<>();
        for (ProfileForm form : requireNonNull(request.profiles())) {
            Origin at = PROFILES.at(profiles.size());
            if (!ids.add(form.id())) {
                refusals.add(Refusal.of(
                        RefusalCode.DUPLICATE_ID,
                        at.at("id"),
                        "Another profile is called %s too. Give each its own id.".formatted(Echo.of(form.id()))));
            }
            profiles.add(new LoneProfile(
                    form.id(),
                    profile(form, sheet, at),
                    sheet,
                    stock,
                    trims.lap(form.lap(), trims.usualLap(), at.at("lap"), stock),
                    runs(form.lengths(), at.at("lengths")),
                    at));
        }
        tape.done();
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        CuttingReader.refuseDuplicates(request.cutting());
        return new Alone(sheet, stock, profiles, cutting);
    }

    private Profile profile(ProfileForm form, Sheet sheet, Origin at) {
        List<Length> legs = trims.legs(form.legs(), at.at("legs"));
        trims.oneFewer(form.bendsDeg(), legs, at.at("bendsDeg"));
        List<Bend> bends = new ArrayList<>(form.bendsDeg().size());
        for (int i = 0; i + 1 < legs.size(); i++) {
            double turn = i < form.bendsDeg().size() ? form.bendsDeg().get(i) : 0;
            bends.add(new Bend(Angle.degrees(Math.abs(turn)), turn > 0, sheet.insideRadius()));
        }
        return new Profile(
                form.name() == null ? form.id() : form.name(),
                legs,
                bends,
                trims.hem(
                        form.hems() == null ? null : form.hems().first(),
                        at.at("hems").at("first")),
                trims.hem(
                        form.hems() == null ? null : form.hems().last(),
                        at.at("hems").at("last")),
                sheet.thickness());
    }

    private List<Run> runs(@Nullable List<RunForm> given, Origin at) {
        List<Run> runs = new ArrayList<>();
        if (given != null) {
            for (RunForm run : given) {
                Length length = tape.length(run.length(), at.at(runs.size()).at("length"), Limits.TRIM_RUN);
                runs.add(new Run(length, run.count() == null ? 1 : run.count().intValue()));
            }
        }
        return runs;
    }
}
