package org.thalweg.roof;

import java.io.InputStream;
import java.math.BigDecimal;
import java.util.stream.Stream;

/** Figures as a source prints them. */
final class Printed {

    private Printed() {}

    /** Half of the last digit printed, and a little for the half that is cut in binary. */
    static double halfDigit(String printed) {
        return 0.5 * Math.pow(10, -Math.max(0, new BigDecimal(printed).scale())) + 1e-10;
    }

    static InputStream open(String resource) {
        return Stream.ofNullable(Printed.class.getResourceAsStream(resource))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no resource " + resource));
    }
}
