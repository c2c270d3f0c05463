package org.thalweg.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** One sheet of paper and what has been drawn on it, in order. */
public final class Sheet {

    /** Room kept before and after lettering that looks for a free place, points. */
    private static final double WORD_ROOM = 1.8;

    private final String view;
    private final String title;
    private final Paper paper;
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Stroke.Words> words = new ArrayList<>();
    private final List<LetterBox> boxes = new ArrayList<>();
    private String scale = "not to scale";

    Sheet(String view, String title, Paper paper) {
        this.view = view;
        this.title = title;
        this.paper = paper;
    }

    public String view() {
        return view;
    }

    public String title() {
        return title;
    }

    public Paper paper() {
        return paper;
    }

    /** What its foot says of its scale. */
    public String scale() {
        return scale;
    }

    /** Says to what scale it is drawn. */
    public void scale(String stated) {
        this.scale = stated;
    }

    public void line(double x1, double y1, double x2, double y2, Pen pen) {
        strokes.add(new Stroke.Run(new double[] {x1, y1, x2, y2}, false, Optional.of(pen), Optional.empty()));
    }

    /** Draws a run of straight lines; {@code corners} are x and y by turns. */
    public void run(double[] corners, Pen pen) {
        strokes.add(new Stroke.Run(corners, false, Optional.of(pen), Optional.empty()));
    }

    /** Draws a closed outline. */
    public void ring(double[] corners, Pen pen) {
        strokes.add(new Stroke.Run(corners, true, Optional.of(pen), Optional.empty()));
    }

    /** Fills a shape and draws no outline. */
    public void fill(double[] corners, Ink ink) {
        strokes.add(new Stroke.Run(corners, true, Optional.empty(), Optional.of(ink)));
    }

    /** Puts a dot at each of {@code places}, x and y by turns. */
    public void dots(double[] places, Dot dot) {
        if (places.length > 0) {
            strokes.add(new Stroke.Dots(places, dot));
        }
    }

    /** Letters a line that reads level, its baseline at {@code y}. */
    public void words(String text, double x, double y, Type type, Anchor anchor, Ink ink) {
        put(new Stroke.Words(text, x, y, 0, type, anchor, ink));
    }

    /** Letters a line in black that begins at {@code x}. */
    public void words(String text, double x, double y, Type type) {
        words(text, x, y, type, Anchor.START, Ink.BLACK);
    }

    /**
     * Letters a line if it keeps clear of all that is lettered so far.
     *
     * @param turn degrees counter-clockwise
     * @return whether it was lettered
     */
    public boolean wordsIfClear(Label label, double x, double y, double turn) {
        Stroke.Words asked = new Stroke.Words(label.text(), x, y, turn, label.type(), label.anchor(), label.ink());
        LetterBox box = asked.box();
        if (!clear(box)) {
            return false;
        }
        if (label.backed()) {
            fill(box.corners(), Ink.WHITE);
        }
        put(asked, box);
        return true;
    }

    /**
     * Letters a line if it keeps clear of all that is drawn and lettered so far, and within {@code area}.
     *
     * @param turn degrees counter-clockwise
     * @return whether it was lettered
     */
    public boolean wordsIfFree(Label label, double x, double y, double turn, Area area) {
        Stroke.Words asked = new Stroke.Words(label.text(), x, y, turn, label.type(), label.anchor(), label.ink());
        LetterBox box = asked.box();
        LetterBox room = box.longer(WORD_ROOM);
        if (!box.inside(area) || !clear(room) || strokes.stream().anyMatch(stroke -> stroke.crosses(room))) {
            return false;
        }
        put(asked, box);
        return true;
    }

    /** Whether a line would run through nothing that is lettered. */
    boolean lineIsClear(double x1, double y1, double x2, double y2) {
        return boxes.stream().noneMatch(box -> box.crossed(x1, y1, x2, y2));
    }

    private boolean clear(LetterBox box) {
        for (LetterBox other : boxes) {
            if (box.meets(other)) {
                return false;
            }
        }
        return true;
    }

    private void put(Stroke.Words asked) {
        put(asked, asked.box());
    }

    private void put(Stroke.Words asked, LetterBox box) {
        if (!asked.text().isEmpty()) {
            strokes.add(asked);
            words.add(asked);
            boxes.add(box);
        }
    }

    /** All that is lettered on it, in order. */
    public List<String> lettering() {
        return words.stream().map(Stroke.Words::text).toList();
    }

    List<Stroke.Words> words() {
        return Collections.unmodifiableList(words);
    }

    /** Draws it on {@code canvas}. */
    void on(Canvas canvas) {
        for (Stroke stroke : strokes) {
            stroke.on(canvas);
        }
    }
}
