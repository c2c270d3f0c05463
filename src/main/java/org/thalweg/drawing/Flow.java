package org.thalweg.drawing;

/** Fills sheet after sheet from the top down. */
public final class Flow {

    private final Packet packet;
    private final String view;
    private final String title;
    private Sheet sheet;
    private double y;

    /** Begins on a fresh sheet of {@code packet}. */
    public Flow(Packet packet, String view, String title) {
        this.packet = packet;
        this.view = view;
        this.title = title;
        this.sheet = packet.open(view, title);
        this.y = packet.field().top();
    }

    public Sheet sheet() {
        return sheet;
    }

    /** How far down the sheet is taken, points. */
    public double y() {
        return y;
    }

    public double left() {
        return packet.field().left();
    }

    public double width() {
        return packet.field().width();
    }

    /** What is left of the sheet. */
    public double room() {
        return packet.field().bottom() - y;
    }

    /** Takes {@code height} points, on a fresh sheet where the rest of this one is too low; returns where they begin. */
    public Area take(double height) {
        if (height > room() && y > packet.field().top()) {
            sheet = packet.open(view, title + ", continued");
            y = packet.field().top();
        }
        Area taken = new Area(left(), y, width(), height);
        y += height;
        return taken;
    }

    /** Leaves {@code points} free. */
    public void skip(double points) {
        y += points;
    }

    /** A heading, kept together with the {@code height} points under it. */
    public void heading(String text, double height) {
        if (Type.HEAD.leading() + 6 + height > room() && y > packet.field().top()) {
            take(room() + 1);
            y = packet.field().top();
        }
        Area line = take(Type.HEAD.leading() + 6);
        sheet.words(Lettering.cut(text, Type.HEAD.size(), width()), line.left(), line.bottom() - 5, Type.HEAD);
    }

    /** A paragraph as wide as the sheet. */
    public void text(String text, Type type, Ink ink) {
        for (String line : Lettering.lines(text, type.size(), width())) {
            Area area = take(type.leading());
            sheet.words(line, area.left(), area.top() + type.size(), type, Anchor.START, ink);
        }
    }
}
