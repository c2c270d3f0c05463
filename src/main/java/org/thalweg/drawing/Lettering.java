package org.thalweg.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * The one typeface of all drawings, and how wide it runs. It is Liberation Sans, which comes with the PDF library and is
 * as wide as the usual sans serif of screens, letter by letter. Its widths are read from the font itself and not asked of
 * the system, whose fonts differ and may be missing.
 */
final class Lettering {

    /** How SVG asks for it. */
    static final String FAMILY = "Liberation Sans, Arial, Helvetica, sans-serif";

    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final int UNKNOWN = '?';
    private static final int TABLE = 0x2600;

    private static final TrueTypeFont FACE = read();
    private static final CmapLookup GLYPHS = glyphs();

    /** Widths of the plane of letters most drawings need, in ems; negative where the typeface has no such letter. */
    private static final float[] EMS = ems();

    private Lettering() {}

    static TrueTypeFont face() {
        return FACE;
    }

    private static TrueTypeFont read() {
        try (InputStream font = PDDocument.class.getResourceAsStream(FONT)) {
            if (font == null) {
                throw new IllegalStateException("no typeface at " + FONT);
            }
            TrueTypeFont face = new TTFParser().parse(new RandomAccessReadBuffer(font));
            // No ligatures: letters run as wide as counted here, and looking for them took nine tenths of writing a
            // PDF.
            face.setEnableGsub(false);
            return face;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static CmapLookup glyphs() {
        try {
            return FACE.getUnicodeCmapLookup();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static float[] ems() {
        try {
            float[] ems = new float[TABLE];
            for (int letter = 0; letter < TABLE; letter++) {
                int glyph = GLYPHS.getGlyphId(letter);
                ems[letter] =
                        letter < ' ' || glyph == 0 ? -1 : FACE.getAdvanceWidth(glyph) / (float) FACE.getUnitsPerEm();
            }
            return ems;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** How long {@code text} runs, points. A letter the typeface lacks is as wide as a capital M. */
    static double width(String text, double size) {
        double ems = 0;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            float em = letter < TABLE ? EMS[letter] : -1;
            ems += em < 0 ? EMS['M'] : em;
        }
        return ems * size;
    }

    /** {@code text} in letters the typeface has; a question mark stands for any other. */
    static String printable(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        text.codePoints()
                .forEach(letter -> kept.append((char) (letter < TABLE && EMS[letter] >= 0 ? letter : UNKNOWN)));
        return kept.toString();
    }

    /** As much of {@code text} as fits into {@code width} points, with an ellipsis where it is cut. */
    static String cut(String text, double size, double width) {
        if (width(text, size) <= width) {
            return text;
        }
        int end = text.length();
        while (end > 0 && width(text.substring(0, end) + "…", size) > width) {
            end--;
        }
        return text.substring(0, end).stripTrailing() + "…";
    }

    /** Blanks within a tape mark, and between a number and its unit: no line ends there. */
    private static final Pattern KEPT =
            Pattern.compile("(?<=[\\d'])\\s(?=\\d+(?:/\\d+)?\"|\\d+ \\d+/\\d+\"|(?:mm|in|ft|m)\\b)");

    private static final char KEEPER = '\u00A0';

    /** {@code text} in lines of at most {@code width} points, broken at blanks, or in a word that is longer than a line. */
    static List<String> lines(String text, double size, double width) {
        if (width(text, size) <= width) {
            return List.of(text);
        }
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        String kept = KEPT.matcher(text).replaceAll(String.valueOf(KEEPER));
        for (String word : kept.split(" ")) {
            String rest = word.replace(KEEPER, ' ');
            if (line.length() > 0 && width(line + " " + rest, size) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (line.length() == 0 && width(rest, size) > width) {
                int end = fitting(rest, size, width);
                lines.add(rest.substring(0, end));
                rest = rest.substring(end);
            }
            line.append(line.length() > 0 ? " " : "").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }

    private static int fitting(String word, double size, double width) {
        int end = 1;
        while (end < word.length() && width(word.substring(0, end + 1), size) <= width) {
            end++;
        }
        return end;
    }
}
