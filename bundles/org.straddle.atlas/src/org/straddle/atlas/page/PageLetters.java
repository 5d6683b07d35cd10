package org.straddle.atlas.page;

import java.io.IOException;
import java.io.UncheckedIOException;

import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.straddle.atlas.ink.Face;
import org.straddle.atlas.ink.Lettering;

/**
 * The letters of a page: Helvetica, which every reader of PDF has, so that no font needs to be put into the file. It
 * has the letters of western Europe; others come out as question marks.
 */
final class PageLetters implements Lettering {

    /** Size of plain letters, pixels of the picture. */
    static final double SIZE_PX = 12;

    private final PDFont plain = new PDType1Font(FontName.HELVETICA);
    private final PDFont bold = new PDType1Font(FontName.HELVETICA_BOLD);

    PDFont font(Face face) {
        return face.bold() ? bold : plain;
    }

    @Override
    public double width(String text, Face face) {
        try {
            return font(face).getStringWidth(printable(text)) / 1000 * SIZE_PX * face.size();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public double height(Face face) {
        return 1.25 * SIZE_PX * face.size();
    }

    /** The text with a question mark for each letter that the font lacks. */
    String printable(String text) {
        StringBuilder kept = new StringBuilder();
        text.codePoints().forEach(point -> {
            String letter = Character.toString(point);
            kept.append(canPrint(letter) ? letter : "?");
        });
        return kept.toString();
    }

    private boolean canPrint(String letter) {
        try {
            plain.encode(letter);
            return true;
        } catch (IOException | IllegalArgumentException notInFont) {
            return false;
        }
    }
}
