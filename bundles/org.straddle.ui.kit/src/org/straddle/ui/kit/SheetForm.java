package org.straddle.ui.kit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.function.Supplier;

import org.straddle.publish.packing.PackingPage;
import org.straddle.publish.packing.PackingPdf;
import org.straddle.publish.packing.PackingSheet;
import org.straddle.publish.site.SiteSheetPdf;

/** What a packing list may be written as. */
enum SheetForm {
    HTML(".html"), PHONE("-phone.html"), PDF_A4(".pdf"), PDF_LETTER("-letter.pdf");

    private final String ending;

    SheetForm(String ending) {
        this.ending = ending;
    }

    String ending() {
        return ending;
    }

    /** The content of the file, to be made off the UI thread. */
    Supplier<byte[]> content(PackingPage page) {
        return switch (this) {
            case HTML -> () -> PackingSheet.html(page).getBytes(StandardCharsets.UTF_8);
            case PHONE -> () -> PackingSheet.phone(page).getBytes(StandardCharsets.UTF_8);
            case PDF_A4 -> () -> pdf(page, SiteSheetPdf.Format.A4);
            case PDF_LETTER -> () -> pdf(page, SiteSheetPdf.Format.LETTER);
        };
    }

    private static byte[] pdf(PackingPage page, SiteSheetPdf.Format format) {
        try {
            return PackingPdf.of(page, format);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
