package org.thalweg.api;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.FootprintForm;
import org.thalweg.api.wire.FootprintForm.FootprintChangeForm;
import org.thalweg.api.wire.FootprintForm.FootprintOpeningForm;
import org.thalweg.api.wire.FootprintForm.FootprintSideForm;
import org.thalweg.api.wire.WirePlanCorner;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.footprint.Footprint;
import org.thalweg.footprint.FootprintSurvey;
import org.thalweg.footprint.FootprintSurvey.Side;
import org.thalweg.footprint.WallSide;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.PlaneOutline.OpeningOutline;
import org.thalweg.units.Count;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/** Reads a roof that is given by its walls: units in, pointers kept, every side with what is said of it. */
final class FootprintReader {

    static final Origin FOOTPRINT = Origin.REQUEST.at("roof").at("footprint");

    private static final Origin SIDES = FOOTPRINT.at("sides");
    private static final Pitch UNREAD = new Pitch(1, 1);

    private final FootprintForm form;
    private final TapeReader tape;
    private final List<Refusal> refusals = new ArrayList<>();
    private final List<Side> sides = new ArrayList<>();
    private final Map<Place, Integer> entries = new HashMap<>();

    /** A side by its ring, -1 for the outline, and its number there. */
    private record Place(int hole, int side) {}

    private FootprintReader(FootprintForm form, TapeReader tape) {
        this.form = form;
        this.tape = tape;
    }

    /** @param tape has read the rest of the request; done when this returns */
    static FootprintSurvey read(FootprintForm form, RoofReader.Measured measured, TapeReader tape) {
        return new FootprintReader(form, tape).read(measured);
    }

    private FootprintSurvey read(RoofReader.Measured measured) {
        count();
        noteEntries();
        Given rest = new Given(
                tape.pitch(form.pitch(), UNREAD, FOOTPRINT.at("pitch")),
                tape.length(form.eaveHeight(), Length.ZERO, FOOTPRINT.at("eaveHeight"), Limits.COORDINATE),
                tape.length(form.overhang(), Length.ZERO, FOOTPRINT.at("overhang"), Limits.ROOF_OVERHANG));
        List<WallSide> outline = ring(form.outline(), -1, FOOTPRINT.at("outline"), rest);
        List<List<WallSide>> holes = new ArrayList<>();
        for (List<WirePlanCorner> hole : orNone(form.holes())) {
            holes.add(ring(hole, holes.size(), FOOTPRINT.at("holes").at(holes.size()), rest));
        }
        List<OpeningOutline> openings = openings();
        tape.done();
        refuseDoubles();
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        return new FootprintSurvey(
                new Footprint(outline, holes, measured.tolerance()),
                sides,
                rest.eaveHeight,
                openings,
                FOOTPRINT,
                measured.tolerance(),
                measured.leastSlope(),
                measured.leastSlopeSource());
    }

    /** What holds for every side that says nothing else. */
    private record Given(Pitch pitch, Length eaveHeight, Length overhang) {}

    /** What is too much for one request is refused before anything is made of it. */
    private void count() {
        int all = form.outline().size()
                + orNone(form.holes()).stream().mapToInt(List::size).sum();
        if (all > Limits.FOOTPRINT_SIDES) {
            tape.tooMany(FOOTPRINT, "sides in all", all, Limits.FOOTPRINT_SIDES);
        }
        int corners = orNone(form.openings()).stream()
                .mapToInt(opening -> opening.outline().size())
                .sum();
        if (corners > Limits.CORNERS) {
            tape.tooMany(FOOTPRINT.at("openings"), "corners of openings", corners, Limits.CORNERS);
        }
        if (tape.faultCount() > 0) {
            tape.done();
        }
    }

