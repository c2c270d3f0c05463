package org.thalweg.drawing;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Flat pieces at full size for a cutting machine, as a drawing interchange file of release 12, which everything reads: plain
 * ASCII, closed polylines, lines and letters on named layers. That release has no place for a unit; a comment and a line of
 * lettering tell it.
 */
public final class DxfFile {

    private static final int CLOSED = 1;
    private static final int BLACK = 7;
    private static final int RED = 1;
    private static final int GREY = 8;

    private final StringBuilder entities = new StringBuilder(1 << 16);
    private final Set<String> layers = new LinkedHashSet<>();
    private final String unit;

    /** @param unit one of the drawing is one of these */
    public DxfFile(String unit) {
        this.unit = unit;
    }

    /** A closed outline; {@code corners} are right and up by turns. */
    public void outline(String layer, double[] corners) {
        entity("POLYLINE", layer);
        pair(66, "1");
        place(10, 0, 0);
        pair(70, Integer.toString(CLOSED));
        for (int i = 0; i < corners.length; i += 2) {
            entity("VERTEX", layer);
            place(10, corners[i], corners[i + 1]);
        }
        entity("SEQEND", layer);
    }

    /** A straight line. */
    public void line(String layer, double x1, double y1, double x2, double y2) {
        entity("LINE", layer);
        place(10, x1, y1);
        place(11, x2, y2);
    }

    /** Letters {@code height} high, beginning at a place. */
    public void words(String layer, String text, double x, double y, double height) {
        entity("TEXT", layer);
        place(10, x, y);
        pair(40, number(height));
        pair(1, ascii(text));
    }

    private void entity(String name, String layer) {
        layers.add(layer);
        pair(0, name);
        pair(8, layer);
    }

    private void place(int code, double x, double y) {
        pair(code, number(x));
        pair(code + 10, number(y));
        pair(code + 20, "0");
    }

    private void pair(int code, String value) {
        pair(entities, code, value);
    }

    private static void pair(StringBuilder to, int code, String value) {
        to.append(code).append("\r\n").append(value).append("\r\n");
    }

    /** All of it. */
    public byte[] bytes() {
        StringBuilder file = new StringBuilder(entities.length() + 2_000);
        pair(file, 999, "Thalweg. Full size: one drawing unit is one " + unit);
        for (String line : List.of("0 SECTION", "2 HEADER", "9 $ACADVER", "1 AC1009", "0 ENDSEC")) {
            coded(file, line);
        }
        for (String line :
                List.of("0 SECTION", "2 TABLES", "0 TABLE", "2 LTYPE", "70 1", "0 LTYPE", "2 CONTINUOUS", "70 0")) {
            coded(file, line);
        }
        for (String line : List.of("3 Solid line", "72 65", "73 0", "40 0", "0 ENDTAB", "0 TABLE", "2 LAYER")) {
            coded(file, line);
        }
        pair(file, 70, Integer.toString(layers.size()));
        for (String layer : new ArrayList<>(layers)) {
            coded(file, "0 LAYER");
            pair(file, 2, layer);
            coded(file, "70 0");
            pair(file, 62, Integer.toString(colour(layer)));
            coded(file, "6 CONTINUOUS");
        }
        for (String line : List.of("0 ENDTAB", "0 ENDSEC", "0 SECTION", "2 ENTITIES")) {
            coded(file, line);
        }
        file.append(entities);
        coded(file, "0 ENDSEC");
        coded(file, "0 EOF");
        return file.toString().getBytes(StandardCharsets.US_ASCII);
    }

    private static void coded(StringBuilder file, String line) {
        int blank = line.indexOf(' ');
        pair(file, Integer.parseInt(line.substring(0, blank)), line.substring(blank + 1));
    }

    /** What is cut is black, what is bent red, letters grey. */
    private static int colour(String layer) {
        if (layer.endsWith("CUT")) {
            return BLACK;
        }
        return layer.endsWith("MARK") ? GREY : RED;
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value).toPlainString();
    }

    private static String ascii(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        text.codePoints().forEach(letter -> kept.append(letter >= ' ' && letter < 127 ? (char) letter : '?'));
        return kept.toString();
    }
}
