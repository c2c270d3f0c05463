package org.thalweg.api.sheet;

/** Parts of an answer that are drawn, in the order of a packet. */
public enum View {
    MAP("map", "Roof map", "The roof seen from above: edges by kind, panels, openings, which way water runs."),
    FINDINGS(
            "findings",
            "Findings and cautions",
            "What a crew should know of this roof, and what holds for every roof."),
    PLANES(
            "planes",
            "Planes",
            "Every plane as it is, looked at square: edges with lengths, panels with marks, where laying starts."),
    TICKETS(
            "tickets",
            "Panel tickets",
            "Every different panel as cut, with the marks on its ribs measured from the lower end."),
    VALLEYS(
            "valleys",
            "Valleys and hips",
            "Every valley and hip: the pan in section and flat, lines to chalk, rows of fasteners."),
    TRIMS("trims", "Trims", "Every flashing in section and flat, with its bends and pieces."),
    CUTTING("cutting", "Cutting plans", "How bars and coil are cut up."),
    FASTENERS("fasteners", "Fasteners and clips", "Every plane with the places of its fasteners and clips."),
    ORDER("order", "Order list", "What to order, blanks and totals.");

    private final String word;
    private final String title;
    private final String shows;

    View(String word, String title, String shows) {
        this.word = word;
        this.title = title;
        this.shows = shows;
    }

    /** How callers ask for it. */
    public String word() {
        return word;
    }

    /** What is lettered at the head of its sheets. */
    public String title() {
        return title;
    }

    /** What is to be seen on its sheets, in a sentence. */
    public String shows() {
        return shows;
    }
}
