package org.thalweg.api;

import jakarta.inject.Singleton;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.problem.NoAnswer;
import org.thalweg.api.problem.Problem;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.sheet.NoSuchSheet;
import org.thalweg.api.sheet.SheetForm;
import org.thalweg.api.sheet.SheetTerms;
import org.thalweg.api.sheet.View;
import org.thalweg.drawing.Packet.TooManySheets;
import org.thalweg.drawing.PdfFile;
import org.thalweg.drawing.Sheet;
import org.thalweg.drawing.SvgFile;
import org.thalweg.finding.RefusalCode;

/** Answers that are looked at: the finished answer drawn, never worked out again. */
@Singleton
public class Drawings {

    private final DrawingDesk desk;

    Drawings(DrawingDesk desk) {
        this.desk = desk;
    }

    /** One view for a screen. */
    Response svg(Supplier<List<Sheet>> sheets, SheetTerms terms) {
        View view = terms.view().orElse(View.MAP);
        String title = terms.job().isEmpty() ? view.title() : view.title() + ": " + terms.job();
        byte[] drawn = draw(() -> SvgFile.of(sheets.get(), title, view.shows()));
        return Response.ok(drawn, SheetForm.SVG).build();
    }

    /** A packet to print. */
    Response pdf(Supplier<List<Sheet>> sheets, SheetTerms terms, String digest) {
        String title = terms.job().isEmpty() ? "Cut and layout sheets" : terms.job();
        byte[] drawn = draw(() -> PdfFile.of(sheets.get(), title, digest));
        return named(Response.ok(drawn, SheetForm.PDF), digest, "pdf");
    }

    /** A list to count on. */
    Response csv(Supplier<byte[]> list, String digest) {
        return named(Response.ok(desk.draw(list), SheetForm.CSV + ";charset=utf-8;header=present"), digest, "csv");
    }

    /** Blanks at full size. */
    Response dxf(Supplier<byte[]> blanks, String digest) {
        return named(Response.ok(desk.draw(blanks), SheetForm.DXF), digest, "dxf");
    }

    private static Response named(Response.ResponseBuilder response, String digest, String ending) {
        String name = "thalweg-" + digest.substring(0, 12) + "." + ending;
        return response.header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + name + "\"")
                .build();
    }

    private byte[] draw(Supplier<byte[]> work) {
        try {
            return desk.draw(work);
        } catch (NoSuchSheet none) {
            throw NoAnswer.of(
                    Problem.BAD_REQUEST,
                    Fault.of(
                            ReadingCode.OUT_OF_RANGE,
                            "#",
                            "The address asks for sheet " + none.asked() + " and there are " + none.count() + ".",
                            Figure.of(none.asked()),
                            Figure.of(none.count())));
        } catch (TooManySheets many) {
            throw NoAnswer.of(
                    Problem.NOT_A_ROOF,
                    new Fault(
                            RefusalCode.PACKET_TOO_LONG.name(),
                            "#",
                            "The drawings take more than " + many.most()
                                    + " sheets. Ask for one view at a time, or lay the roof in parts.",
                            Optional.of(Figure.of(many.most() + 1.0)),
                            Optional.of(Figure.of(many.most()))));
        }
    }
}