    private void noteEntries() {
        List<List<WirePlanCorner>> holes = orNone(form.holes());
        List<FootprintSideForm> given = orNone(form.sides());
        for (int i = 0; i < given.size(); i++) {
            FootprintSideForm entry = given.get(i);
            Origin at = SIDES.at(i);
            int hole = entry.hole() == null ? -1 : entry.hole().intValue();
            int side = entry.side().intValue();
            if (hole >= holes.size()) {
                refusals.add(Refusal.of(
                        RefusalCode.NO_SUCH_SIDE,
                        at.at("hole"),
                        "There is no hole {actual}: this footprint has {limit}, counted from 0. Mend the number, or leave it out"
                                + " for a side of the outline.",
                        new Count(hole),
                        new Count(holes.size())));
                continue;
            }
            int sidesOfRing = hole < 0 ? form.outline().size() : holes.get(hole).size();
            if (side >= sidesOfRing) {
                refusals.add(Refusal.of(
                        RefusalCode.NO_SUCH_SIDE,
                        at.at("side"),
                        "There is no side {actual}: the last one of this ring is {limit}, counted from 0. Mend the number.",
                        new Count(side),
                        new Count(sidesOfRing - 1L)));
            } else if (entries.putIfAbsent(new Place(hole, side), i) != null) {
                refusals.add(Refusal.of(
                        RefusalCode.SIDE_NAMED_TWICE,
                        at,
                        "An entry before this one names the same side. Say all of a side in one entry."));
            }
        }
    }

    private List<WallSide> ring(List<WirePlanCorner> corners, int hole, Origin at, Given rest) {
        List<WallSide> ring = new ArrayList<>(corners.size());
        for (WirePlanCorner corner : corners) {
            int number = ring.size();
            Origin cornerAt = at.at(number);
            Point3 place = corner(corner, cornerAt);
            Integer entry = entries.get(new Place(hole, number));
            WallSide plain = WallSide.sloped(place.x(), place.y(), rest.pitch).overhanging(rest.overhang.metres());
            if (entry == null) {
                sides.add(new Side(
                        id(hole, number),
                        false,
                        told(hole, number),
                        false,
                        cornerAt,
                        FOOTPRINT,
                        FOOTPRINT.at("pitch")));
                ring.add(plain);
            } else {
                ring.add(side(plain, orNone(form.sides()).get(entry), SIDES.at(entry), rest));
                sides.add(named(orNone(form.sides()).get(entry), hole, number, cornerAt, SIDES.at(entry)));
            }
        }
        return ring;
    }

    private Point3 corner(WirePlanCorner corner, Origin at) {
        return new Point3(
                tape.length(corner.x(), at.at(0), Limits.COORDINATE).metres(),
                tape.length(corner.y(), at.at(1), Limits.COORDINATE).metres(),
                0);
    }

    private static String id(int hole, int side) {
        return hole < 0 ? "side" + side : "hole%dside%d".formatted(hole, side);
    }

    private static String told(int hole, int side) {
        return hole < 0 ? "side " + side : "side %d of hole %d".formatted(side, hole);
    }

    private Side named(FootprintSideForm entry, int hole, int number, Origin at, Origin saidAt) {
        String id = entry.id();
        return new Side(
                id == null ? id(hole, number) : id,
                id != null,
                id == null ? told(hole, number) : Echo.of(id),
                isTrue(entry.wall()),
                at,
                saidAt,
                entry.pitch() == null ? FOOTPRINT.at("pitch") : saidAt.at("pitch"));
    }

    private WallSide side(WallSide plain, FootprintSideForm entry, Origin at, Given rest) {
        Pitch pitch = tape.pitch(entry.pitch(), rest.pitch, at.at("pitch"));
        double overhang = tape.length(entry.overhang(), rest.overhang, at.at("overhang"), Limits.ROOF_OVERHANG)
                .metres();
        boolean gable = isTrue(entry.gable());
        noteContradictions(entry, gable, at);
        WallSide side = gable
                ? WallSide.gable(plain.x(), plain.y()).crossing(pitch)
                : WallSide.sloped(plain.x(), plain.y(), pitch).eaveAt(aboveEaves(entry, at, rest));
        if (entry.id() != null || isTrue(entry.wall())) {
            side = side.toldApart();
        }
        List<FootprintChangeForm> above = orNone(entry.above());
        for (int i = 0; i < above.size(); i++) {
            side = side.then(change(above.get(i), at.at("above").at(i), rest));
        }
        return side.overhanging(overhang);
    }

