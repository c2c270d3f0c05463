package org.thalweg.drawing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.util.Matrix;

/** Sheets as one PDF document, a page each, its lettering embedded and fit to be searched and copied. */
public final class PdfFile {

    private PdfFile() {}

    /**
     * The document.
     *
     * @param title  what its reader shows as its name
     * @param digest of the request: the document's id is made of it and not of the clock
     */
    public static byte[] of(List<Sheet> sheets, String title, String digest) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 18);
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(Long.parseUnsignedLong(digest.substring(0, 16), 16));
            PDDocumentInformation information = new PDDocumentInformation();
            information.setTitle(Lettering.printable(title));
            document.setDocumentInformation(information);
            PDFont font = PDType0Font.load(document, Lettering.face(), true);
            for (Sheet sheet : sheets) {
                add(document, sheet, font);
            }
            document.save(bytes);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return bytes.toByteArray();
    }

    private static void add(PDDocument document, Sheet sheet, PDFont font) throws IOException {
        Paper paper = sheet.paper();
        PDPage page = new PDPage(new PDRectangle((float) paper.width(), (float) paper.height()));
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            content.setLineJoinStyle(1);
            PdfCanvas canvas = new PdfCanvas(content, font, paper.height());
            sheet.on(canvas);
            canvas.check();
        }
    }

    /** Draws one page. Pens and inks are told only when they change. */
    private static final class PdfCanvas implements Canvas {

        private final PDPageContentStream content;
        private final PDFont font;
        private final double height;
        private Optional<IOException> broken = Optional.empty();
        private Optional<Pen> pen = Optional.empty();
        private Optional<Ink> fill = Optional.empty();

        PdfCanvas(PDPageContentStream content, PDFont font, double height) {
            this.content = content;
            this.font = font;
            this.height = height;
        }

        void check() throws IOException {
            if (broken.isPresent()) {
                throw broken.get();
            }
        }

        /** Something that is drawn. */
        private interface Drawing {
            void draw() throws IOException;
        }

        private void attempt(Drawing drawing) {
            try {
                drawing.draw();
            } catch (IOException failed) {
                broken = Optional.of(failed);
            }
        }

        private void take(Pen other) throws IOException {
            if (pen.filter(other::equals).isPresent()) {
                return;
            }
            pen = Optional.of(other);
            stroke(other.ink());
            content.setLineWidth((float) other.width());
            double[] dashes = other.dashes();
            float[] pattern = new float[dashes.length];
            for (int i = 0; i < dashes.length; i++) {
                pattern[i] = (float) dashes[i];
            }
            content.setLineDashPattern(pattern, 0);
        }

        private void stroke(Ink ink) throws IOException {
            content.setStrokingColor(share(ink, 16), share(ink, 8), share(ink, 0));
        }

        private void dip(Ink ink) throws IOException {
            if (fill.filter(ink::equals).isEmpty()) {
                fill = Optional.of(ink);
                content.setNonStrokingColor(share(ink, 16), share(ink, 8), share(ink, 0));
            }
        }

        private static float share(Ink ink, int shift) {
            return (ink.rgb() >> shift & 0xFF) / 255f;
        }

        private float up(double y) {
            return (float) (height - y);
        }

        @Override
        public void run(double[] corners, boolean closed, Optional<Pen> drawn, Optional<Ink> filled) {
            attempt(() -> {
                if (drawn.isPresent()) {
                    take(drawn.get());
                }
                if (filled.isPresent()) {
                    dip(filled.get());
                }
                content.moveTo((float) corners[0], up(corners[1]));
                for (int i = 2; i < corners.length; i += 2) {
                    content.lineTo((float) corners[i], up(corners[i + 1]));
                }
                if (closed) {
                    content.closePath();
                }
                if (filled.isPresent() && drawn.isPresent()) {
                    content.fillAndStroke();
                } else if (filled.isPresent()) {
                    content.fill();
                } else {
                    content.stroke();
                }
            });
        }

        @Override
        public void dots(double[] places, Dot dot) {
            attempt(() -> {
                if (dot.filled()) {
                    dip(dot.ink());
                } else {
                    take(dot.ink() == Ink.ACCENT ? Pen.DOT_ACCENT : Pen.DOT);
                }
                for (int i = 0; i < places.length; i += 2) {
                    for (int corner = 0; corner < dot.count(); corner++) {
                        float x = (float) (places[i] + dot.x(corner));
                        float y = up(places[i + 1] + dot.y(corner));
                        if (corner == 0) {
                            content.moveTo(x, y);
                        } else {
                            content.lineTo(x, y);
                        }
                    }
                    content.closePath();
                }
                if (dot.filled()) {
                    content.fill();
                } else {
                    content.stroke();
                }
            });
        }

        @Override
        public void words(Stroke.Words words) {
            attempt(() -> {
                dip(words.ink());
                content.beginText();
                content.setFont(font, (float) words.type().size());
                double turn = Math.toRadians(words.turn());
                if (turn == 0) {
                    content.newLineAtOffset((float) words.startX(), up(words.startY()));
                } else {
                    content.setTextMatrix(Matrix.getRotateInstance(turn, (float) words.startX(), up(words.startY())));
                }
                content.showText(Lettering.printable(words.text()));
                content.endText();
            });
        }
    }
}
