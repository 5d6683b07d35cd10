package org.straddle.daysheet.paint;

import org.straddle.daysheet.layout.BaseBox;
import org.straddle.daysheet.layout.Box;
import org.straddle.daysheet.layout.LaneBox;
import org.straddle.daysheet.layout.LightBox;
import org.straddle.daysheet.sheet.Hatch;
import org.straddle.daysheet.sheet.LaneMark;
import org.straddle.daysheet.sheet.Light;
import org.straddle.drawing.Stroke.Dash;

/** Draws what lies under the stops of a lane, and its head. */
final class LanePainter {

    private static final int VEIL = 110;

    private final Brush pen;
    private final Glyphs glyphs;
    private final Highlight highlight;

    LanePainter(Brush pen, Glyphs glyphs, Highlight highlight) {
        this.pen = pen;
        this.glyphs = glyphs;
        this.highlight = highlight;
    }

    void light(LaneBox lane) {
        lane.light().forEach(this::light);
    }

    void spans(LaneBox lane) {
        lane.spans().forEach(span -> span(span.box(), lane.lane().mark()));
    }

    void bases(LaneBox lane) {
        lane.spans().forEach(span -> {
            span.start().ifPresent(this::base);
            span.end().ifPresent(this::base);
        });
    }

    void edge(LaneBox lane) {
        pen.line(Palette.LINE, 1, Dash.SOLID);
        pen.surface().drawLine(0, lane.strip().bottom() - 1, lane.strip().right(), lane.strip().bottom() - 1);
    }

    void head(LaneBox lane) {
        pen.fill(lane.box(), Palette.HEAD);
        boolean chosen = lane.lane().team().filter(team -> highlight.ids().contains(team.getId())).isPresent();
        if (chosen) {
            pen.fill(new Box(lane.box().x(), lane.box().y(), 4, lane.box().height()), Palette.CHOSEN);
        }
        glyphs.team(lane.lane().mark(), lane.number());
        pen.text(lane.name(), Palette.INK);
        pen.text(lane.summary(), Palette.QUIET);
        lane.mark().ifPresent(glyphs::mark);
        pen.line(Palette.LINE, 1, Dash.SOLID);
        pen.surface().drawLine(lane.box().right() - 1, lane.box().y(), lane.box().right() - 1, lane.box().bottom());
    }

    private void light(LightBox light) {
        sample(light.light().state(), light.box());
    }

    /** Twilight has level lines, darkness slanted ones. */
    void sample(Light.State state, Box box) {
        pen.fill(box, Palette.of(state));
        if (state == Light.State.TWILIGHT) {
            pen.hatch(box, Hatch.LEVEL, Palette.TWILIGHT_LINE, 6);
        } else if (state == Light.State.DARK) {
            pen.hatch(box, Hatch.RISING, Palette.DARK_LINE, 6);
        }
    }

    private void base(BaseBox base) {
        glyphs.base(base.house());
        base.name().ifPresent(name -> {
            // The lines of the hours would cross the letters.
            pen.fill(name.box(), Palette.PAPER);
            pen.text(name, Palette.QUIET);
        });
    }

    /** A lighter field between two posts in the team's colour. */
    void span(Box box, LaneMark team) {
        pen.surface().setAlpha(VEIL);
        pen.fill(box, Palette.PAPER);
        pen.surface().setAlpha(255);
        int color = (team.rgb());
        pen.frameRound(box, 6, Palette.LINE, 1);
        pen.fillRound(new Box(box.x() - 1, box.y(), 3, box.height()), 3, color);
        pen.fillRound(new Box(box.right() - 2, box.y(), 3, box.height()), 3, color);
    }
}
