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

    /** Behind the form that is taken where JSON will not do and several others would. */
    public static final String SECOND = ";qs=0.5";

    /** Behind a form that is only taken when it is asked for by name: whoever takes anything gets JSON. */
    public static final String LATER = ";qs=0.1";

    private SheetForm() {}
}
