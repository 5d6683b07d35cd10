package org.straddle.daysheet.paint;

import java.io.IOException;
import java.io.UncheckedIOException;

import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.straddle.daysheet.layout.Face;
import org.straddle.daysheet.layout.TextMeasure;

/**
 * The faces of the sheet in a PDF file: fonts that every reader of such files has, so that none need be embedded. They
 * hold the letters of western Europe only; others are drawn as question marks.
 */
public final class PdfFaces implements TextMeasure {

    private final PDFont plain = new PDType1Font(FontName.HELVETICA);
    private final PDFont bold = new PDType1Font(FontName.HELVETICA_BOLD);

    @Override
    public int width(String text, Face face) {
        try {
            return (int) Math.ceil(font(face).getStringWidth(drawable(text)) / 1000 * size(face));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    @Override
    public int height(Face face) {
        return Math.round(size(face) * 1.25f);
    }

    PDFont font(Face face) {
        return face == Face.BOLD ? bold : plain;
    }

    /** Pixels. */
    float size(Face face) {
        return switch (face) {
            case SMALL -> 10;
            case PLAIN -> 11;
            case BOLD -> 12;
        };
    }

    /** With a question mark for each letter that the fonts lack. */
    String drawable(String text) {
        StringBuilder drawable = new StringBuilder();
        text.codePoints().forEach(point -> {
            String letter = Character.toString(point);
            drawable.append(has(letter) ? letter : "?");
        });
        return drawable.toString();
    }

    private boolean has(String letter) {
        try {
            plain.encode(letter);
            return true;
        } catch (IOException | IllegalArgumentException lacking) {
            return false;
        }
    }
}
