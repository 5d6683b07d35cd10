package org.straddle.ui.sky.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.straddle.drawing.Face;
import org.straddle.drawing.Lettering;
import org.straddle.drawing.Stroke.Dash;
import org.straddle.drawing.pdf.PdfPages.Page;
import org.straddle.ui.sky.reach.ReachSheet;
import org.straddle.ui.sky.reach.ReachWords;

/** The reach of a pass on paper: the picture, and then in words and figures as many pages as the places need. */
public record ReachPaper(ReachSheet sheet) implements SkyPaper {

    private static final int WIDTH = 1120;
    private static final int PAPER_HEIGHT = 760;
    private static final int MARGIN = 6;
    private static final int PAD = 8;

    @Override
    public String title() {
        return new ReachWords(sheet).title();
    }

    @Override
    public List<Page> pages(Lettering letters) {
        ReachWords words = new ReachWords(sheet);
        int line = (int) Math.ceil(letters.height(Face.PLAIN)) + 5;
        int most = (PAPER_HEIGHT - 2 * MARGIN) / line - 1;
        List<Page> pages = new ArrayList<>();
        Box first = new Box(0, 0, WIDTH, ReachPicture.height(letters, sheet) + 4 * line + 2 * MARGIN);
        pages.add(new Page(first.width(), first.height(),
                pen -> ReachPicture.paper(pen, letters, sheet, words.title(), words.summary(), first)));
        List<List<String>> rows = words.rows();
        for (int from = 0; from < rows.size(); from += most) {
            List<List<String>> some = rows.subList(from, Math.min(rows.size(), from + most));
            pages.add(new Page(WIDTH, PAPER_HEIGHT, pen -> table(new Brush(pen, letters), rows, some, line)));
        }
        return pages;
    }

    private static void table(Brush brush, List<List<String>> all, List<List<String>> rows, int line) {
        int[] widths = IntStream.range(0, ReachWords.COLUMNS.size()).map(column -> all.stream()
                .mapToInt(row -> brush.size(row.get(column), Face.PLAIN).width())
                .reduce(brush.size(ReachWords.COLUMNS.get(column), Face.STRONG).width(), Math::max) + 2 * PAD).toArray();
        cells(brush, ReachWords.COLUMNS, Face.STRONG, MARGIN, widths);
        int y = MARGIN;
        for (List<String> row : rows) {
            y += line;
            brush.pen(Palette.LINE, 1, Dash.SOLID);
            brush.line(MARGIN, y - 2, MARGIN + IntStream.of(widths).sum(), y - 2);
            cells(brush, row, Face.PLAIN, y, widths);
        }
    }

    /** Names at the left, figures at the right of their columns. */
    private static void cells(Brush brush, List<String> row, Face face, int y, int[] widths) {
        int x = MARGIN;
        for (int column = 0; column < widths.length; column++) {
            String words = row.get(column);
            int indent = column == 0 ? words.length() - words.stripLeading().length() : 0;
            int left = column == 0 ? x + 4 * indent : x + widths[column] - PAD - brush.size(words, face).width();
            if (!words.isBlank()) {
                brush.words(words.strip(), left, y, face, Palette.INK);
            }
            x += widths[column];
        }
    }
}
