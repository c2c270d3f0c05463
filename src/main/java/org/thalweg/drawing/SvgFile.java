package org.thalweg.drawing;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Sheets as one SVG document, one under the other. Only presentation attributes, so that a page's policy lets it be. */
public final class SvgFile {

    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final XMLOutputFactory FACTORY = XMLOutputFactory.newFactory();
    private static final double GAP = 12;

    private SvgFile() {}

    /**
     * The document in UTF-8.
     *
     * @param title       what it shows, for those who hear it
     * @param description the same in a sentence
     */
    public static byte[] of(List<Sheet> sheets, String title, String description) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
        try {
            XMLStreamWriter xml = FACTORY.createXMLStreamWriter(bytes, StandardCharsets.UTF_8.name());
            xml.writeStartDocument("UTF-8", "1.0");
            write(xml, sheets, title, description);
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException broken) {
            throw new IllegalStateException("cannot write SVG to memory", broken);
        }
        return bytes.toByteArray();
    }

    private static void write(XMLStreamWriter xml, List<Sheet> sheets, String title, String description)
            throws XMLStreamException {
        Paper paper = sheets.get(0).paper();
        double height = sheets.size() * (paper.height() + GAP) - GAP;
        xml.writeStartElement("svg");
        xml.writeDefaultNamespace(NAMESPACE);
        xml.writeAttribute("viewBox", "0 0 " + Decimals.of(paper.width()) + ' ' + Decimals.of(height));
        xml.writeAttribute("width", Decimals.of(paper.width() / 72) + "in");
        xml.writeAttribute("height", Decimals.of(height / 72) + "in");
        xml.writeAttribute("role", "img");
        xml.writeAttribute("aria-labelledby", "title desc");
        xml.writeAttribute("font-family", Lettering.FAMILY);
        xml.writeAttribute("stroke-linejoin", "round");
        xml.writeAttribute("fill", "none");
        element(xml, "title", title);
        element(xml, "desc", description);
        for (int i = 0; i < sheets.size(); i++) {
            xml.writeStartElement("g");
            xml.writeAttribute("data-view", sheets.get(i).view());
            if (i > 0) {
                xml.writeAttribute("transform", "translate(0 " + Decimals.of(i * (paper.height() + GAP)) + ')');
            }
            xml.writeEmptyElement("rect");
            xml.writeAttribute("width", Decimals.of(paper.width()));
            xml.writeAttribute("height", Decimals.of(paper.height()));
            xml.writeAttribute("fill", Ink.WHITE.hex());
            SvgCanvas canvas = new SvgCanvas(xml);
            sheets.get(i).on(canvas);
            canvas.check();
            xml.writeEndElement();
        }
        xml.writeEndElement();
    }

    private static void element(XMLStreamWriter xml, String name, String text) throws XMLStreamException {
        xml.writeStartElement(name);
        xml.writeAttribute("id", name);
        xml.writeCharacters(writable(text));
        xml.writeEndElement();
    }

    /** {@code text} without what XML has no way to hold. */
    private static String writable(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        text.codePoints()
                .forEach(letter -> kept.appendCodePoint(
                        letter < ' ' || letter >= 0xD800 && letter < 0xE000 || letter == 0xFFFE || letter == 0xFFFF
                                ? '?'
                                : letter));
        return kept.toString();
    }

    /** Writes one sheet. */
    private static final class SvgCanvas implements Canvas {

        private final XMLStreamWriter xml;
        private Optional<XMLStreamException> broken = Optional.empty();

        SvgCanvas(XMLStreamWriter xml) {
            this.xml = xml;
        }

        /** Drawing goes on past a failure, which is told at the end. */
        void check() throws XMLStreamException {
            if (broken.isPresent()) {
                throw broken.get();
            }
        }

        /** Something that is written. */
        private interface Writing {
            void write() throws XMLStreamException;
        }

        private void attempt(Writing writing) {
            try {
                writing.write();
            } catch (XMLStreamException failed) {
                broken = Optional.of(failed);
            }
        }

        @Override
        public void run(double[] corners, boolean closed, Optional<Pen> pen, Optional<Ink> fill) {
            attempt(() -> {
                xml.writeEmptyElement(closed ? "polygon" : "polyline");
                xml.writeAttribute("points", points(corners));
                if (fill.isPresent()) {
                    xml.writeAttribute("fill", fill.get().hex());
                }
                if (pen.isPresent()) {
                    pen(pen.get());
                }
            });
        }

        private void pen(Pen pen) throws XMLStreamException {
            xml.writeAttribute("stroke", pen.ink().hex());
            xml.writeAttribute("stroke-width", Decimals.of(pen.width()));
            double[] dashes = pen.dashes();
            if (dashes.length > 0) {
                StringBuilder list = new StringBuilder();
                for (double dash : dashes) {
                    list.append(list.length() > 0 ? " " : "").append(Decimals.of(dash));
                }
                xml.writeAttribute("stroke-dasharray", list.toString());
            }
        }

        private static String points(double[] corners) {
            StringBuilder points = new StringBuilder(corners.length * 7);
            for (int i = 0; i < corners.length; i += 2) {
                if (i > 0) {
                    points.append(' ');
                }
                Decimals.append(points, corners[i]);
                points.append(',');
                Decimals.append(points, corners[i + 1]);
            }
            return points.toString();
        }

        /** All of them as one path: a thousand fasteners are one element. */
        @Override
        public void dots(double[] places, Dot dot) {
            StringBuilder path = new StringBuilder(places.length * 24);
            for (int i = 0; i < places.length; i += 2) {
                for (int corner = 0; corner < dot.count(); corner++) {
                    path.append(corner == 0 ? 'M' : 'L');
                    Decimals.append(path, places[i] + dot.x(corner));
                    path.append(' ');
                    Decimals.append(path, places[i + 1] + dot.y(corner));
                }
                path.append('Z');
            }
            attempt(() -> {
                xml.writeEmptyElement("path");
                xml.writeAttribute("d", path.toString());
                if (dot.filled()) {
                    xml.writeAttribute("fill", dot.ink().hex());
                } else {
                    xml.writeAttribute("stroke", dot.ink().hex());
                    xml.writeAttribute("stroke-width", "0.5");
                }
            });
        }

        @Override
        public void words(Stroke.Words words) {
            attempt(() -> {
                xml.writeStartElement("text");
                xml.writeAttribute("x", Decimals.of(words.x()));
                xml.writeAttribute("y", Decimals.of(words.y()));
                xml.writeAttribute("font-size", Decimals.of(words.type().size()));
                xml.writeAttribute("fill", words.ink().hex());
                if (words.anchor() != Anchor.START) {
                    xml.writeAttribute("text-anchor", words.anchor().svg());
                }
                if (words.turn() != 0) {
                    xml.writeAttribute(
                            "transform",
                            "rotate(" + Decimals.of(-words.turn()) + ' ' + Decimals.of(words.x()) + ' '
                                    + Decimals.of(words.y()) + ')');
                }
                xml.writeCharacters(writable(words.text()));
                xml.writeEndElement();
            });
        }
    }
}
