package org.thalweg.reference;

import java.util.List;
import org.thalweg.units.Pitch;

/** Published rules. They are what a layout is held against until the caller gives figures of the system at hand. */
public final class Rules {

    /** The topic of the least slopes. */
    public static final String LEAST_SLOPE = "min slope";

    private static final List<Rule> ALL = PublishedTable.read("rules.csv", Rule::of);

    private static final Sourced<Pitch> LEAST_SLOPE_STANDING_SEAM = pitch(LEAST_SLOPE, "standing-seam metal panels");

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

    private static Sourced<Pitch> pitch(String topic, String name) {
        Rule rule = about(topic).stream()
                .filter(each -> each.rule().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("rules.csv has no rule " + name + " about " + topic));
        Pitch pitch = rule.measure()
                .filter(Pitch.class::isInstance)
                .map(Pitch.class::cast)
                .orElseThrow(() -> new IllegalStateException(name + " is no slope: " + rule.value()));
        return Sourced.of(pitch, rule.source(), rule.confidence());
    }
}