    private double aboveEaves(FootprintSideForm entry, Origin at, Given rest) {
        return tape.length(entry.eaveHeight(), rest.eaveHeight, at.at("eaveHeight"), Limits.COORDINATE)
                        .metres()
                - rest.eaveHeight.metres();
    }

    private void noteContradictions(FootprintSideForm entry, boolean gable, Origin at) {
        if (gable && (entry.eaveHeight() != null || !orNone(entry.above()).isEmpty())) {
            tape.note(
                    ReadingCode.EITHER_OR,
                    at,
                    "A gable goes up to the slopes beside it: it has no eave and no change further up. Leave out \"gable\", or"
                            + " \"eaveHeight\" and \"above\".");
        }
        if (!gable && isTrue(entry.wall())) {
            tape.note(
                    ReadingCode.EITHER_OR,
                    at,
                    "A wall goes on above the roof along a gable, and this side has an eave. Add \"gable\": true, or leave out"
                            + " \"wall\".");
        }
    }

    private WallSide.Change change(FootprintChangeForm change, Origin at, Given rest) {
        boolean gable = isTrue(change.gable());
        if (gable == (change.pitch() != null)) {
            tape.note(
                    ReadingCode.EITHER_OR,
                    at,
                    "Give the \"pitch\" the slope goes on at, or \"gable\": true, one of the two.");
        }
        double height =
                tape.length(change.height(), at.at("height"), Limits.COORDINATE).metres();
        return new WallSide.Change(
                height - rest.eaveHeight.metres(),
                gable ? Optional.empty() : Optional.of(tape.pitch(change.pitch(), UNREAD, at.at("pitch"))));
    }

    private List<OpeningOutline> openings() {
        List<OpeningOutline> openings = new ArrayList<>();
        for (FootprintOpeningForm opening : orNone(form.openings())) {
            Origin at = FOOTPRINT.at("openings").at(openings.size()).at("outline");
            List<Point3> corners = new ArrayList<>(opening.outline().size());
            for (WirePlanCorner corner : opening.outline()) {
                corners.add(corner(corner, at.at(corners.size())));
            }
            openings.add(new OpeningOutline(opening.id(), corners, at));
        }
        return openings;
    }

    private void refuseDoubles() {
        Set<String> seen = new HashSet<>();
        for (Side side : sides) {
            if (!side.own()) {
                seen.add(side.id());
            }
        }
        for (Side side : sides) {
            if (side.own() && !seen.add(side.id())) {
                refusals.add(Refusal.of(
                        RefusalCode.DUPLICATE_ID,
                        side.saidAt().at("id"),
                        "Another side is called %s too, or by its number. Give each its own id."
                                .formatted(Echo.of(side.id()))));
            }
        }
        Set<String> openings = new HashSet<>();
        List<FootprintOpeningForm> given = orNone(form.openings());
        for (int i = 0; i < given.size(); i++) {
            if (!openings.add(given.get(i).id())) {
                refusals.add(Refusal.of(
                        RefusalCode.DUPLICATE_ID,
                        FOOTPRINT.at("openings").at(i).at("id"),
                        "Another opening is called %s too. Give each its own id."
                                .formatted(Echo.of(given.get(i).id()))));
            }
        }
    }

    /** Pointers to what the footprint left out and a default stands for. */
    static void defaults(@Nullable FootprintForm form, List<String> left) {
        if (form != null) {
            UsedWriter.ifAbsent(form.eaveHeight(), FOOTPRINT.at("eaveHeight").pointer(), left);
            UsedWriter.ifAbsent(form.overhang(), FOOTPRINT.at("overhang").pointer(), left);
        }
    }

    private static boolean isTrue(@Nullable Boolean said) {
        return said != null && said;
    }

    private static <T> List<T> orNone(@Nullable List<T> list) {
        return list == null ? List.of() : list;
    }
}
