package org.thalweg.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The sheets of one job, in order. Sheets are numbered when it is bound. */
public final class Packet {

    private final Paper paper;
    private final TitleBlock block;
    private final int most;
    private final List<Sheet> sheets = new ArrayList<>();

    /** @param most sheets it may have */
    public Packet(Paper paper, TitleBlock block, int most) {
        this.paper = paper;
        this.block = block;
        this.most = most;
    }

    /**
     * A fresh sheet.
     *
     * @param view which view of the answer it belongs to, one word
     * @throws TooManySheets when it already has as many as it may have
     */
    public Sheet open(String view, String title) {
        if (sheets.size() == most) {
            throw new TooManySheets(most);
        }
        Sheet sheet = new Sheet(view, title, paper);
        sheets.add(sheet);
        return sheet;
    }

    public boolean isEmpty() {
        return sheets.isEmpty();
    }

    public Paper paper() {
        return paper;
    }

    /** Where drawings go on its sheets. */
    public Area field() {
        return TitleBlock.field(paper);
    }

    /** Its sheets with their numbers, for good. */
    public List<Sheet> bind() {
        for (int i = 0; i < sheets.size(); i++) {
            block.on(sheets.get(i), i + 1, sheets.size());
        }
        return Collections.unmodifiableList(sheets);
    }

    /** More sheets than anyone wants to leaf through. */
    public static final class TooManySheets extends RuntimeException {

        private static final long serialVersionUID = 1;

        private final int most;

        TooManySheets(int most) {
            super("more than " + most + " sheets");
            this.most = most;
        }

        public int most() {
            return most;
        }
    }
}
