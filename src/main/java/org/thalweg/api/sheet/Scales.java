package org.thalweg.api.sheet;

import org.thalweg.drawing.Scale;
import org.thalweg.drawing.Sheet;

/** What the foot of a sheet says of its scale when several drawings are on it. */
final class Scales {

    private static final String NONE = "not to scale";
    private static final String SEVERAL = "beside each figure";

    private Scales() {}

    /** Says on {@code sheet} that something on it is drawn to {@code scale}. */
    static void tell(Sheet sheet, Scale scale) {
        sheet.scale(both(sheet.scale(), scale));
    }

    /** One scale when all drawings so far have it. */
    private static String both(String before, Scale scale) {
        return before.equals(NONE) || before.equals(scale.stated()) ? scale.stated() : SEVERAL;
    }
}
