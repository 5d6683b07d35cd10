package org.straddle.drawing.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Answers every question for a font with the one beside this class. The library would else read all fonts of the
 * machine, warn about those that are not there, and leave a list of them in the user's home folder.
 */
public final class OwnFonts implements FontMapper {

    private TrueTypeFont plain;

    private OwnFonts() {
    }

    /** From now on, for the whole program: the library knows one answer only. */
    public static void use() {
        if (!(FontMappers.instance() instanceof OwnFonts)) {
            FontMappers.set(new OwnFonts());
        }
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(plain(), true);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(plain(), true);
    }

    @Override
    public CIDFontMapping getCIDFont(String name, PDFontDescriptor descriptor, PDCIDSystemInfo letters) {
        return new CIDFontMapping(null, plain(), true);
    }

    private synchronized TrueTypeFont plain() {
        if (plain == null) {
            try (InputStream stream = PdfLetters.class.getResourceAsStream("DejaVuSans.ttf")) {
                plain = new TTFParser().parse(new RandomAccessReadBuffer(stream));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return plain;
    }
}
