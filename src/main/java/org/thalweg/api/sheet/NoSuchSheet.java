package org.thalweg.api.sheet;

/** A sheet is asked for that a view does not have. */
public final class NoSuchSheet extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final int asked;
    private final int count;

    NoSuchSheet(int asked, int count) {
        super("sheet " + asked + " of " + count);
        this.asked = asked;
        this.count = count;
    }

    /** Which sheet was asked for. */
    public int asked() {
        return asked;
    }

    /** How many there are. */
    public int count() {
        return count;
    }
}
