package org.thalweg.api;

import java.util.List;
import org.thalweg.api.WorkingCase.Corner;
import org.thalweg.drainage.PanFlat;
import org.thalweg.drainage.SideWater;
import org.thalweg.packet.LaidValley;
import org.thalweg.roof.EdgeKind;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Pitch;
import org.thalweg.valley.SlopedEdge;
import org.thalweg.valley.ValleyLayout;
import org.thalweg.valley.ValleySide;

/** The working of a valley's own angles and lengths: from its corner, or from its low in the planes of a roof. */
final class AngleWorking {

    /** For roofs as they are measured, whose planes and corners are a little off. */
    private static final String NEARLY = WorkingSheet.GEOMETRY
            + "; the planes of this roof are not quite flat or do not quite meet, so the last digits differ";

    /** α of the left plane and of the right one, where the valley leans in over both eaves. */
    private static final List<String> WITHIN =
            List.of("atan(tan θ₂ sin γ / (tan θ₁ + tan θ₂ cos γ))", "atan(tan θ₁ sin γ / (tan θ₂ + tan θ₁ cos γ))");

    /** The same where it runs along the fall line or leans the other way: folded below 90°, as the answer has it. */
    private static final List<String> BEYOND = List.of(
            "90° − atan(|tan θ₁ + tan θ₂ cos γ| / (tan θ₂ sin γ))",
            "90° − atan(|tan θ₂ + tan θ₁ cos γ| / (tan θ₁ sin γ))");

    private static final double PRINTED_DEGREES = 1e-4;
    private static final Angle SQUARE = Angle.degrees(90);

    private final WorkingSheet sheet;
    private final WorkingCase asked;
    private final LaidValley valley;
    private final ValleyLayout layout;

    AngleWorking(WorkingSheet sheet, WorkingCase asked, LaidValley valley) {
        this.sheet = sheet;
        this.asked = asked;
        this.valley = valley;
        this.layout = valley.layout();
    }

    /** ψ of a side's flat; 0 or less where its plane does not fall to the valley. */
    static Angle panRise(LaidValley valley, int side) {
        SlopedEdge.Side seen = valley.layout().sides().get(side).seen();
        SideWater water = valley.water().sides().get(side);
        return new PanFlat(seen.pitch(), seen.mitre(), water.channel().isPresent())
                .rise(valley.layout().edge().edge().slope());
    }

    void valley() {
        Angle slope = layout.edge().edge().slope();
        SlopedEdge.Side left = layout.left().seen();
        if (asked.corner().isPresent()) {
            asked.corner().get().run().ifPresent(run -> lengthOfRun(run, left, slope));
        } else {
            lengthOfLow(left);
        }
        String held = "; "
                + sheet.heldAgainst(asked.survey().leastSlope(), asked.survey().leastSlopeSource());
        if (asked.corner().isPresent()) {
            sheet.add(
                    "/slopeDeg",
                    "atan(tan θ₁ sin α₁)",
                    "atan(" + gradient(left) + " * " + sheet.sin(left.plan()) + ")",
                    slope,
                    WorkingSheet.GEOMETRY + held);
        } else {
            double by =
                    Math.toDegrees(Math.asin(left.pitch().sin() * left.mitre().sin()));
            sheet.add(
                    "/slopeDeg",
                    "asin(sin θ₁ sin φ₁)",
                    "asin(sin(" + pitch(left) + ") * " + sheet.sin(left.mitre()) + ")",
                    slope,
                    told(by, slope) + held);
        }
        Angle onLeft = panRise(valley, 0);
        Angle onRight = panRise(valley, 1);
        Angle bend = layout.edge().edge().bend();
        sheet.add(
                "/bendDeg",
                "ψ₁ + ψ₂, sin ψ = cos φ sin θ / cos θv; ψ below 0 where a plane falls away",
                sheet.degrees(onLeft) + " + " + sheet.degrees(onRight),
                bend,
                told(onLeft.inDegrees() + onRight.inDegrees(), bend));
    }

    private void lengthOfRun(Length run, SlopedEdge.Side left, Angle slope) {
        sheet.add(
                "/length",
                "R / (cos α₁ cos θv)",
                sheet.length(run) + " / (" + sheet.cos(left.plan()) + " * " + sheet.cos(slope) + ")",
                layout.edge().length(),
                WorkingSheet.GEOMETRY);
    }

    private void lengthOfLow(SlopedEdge.Side left) {
        Length length = layout.edge().length();
        double across = across(left);
        double up = up(left);
        sheet.add(
                "/length",
                "√(across² + up²), from foot to head of the low on the left plane",
                "sqrt(" + sheet.metres(across) + "^2 + " + sheet.metres(up) + "^2)",
                length,
                told(Length.metres(Math.hypot(across, up)), length));
    }

    void side(int i) {
        ValleySide side = layout.sides().get(i);
        String at = "/sides/" + i;
        if (asked.corner().isPresent()) {
            plan(at, i, asked.corner().get());
            mitreOfPlan(at, side.seen());
        } else {
            sheet.add(
                    at + "/planAngleDeg",
                    "atan(tan φ cos θ)",
                    square(side.seen().plan())
                            ? "90"
                            : "atan(" + sheet.tan(side.seen().mitre()) + " * cos(" + pitch(side.seen()) + "))",
                    side.seen().plan(),
                    WorkingSheet.GEOMETRY);
            mitreOfLow(at, side.seen());
        }
        side.riseAcrossCover().ifPresent(rise -> rise(at, side.seen(), rise));
    }

