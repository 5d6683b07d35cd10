package org.straddle.daysheet.paint;

import org.straddle.daysheet.layout.Box;
import org.straddle.daysheet.layout.StopBox;
import org.straddle.daysheet.layout.TurnBox;
import org.straddle.daysheet.sheet.BirdMark;
import org.straddle.daysheet.sheet.LaneMark;
import org.straddle.daysheet.sheet.SheetItem;
import org.straddle.drawing.Paper;
import org.straddle.drawing.Stroke.Dash;
import org.straddle.model.Bird;
import org.straddle.model.Site;

/** Draws stops and turns. */
final class StopPainter {

    private static final int ARC = 6;
    private static final double TINT = 0.16;

    private final Brush pen;
    private final Glyphs glyphs;
    private final Highlight highlight;

    StopPainter(Brush pen, Glyphs glyphs, Highlight highlight) {
        this.pen = pen;
        this.glyphs = glyphs;
        this.highlight = highlight;
    }

    void paint(StopBox stop, LaneMark team) {
        Box box = stop.box();
        Site site = stop.stop().stop().getSite();
        pen.fillRound(box, ARC, Paper.tint(team.rgb(), TINT));
        glyphs.band(team, stop.band());
        pen.frameRound(box, ARC, Palette.INK, 1);
        stop.kind().ifPresent(square -> stop.stop().shape().ifPresent(shape -> glyphs.site(shape, square)));
        pen.text(stop.title(), Palette.INK);
        stop.pin().ifPresent(glyphs::pin);
        stop.mark().ifPresent(glyphs::mark);
        stop.turns().forEach(this::paint);
        if (isChosen(stop.stop(), site == null ? "" : site.getId())) {
            chosen(box);
        }
    }

    private void paint(TurnBox turn) {
        Box box = turn.box();
        block(turn.turn().bird(), box);
        turn.label().ifPresent(label -> {
            if (box.contains(label.box().x(), label.box().y())) {
                pen.fill(new Box(label.box().x() - 2, box.y() + 1, label.box().width() + 4, box.height() - 2),
                        Palette.PAPER);
            }
            pen.text(label, Palette.INK);
        });
        turn.peak().ifPresent(x -> {
            pen.surface().setBackground(Palette.INK);
            pen.surface().fillPolygon(new int[] {x - 3, box.y() - 3, x + 3, box.y() - 3, x, box.y() + 2});
        });
        if (turn.turn().turn().isPinned()) {
            glyphs.pin(new Box(box.x() - 2, box.y() - 4, 8, 9));
        }
        turn.mark().ifPresent(glyphs::mark);
        Bird bird = turn.turn().turn().getBird();
        if (isChosen(turn.turn(), bird == null ? "" : bird.getId())) {
            chosen(box);
        }
    }

    /** A turn's block, hatched as its bird. */
    void block(BirdMark bird, Box box) {
        pen.fill(box, Palette.PAPER);
        pen.hatch(box, bird.hatch(), Palette.QUIET, 4);
        pen.frame(box, Palette.INK);
    }

    /** Through the thing itself, or through its site or bird. */
    private boolean isChosen(SheetItem item, String means) {
        return highlight.ids().contains(item.id()) || highlight.ids().contains(means);
    }

    /** A black ring within a bright one; dotted inside when keys go to the sheet. */
    private void chosen(Box box) {
        pen.frameRound(box.inset(-3, -3), ARC + 4, Palette.GLOW, 3);
        pen.frameRound(box.inset(-1, -1), ARC, Palette.CHOSEN, 2);
        if (highlight.focused()) {
            pen.line(Palette.CHOSEN, 1, Dash.DOTTED);
            pen.surface().drawRectangle(box.x() + 2, box.y() + 2, Math.max(0, box.width() - 5),
                    Math.max(0, box.height() - 5));
        }
    }
}
