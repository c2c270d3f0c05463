package org.thalweg.api;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.thalweg.api.wire.WorkingAnswer;
import org.thalweg.finding.Source;
import org.thalweg.trim.Bend;
import org.thalweg.trim.BendAllowance;
import org.thalweg.trim.BendAllowance.Din6935;
import org.thalweg.trim.BendAllowance.Empirical;
import org.thalweg.trim.BendAllowance.KFactor;
import org.thalweg.trim.FlatTrim;
import org.thalweg.trim.FlatTrim.FlatFold;
import org.thalweg.trim.Hem;
import org.thalweg.trim.Profile;
import org.thalweg.units.Angle;
import org.thalweg.units.Units;

/** How the width of a flat sheet came about: what every bend takes up and takes off, then the width. */
final class FlatWorking {

    private static final double SQUARE = Math.PI / 2;

    private final WorkingSheet sheet;
    private final BendAllowance allowance;
    private final Profile profile;
    private final FlatTrim flat;

    private FlatWorking(Units units, BendAllowance allowance, Profile profile, FlatTrim flat) {
        this.sheet = new WorkingSheet(units);
        this.allowance = allowance;
        this.profile = profile;
        this.flat = flat;
    }

    static List<WorkingAnswer> of(Units units, BendAllowance allowance, Profile profile, FlatTrim flat) {
        FlatWorking working = new FlatWorking(units, allowance, profile, flat);
        for (int i = 0; i < flat.folds().size(); i++) {
            FlatFold fold = flat.folds().get(i);
            working.allowance("/bendLines/" + i + "/allowance", fold);
            working.deduction("/bendLines/" + i + "/deduction", fold);
        }
        working.width();
        return working.sheet.entries();
    }

    private void allowance(String of, FlatFold fold) {
        String radius = sheet.length(fold.bend().insideRadius());
        String thick = sheet.length(profile.thickness());
        String turn = sheet.degrees(fold.turn());
        String arc = sheet.number(Math.PI) + " * " + turn + " / 180";
        if (allowance instanceof KFactor factor) {
            add(
                    of,
                    "π β / 180 (ρ + K t)",
                    "%s * (%s + %s * %s)".formatted(arc, radius, number(factor.k()), thick),
                    fold);
        } else if (allowance instanceof Empirical fitted) {
            add(
                    of,
                    "(%s ρ + %s t) β".formatted(number(fitted.perRadius()), number(fitted.perThickness())),
                    "(%s * %s + %s * %s) * %s"
                            .formatted(number(fitted.perRadius()), radius, number(fitted.perThickness()), thick, turn),
                    fold);
        } else {
            double k = ((Din6935) allowance).factor(fold.bend().insideRadius(), profile.thickness());
            add(
                    of,
                    "π β / 180 (ρ + k t / 2)",
                    "%s * (%s + %s * %s / 2)".formatted(arc, radius, number(k), thick),
                    fold);
        }
    }

    private void add(String of, String formula, String numbers, FlatFold fold) {
        sheet.add(of, formula, numbers, fold.allowance(), allowance.source().text());
    }

    private void deduction(String of, FlatFold fold) {
        Bend bend = fold.bend();
        String outside =
                "2 * (%s + %s)".formatted(sheet.length(bend.insideRadius()), sheet.length(profile.thickness()));
        String taken = sheet.length(fold.allowance());
        boolean past = bend.turn().radians() >= SQUARE;
        String tangent = sheet.tan(new Angle(bend.turn().radians() / 2));
        sheet.add(
                of,
                past ? "2 (ρ + t) − A" : "2 (ρ + t) tan(β / 2) − A",
                past ? outside + " - " + taken : outside + " * " + tangent + " - " + taken,
                fold.deduction(),
                (past ? Source.COMMON_PRACTICE : Bend.SETBACK_SOURCE).text());
    }

    private void width() {
        String girths = Stream.of(
                        profile.first().map(Hem::girth).stream(),
                        profile.girths().stream(),
                        profile.last().map(Hem::girth).stream())
                .flatMap(each -> each)
                .map(sheet::length)
                .collect(Collectors.joining(" + "));
        String off = flat.folds().stream()
                .map(fold -> sheet.length(fold.deduction()))
                .collect(Collectors.joining(" + "));
        sheet.add(
                "/flatWidth",
                "Σ g − Σ D",
                off.isEmpty() ? girths : girths + " - (" + off + ")",
                flat.width(),
                WorkingSheet.GEOMETRY);
    }

    private String number(double number) {
        return sheet.number(number);
    }
}