    private void plan(String at, int i, Corner corner) {
        SlopedEdge.Side seen = layout.sides().get(i).seen();
        SlopedEdge.Side other = layout.sides().get(1 - i).seen();
        String rise = gradient(other) + " * " + sheet.sin(corner.angle());
        String run = gradient(seen) + " + " + gradient(other) + " * " + sheet.cos(corner.angle());
        boolean within =
                seen.pitch().tan() + other.pitch().tan() * corner.angle().cos() > 0 && !square(seen.plan());
        sheet.add(
                at + "/planAngleDeg",
                (within ? WITHIN : BEYOND).get(i),
                within ? "atan(" + rise + " / (" + run + "))" : "90 - atan(abs(" + run + ") / (" + rise + "))",
                seen.plan(),
                WorkingSheet.GEOMETRY);
    }

    private void mitreOfPlan(String at, SlopedEdge.Side seen) {
        boolean square = square(seen.mitre());
        sheet.add(
                at + "/angleFromEaveDeg",
                square ? "90°: the valley runs along the ribs" : "atan(tan α / cos θ)",
                square ? "90" : "atan(" + sheet.tan(seen.plan()) + " / cos(" + pitch(seen) + "))",
                seen.mitre(),
                WorkingSheet.GEOMETRY);
    }

    private void mitreOfLow(String at, SlopedEdge.Side seen) {
        boolean square = square(seen.mitre());
        double by = Math.toDegrees(Math.atan2(up(seen), across(seen)));
        sheet.add(
                at + "/angleFromEaveDeg",
                square ? "90°: the valley runs along the ribs" : "atan(up / across), from foot to head of the low",
                square ? "90" : "atan(" + sheet.metres(up(seen)) + " / " + sheet.metres(across(seen)) + ")",
                seen.mitre(),
                told(by, seen.mitre()));
    }

    private void rise(String at, SlopedEdge.Side seen, Length rise) {
        sheet.add(
                at + "/riseAcrossCover",
                "w tan φ",
                sheet.length(asked.terms().panelCover()) + " * " + sheet.tan(seen.mitre()),
                rise,
                WorkingSheet.GEOMETRY);
    }

    /** The angles to what a plane ends on, where that is level or runs along the fall line; else they are the roof's. */
    void ends(int i) {
        SlopedEdge.Side seen = layout.sides().get(i).seen();
        end("/sides/" + i + "/bottom/cornerDeg", seen, seen.bottom());
        end("/sides/" + i + "/top/cornerDeg", seen, seen.top());
    }

    private void end(String of, SlopedEdge.Side seen, SlopedEdge.End end) {
        double mitre = seen.mitre().inDegrees();
        String number = sheet.degrees(seen.mitre());
        if (level(end.kind())) {
            if (is(end, 180 - mitre)) {
                sheet.add(of, "180° − φ", "180 - " + number, end.corner(), WorkingSheet.GEOMETRY);
            } else if (is(end, mitre)) {
                sheet.add(of, "φ", number, end.corner(), WorkingSheet.GEOMETRY);
            }
        } else if (end.kind() == EdgeKind.RAKE) {
            if (is(end, 90 + mitre)) {
                sheet.add(of, "90° + φ", "90 + " + number, end.corner(), WorkingSheet.GEOMETRY);
            } else if (is(end, 90 - mitre)) {
                sheet.add(of, "90° − φ", "90 - " + number, end.corner(), WorkingSheet.GEOMETRY);
            }
        }
    }

    private static boolean is(SlopedEdge.End end, double degrees) {
        return Math.abs(degrees - end.corner().inDegrees()) < PRINTED_DEGREES / 10;
    }

    private static boolean level(EdgeKind kind) {
        return switch (kind) {
            case EAVE, HIGH_EAVE, RIDGE, PITCH_BREAK, LEVEL_VALLEY, HEAD_WALL -> true;
            default -> false;
        };
    }

    /** What comes out by hand is what is printed, or the source says that it is not. */
    private static String told(double degrees, Angle printed) {
        return Angle.degrees(degrees).roundedDegrees() == printed.roundedDegrees() ? WorkingSheet.GEOMETRY : NEARLY;
    }

    private String told(Length length, Length printed) {
        LengthUnit unit = sheet.units().length();
        return unit.round(length) == unit.round(printed) ? WorkingSheet.GEOMETRY : NEARLY;
    }

    private static boolean square(Angle angle) {
        return angle.roundedDegrees() == SQUARE.roundedDegrees();
    }

    /** θ, as it is keyed in. */
    private String pitch(SlopedEdge.Side seen) {
        return "atan" + gradient(seen);
    }

    /** tan θ, as a pitch. */
    private String gradient(SlopedEdge.Side seen) {
        Pitch pitch = Pitch.ofSlope(seen.pitch());
        return "(" + sheet.number(pitch.rise()) + " / " + sheet.number(pitch.run()) + ")";
    }

    private static double across(SlopedEdge.Side seen) {
        return Math.abs(seen.head().across() - seen.foot().across());
    }

    private static double up(SlopedEdge.Side seen) {
        return Math.abs(seen.head().up() - seen.foot().up());
    }
}
