package org.thalweg.reference;

import java.util.List;
import java.util.regex.Pattern;
import org.thalweg.units.Length;
import org.thalweg.units.Measure;
import org.thalweg.units.Pitch;
import org.thalweg.units.Temperature;

/**
 * Published rules. They are what a layout is held against until the caller gives figures of the system at hand.
 *
 * <p>The rules for valleys were written for open valleys of copper and of sheet metal under other roofings. Nothing of
 * their kind was found in print for standing-seam panels over a pan, and so they are the nearest printed thing.
 */
public final class Rules {

    /** The topic of the least slopes. */
    public static final String LEAST_SLOPE = "min slope";

    private static final String VALLEY = "valley";
    private static final String CLEAT = "cleat";
    private static final String FLASHING = "flashing";
    private static final String CLIP = "clip";
    private static final String UNDERLAYMENT = "underlayment";

    /** What stands in brackets behind a figure. */
    private static final Pattern REMARK = Pattern.compile(" \\(.*");

    private static final List<Rule> ALL = PublishedTable.read("rules.csv", Rule::of);

    private static final Sourced<Pitch> LEAST_SLOPE_STANDING_SEAM = pitch(LEAST_SLOPE, "standing-seam metal panels");
    private static final Sourced<Pitch> VALLEY_LEAST_SLOPE =
            pitch(VALLEY, "details valid for valley slopes of at least");
    private static final Sourced<Length> VALLEY_LEAST_LAP = length(VALLEY, "lap in direction of flow");
    private static final Sourced<Length> VALLEY_USUAL_LAP = length(VALLEY, "lap of adjacent copper sheets");
    private static final Sourced<Length> VALLEY_USUAL_METRIC_LAP = length(VALLEY, "metal tile valley lap");
    private static final Sourced<Length> VALLEY_LEAST_COVER =
            length(VALLEY, "flashing extends under roof covering each side");
    private static final Sourced<Length> VALLEY_LEAST_EXPOSURE = length(VALLEY, "exposed width at top, minimum");
    private static final Sourced<Double> VALLEY_WIDENING = ratio(VALLEY, "widening downwards");
    private static final Sourced<Length> VALLEY_LEAST_CRIMP =
            length(VALLEY, "crimp or tee where drained areas are unequal, minimum height");
    private static final Sourced<Length> VALLEY_LEAST_BAFFLE = length(VALLEY, "baffle height, unequal flow");
    private static final Sourced<Length> VALLEY_CLEAT_SPACING = length(VALLEY, "cleats on the fold, maximum spacing");
    private static final Sourced<Length> COPPER_CLEAT_LEAST_WIDTH =
            length(CLEAT, "copper cleat width, minimum; two fasteners");
    private static final Sourced<Length> SIDE_WALL_LEAST_HEIGHT =
            length(FLASHING, "sidewall base flashing height and width");
    private static final Sourced<Length> DRIP_EDGE_LEAST_LAP = dripEdge(0);
    private static final Sourced<Length> DRIP_EDGE_LEAST_UP_DECK = dripEdge(2);
    private static final Sourced<Length> RAKE_STRIP_LAP = length(FLASHING, "copper rake strip lap");
    private static final Sourced<Length> SLOPE_CHANGE_UNDER_UPPER = slopeChange(0);
    private static final Sourced<Length> SLOPE_CHANGE_OVER_LOWER = slopeChange(1);
    private static final Sourced<Length> SLOPE_CHANGE_LAP = slopeChange(2);
    private static final Sourced<Length> SHEET_LONGEST = sheetLength(1);

    private static final Sourced<Double> DESIGN_TEMPERATURE_RANGE =
            kelvins(CLIP, "design temperature range for expansion clips");
    private static final Sourced<Length> CLIP_FIELD_SPACING = length(CLIP, "field, maximum");
    private static final Sourced<Length> CLIP_EDGE_SPACING = length(CLIP, "edges, corners, eaves, ridges, maximum");
    private static final Sourced<Double> CLIP_SAFETY = number(CLIP, "safety factor on single clip/fastener resistance");

    private static final Sourced<Length> UNDERLAY_SIDE_LAP = underlayLap(0);
    private static final Sourced<Length> UNDERLAY_END_LAP = underlayLap(1);
    private static final Sourced<Length> UNDERLAY_LAPS_APART =
            length(UNDERLAYMENT, "end laps of neighbouring courses apart");
    private static final Sourced<Length> ICE_BARRIER_INSIDE_WALL =
            length(UNDERLAYMENT, "ice barrier to a point inside the exterior wall line");
    private static final Sourced<Length> ICE_BARRIER_ALONG_SLOPE =
            length(UNDERLAYMENT, "ice barrier also along the slope from the eave, roofs >= 8:12");
    private static final Sourced<Pitch> ICE_BARRIER_STEEP =
            pitch(UNDERLAYMENT, "slope from which the ice barrier also goes along the slope");
    private static final Sourced<Length> VALLEY_UNDERLAY_WIDTH =
            length(VALLEY, "underlayment strip under a valley, width");

    private Rules() {}

