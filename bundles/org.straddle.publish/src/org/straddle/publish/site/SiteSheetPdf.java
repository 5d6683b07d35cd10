package org.straddle.publish.site;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.straddle.drawing.Face;
import org.straddle.drawing.Stroke;
import org.straddle.drawing.Words;
import org.straddle.drawing.pdf.PdfLetters;
import org.straddle.drawing.pdf.PdfPen;
import org.straddle.words.Catalogue;

/** The page as PDF: one page, in letters as large as fit. What does not even fit in the smallest is said to be left out. */
public final class SiteSheetPdf {

    private static final Catalogue TEXTS = Catalogue.of(SiteSheetPdf.class);

    /** Sizes of paper. */
    public enum Format {
        A4(PDRectangle.A4), LETTER(PDRectangle.LETTER);

        private final PDRectangle paper;

        Format(PDRectangle paper) {
            this.paper = paper;
        }

        public PDRectangle paper() {
            return paper;
        }
    }

    private static final double MARGIN_PT = 31;
    private static final double LARGEST_PT = 9.5;
    private static final double SMALLEST_PT = 6;
    private static final double STEP_PT = 0.25;
    /** Where letters would be smaller, headings stand close: room goes to the letters first. */
    private static final double SMALLEST_AIRY_PT = 8.5;
    private static final double UNDER_RULE_PT = 2;
    private static final double SKETCH_HEIGHT_PT = 122;
    private static final int BLACK = 0;

    private SiteSheetPdf() {
    }

    /** The file; the same for the same sheet. */
    public static byte[] of(SiteSheet sheet, Format format) throws IOException {
        for (boolean airy : new boolean[] {true, false}) {
            for (double size = LARGEST_PT; size > (airy ? SMALLEST_AIRY_PT : SMALLEST_PT); size -= STEP_PT) {
                try (PDDocument document = new PDDocument()) {
                    if (paint(document, sheet, format, new Type(size, airy), false)) {
                        return saved(document, sheet);
                    }
                }
            }
        }
        try (PDDocument document = new PDDocument()) {
            paint(document, sheet, format, new Type(SMALLEST_PT, false), true);
            return saved(document, sheet);
        }
    }

    /**
     * How lines are set.
     *
     * @param size of plain letters, points
     * @param airy with room above headings and under their rules
     */
    private record Type(double size, boolean airy) {

        double above(Row row) {
            return airy && row.ruled ? size / 2 : 0;
        }

        double height(Row row, PdfLetters letters) {
            return letters.height(row.face) + above(row) + (airy && row.ruled ? UNDER_RULE_PT : 0);
        }
    }

    private static byte[] saved(PDDocument document, SiteSheet sheet) throws IOException {
        document.getDocumentInformation().setTitle(sheet.title());
        document.setDocumentId(1L);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        return out.toByteArray();
    }

    /** @return whether all of it fits */
    private static boolean paint(PDDocument document, SiteSheet sheet, Format format, Type type, boolean cut) throws IOException {
        PdfLetters letters = new PdfLetters(document, type.size);
        double width = format.paper.getWidth() - 2 * MARGIN_PT;
        double room = format.paper.getHeight() - 2 * MARGIN_PT - (sheet.station().isEmpty() ? 0 : SKETCH_HEIGHT_PT);
        // No row is lower than small print: what has more rows than that does not fit, however it goes on.
        int most = (int) (room / letters.height(Face.SMALL)) + 1;
        List<Row> rows = rows(sheet, letters, width, most);
        double needed = rows.stream().mapToDouble(row -> type.height(row, letters)).sum();
        if (needed > room && !cut) {
            return false;
        }
        PDPage page = new PDPage(format.paper);
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            PdfPen pen = new PdfPen(content, letters, MARGIN_PT, format.paper.getHeight() - MARGIN_PT, 1);
            double y = 0;
            for (Row row : rows) {
                double height = type.height(row, letters);
                boolean last = y + 2 * height > room && needed > room;
                Row put = last ? new Row(TEXTS.text("cut"), Face.STRONG, false) : row;
                write(pen, letters, put, y + type.above(put), width);
                y += height;
                if (last) {
                    break;
                }
            }
            sketch(pen, sheet, room + SKETCH_HEIGHT_PT / 2, width);
        }
        return true;
    }

    private static void write(PdfPen pen, PdfLetters letters, Row row, double y, double width) {
        double height = letters.height(row.face);
        pen.write(new Words(row.text, (float) (letters.width(row.text, row.face) / 2), (float) (y + height / 2), row.face, BLACK, -1));
        if (row.ruled) {
            float under = (float) (y + height);
            pen.stroke(List.of(new float[] {0, under, (float) width, under}), Stroke.solid(BLACK, 0.6));
        }
    }

    private static void sketch(PdfPen pen, SiteSheet sheet, double y, double width) {
        if (sheet.station().isEmpty()) {
            return;
        }
        float middle = (float) (width / 2);
        for (float[] line : StationSketch.lines(sheet.station())) {
            pen.stroke(List.of(new float[] {middle + line[0], (float) y + line[1], middle + line[2], (float) y + line[3]}),
                    new Stroke(BLACK, 1, Stroke.Dash.DASHED));
        }
        for (StationSketch.Spot spot : StationSketch.spots(sheet.station())) {
            float x = middle + spot.x();
            float at = (float) y + spot.y();
            pen.fill(List.of(new float[] {x - 2, at - 2, x + 2, at - 2, x + 2, at + 2, x - 2, at + 2, x - 2, at - 2}), BLACK, 1);
            pen.write(new Words(spot.square(), x, at - 10, Face.STRONG, BLACK, -1));
            pen.write(new Words(spot.part(), x, at + 10, Face.SMALL, BLACK, -1));
        }
    }

    /** One line of print. */
    private record Row(String text, Face face, boolean ruled) {
    }

    /** All rows, or more than most. */
    private static List<Row> rows(SiteSheet sheet, PdfLetters letters, double width, int most) {
        List<Row> rows = new ArrayList<>();
        wrap(rows, letters, sheet.title(), Face.LARGE, width, most);
        if (!sheet.held().isEmpty()) {
            wrap(rows, letters, sheet.held(), Face.LARGE, width, most);
        }
        for (SiteSheet.Part part : sheet.parts()) {
            rows.add(new Row(part.heading(), Face.STRONG, true));
            part.lines().forEach(line -> wrap(rows, letters, line, Face.PLAIN, width, most));
        }
        rows.add(new Row("", Face.SMALL, true));
        wrap(rows, letters, sheet.foot(), Face.SMALL, width, most);
        return rows;
    }

    /** Breaks at blanks; a line that is broken goes on under its first letter. It ends where there are more rows than most. */
    private static void wrap(List<Row> rows, PdfLetters letters, String text, Face face, double width, int most) {
        String indent = text.substring(0, text.length() - text.stripLeading().length());
        StringBuilder line = new StringBuilder(indent);
        for (String word : text.strip().split(" ")) {
            boolean first = line.length() == indent.length();
            if (!first && letters.width(line + " " + word, face) > width) {
                rows.add(new Row(line.toString(), face, false));
                if (rows.size() > most) {
                    return;
                }
                line = new StringBuilder(indent).append("  ").append(word);
            } else {
                line.append(first ? "" : " ").append(word);
            }
        }
        rows.add(new Row(line.toString(), face, false));
    }
}
