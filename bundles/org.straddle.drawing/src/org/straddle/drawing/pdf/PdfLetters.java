package org.straddle.drawing.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.straddle.drawing.Face;
import org.straddle.drawing.Lettering;

/**
 * The letters of a PDF file: DejaVu Sans 2.37, which lies beside this class with its licence. Those that are used are
 * put into the file, so it reads alike everywhere and nothing is searched on the machine. The font has Latin, Greek,
 * Cyrillic and more; what it lacks comes out as a question mark.
 */
public final class PdfLetters implements Lettering {

    private final PDFont plain;
    private final PDFont bold;
    private final double sizePx;
    private final Map<Integer, String> printable = new HashMap<>();
    /** Of each letter, thousandths of the size: the font takes long to find one, and text is broken by measuring it again and again. */
    private final Map<Integer, Float> plainWidths = new HashMap<>();
    private final Map<Integer, Float> boldWidths = new HashMap<>();

    /**
     * @param document that the letters are for
     * @param sizePx of plain letters, pixels
     */
    public PdfLetters(PDDocument document, double sizePx) throws IOException {
        OwnFonts.use();
        this.plain = font(document, "DejaVuSans.ttf");
        this.bold = font(document, "DejaVuSans-Bold.ttf");
        this.sizePx = sizePx;
    }

    private static PDFont font(PDDocument document, String file) throws IOException {
        try (InputStream stream = PdfLetters.class.getResourceAsStream(file)) {
            return PDType0Font.load(document, stream, true);
        }
    }

    PDFont font(Face face) {
        return face.bold() ? bold : plain;
    }

    double sizePx() {
        return sizePx;
    }

    @Override
    public double width(String text, Face face) {
        Map<Integer, Float> widths = face.bold() ? boldWidths : plainWidths;
        float width = 0;
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            width += widths.computeIfAbsent(text.codePointAt(at), point -> letterWidth(point, face));
        }
        return width / 1000 * sizePx * face.size();
    }

    private float letterWidth(int point, Face face) {
        try {
            return font(face).getStringWidth(printable(Character.toString(point)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public double height(Face face) {
        return 1.25 * sizePx * face.size();
    }

    /** The text with a question mark for each letter that the font lacks. */
    public String printable(String text) {
        StringBuilder kept = new StringBuilder();
        text.codePoints().forEach(point -> kept.append(printable.computeIfAbsent(point, this::letter)));
        return kept.toString();
    }

    private String letter(int point) {
        String letter = Character.toString(point);
        try {
            plain.encode(letter);
            bold.encode(letter);
            return letter;
        } catch (IOException | IllegalArgumentException notInFont) {
            return "?";
        }
    }
}
