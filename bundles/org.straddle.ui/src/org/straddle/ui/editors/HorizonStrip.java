package org.straddle.ui.editors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.straddle.model.Site;
import org.straddle.sky.Horizon;

/** What the ground hides, drawn as one looks around: north at both ends, the sky above the line. */
final class HorizonStrip extends Canvas {

    /** Scale up to this elevation at least, degrees, so that low horizons look low. */
    private static final double LEAST_TOP_DEG = 20;
    private static final String[] WINDS = {"N", "E", "S", "W", "N"};

    private final Site site;

    HorizonStrip(Composite parent, Site site) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.site = site;
        addPaintListener(paint -> paint(paint.gc, getClientArea()));
    }

    private void paint(GC gc, Rectangle area) {
        int foot = gc.getFontMetrics().getHeight() + 4;
        int left = gc.textExtent("90°").x + 6;
        Rectangle sky = new Rectangle(left, 4, area.width - left - 8, area.height - foot - 6);
        if (sky.width < 40 || sky.height < 20) {
            return;
        }
        gc.setBackground(new Color(new RGB(0xE4, 0xF1, 0xFA)));
        gc.fillRectangle(sky);
        if (site.getHorizon().isEmpty()) {
            axes(gc, sky, LEAST_TOP_DEG);
            return;
        }
        Horizon horizon;
        try {
            horizon = new Horizon(site.getHorizon().stream()
                    .map(point -> new Horizon.Point(point.getAzimuthDeg(), point.getElevationDeg())).toList());
        } catch (IllegalArgumentException impossible) {
            gc.drawText(impossible.getMessage() + ".", sky.x + 8, sky.y + 8, true);
            return;
        }
        double top = Math.max(LEAST_TOP_DEG, horizon.highestDeg() + 5);
        gc.setBackground(new Color(new RGB(0x9A, 0xA8, 0x8C)));
        int[] outline = new int[2 * sky.width + 6];
        for (int x = 0; x <= sky.width; x++) {
            double elevation = Math.max(0, horizon.elevationDegAt(360.0 * x / sky.width % 360));
            outline[2 * x] = sky.x + x;
            outline[2 * x + 1] = sky.y + sky.height - (int) Math.round(elevation / top * sky.height);
        }
        outline[2 * sky.width + 2] = sky.x + sky.width;
        outline[2 * sky.width + 3] = sky.y + sky.height;
        outline[2 * sky.width + 4] = sky.x;
        outline[2 * sky.width + 5] = sky.y + sky.height;
        gc.fillPolygon(outline);
        axes(gc, sky, top);
    }

    private static void axes(GC gc, Rectangle sky, double topDeg) {
        gc.setForeground(new Color(new RGB(0x34, 0x42, 0x4F)));
        gc.drawRectangle(sky);
        for (int i = 0; i < WINDS.length; i++) {
            int x = sky.x + sky.width * i / (WINDS.length - 1);
            Point size = gc.textExtent(WINDS[i]);
            gc.drawLine(x, sky.y + sky.height, x, sky.y + sky.height + 3);
            gc.drawText(WINDS[i], x - size.x / 2, sky.y + sky.height + 4, true);
        }
        int step = topDeg > 45 ? 30 : 10;
        for (int elevation = 0; elevation < topDeg; elevation += step) {
            int y = sky.y + sky.height - (int) Math.round(elevation / topDeg * sky.height);
            Point size = gc.textExtent(elevation + "°");
            gc.drawText(elevation + "°", sky.x - size.x - 4, Math.max(0, y - size.y / 2), true);
            gc.setLineStyle(SWT.LINE_DOT);
            gc.drawLine(sky.x, y, sky.x + sky.width, y);
            gc.setLineStyle(SWT.LINE_SOLID);
        }
    }
}
