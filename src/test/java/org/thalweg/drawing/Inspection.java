package org.thalweg.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A sheet looked over as it lies there: what is lettered over what, and what runs off the paper. */
public final class Inspection {

    /** Printers leave about a sixth of an inch along every side blank [common practice, no source]. */
    private static final double EDGE = 12;

    private Inspection() {}

    /** Pairs of lines of lettering that meet. */
    public static List<String> overlaps(Sheet sheet) {
        List<Stroke.Words> words = sheet.words();
        List<LetterBox> boxes = words.stream().map(Stroke.Words::box).toList();
        List<String> found = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (boxes.get(i).meets(boxes.get(j))) {
                    found.add(words.get(j).text() + " | " + words.get(i).text());
                }
            }
        }
        return found;
    }

    /** What is lettered smaller than the smallest type. */
    public static List<String> tooSmall(Sheet sheet) {
        return sheet.words().stream()
                .filter(words -> words.type().size() < Type.TINY.size())
                .map(Stroke.Words::text)
                .toList();
    }

    /** What lies outside of the paper or too near to its sides to be printed. */
    public static List<String> astray(Sheet sheet) {
        List<String> found = new ArrayList<>();
        Paper paper = sheet.paper();
        sheet.on(new Canvas() {

            @Override
            public void run(double[] corners, boolean closed, Optional<Pen> pen, Optional<Ink> fill) {
                check("a line", corners);
            }

            @Override
            public void dots(double[] places, Dot dot) {
                check("a dot", places);
            }

            @Override
            public void words(Stroke.Words words) {
                check(words.text(), words.box().corners());
            }

            private void check(String what, double[] places) {
                for (int i = 0; i < places.length; i += 2) {
                    double x = places[i];
                    double y = places[i + 1];
                    boolean on = x >= EDGE && y >= EDGE && x <= paper.width() - EDGE && y <= paper.height() - EDGE;
                    if (!on) {
                        found.add(what + " at " + x + ", " + y);
                        return;
                    }
                }
            }
        });
        return found;
    }
}