    /** Every rule, in the order of the file. */
    public static List<Rule> all() {
        return ALL;
    }

    /** The rules on one topic, in the order of the file; none if the topic is not there. */
    public static List<Rule> about(String topic) {
        return ALL.stream().filter(rule -> rule.topic().equals(topic)).toList();
    }

    /** The flattest a standing-seam roof may be by the model building codes: 1/4 in 12. */
    public static Sourced<Pitch> leastSlopeStandingSeam() {
        return LEAST_SLOPE_STANDING_SEAM;
    }

    /** The flattest valley the standard details hold for: 4 1/2 in to the foot. Flatter ones are soldered or sealed. */
    public static Sourced<Pitch> valleyLeastSlopeOfDetails() {
        return VALLEY_LEAST_SLOPE;
    }

    /** The least by which one piece of a valley laps the piece below it, along the valley: 6 in. */
    public static Sourced<Length> valleyLeastLap() {
        return VALLEY_LEAST_LAP;
    }

    /**
     * By how much the pieces of a valley lap unless a caller says otherwise, along the valley: the 8 in that are the least
     * for the sheets of a copper valley.
     */
    public static Sourced<Length> valleyUsualLap() {
        return VALLEY_USUAL_LAP;
    }

    /** The same for callers who measure in millimetres: the 200 mm of a metal tile valley. */
    public static Sourced<Length> valleyUsualMetricLap() {
        return VALLEY_USUAL_METRIC_LAP;
    }

    /** The least by which a valley reaches under the roofing, on each side, square to the valley: 6 in. */
    public static Sourced<Length> valleyLeastCover() {
        return VALLEY_LEAST_COVER;
    }

    /** The least width of a valley that lies open at its top, both sides together: 4 in. */
    public static Sourced<Length> valleyLeastExposure() {
        return VALLEY_LEAST_EXPOSURE;
    }

    /**
     * By how much the open width of a valley, both sides together, grows for each length down the valley: 1/8 in to the
     * foot, or 1 in 96.
     */
    public static Sourced<Double> valleyWideningDownwards() {
        return VALLEY_WIDENING;
    }

    /** The least height of the crimp or tee of a valley whose sides drain unequal areas, by the older manual: 1 in. */
    public static Sourced<Length> valleyCrimpLeastUnequal() {
        return VALLEY_LEAST_CRIMP;
    }

    /** The larger of the two heights printed for a rib between unequal flows: the handbook's baffle, 1 1/2 in. */
    public static Sourced<Length> valleyRibLeastUnequal() {
        return VALLEY_LEAST_BAFFLE;
    }

    /** How far apart the cleats on the folded edge of a valley may stand: 12 in. */
    public static Sourced<Length> valleyCleatSpacing() {
        return VALLEY_CLEAT_SPACING;
    }

    /** The least width of a copper cleat, which then holds two fasteners: 2 in. */
    public static Sourced<Length> copperCleatLeastWidth() {
        return COPPER_CLEAT_LEAST_WIDTH;
    }

    /** The least by which a flashing goes up a side wall, and out under the roofing: 4 in. */
    public static Sourced<Length> sideWallLeastHeight() {
        return SIDE_WALL_LEAST_HEIGHT;
    }

    /** The least by which a piece of drip edge laps the next: 2 in. */
    public static Sourced<Length> dripEdgeLeastLap() {
        return DRIP_EDGE_LEAST_LAP;
    }

    /** The least by which a drip edge lies on the deck: 2 in. */
    public static Sourced<Length> dripEdgeLeastUpDeck() {
        return DRIP_EDGE_LEAST_UP_DECK;
    }

    /** By how much the strips along a copper rake lap: 3 in. */
    public static Sourced<Length> rakeStripLap() {
        return RAKE_STRIP_LAP;
    }

    /** How far a flashing where the slope changes goes up under the upper roofing: 6 in. */
    public static Sourced<Length> slopeChangeUnderUpper() {
        return SLOPE_CHANGE_UNDER_UPPER;
    }

    /** How far it lies over the lower roofing: 4 in. */
    public static Sourced<Length> slopeChangeOverLower() {
        return SLOPE_CHANGE_OVER_LOWER;
    }

    /** By how much its pieces lap: 4 in. */
    public static Sourced<Length> slopeChangeLap() {
        return SLOPE_CHANGE_LAP;
    }

    /** The longest sheet flashings are furnished in: 10 ft. */
    public static Sourced<Length> sheetLongest() {
        return SHEET_LONGEST;
    }

    /** The range of temperature that clips which let panels move are made for: 200 °F, here in kelvins. */
    public static Sourced<Double> designTemperatureRange() {
        return DESIGN_TEMPERATURE_RANGE;
    }

    /** How far apart clips may stand in the field of a roof, away from its edges: 60 in. */
    public static Sourced<Length> clipFieldSpacing() {
        return CLIP_FIELD_SPACING;
    }

    /** How far apart clips may stand at edges, corners, eaves and ridges: 30 in. */
    public static Sourced<Length> clipEdgeSpacing() {
        return CLIP_EDGE_SPACING;
    }

