package org.thalweg.drainage;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Source;
import org.thalweg.reference.Rules;
import org.thalweg.reference.Sourced;
import org.thalweg.units.Length;

/**
 * The water of a valley, each side by itself: what drains to it, how deep it stands and how far it spreads at the
 * rainfall given, and the rainfall at which it reaches the panels or the rib.
 *
 * <p>Always true: more rain is never less deep; mirrored, the sides swap. Known limits: see the room. What a tapered pan
 * can carry is looked at where stations are, so between them a limit may be met a little sooner.
 *
 * @param sides    in the order asked for
 * @param findings side by side, then those of both
 */
public record ValleyWater(List<SideWater> sides, List<Finding> findings) {

    /**
     * Sides that differ by more than this are unequal. The published rules for ribs say "unequal" and no more.
     * [common practice]
     */
    static final double UNEQUAL = 0.01;

    /** What is enough stays enough when an answer prints it: half of the coarsest last decimal of a length, and a little. */
    private static final double PRINTED = 2e-6;

    public ValleyWater {
        sides = List.copyOf(sides);
        findings = List.copyOf(findings);
    }

    public static ValleyWater of(WaterCase asked) {
        List<SideWater> sides = List.of(SideWater.of(0, asked), SideWater.of(1, asked));
        List<Finding> findings = new ArrayList<>(0);
        for (SideWater side : sides) {
            findUnderPanel(side, asked, findings);
            findOverRib(side, asked, findings);
        }
        findRib(asked, findings);
        return new ValleyWater(sides, findings);
    }

    /** At the station where most is wanting. What is missing there is missing of the hold-back at the bottom too. */
    private static void findUnderPanel(SideWater side, WaterCase asked, List<Finding> findings) {
        double hair = asked.tolerance().hair();
        double most = hair;
        StationWater worst = null;
        for (StationWater station : side.stations()) {
            double spread = station.spread().map(Length::metres).orElse(0.0);
            double share = station.along().metres() / asked.length().metres();
            double missing = spread - asked.pan().spreadLimit(share);
            if (spread > hair && missing > most) {
                most = missing;
                worst = station;
            }
        }
        if (worst == null) {
            return;
        }
        double holdBack = asked.pan().holdBackAtBottom().metres() + most + PRINTED;
        double half = holdBack + asked.pan().beyondHoldBack().metres() + 2 * PRINTED;
        findings.add(Finding.of(
                        FindingCode.WATER_UNDER_PANEL,
                        asked.place(),
                        "At the rainfall given, water on the " + hand(side)
                                + " of valley {place}, seen looking up it, spreads"
                                + " {actual} up the pan, where it may spread {limit}. Hold the panels back {holdBack} at the"
                                + " bottom, and as much more all the way up; that takes a coil {coilWidth} wide.",
                        worst.spread().orElseThrow(),
                        worst.spreadLimit(),
                        asked.pan().source())
                .needs("holdBack", Length.metres(holdBack))
                .needs("coilWidth", Length.metres(2 * half)));
    }

    /** Water is deepest where all of it has come together, at the bottom. */
    private static void findOverRib(SideWater side, WaterCase asked, List<Finding> findings) {
        if (side.channel().isEmpty() || asked.rainfall().isEmpty()) {
            return;
        }
        Length depth = side.stations().get(0).depth().orElseThrow();
        Length height = side.ribHeight().orElseThrow();
        if (depth.metres() > height.metres() + asked.tolerance().hair()) {
            Length leg = side.channel().orElseThrow().ribLeg(depth);
            findings.add(Finding.of(
                            FindingCode.WATER_OVER_RIB,
                            asked.place(),
                            "At the rainfall given, water on the " + hand(side)
                                    + " of valley {place}, seen looking up it,"
                                    + " stands {actual} deep at the rib, which is {limit} high. Make each leg of the rib"
                                    + " {ribLeg}, or lead water away above.",
                            depth,
                            height,
                            Source.GEOMETRY)
                    .needs("ribLeg", Length.metres(leg.metres() + PRINTED)));
        }
    }

    private static void findRib(WaterCase asked, List<Finding> findings) {
        Sourced<Length> least = Rules.valleyRibLeastUnequal();
        if (unequal(asked)
                && asked.pan().ribLeg().metres()
                        < least.value().metres() - asked.tolerance().hair()) {
            findings.add(Finding.of(
                    FindingCode.RIB_TOO_LOW,
                    asked.place(),
                    "The two sides of valley {place} bring unequal water and its rib is bent from legs of {actual}; {limit} is"
                            + " asked for. Make the rib higher.",
                    asked.pan().ribLeg(),
                    least.value(),
                    least.source()));
        }
    }

    /** Whether the sides drain unequal areas, or fall to the valley at unequal pitches. */
    private static boolean unequal(WaterCase asked) {
        WaterSide one = asked.sides().get(0);
        WaterSide other = asked.sides().get(1);
        return unequal(
                        one.catchment().planArea().squareMetres(),
                        other.catchment().planArea().squareMetres())
                || one.flat().falls() != other.flat().falls()
                || unequal(one.flat().pitch().tan(), other.flat().pitch().tan());
    }

    private static boolean unequal(double one, double other) {
        return Math.abs(one - other) > UNEQUAL * Math.max(one, other);
    }

    private static String hand(SideWater side) {
        return side.left() ? "left" : "right";
    }
}
