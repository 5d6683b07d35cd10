package org.straddle.atlas.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.eclipse.core.runtime.IProgressMonitor;
import org.straddle.atlas.picture.Legend;
import org.straddle.atlas.picture.MapContents;
import org.straddle.atlas.picture.MapPicture;
import org.straddle.atlas.picture.Palette;
import org.straddle.atlas.picture.ScaleBar;
import org.straddle.atlas.picture.Shown;
import org.straddle.atlas.picture.Sight;
import org.straddle.drawing.Face;
import org.straddle.drawing.Mark;
import org.straddle.drawing.Words;
import org.straddle.drawing.pdf.PdfLetters;
import org.straddle.drawing.pdf.PdfPen;
import org.straddle.words.Catalogue;

/** A map on one sheet, A4 across, for the brief: title, map, scale, legend and where the data come from. */
public final class MapPage {

    private static final Catalogue TEXTS = Catalogue.of(MapPage.class);

    private static final PDRectangle SHEET = new PDRectangle(PDRectangle.A4.getHeight(), PDRectangle.A4.getWidth());
    private static final double MARGIN_PT = 34;
    private static final double HEAD_PT = 40;
    private static final double FOOT_PT = 78;
    private static final double POINTS_PER_PX = 0.68;
    private static final int LEGEND_COLUMNS = 6;
    private static final int LEGEND_ROWS = 3;

    /**
     * What stands around the map.
     *
     * @param title of the page
     * @param date days of the event and what else a reader must know at once
     * @param notes lines at the foot: origin of the data, cautions
     */
    public record Text(String title, String date, List<String> notes) {

        public Text {
            notes = List.copyOf(notes);
        }
    }

    /** Size of plain letters, pixels of the picture. */
    private static final double LETTERS_PX = 11;

    private final PDDocument document;
    private final PdfLetters letters;
    private final double width = SHEET.getWidth() - 2 * MARGIN_PT;
    private final double height = SHEET.getHeight() - 2 * MARGIN_PT - HEAD_PT - FOOT_PT;

    private MapPage(PDDocument document) throws IOException {
        this.document = document;
        this.letters = new PdfLetters(document, LETTERS_PX);
    }

    /**
     * The page as a PDF file.
     *
     * @param seen what is to be on the map at least
     * @param monitor may be null
     */
    public static byte[] pdf(MapContents contents, Sight seen, Shown shown, Text text, IProgressMonitor monitor)
            throws IOException {
        try (PDDocument document = new PDDocument()) {
            return new MapPage(document).write(contents, seen, shown, text, monitor);
        }
    }

    private byte[] write(MapContents contents, Sight seen, Shown shown, Text text, IProgressMonitor monitor)
            throws IOException {
        Sight sight = fitted(seen);
        MapPicture picture = MapPicture.of(contents, sight, shown, letters, monitor);
        PDPage page = new PDPage(SHEET);
        document.addPage(page);
        document.getDocumentInformation().setTitle(text.title());
        document.getDocumentCatalog().setLanguage("en");
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            double top = SHEET.getHeight() - MARGIN_PT;
            PdfPen sheet = new PdfPen(content, letters, MARGIN_PT, top, POINTS_PER_PX);
            words(text.title(), 0, 12, Face.LARGE, Palette.INK, sheet);
            words(text.date(), 0, 34, Face.PLAIN, Palette.QUIET, sheet);
            map(content, contents, picture, top - HEAD_PT);
            PdfPen foot = new PdfPen(content, letters, MARGIN_PT, top - HEAD_PT - height - 6, POINTS_PER_PX);
            foot(contents, shown, text, foot);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        return out.toByteArray();
    }

    private Sight fitted(Sight seen) {
        int widthPx = (int) (width / POINTS_PER_PX);
        int heightPx = (int) (height / POINTS_PER_PX);
        double scale = Math.max(seen.width() * seen.metresPerPx() / widthPx, seen.height() * seen.metresPerPx() / heightPx);
        return new Sight(seen.centreX(), seen.centreY(), scale, widthPx, heightPx);
    }

    private void map(PDPageContentStream content, MapContents contents, MapPicture picture, double top) throws IOException {
        content.saveGraphicsState();
        content.addRect((float) MARGIN_PT, (float) (top - height), (float) width, (float) height);
        content.clip();
        PdfPen pen = new PdfPen(content, letters, MARGIN_PT, top, POINTS_PER_PX);
        picture.draw(pen);
        ScaleBar.of(picture.sight(), contents.projector().plane(), letters, 10, picture.sight().height() - 10)
                .forEach(mark -> mark.draw(pen));
        content.restoreGraphicsState();
        content.setLineWidth(0.8f);
        content.setLineDashPattern(new float[0], 0);
        content.setStrokingColor(0f, 0f, 0f);
        content.addRect((float) MARGIN_PT, (float) (top - height), (float) width, (float) height);
        content.stroke();
    }

    private void foot(MapContents contents, Shown shown, Text text, PdfPen pen) {
        List<Legend.Entry> entries = Legend.of(contents, shown);
        double column = width / POINTS_PER_PX / LEGEND_COLUMNS;
        for (int i = 0; i < Math.min(entries.size(), LEGEND_COLUMNS * LEGEND_ROWS); i++) {
            double x = i % LEGEND_COLUMNS * column;
            double y = i / LEGEND_COLUMNS * (Legend.HEIGHT + 1);
            entries.get(i).sample().forEach(mark -> shifted(mark, x, y).draw(pen));
            words(entries.get(i).words(), x + Legend.WIDTH + 4, y + Legend.HEIGHT / 2, Face.SMALL, Palette.INK, pen);
        }
        double y = Math.min(LEGEND_ROWS, (entries.size() + LEGEND_COLUMNS - 1) / LEGEND_COLUMNS) * (Legend.HEIGHT + 1) + 10;
        List<String> notes = new ArrayList<>(text.notes());
        notes.add(TEXTS.text("page.note", "plane", contents.projector().plane().words()));
        for (String note : notes) {
            words(note, 0, y, Face.SMALL, Palette.QUIET, pen);
            y += 13;
        }
    }

    private void words(String text, double left, double middle, Face face, int rgb, PdfPen pen) {
        pen.write(new Words(text, (float) (left + letters.width(text, face) / 2), (float) middle, face, rgb, -1));
    }

    private static Mark shifted(Mark mark, double dx, double dy) {
        if (mark instanceof Mark.Fill fill) {
            return new Mark.Fill(shifted(fill.rings(), dx, dy), fill.rgb(), fill.opacity());
        } else if (mark instanceof Mark.Line line) {
            return new Mark.Line(shifted(line.lines(), dx, dy), line.stroke());
        }
        Words words = (Words) mark;
        return new Words(words.text(), (float) (words.x() + dx), (float) (words.y() + dy), words.face(), words.rgb(),
                words.paperRgb());
    }

    private static List<float[]> shifted(List<float[]> lines, double dx, double dy) {
        return lines.stream().map(line -> {
            float[] moved = line.clone();
            for (int i = 0; i < moved.length; i += 2) {
                moved[i] += (float) dx;
                moved[i + 1] += (float) dy;
            }
            return moved;
        }).toList();
    }
}
