package org.straddle.publish.packing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.straddle.drawing.Face;
import org.straddle.drawing.Stroke;
import org.straddle.drawing.Words;
import org.straddle.drawing.pdf.PdfLetters;
import org.straddle.drawing.pdf.PdfPen;
import org.straddle.publish.site.SiteSheetPdf;
import org.straddle.words.Catalogue;

/** The packing list as PDF, as many pages as it takes, with four drawn boxes before each item. */
public final class PackingPdf {

    private static final Catalogue TEXTS = Catalogue.of(PackingPdf.class);

    private static final double MARGIN_PT = 34;
    private static final double LETTER_PT = 9.5;
    private static final double BOX_PT = 9;
    private static final double BOX_COLUMN_PT = 46;
    private static final double GAP_PT = 3;
    private static final int BLACK = 0;
    private static final int BOXES = 4;

    private PackingPdf() {
    }

    /** The file; the same for the same page. */
    public static byte[] of(PackingPage page, SiteSheetPdf.Format format) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PdfLetters letters = new PdfLetters(document, LETTER_PT);
            double width = format.paper().getWidth() - 2 * MARGIN_PT;
            double height = format.paper().getHeight() - 2 * MARGIN_PT;
            List<List<Line>> sheets = sheets(lines(page, letters, width), letters, height - letters.height(Face.SMALL) - GAP_PT);
            for (int number = 0; number < sheets.size(); number++) {
                PDPage sheet = new PDPage(format.paper());
                document.addPage(sheet);
                try (PDPageContentStream content = new PDPageContentStream(document, sheet)) {
                    PdfPen pen = new PdfPen(content, letters, MARGIN_PT, format.paper().getHeight() - MARGIN_PT, 1);
                    paint(pen, letters, sheets.get(number), width);
                    String foot = TEXTS.text("pdf.foot", "title", page.title(), "page", number + 1, "pages", sheets.size());
                    write(pen, letters, foot, Face.SMALL, 0, height - letters.height(Face.SMALL));
                }
            }
            document.getDocumentInformation().setTitle(page.title());
            document.setDocumentId(1L);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }

    /**
     * One line of print.
     *
     * @param boxes  none, one, or one for each kind of tick
     * @param ticked for each box whether it is ticked already
     * @param joined may it not be parted from the line before?
     */
    private record Line(String text, Face face, int boxes, List<Boolean> ticked, boolean ruled, boolean joined) {

        static Line plain(String text, Face face, boolean joined) {
            return new Line(text, face, 0, List.of(), false, joined);
        }

        double height(PdfLetters letters) {
            return Math.max(letters.height(face), boxes > 0 ? BOX_PT + 2 : 0) + (ruled ? GAP_PT : 0);
        }
    }

    private static List<Line> lines(PackingPage page, PdfLetters letters, double width) {
        List<Line> lines = new ArrayList<>();
        wrap(lines, letters, page.title(), Face.LARGE, width, false);
        wrap(lines, letters, TEXTS.text("pdf.event", "event", page.event(), "summary", page.summary()), Face.PLAIN, width, true);
        if (page.isEmpty()) {
            wrap(lines, letters, TEXTS.text("pdf.empty"), Face.STRONG, width, false);
        }
        section(lines, letters, TEXTS.text("pdf.attention"), page.attention(), false, width);
        for (PackingPage.Bag bag : page.bags()) {
            heading(lines, TEXTS.text("pdf.bag", "bag", bag.name().isEmpty() ? "none" : bag.name(), "weight", bag.weight()));
            lines.add(new Line(TEXTS.text("pdf.columns"), Face.SMALL, 0, List.of(), false, true));
            bag.rows().forEach(row -> row(lines, letters, row, width));
        }
        section(lines, letters, TEXTS.text("pdf.asks"), page.asks().stream().map(ask -> TEXTS.text("pdf.ask", "sentence", ask.sentence(),
                "because", String.join(". ", ask.because()))).toList(), true, width);
        section(lines, letters, TEXTS.text("pdf.sites"), page.marking(), false, width);
        section(lines, letters, TEXTS.text("pdf.leaving"), page.stops().stream().map(PackingPage.Stop::name).toList(), true, width);
        section(lines, letters, TEXTS.text("pdf.back"), page.back(), true, width);
        section(lines, letters, TEXTS.text("pdf.notes"), page.notes(), false, width);
        return lines;
    }

    private static void row(List<Line> lines, PdfLetters letters, PackingPage.Row row, double width) {
        String who = row.packed().set() ? TEXTS.text("pdf.packed", "by", row.packed().by(), "at", row.packed().at())
                : TEXTS.text("pdf.pen");
        lines.add(new Line(TEXTS.text("pdf.item", "count", row.count(), "name", row.name(), "packed", who), Face.PLAIN, BOXES,
                List.of(row.packed().set(), row.checked().set(), row.tested().set(), row.returned().set()), true, false));
        if (!row.details().isEmpty()) {
            List<Line> details = new ArrayList<>();
            wrap(details, letters, row.details(), Face.SMALL, width - BOXES * BOX_COLUMN_PT, true);
            details.forEach(line -> lines.add(new Line(line.text, line.face, 0, List.of(false), false, true)));
        }
    }

    private static void section(List<Line> lines, PdfLetters letters, String heading, List<String> texts, boolean boxed, double width) {
        if (texts.isEmpty()) {
            return;
        }
        heading(lines, heading);
        for (String text : texts) {
            List<Line> wrapped = new ArrayList<>();
            wrap(wrapped, letters, text, Face.PLAIN, width - (boxed ? BOX_COLUMN_PT / 2 : 0), false);
            for (int i = 0; i < wrapped.size(); i++) {
                lines.add(new Line(wrapped.get(i).text, Face.PLAIN, boxed && i == 0 ? 1 : 0, boxed ? List.of(false, false) : List.of(), false,
                        i > 0));
            }
        }
    }

    private static void heading(List<Line> lines, String text) {
        lines.add(Line.plain("", Face.SMALL, false));
        lines.add(new Line(text, Face.STRONG, 0, List.of(), true, true));
    }

    /** Breaks at blanks; a word that is too wide alone stands alone. */
    private static void wrap(List<Line> lines, PdfLetters letters, String text, Face face, double width, boolean joined) {
        StringBuilder line = new StringBuilder();
        boolean held = joined;
        for (String word : letters.printable(text).strip().split(" ")) {
            if (!line.isEmpty() && letters.width(line + " " + word, face) > width) {
                lines.add(Line.plain(line.toString(), face, held));
                line = new StringBuilder(word);
                held = true;
            } else {
                line.append(line.isEmpty() ? "" : " ").append(word);
            }
        }
        lines.add(Line.plain(line.toString(), face, held));
    }

    /** A heading goes with what is under it, and so does an item with its details. */
    private static List<List<Line>> sheets(List<Line> lines, PdfLetters letters, double room) {
        List<List<Line>> sheets = new ArrayList<>(List.of(new ArrayList<>()));
        double used = 0;
        for (int i = 0; i < lines.size();) {
            int end = i + 1;
            while (end < lines.size() && (lines.get(end).joined || lines.get(end - 1).face == Face.STRONG
                    || lines.get(end - 1).text.equals(TEXTS.text("pdf.columns")))) {
                end++;
            }
            List<Line> block = lines.subList(i, end);
            double needed = block.stream().mapToDouble(line -> line.height(letters)).sum();
            if (used + needed > room && used > 0) {
                sheets.add(new ArrayList<>());
                used = 0;
            }
            for (Line line : block) {
                if (used + line.height(letters) > room) {
                    sheets.add(new ArrayList<>());
                    used = 0;
                }
                sheets.get(sheets.size() - 1).add(line);
                used += line.height(letters);
            }
            i = end;
        }
        return sheets;
    }

    private static void paint(PdfPen pen, PdfLetters letters, List<Line> lines, double width) {
        double y = 0;
        for (Line line : lines) {
            double height = line.height(letters);
            boolean item = line.ticked.size() == BOXES || line.ticked.size() == 1;
            double left = item ? BOXES * BOX_COLUMN_PT : line.ticked.isEmpty() ? 0 : BOX_COLUMN_PT / 2;
            if (line.text.equals(TEXTS.text("pdf.columns"))) {
                List<String> names = List.of(line.text.split("\\|"));
                for (int column = 0; column < names.size(); column++) {
                    write(pen, letters, names.get(column), Face.SMALL, column * BOX_COLUMN_PT, y);
                }
            } else {
                for (int box = 0; box < line.boxes; box++) {
                    box(pen, box * BOX_COLUMN_PT + 2, y + 2, line.ticked.get(box));
                }
                write(pen, letters, line.text, line.face, left, y + (line.boxes > 0 ? 1 : 0));
            }
            if (line.ruled && line.face == Face.STRONG) {
                rule(pen, y + height - 1, width, 0.8);
            } else if (line.ruled) {
                rule(pen, y, width, 0.25);
            }
            y += height;
        }
    }

    private static void rule(PdfPen pen, double y, double width, double thick) {
        pen.stroke(List.of(new float[] {0, (float) y, (float) width, (float) y}), Stroke.solid(BLACK, thick));
    }

    private static void box(PdfPen pen, double x, double y, boolean ticked) {
        float left = (float) x;
        float top = (float) y;
        float side = (float) BOX_PT;
        pen.stroke(List.of(new float[] {left, top, left + side, top, left + side, top + side, left, top + side, left, top}),
                Stroke.solid(BLACK, 0.9));
        if (ticked) {
            pen.stroke(List.of(new float[] {left + 1.5f, top + 4.5f, left + 4, top + 7.5f, left + 8, top + 1}), Stroke.solid(BLACK, 1.5));
        }
    }

    private static void write(PdfPen pen, PdfLetters letters, String text, Face face, double x, double y) {
        if (!text.isEmpty()) {
            String print = letters.printable(text);
            pen.write(new Words(print, (float) (x + letters.width(print, face) / 2), (float) (y + letters.height(face) / 2), face, BLACK, -1));
        }
    }
}
