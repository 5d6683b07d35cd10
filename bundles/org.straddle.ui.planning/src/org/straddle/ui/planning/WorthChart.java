package org.straddle.ui.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.straddle.words.Catalogue;

/**
 * Worth of the best plan and the proven bound over the time of a search: two steps that close in on each other, each
 * named at its end and drawn in a way of its own, so that colour is not needed to tell them apart.
 */
final class WorthChart extends Canvas {

    private static final Catalogue TEXTS = Catalogue.of(WorthChart.class);

    private static final int MARGIN = 8;

    private final List<SearchRun.Stand> stands = new ArrayList<>();
    private double seconds;

    WorthChart(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
        setBackground(parent.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
        addPaintListener(event -> paint(event.gc));
        getAccessible().addAccessibleListener(AccessibleListener.getNameAdapter(asked -> asked.result = words()));
    }

    /** @param wholeSeconds how long the search may take */
    void begin(double wholeSeconds) {
        stands.clear();
        seconds = wholeSeconds;
        redraw();
    }

    void add(SearchRun.Stand stand) {
        stands.add(stand);
        redraw();
    }

    private String words() {
        if (stands.isEmpty()) {
            return TEXTS.text("worthChart.name.none");
        }
        SearchRun.Stand last = stands.get(stands.size() - 1);
        return Double.isNaN(last.bound()) ? TEXTS.text("worthChart.name", "worth", last.worth())
                : TEXTS.text("worthChart.name.bound", "worth", last.worth(), "bound", last.bound());
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        gc.setAntialias(SWT.ON);
        if (stands.size() < 2) {
            gc.setForeground(getDisplay().getSystemColor(SWT.COLOR_WIDGET_DISABLED_FOREGROUND));
            TextLayout words = new TextLayout(getDisplay());
            words.setText(TEXTS.text("worthChart.empty"));
            words.setWidth(Math.max(1, getClientArea().width - 2 * MARGIN));
            words.draw(gc, MARGIN, MARGIN);
            words.dispose();
            return;
        }
        // Bounds are far off at first: what matters is how the two meet.
        SearchRun.Stand last = stands.get(stands.size() - 1);
        double low = stands.get(stands.size() / 4).worth();
        double high = Double.isNaN(last.bound()) ? last.worth() : last.bound();
        double room = Math.max(0.02 * Math.abs(high), high - low);
        double bottom = low - 0.1 * room;
        double top = high + 0.6 * room;
        Point text = gc.textExtent(TEXTS.text("worthChart.bound", "bound", 8888.88));
        Rectangle plot = new Rectangle(MARGIN, MARGIN, Math.max(10, area.width - text.x - 3 * MARGIN),
                Math.max(10, area.height - text.y - 2 * MARGIN));
        gc.setForeground(getDisplay().getSystemColor(SWT.COLOR_WIDGET_NORMAL_SHADOW));
        gc.drawRectangle(plot);
        gc.setClipping(plot.x, plot.y, plot.width + 1, plot.height + 1);
        Color ink = getForeground();
        gc.setForeground(ink);
        gc.setLineWidth(2);
        steps(gc, plot, bottom, top, SearchRun.Stand::worth);
        gc.setLineStyle(SWT.LINE_DASH);
        steps(gc, plot, bottom, top, SearchRun.Stand::bound);
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setClipping((Rectangle) null);
        label(gc, plot, text.y, y(plot, bottom, top, last.worth()), TEXTS.text("worthChart.worth",
                "worth", last.worth()), true);
        // In a low view there is room for one name; the sentence above says both.
        if (!Double.isNaN(last.bound()) && plot.height >= 2 * text.y) {
            label(gc, plot, text.y, y(plot, bottom, top, last.bound()), TEXTS.text("worthChart.bound",
                    "bound", last.bound()), false);
        }
        gc.drawText(TEXTS.text("worthChart.seconds", "seconds", 0), plot.x, plot.y + plot.height + 1, true);
        String end = TEXTS.text("worthChart.seconds", "seconds", span());
        gc.drawText(end, plot.x + plot.width - gc.textExtent(end).x, plot.y + plot.height + 1, true);
    }

    private double span() {
        return Math.max(seconds, stands.get(stands.size() - 1).seconds());
    }

    /** The name of the lower line hangs below it, that of the upper one stands above: they never cover each other. */
    private static void label(GC gc, Rectangle plot, int height, int y, String words, boolean below) {
        int top = below ? Math.max(y, plot.y + height + 2) : Math.min(y - height, plot.y + plot.height - 2 * height);
        gc.drawText(words, plot.x + plot.width + MARGIN, Math.max(0, Math.min(plot.y + plot.height - (below ? height : 2 * height), top)), true);
    }

    private void steps(GC gc, Rectangle plot, double bottom, double top, ToDoubleFunction<SearchRun.Stand> of) {
        int beforeX = Integer.MIN_VALUE;
        int beforeY = 0;
        for (SearchRun.Stand stand : stands) {
            double value = of.applyAsDouble(stand);
            if (Double.isNaN(value)) {
                continue;
            }
            int x = plot.x + (int) (plot.width * stand.seconds() / span());
            int y = y(plot, bottom, top, value);
            if (beforeX != Integer.MIN_VALUE) {
                gc.drawLine(beforeX, beforeY, x, beforeY);
                gc.drawLine(x, beforeY, x, y);
            }
            beforeX = x;
            beforeY = y;
        }
    }

    private static int y(Rectangle plot, double bottom, double top, double value) {
        double share = (value - bottom) / (top - bottom);
        return plot.y + plot.height - (int) Math.round(plot.height * Math.max(-0.5, Math.min(1.5, share)));
    }
}
