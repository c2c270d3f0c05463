package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.api.wire.ProfileAnswer;
import org.thalweg.api.wire.ProfileAnswer.RunAnswer;
import org.thalweg.api.wire.TrimAnswer;
import org.thalweg.api.wire.TrimAnswer.BlankAnswer;
import org.thalweg.api.wire.TrimAnswer.CutAnswer;
import org.thalweg.api.wire.TrimAnswer.EndAnswer;
import org.thalweg.api.wire.TrimAnswer.MeetingAnswer;
import org.thalweg.api.wire.TrimAnswer.PieceAnswer;
import org.thalweg.api.wire.WorkingAnswer;
import org.thalweg.packet.LoneProfile;
import org.thalweg.trim.FlatTrim;
import org.thalweg.trim.LegCut;
import org.thalweg.trim.Meeting;
import org.thalweg.trim.Profile;
import org.thalweg.trim.Trim;
import org.thalweg.trim.TrimEnd;
import org.thalweg.trim.TrimPiece;
import org.thalweg.trim.TrimSpec.Sheet;
import org.thalweg.units.Units;

/** Writes trims in the caller's units; a layout and an answer about trims alone both come from here. */
final class TrimWriter {

    private final Units units;
    private final Sheet sheet;
    private final boolean working;
    private final FlatWriter flats;

    /**
     * @param sheet   what trims are bent of
     * @param working whether it is told how figures came about
     */
    TrimWriter(Units units, Sheet sheet, boolean working) {
        this.units = units;
        this.sheet = sheet;
        this.working = working;
        this.flats = new FlatWriter(units);
    }

    List<TrimAnswer> write(List<Trim> trims) {
        List<TrimAnswer> written = new ArrayList<>(trims.size());
        for (Trim trim : trims) {
            written.add(write(trim));
        }
        return written;
    }

    private TrimAnswer write(Trim trim) {
        List<PieceAnswer> pieces = new ArrayList<>(trim.pieces().size());
        trim.pieces().forEach(piece -> pieces.add(piece(piece)));
        return new TrimAnswer(
                trim.edge().id(),
                trim.edge().kind(),
                trim.profile().name(),
                trim.hand(),
                !trim.seat().mirrored(),
                trim.seat().bend().roundedDegrees(),
                flats.legs(trim.profile()),
                flats.bends(trim.profile()),
                flats.hems(trim.profile()),
                flats.marked(trim.flat().width()),
                flats.bendLines(trim.flat()),
                flats.points(trim.section()),
                List.of(end(trim.start()), end(trim.finish())),
                flats.marked(trim.run()),
                pieces,
                FlatWriter.codes(trim.findings()),
                working(trim.profile(), trim.flat()));
    }

    private Optional<List<WorkingAnswer>> working(Profile profile, FlatTrim flat) {
        return working ? Optional.of(FlatWorking.of(units, sheet.allowance(), profile, flat)) : Optional.empty();
    }

    private EndAnswer end(TrimEnd end) {
        List<CutAnswer> cuts = new ArrayList<>(end.cuts().size());
        for (LegCut cut : end.cuts()) {
            cuts.add(new CutAnswer(
                    cut.leg() + 1,
                    flats.marked(cut.inner()),
                    flats.marked(cut.outer()),
                    cut.cut().roundedDegrees()));
        }
        return new EndAnswer(
                end.hand(),
                flats.marked(end.reach()),
                flats.marked(end.depth()),
                meeting(end.first()),
                meeting(end.last()),
                cuts);
    }

    private static MeetingAnswer meeting(Meeting meeting) {
        return new MeetingAnswer(
                meeting.how(),
                meeting.id(),
                meeting.kind(),
                meeting.plan().roundedDegrees(),
                meeting.angle().roundedDegrees(),
                meeting.planMitre().roundedDegrees(),
                meeting.mitre().roundedDegrees(),
                meeting.inside());
    }

    private PieceAnswer piece(TrimPiece piece) {
        return new PieceAnswer(
                piece.mark(),
                flats.marked(piece.from()),
                flats.marked(piece.length()),
                flats.marked(piece.lap()),
                new BlankAnswer(flats.points(piece.blank().outline())));
    }

    /** A profile that belongs to no roof. */
    ProfileAnswer write(LoneProfile.Made made) {
        LoneProfile asked = made.asked();
        List<RunAnswer> runs = new ArrayList<>(made.runs().size());
        for (LoneProfile.CutRun cut : made.runs()) {
            runs.add(new RunAnswer(flats.marked(cut.run().length()), cut.run().count(), flats.marked(cut.pieces())));
        }
        return new ProfileAnswer(
                asked.id(),
                asked.profile().name(),
                flats.legs(asked.profile()),
                flats.bends(asked.profile()),
                flats.hems(asked.profile()),
                flats.marked(made.flat().width()),
                flats.bendLines(made.flat()),
                flats.points(asked.profile().section()),
                flats.marked(asked.lap()),
                runs,
                FlatWriter.codes(made.findings()),
                working(asked.profile(), made.flat()));
    }
}
