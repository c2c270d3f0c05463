package org.thalweg.packet;

import java.util.List;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.roof.Roof;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.roof.Roofs;
import org.thalweg.takeoff.SheetCut;
import org.thalweg.takeoff.SheetCutting;
import org.thalweg.takeoff.SheetStock;
import org.thalweg.trim.Trim;
import org.thalweg.trim.TrimSpec;
import org.thalweg.trim.Trims;
import org.thalweg.units.Count;

/** Lays out trims, of a roof or of profiles by themselves, and bounds what that may cost. */
public final class TrimWork {

    /** Most pieces of trim of one request. */
    public static final int MOST_PIECES = 20_000;

    private static final Origin ROOF = Origin.REQUEST.at("roof");
    private static final Origin PROFILES = Origin.REQUEST.at("profiles");

    private TrimWork() {}

    /**
     * The trims of a roof that is not laid.
     *
     * @throws Refused when what was measured is no roof, or takes too many pieces
     */
    public static List<Trim> onRoof(RoofSurvey survey, TrimSpec spec) {
        return layOut(Roofs.read(survey), spec);
    }

    static List<Trim> layOut(Roof roof, TrimSpec spec) {
        Trims trims = Trims.on(roof, spec);
        check(trims.pieceCount(), ROOF);
        return trims.layOut();
    }

    /**
     * Profiles by themselves, in their order.
     *
     * @throws Refused when they take too many pieces
     */
    public static List<LoneProfile.Made> alone(List<LoneProfile> profiles) {
        check(profiles.stream().mapToLong(LoneProfile::pieceCount).sum(), PROFILES);
        return profiles.stream().map(LoneProfile::make).toList();
    }

    /** The pieces of trims of a roof cut from stock. */
    public static List<SheetCut> cut(List<Trim> trims, SheetStock stock) {
        SheetCutting cutting = new SheetCutting(stock);
        trims.forEach(cutting::add);
        return cutting.cut();
    }

    /** The pieces of profiles cut from stock; each is marked with the profile, the run and its place in the run. */
    public static List<SheetCut> cutAlone(List<LoneProfile.Made> made, SheetStock stock) {
        SheetCutting cutting = new SheetCutting(stock);
        for (LoneProfile.Made each : made) {
            for (int run = 0; run < each.runs().size(); run++) {
                LoneProfile.CutRun cut = each.runs().get(run);
                for (int piece = 0; piece < cut.pieces().size(); piece++) {
                    cutting.addTrim(
                            each.flat().width(),
                            "%s-%d-%d".formatted(each.asked().id(), run + 1, piece + 1),
                            cut.pieces().get(piece),
                            cut.run().count());
                }
            }
        }
        return cutting.cut();
    }

    private static void check(long pieces, Origin at) {
        if (pieces > MOST_PIECES) {
            throw new Refused(Refusal.of(
                    RefusalCode.TOO_MANY_TRIM_PIECES,
                    at,
                    "The trims take {actual} pieces; at most {limit} are cut in one request. Check the units and the length of"
                            + " the pieces, or ask for the trims in parts.",
                    new Count(pieces),
                    new Count(MOST_PIECES)));
        }
    }
}
