package org.straddle.daysheet.paint;

import java.util.List;

import org.straddle.daysheet.layout.Box;
import org.straddle.daysheet.layout.DaySheetLayout;
import org.straddle.daysheet.layout.Label;
import org.straddle.daysheet.layout.LaneBox;
import org.straddle.daysheet.layout.Overlay;
import org.straddle.daysheet.layout.TextMeasure;
import org.straddle.drawing.Face;
import org.straddle.words.Catalogue;

/** Draws a laid-out sheet. */
public final class SheetPainter {

    private static final Catalogue TEXTS = Catalogue.of(SheetPainter.class);

    private static final int PAD = 6;

    private final TextMeasure measure;

    public SheetPainter(TextMeasure measure) {
        this.measure = measure;
    }

    /**
     * @param overlay what is carried over the sheet, and what there is to say
     * @param note    a word in the corner, such as that the sheet is being computed; may be empty
     */
    public void paint(Surface surface, DaySheetLayout layout, Highlight highlight, Overlay overlay, String note) {
        Brush pen = new Brush(surface, measure);
        Glyphs glyphs = new Glyphs(pen);
        LanePainter lanes = new LanePainter(pen, glyphs, highlight);
        StopPainter stops = new StopPainter(pen, glyphs, highlight);
        DrivePainter drives = new DrivePainter(pen);
        AxisPainter axis = new AxisPainter(pen);
        OverlayPainter over = new OverlayPainter(pen, glyphs);
        pen.fill(new Box(0, 0, layout.view().width(), layout.view().height()), Palette.PAPER);
        Box body = layout.body();
        List<LaneBox> shown = layout.lanes().stream().filter(lane -> lane.strip().y() < body.bottom()
                && lane.strip().bottom() > body.y()).toList();
        pen.within(body, () -> {
            shown.forEach(lanes::light);
            shown.forEach(lanes::spans);
            axis.grid(layout);
            shown.forEach(lane -> {
                lanes.bases(lane);
                lane.drives().forEach(drives::paint);
                lane.stops().forEach(stop -> stops.paint(stop, lane.lane().mark()));
                lanes.edge(lane);
            });
            over.lit(overlay);
            overlay.ghost().ifPresent(over::ghost);
            overlay.message().ifPresent(over::message);
        });
        pen.within(Box.between(0, body.x(), body.y(), body.height()), () -> shown.forEach(lane -> {
            lanes.head(lane);
            lanes.edge(lane);
        }));
        axis.paint(layout);
        note(pen, layout, note);
        if (!layout.sheet().hasStops()) {
            banner(pen, body, TEXTS.text("empty"));
        }
        if (layout.legend().box().height() > 0) {
            new LegendPainter(pen, glyphs, lanes, stops, drives, over).paint(layout.legend());
        }
    }

    /** Draws words that stand outside the sheet. */
    public void words(Surface surface, List<Label> labels) {
        Brush pen = new Brush(surface, measure);
        labels.forEach(label -> pen.text(label, Palette.INK));
    }

    private void note(Brush pen, DaySheetLayout layout, String note) {
        Box corner = Box.between(PAD, layout.body().x() - PAD, 0, layout.axis().utcRow().y());
        pen.text(Label.clipped(note, corner, Face.STRONG, measure), Palette.INK);
    }

    private void banner(Brush pen, Box body, String sentence) {
        int width = measure.width(sentence, Face.STRONG) + 6 * PAD;
        int height = measure.height(Face.STRONG) + 4 * PAD;
        Box box = new Box(body.middleX() - width / 2, body.middleY() - height / 2, width, height);
        pen.fillRound(box, 10, Palette.PAPER);
        pen.frameRound(box, 10, Palette.QUIET, 1);
        pen.textIn(box, sentence, Face.STRONG, Palette.INK);
    }
}
