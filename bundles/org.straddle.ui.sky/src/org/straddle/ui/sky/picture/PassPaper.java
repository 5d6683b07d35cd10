package org.straddle.ui.sky.picture;

import java.util.List;

import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import org.straddle.ui.sky.pass.PassSheet;
import org.straddle.ui.sky.pass.SheetWords;
import org.straddle.ui.sky.pass.SheetWords.Fact;
import org.straddle.ui.sky.pass.SheetWords.MomentRow;

/** The whole sheet on one page: title, picture, table and facts. */
public final class PassPaper {

    private static final int MARGIN = 24;
    private static final int PAD = 6;

    private final Brush brush;
    private final SheetWords words;

    private PassPaper(Brush brush, SheetWords words) {
        this.brush = brush;
        this.words = words;
    }

    public static void paint(GC gc, Faces faces, PassSheet sheet, int width, int height) {
        Brush brush = new Brush(gc, faces);
        brush.fill(new Rectangle(0, 0, width, height), Palette.PAPER);
        new PassPaper(brush, new SheetWords(sheet)).paint(gc, sheet, width, height);
    }

    private void paint(GC gc, PassSheet sheet, int width, int height) {
        Faces faces = brush.faces();
        brush.words(words.title(), MARGIN, MARGIN / 2, faces.bold(), Palette.INK);
        int line = brush.size("0", faces.bold()).y;
        int y = MARGIN / 2 + line + 4;
        brush.pen(Palette.INK, 2, null);
        brush.line(MARGIN, y, width - MARGIN, y);
        int pictureHeight = height * 55 / 100 - y;
        PassPicture.paint(gc, faces, sheet, new Rectangle(MARGIN, y + 6, width - 2 * MARGIN, pictureHeight), null);
        int foot = y + pictureHeight + 16;
        int tableWidth = table(MARGIN, foot);
        facts(gc, MARGIN + tableWidth + MARGIN, foot, width - 3 * MARGIN - tableWidth);
    }

    private int table(int left, int top) {
        List<MomentRow> rows = words.moments();
        Font plain = brush.faces().plain();
        int row = brush.size("0", plain).y + PAD;
        int heading = rows.stream().mapToInt(r -> brush.size(r.heading(), plain).x).max().orElse(0) + 2 * PAD;
        int cell = rows.stream().flatMap(r -> r.cells().stream()).mapToInt(c -> brush.size(c, plain).x).max().orElse(0)
                + 2 * PAD;
        int y = top;
        cells(new MomentRow("", List.of("AOS", "TCA", "LOS")), brush.faces().bold(), left, y, heading, cell);
        for (MomentRow each : rows) {
            y += row;
            brush.pen(Palette.LINE, 1, null);
            brush.line(left, y, left + heading + 3 * cell, y);
            cells(each, plain, left, y, heading, cell);
        }
        return heading + 3 * cell;
    }

    private void cells(MomentRow row, Font face, int left, int y, int heading, int cell) {
        brush.words(row.heading(), left, y + PAD / 2, face, Palette.INK);
        for (int i = 0; i < 3; i++) {
            Point size = brush.size(row.cells().get(i), face);
            brush.words(row.cells().get(i), left + heading + (i + 1) * cell - size.x - PAD, y + PAD / 2, face,
                    Palette.INK);
        }
    }

    private void facts(GC gc, int left, int top, int width) {
        List<Fact> facts = words.facts();
        int heading = facts.stream().mapToInt(f -> brush.size(f.heading(), brush.faces().bold()).x).max().orElse(0) + 10;
        int y = top;
        for (Fact fact : facts) {
            brush.words(fact.heading(), left, y, brush.faces().bold(), Palette.INK);
            TextLayout layout = new TextLayout(gc.getDevice());
            try {
                layout.setFont(brush.faces().plain());
                layout.setWidth(width - heading);
                layout.setText(fact.text());
                gc.setForeground(Palette.INK);
                layout.draw(gc, left + heading, y);
                y += layout.getBounds().height + 3;
            } finally {
                layout.dispose();
            }
        }
    }
}