    /** By how much the load a single clip or fastener breaks at is divided before it is counted on: 3. */
    public static Sourced<Double> clipSafety() {
        return CLIP_SAFETY;
    }

    /** By how much a course of underlayment lies over the one below: 2 in. Of shingles at 4:12 and over; recalled, not seen. */
    public static Sourced<Length> underlaySideLap() {
        return UNDERLAY_SIDE_LAP;
    }

    /** By how much two sheets of a course lap: 4 in. Recalled, not seen. */
    public static Sourced<Length> underlayEndLap() {
        return UNDERLAY_END_LAP;
    }

    /** How far the end laps of neighbouring courses stay apart: 6 ft. */
    public static Sourced<Length> underlayLapsApart() {
        return UNDERLAY_LAPS_APART;
    }

    /** How far inside the exterior wall line an ice barrier ends, measured level: 24 in. */
    public static Sourced<Length> iceBarrierInsideWall() {
        return ICE_BARRIER_INSIDE_WALL;
    }

    /** The least of an ice barrier along the slope of a steep roof: 36 in; no longer since IRC 2024. */
    public static Sourced<Length> iceBarrierAlongSlope() {
        return ICE_BARRIER_ALONG_SLOPE;
    }

    /** From which slope on a roof is steep to that rule: 8:12. */
    public static Sourced<Pitch> iceBarrierSteep() {
        return ICE_BARRIER_STEEP;
    }

    /** The width of the strip of underlayment under a valley, both sides together: 36 in. */
    public static Sourced<Length> valleyUnderlayWidth() {
        return VALLEY_UNDERLAY_WIDTH;
    }

    private static Sourced<Pitch> pitch(String topic, String name) {
        return figure(topic, name, Pitch.class);
    }

    private static Sourced<Length> length(String topic, String name) {
        return figure(topic, name, Length.class);
    }

    /** @param part of lap / below sheathing / up the deck / fasteners */
    private static Sourced<Length> dripEdge(int part) {
        return part(FLASHING, "drip edge: lap / below sheathing / up the deck / fasteners", " / ", part);
    }

    /** @param part of under upper / over lower / end lap */
    private static Sourced<Length> slopeChange(int part) {
        return part(FLASHING, "copper change-of-slope flashing: under upper / over lower / end lap", " / ", part);
    }

    /** @param part 0 the shortest, 1 the longest */
    private static Sourced<Length> sheetLength(int part) {
        return part(FLASHING, "sheet lengths furnished", " to ", part);
    }

    /** @param part of horizontal lap / end lap */
    private static Sourced<Length> underlayLap(int part) {
        return part(UNDERLAYMENT, "horizontal lap / end lap", " / ", part);
    }

    /** One length of a rule that prints several. */
    private static Sourced<Length> part(String topic, String name, String between, int part) {
        Rule rule = rule(topic, name);
        String printed = REMARK.matcher(rule.value().split(between, -1)[part]).replaceFirst("");
        Length length = new Rule(topic, name, printed, rule.unit(), rule.source(), rule.confidence(), rule.note())
                .measure()
                .filter(Length.class::isInstance)
                .map(Length.class::cast)
                .orElseThrow(() -> new IllegalStateException(name + " has no length at " + part + ": " + rule.value()));
        return Sourced.of(length, rule.source(), rule.confidence());
    }

    /** So much to so much, as a slope is printed, of something that is none. */
    private static Sourced<Double> ratio(String topic, String name) {
        Sourced<Pitch> printed = pitch(topic, name);
        return new Sourced<>(printed.value().tan(), printed.source(), printed.confidence());
    }

    /** A plain number. */
    private static Sourced<Double> number(String topic, String name) {
        Rule rule = rule(topic, name);
        double number = rule.number()
                .orElseThrow(() -> new IllegalStateException(name + " is no number: " + rule.value()))
                .doubleValue();
        return Sourced.of(number, rule.source(), rule.confidence());
    }

    /** A difference of temperatures, printed in Fahrenheit. */
    private static Sourced<Double> kelvins(String topic, String name) {
        Rule rule = rule(topic, name);
        if (!rule.unit().equals("F")) {
            throw new IllegalStateException(name + " is not in Fahrenheit: " + rule.value() + " " + rule.unit());
        }
        double kelvins =
                Temperature.fahrenheit(Double.parseDouble(rule.value())).above(Temperature.fahrenheit(0));
        return Sourced.of(kelvins, rule.source(), rule.confidence());
    }

    private static <T extends Measure> Sourced<T> figure(String topic, String name, Class<T> kind) {
        Rule rule = rule(topic, name);
        T measure = rule.measure()
                .filter(kind::isInstance)
                .map(kind::cast)
                .orElseThrow(() -> new IllegalStateException(
                        name + " is no " + kind.getSimpleName() + ": " + rule.value() + " " + rule.unit()));
        return Sourced.of(measure, rule.source(), rule.confidence());
    }

    private static Rule rule(String topic, String name) {
        return about(topic).stream()
                .filter(each -> each.rule().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("rules.csv has no rule " + name + " about " + topic));
    }
}
