package org.straddle.ui.sky.picture;

import java.util.List;

import org.straddle.drawing.Face;
import org.straddle.drawing.Lettering;
import org.straddle.drawing.Stroke.Dash;
import org.straddle.drawing.pdf.PdfPages.Page;
import org.straddle.ui.sky.pass.PassSheet;
import org.straddle.ui.sky.pass.SheetWords;
import org.straddle.ui.sky.pass.SheetWords.Fact;
import org.straddle.ui.sky.pass.SheetWords.MomentRow;

/** The whole sheet on one page: title, picture, table and facts. */
public final class PassPaper implements SkyPaper {

    private static final int MARGIN = 24;
    private static final int PAD = 6;
    private static final int WIDTH = 1120;
    private static final int HEIGHT = 792;

    private final PassSheet sheet;
    private final SheetWords words;

    public PassPaper(PassSheet sheet) {
        this.sheet = sheet;
        this.words = new SheetWords(sheet);
    }

    @Override
    public String title() {
        return words.title();
    }

    @Override
    public List<Page> pages(Lettering letters) {
        return List.of(new Page(WIDTH, HEIGHT, pen -> paint(new Brush(pen, letters), WIDTH, HEIGHT)));
    }

    private void paint(Brush brush, int width, int height) {
        brush.fill(new Box(0, 0, width, height), Palette.PAPER);
        brush.words(words.title(), MARGIN, MARGIN / 2, Face.STRONG, Palette.INK);
        int line = brush.size("0", Face.STRONG).height();
        int y = MARGIN / 2 + line + 4;
        brush.pen(Palette.INK, 2, Dash.SOLID);
        brush.line(MARGIN, y, width - MARGIN, y);
        int pictureHeight = height * 55 / 100 - y;
        PassPicture.paint(brush.pen(), brush.letters(), sheet, new Box(MARGIN, y + 6, width - 2 * MARGIN, pictureHeight), null);
        int foot = y + pictureHeight + 16;
        int tableWidth = table(brush, MARGIN, foot);
        facts(brush, MARGIN + tableWidth + MARGIN, foot, width - 3 * MARGIN - tableWidth);
    }

    private int table(Brush brush, int left, int top) {
        List<MomentRow> rows = words.moments();
        int row = brush.size("0", Face.PLAIN).height() + PAD;
        int heading = rows.stream().mapToInt(r -> brush.size(r.heading(), Face.PLAIN).width()).max().orElse(0) + 2 * PAD;
        int cell = rows.stream().flatMap(r -> r.cells().stream()).mapToInt(c -> brush.size(c, Face.PLAIN).width()).max().orElse(0)
                + 2 * PAD;
        int y = top;
        cells(brush, new MomentRow("", List.of("AOS", "TCA", "LOS")), Face.STRONG, left, y, heading, cell);
        for (MomentRow each : rows) {
            y += row;
            brush.pen(Palette.LINE, 1, Dash.SOLID);
            brush.line(left, y, left + heading + 3 * cell, y);
            cells(brush, each, Face.PLAIN, left, y, heading, cell);
        }
        return heading + 3 * cell;
    }

    private void cells(Brush brush, MomentRow row, Face face, int left, int y, int heading, int cell) {
        brush.words(row.heading(), left, y + PAD / 2, face, Palette.INK);
        for (int i = 0; i < 3; i++) {
            Size size = brush.size(row.cells().get(i), face);
            brush.words(row.cells().get(i), left + heading + (i + 1) * cell - size.width() - PAD, y + PAD / 2, face,
                    Palette.INK);
        }
    }

    private void facts(Brush brush, int left, int top, int width) {
        List<Fact> facts = words.facts();
        int heading = facts.stream().mapToInt(f -> brush.size(f.heading(), Face.STRONG).width()).max().orElse(0) + 10;
        int y = top;
        for (Fact fact : facts) {
            brush.words(fact.heading(), left, y, Face.STRONG, Palette.INK);
            for (String line : brush.broken(fact.text(), Face.PLAIN, width - heading)) {
                brush.words(line, left + heading, y, Face.PLAIN, Palette.INK);
                y += brush.height(Face.PLAIN);
            }
            y += 3;
        }
    }
}
