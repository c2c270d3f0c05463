package org.thalweg.api.sheet;

/** Forms an answer is drawn or listed in, as media types. */
public final class SheetForm {

    /** One part of an answer, or all of it, as a drawing for a screen [published: W3C SVG 1.1]. */
    public static final String SVG = "image/svg+xml";

    /** A packet to print [published: ISO 32000]. */
    public static final String PDF = "application/pdf";

    /** A list to count on [published: RFC 4180]. */
    public static final String CSV = "text/csv";

    /** Blanks at full size for a cutting machine. */
    public static final String DXF = "image/vnd.dxf";

    private SheetForm() {}
}
