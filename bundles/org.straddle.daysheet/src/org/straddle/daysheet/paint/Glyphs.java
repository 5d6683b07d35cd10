package org.straddle.daysheet.paint;

import org.straddle.atlas.scene.SiteSpot;
import org.straddle.check.Severity;
import org.straddle.daysheet.layout.Box;
import org.straddle.daysheet.layout.MarkBox;
import org.straddle.daysheet.sheet.LaneMark;
import org.straddle.drawing.Face;
import org.straddle.drawing.Paper;
import org.straddle.drawing.Stroke.Dash;

/** Small drawings, each with a shape of its own; severities and sites have the shapes of the workbench's icons. */
final class Glyphs {

    private final Brush pen;
    private final Surface surface;

    Glyphs(Brush pen) {
        this.pen = pen;
        this.surface = pen.surface();
    }

    void mark(MarkBox mark) {
        severity(mark.marking().severity(), mark.shape());
        pen.text(mark.count(), Palette.INK);
    }

    /** An octagon, a triangle or a disc. */
    void severity(Severity severity, Box box) {
        surface.setBackground(Palette.of(severity));
        int x = box.x();
        int y = box.y();
        int s = box.width() - 1;
        int c = s * 3 / 10;
        switch (severity) {
            case BLOCKER -> {
                surface.fillPolygon(new int[] {x + c, y, x + s - c, y, x + s, y + c, x + s, y + s - c, x + s - c, y + s,
                        x + c, y + s, x, y + s - c, x, y + c});
                bar(x + s / 4, y + s / 2, x + s - s / 4, y + s / 2, true);
            }
            case WARNING -> {
                surface.fillPolygon(new int[] {x + s / 2, y, x + s + 1, y + s, x - 1, y + s});
                bar(x + s / 2, y + s * 4 / 10, x + s / 2, y + s * 6 / 10, false);
                dot(x + s / 2, y + s * 83 / 100, false);
            }
            case ADVICE -> {
                surface.fillOval(x, y, s + 1, s + 1);
                dot(x + s / 2, y + s / 4, true);
                bar(x + s / 2, y + s / 2, x + s / 2, y + s * 8 / 10, true);
            }
        }
    }

    /** A square field with nothing, an upright or a level line, or both behind the mark, as the map draws it. */
    void site(SiteSpot.Kind kind, Box field) {
        pen.fill(field, Palette.PAPER);
        pen.frame(field, Palette.INK);
        pen.line(Palette.INK, 1, Dash.SOLID);
        if (kind == SiteSpot.Kind.WEST_EAST || kind == SiteSpot.Kind.CORNER) {
            surface.drawLine(field.middleX(), field.y(), field.middleX(), field.bottom() - 1);
        }
        if (kind == SiteSpot.Kind.SOUTH_NORTH || kind == SiteSpot.Kind.CORNER) {
            surface.drawLine(field.x(), field.middleY(), field.right() - 1, field.middleY());
        }
        surface.setBackground(Palette.INK);
        surface.fillOval(field.middleX() - 2, field.middleY() - 2, 5, 5);
    }

    /** A house. */
    void base(Box box) {
        int x = box.x();
        int y = box.y();
        int s = box.width() - 1;
        int[] house = {x + s / 2, y, x + s, y + s / 2, x + s - 1, y + s / 2, x + s - 1, y + s, x + 1, y + s, x + 1,
                y + s / 2, x, y + s / 2};
        surface.setBackground(Palette.PAPER);
        surface.fillPolygon(house);
        pen.line(Palette.INK, 1, Dash.SOLID);
        surface.drawPolygon(house);
    }

    /** A pin: a head and a needle. */
    void pin(Box box) {
        int head = box.width() / 2;
        pen.line(Palette.INK, 1, Dash.SOLID);
        surface.drawLine(box.middleX(), box.y() + head, box.middleX(), box.bottom() - 1);
        surface.setBackground(Palette.INK);
        surface.fillOval(box.middleX() - head / 2, box.y(), head + 1, head + 1);
    }

    /** The team's number on paper within its hatch and colour. */
    void team(LaneMark team, Box box) {
        band(team, box);
        int side = box.height() - 8;
        Box paper = new Box(box.x() + 4, box.y() + 4, box.width() - 8, side);
        pen.fillRound(paper, 6, Palette.PAPER);
        pen.textIn(paper, team.label(), Face.STRONG, Palette.INK);
        pen.frame(box, Palette.INK);
    }

    /** The team's hatch on its colour. */
    void band(LaneMark team, Box box) {
        pen.fill(box, Paper.tint(team.rgb(), 0.75));
        pen.hatch(box, team.hatch(), Palette.INK, 4);
    }

    private void bar(int x1, int y1, int x2, int y2, boolean white) {
        pen.line(white ? Palette.PAPER : Palette.INK, 2, Dash.SOLID);
        surface.drawLine(x1, y1, x2, y2);
    }

    private void dot(int x, int y, boolean white) {
        surface.setBackground(white ? Palette.PAPER : Palette.INK);
        surface.fillOval(x - 1, y - 1, 3, 3);
    }
}
