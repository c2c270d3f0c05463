package org.thalweg.api;

import java.util.List;
import org.thalweg.api.wire.CautionAnswer;

/** What every answer tells the crew to heed, whatever the roof. */
final class Cautions {

    static final List<CautionAnswer> ALL = List.of(
            new CautionAnswer(
                    "FALLS",
                    "Work behind a guard, over a net or in a harness that is tied off. A loose panel slides: never step"
                            + " on one. Never step on a valley pan."),
            new CautionAnswer(
                    "CUT_EDGES",
                    "Cut edges and swarf are sharp: wear gloves and eye protection, and clear the swarf away before it"
                            + " rusts into the coating."),
            new CautionAnswer(
                    "LADDERS_AND_POWER_LINES",
                    "Tie ladders off on firm ground. Keep ladders, panels and people well away from power lines; a long"
                            + " panel reaches further than it looks."),
            new CautionAnswer(
                    "WIND",
                    "A panel is a sail. Do not lift or carry long panels in wind, and tie down what lies loose."),
            new CautionAnswer("WET_METAL", "Wet, frosty or dusty metal is slippery. Wait until it is dry."),
            new CautionAnswer(
                    "SCREWS",
                    "Drive screws with washers with a drill whose clutch is set, not with an impact driver: the washer"
                            + " should be snug, not crushed."),
            new CautionAnswer(
                    "MARKING",
                    "Mark with chalk that wipes off. Graphite pencil eats into bare zinc and aluminium-zinc coatings."),
            new CautionAnswer(
                    "WHO_DECIDES",
                    "These figures are layout maths, not a structural design. Local codes, the engineer of record and"
                            + " licensed practice decide; the material supplier's figures win over general ones. Measure"
                            + " the roof again before cutting."));

    private Cautions() {}
}
