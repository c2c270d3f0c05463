package org.thalweg.api;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.BitSet;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the name of a coordinate reference system says about the unit. Roofs are laid in metres on a level grid; a file in
 * degrees, in feet or in geocentric metres would be read as a roof of another size and slope, so it has to be known.
 *
 * <p>Knows the codes of EPSG (see {@code crs-not-in-metres.txt}, where the source stands) and the geographic systems of
 * OGC. <em>Known limit</em>: any other name is taken to mean metres.
 */
final class ReferenceSystem {

    /** {@code .../EPSG/0/7415}, {@code urn:ogc:def:crs:EPSG::7415}, {@code EPSG:7415}; a name may hold several. */
    private static final Pattern EPSG = Pattern.compile("EPSG[/:](?:[0-9.]{0,9}[/:])?([0-9]{4,6})");

    private static final Pattern OGC_DEGREES = Pattern.compile("CRS(?:84h?|83|27)\\b");

    private static final BitSet NOT_IN_METRES = read("/cityjson/crs-not-in-metres.txt");

    private ReferenceSystem() {}

    /** The system in {@code name} that is not in metres on a level grid, such as {@code EPSG:4326}; empty when none is. */
    static Optional<String> notInMetres(String name) {
        Matcher epsg = EPSG.matcher(name);
        while (epsg.find()) {
            if (NOT_IN_METRES.get(Integer.parseInt(epsg.group(1)))) {
                return Optional.of("EPSG:" + epsg.group(1));
            }
        }
        Matcher ogc = OGC_DEGREES.matcher(name);
        return ogc.find() ? Optional.of("OGC:" + ogc.group()) : Optional.empty();
    }

    private static BitSet read(String resource) {
        try (InputStream in = Objects.requireNonNull(ReferenceSystem.class.getResourceAsStream(resource), resource)) {
            BitSet codes = new BitSet();
            new String(in.readAllBytes(), StandardCharsets.US_ASCII)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .flatMap(Pattern.compile(" ")::splitAsStream)
                    .forEach(range -> add(range, codes));
            return codes;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void add(String range, BitSet codes) {
        int dash = range.indexOf('-');
        int from = Integer.parseInt(dash < 0 ? range : range.substring(0, dash));
        int to = dash < 0 ? from : Integer.parseInt(range.substring(dash + 1));
        codes.set(from, to + 1);
    }
}
