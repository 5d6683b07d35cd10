package org.straddle.daysheet.paint;

import org.straddle.daysheet.layout.Box;
import org.straddle.daysheet.layout.Legend;
import org.straddle.daysheet.layout.Swatch;
import org.straddle.daysheet.sheet.LaneMark;
import org.straddle.drawing.Stroke.Dash;

/** Draws the legend with the same strokes as the sheet. */
final class LegendPainter {

    private final Brush pen;
    private final Glyphs glyphs;
    private final LanePainter lanes;
    private final StopPainter stops;
    private final DrivePainter drives;
    private final OverlayPainter over;

    LegendPainter(Brush pen, Glyphs glyphs, LanePainter lanes, StopPainter stops, DrivePainter drives,
            OverlayPainter over) {
        this.pen = pen;
        this.glyphs = glyphs;
        this.lanes = lanes;
        this.stops = stops;
        this.drives = drives;
        this.over = over;
    }

    void paint(Legend legend) {
        pen.fill(legend.box(), Palette.HEAD);
        pen.line(Palette.LINE, 1, Dash.SOLID);
        pen.surface().drawLine(0, legend.box().y(), legend.box().right(), legend.box().y());
        pen.within(legend.box(), () -> legend.entries().forEach(entry -> {
            sample(entry.swatch(), entry.sample());
            pen.text(entry.words(), Palette.INK);
        }));
    }

    private void sample(Swatch swatch, Box box) {
        if (swatch instanceof Swatch.OfLight light) {
            lanes.sample(light.state(), box);
            pen.frame(box, Palette.LINE);
        } else if (swatch instanceof Swatch.OfSite site) {
            glyphs.site(site.kind(), box);
        } else if (swatch instanceof Swatch.OfBird bird) {
            stops.block(bird.bird(), box);
        } else if (swatch instanceof Swatch.OfSeverity severity) {
            glyphs.severity(severity.severity(), box);
        } else if (swatch instanceof Swatch.OfDrive drive) {
            drives.road(box, drive.fits());
        } else if (swatch instanceof Swatch.OfSpan) {
            lanes.span(box, LaneMark.of(0));
        } else if (swatch instanceof Swatch.OfPin) {
            glyphs.pin(box);
        } else if (swatch instanceof Swatch.OfFitting) {
            over.lit(box);
        }
    }
}
