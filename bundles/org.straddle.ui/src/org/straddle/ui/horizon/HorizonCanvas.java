package org.straddle.ui.horizon;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.MouseEvent;
import org.eclipse.swt.events.MouseListener;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.straddle.model.HorizonPoint;
import org.straddle.sky.Horizon;
import org.straddle.words.Catalogue;

/**
 * What the ground hides, drawn as one looks around: north at both ends, the sky above the line. A click into the sky
 * adds a point, dragging moves one, Delete removes it. By keyboard: Page Up and Page Down choose a point, arrows move it
 * by a degree (with Shift by a tenth), Insert adds one behind it. Every finished gesture is one change.
 */
public final class HorizonCanvas extends Canvas {

    private static final Catalogue TEXTS = Catalogue.of(HorizonCanvas.class);

    /** Scale up to this elevation at least, degrees, so that low horizons look low. */
    private static final double LEAST_TOP_DEG = 20;
    private static final double HEADROOM_DEG = 8;
    private static final int REACH_PIXELS = 9;
    private static final String[] WINDS = Stream.of("N", "NE", "E", "SE", "S", "SW", "W", "NW", "N")
            .map(wind -> TEXTS.text("wind." + wind)).toArray(String[]::new);
    private static final Color SKY = new Color(new RGB(0xE4, 0xF1, 0xFA));
    private static final Color GROUND = new Color(new RGB(0x9A, 0xA8, 0x8C));
    private static final Color INK = new Color(new RGB(0x2B, 0x38, 0x44));
    private static final Color OTHER = new Color(new RGB(0x9A, 0x4A, 0x1E));
    private static final Color CHOSEN = new Color(new RGB(0xFF, 0xFF, 0xFF));

    private final Supplier<List<HorizonPoint>> mask;
    private final Supplier<List<HorizonPoint>> other;
    private final String otherName;
    private final String noPoints;
    private final Consumer<List<Horizon.Point>> changed;
    private MaskDrawing drawing = MaskDrawing.of(List.of());
    private String trouble = "";
    private boolean editable = true;
    private boolean dragging;
    private boolean moved;
    private double topDeg = LEAST_TOP_DEG;
    private double bottomDeg;
    private double pointedAzimuthDeg = Double.NaN;

    /**
     * @param mask the points as they are in the event
     * @param other another mask to compare with, drawn as a dashed line; may give none
     * @param otherName what the other mask is, for the legend
     * @param noPoints what it means when there are no points
     * @param changed takes the points after a finished gesture
     */
    public HorizonCanvas(Composite parent, Supplier<List<HorizonPoint>> mask, Supplier<List<HorizonPoint>> other,
            String otherName, String noPoints, Consumer<List<Horizon.Point>> changed) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.mask = mask;
        this.other = other;
        this.otherName = otherName;
        this.noPoints = noPoints;
        this.changed = changed;
        addPaintListener(paint -> paint(paint.gc));
        addMouseListener(MouseListener.mouseDownAdapter(this::press));
        addMouseListener(MouseListener.mouseUpAdapter(this::release));
        addMouseMoveListener(this::drag);
        addKeyListener(KeyListener.keyPressedAdapter(this::key));
        addListener(SWT.FocusIn, focus -> redraw());
        addListener(SWT.FocusOut, focus -> redraw());
        addListener(SWT.MouseExit, exit -> point(Double.NaN));
        addTraverseListener(leave -> leave.doit = true);
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent asked) {
                asked.result = TEXTS.text("horizonCanvas.name", "points", drawing.points().size(),
                        "told", told());
            }
        });
        refresh();
    }

    /** Follows the event; what is chosen stays chosen. */
    public void refresh() {
        if (dragging) {
            return;
        }
        List<Horizon.Point> points = points(mask.get());
        if (!points.equals(drawing.points())) {
            drawing = MaskDrawing.of(points).choose(drawing.chosen());
        }
        scale();
        redraw();
    }

    public void setEditable(boolean may) {
        editable = may;
        redraw();
    }

    /** Two points of one azimuth, or an impossible one, are told and left out: the table shows them. */
    private List<Horizon.Point> points(List<HorizonPoint> written) {
        List<Horizon.Point> points = new ArrayList<>();
        trouble = "";
        for (HorizonPoint point : written) {
            double azimuthDeg = point.getAzimuthDeg();
            try {
                if (points.stream().anyMatch(known -> known.azimuthDeg() == azimuthDeg)) {
                    trouble = TEXTS.text("horizonCanvas.twice", "azimuth", azimuthDeg);
                } else {
                    points.add(new Horizon.Point(azimuthDeg, point.getElevationDeg()));
                }
            } catch (IllegalArgumentException impossible) {
                trouble = impossible.getMessage() + ".";
            }
        }
        return MaskDrawing.of(points).points();
    }

    private void scale() {
        double highest = drawing.points().stream().mapToDouble(Horizon.Point::elevationDeg).max().orElse(0);
        double lowest = drawing.points().stream().mapToDouble(Horizon.Point::elevationDeg).min().orElse(0);
        topDeg = Math.min(90, Math.max(LEAST_TOP_DEG, highest + HEADROOM_DEG));
        bottomDeg = lowest < 0 ? Math.max(-30, Math.floor(lowest) - 1) : 0;
    }

    private Rectangle sky() {
        GC measure = new GC(this);
        int foot = measure.getFontMetrics().getHeight() + 6;
        int left = measure.textExtent("-30°").x + 8;
        measure.dispose();
        Rectangle area = getClientArea();
        return new Rectangle(left, foot + 2, area.width - left - 10, area.height - 2 * foot - 4);
    }

    private double azimuthDeg(int x) {
        Rectangle sky = sky();
        return Math.max(0, Math.min(359.9, 360.0 * (x - sky.x) / sky.width));
    }

    private double elevationDeg(int y) {
        Rectangle sky = sky();
        return bottomDeg + (topDeg - bottomDeg) * (sky.y + sky.height - y) / sky.height;
    }

    private static int x(Rectangle sky, double azimuthDeg) {
        return sky.x + (int) Math.round(azimuthDeg / 360 * sky.width);
    }

    private int y(Rectangle sky, double elevationDeg) {
        double clipped = Math.max(bottomDeg, Math.min(topDeg, elevationDeg));
        return sky.y + sky.height - (int) Math.round((clipped - bottomDeg) / (topDeg - bottomDeg) * sky.height);
    }

    private void press(MouseEvent mouse) {
        setFocus();
        Rectangle sky = sky();
        if (mouse.button != 1 || sky.width < 40 || mouse.x < sky.x - REACH_PIXELS || mouse.x > sky.x + sky.width + REACH_PIXELS) {
            return;
        }
        double reachAzimuthDeg = 360.0 * REACH_PIXELS / sky.width;
        double reachElevationDeg = (topDeg - bottomDeg) * REACH_PIXELS / sky.height;
        int near = drawing.near(azimuthDeg(mouse.x), elevationDeg(mouse.y), reachAzimuthDeg, reachElevationDeg);
        moved = false;
        if (near >= 0) {
            drawing = drawing.choose(near);
            dragging = editable;
        } else if (editable && mouse.y >= sky.y && mouse.y <= sky.y + sky.height) {
            MaskDrawing added = drawing.add(azimuthDeg(mouse.x), elevationDeg(mouse.y));
            moved = added != drawing;
            drawing = added;
            dragging = true;
        }
        redraw();
    }

    private void drag(MouseEvent mouse) {
        if (dragging) {
            drawing = drawing.move(azimuthDeg(mouse.x), elevationDeg(mouse.y));
            moved = true;
            redraw();
        } else {
            point(azimuthDeg(mouse.x));
        }
    }

    private void release(MouseEvent mouse) {
        if (dragging) {
            dragging = false;
            if (moved) {
                commit();
            }
        }
    }

    private void point(double azimuth) {
        pointedAzimuthDeg = azimuth;
        redraw();
    }

    private void key(KeyEvent key) {
        double step = (key.stateMask & SWT.SHIFT) != 0 ? 0.1 : 1;
        MaskDrawing before = drawing;
        switch (key.keyCode) {
            case SWT.PAGE_DOWN -> drawing = drawing.step(1);
            case SWT.PAGE_UP -> drawing = drawing.step(-1);
            case SWT.ARROW_LEFT -> nudge(-step, 0);
            case SWT.ARROW_RIGHT -> nudge(step, 0);
            case SWT.ARROW_UP -> nudge(0, step);
            case SWT.ARROW_DOWN -> nudge(0, -step);
            case SWT.INSERT -> drawing = editable ? drawing.addAfterChosen() : drawing;
            case SWT.DEL, SWT.BS -> drawing = editable ? drawing.remove() : drawing;
            default -> {
                return;
            }
        }
        pointedAzimuthDeg = Double.NaN;
        if (!before.points().equals(drawing.points())) {
            commit();
        }
        redraw();
    }

    private void nudge(double azimuth, double elevation) {
        if (editable) {
            drawing = drawing.nudge(azimuth, elevation);
        }
    }

    private void commit() {
        changed.accept(drawing.points());
        scale();
        redraw();
    }

    private String told() {
        if (!trouble.isEmpty()) {
            return trouble;
        }
        if (drawing.chosen() >= 0 && (dragging || Double.isNaN(pointedAzimuthDeg))) {
            Horizon.Point point = drawing.points().get(drawing.chosen());
            return figures(point.azimuthDeg(), point.elevationDeg());
        }
        if (!Double.isNaN(pointedAzimuthDeg)) {
            return figures(pointedAzimuthDeg, drawing.elevationDegAt(pointedAzimuthDeg));
        }
        return drawing.points().isEmpty() ? noPoints : TEXTS.text("horizonCanvas.points",
                "points", drawing.points().size());
    }

    private static String figures(double azimuthDeg, double elevationDeg) {
        return TEXTS.text("horizonCanvas.point", "azimuth", azimuthDeg, "elevation", elevationDeg);
    }

    private void paint(GC gc) {
        Rectangle sky = sky();
        if (sky.width < 60 || sky.height < 20) {
            return;
        }
        gc.setAntialias(SWT.ON);
        gc.setBackground(SKY);
        gc.fillRectangle(sky);
        if (drawing.horizon().isPresent() || bottomDeg < 0) {
            gc.setBackground(GROUND);
            gc.fillPolygon(outline(sky));
        }
        axes(gc, sky);
        other(gc, sky);
        handles(gc, sky);
        legend(gc, sky);
        if (isFocusControl()) {
            gc.drawFocus(0, 0, getClientArea().width, getClientArea().height);
        }
    }

    private int[] outline(Rectangle sky) {
        int[] outline = new int[2 * sky.width + 6];
        for (int i = 0; i <= sky.width; i++) {
            outline[2 * i] = sky.x + i;
            outline[2 * i + 1] = y(sky, drawing.elevationDegAt(360.0 * i / sky.width));
        }
        outline[2 * sky.width + 2] = sky.x + sky.width;
        outline[2 * sky.width + 3] = sky.y + sky.height;
        outline[2 * sky.width + 4] = sky.x;
        outline[2 * sky.width + 5] = sky.y + sky.height;
        return outline;
    }

    private void axes(GC gc, Rectangle sky) {
        gc.setForeground(INK);
        gc.drawRectangle(sky);
        for (int i = 0; i < WINDS.length; i++) {
            int x = sky.x + sky.width * i / (WINDS.length - 1);
            Point size = gc.textExtent(WINDS[i]);
            gc.drawLine(x, sky.y + sky.height, x, sky.y + sky.height + 3);
            gc.drawText(WINDS[i], x - size.x / 2, sky.y + sky.height + 4, true);
        }
        int step = topDeg - bottomDeg > 50 ? 20 : topDeg - bottomDeg > 25 ? 10 : 5;
        gc.setLineStyle(SWT.LINE_DOT);
        for (int elevation = (int) Math.ceil(bottomDeg / step) * step; elevation <= topDeg; elevation += step) {
            int y = y(sky, elevation);
            Point size = gc.textExtent(elevation + "°");
            gc.drawText(elevation + "°", sky.x - size.x - 4, y - size.y / 2, true);
            gc.drawLine(sky.x, y, sky.x + sky.width, y);
        }
        gc.setLineStyle(SWT.LINE_SOLID);
    }

    private void other(GC gc, Rectangle sky) {
        Optional<Horizon> ghost = ghost();
        if (ghost.isEmpty()) {
            return;
        }
        gc.setForeground(OTHER);
        gc.setLineStyle(SWT.LINE_DASH);
        int[] line = new int[2 * sky.width + 2];
        for (int i = 0; i <= sky.width; i++) {
            line[2 * i] = sky.x + i;
            line[2 * i + 1] = y(sky, ghost.get().elevationDegAt(360.0 * i / sky.width));
        }
        gc.drawPolyline(line);
        gc.setLineStyle(SWT.LINE_SOLID);
    }

    private Optional<Horizon> ghost() {
        String own = trouble;
        List<Horizon.Point> points = points(other.get());
        trouble = own;
        return points.isEmpty() || points.equals(drawing.points()) ? Optional.empty() : Optional.of(new Horizon(points));
    }

    private void handles(GC gc, Rectangle sky) {
        gc.setForeground(INK);
        boolean crowded = drawing.points().size() > sky.width / (4 * REACH_PIXELS);
        for (int i = 0; i < drawing.points().size(); i++) {
            boolean picked = i == drawing.chosen();
            int half = picked ? 5 : crowded ? 1 : 3;
            int x = x(sky, drawing.points().get(i).azimuthDeg());
            int y = y(sky, drawing.points().get(i).elevationDeg());
            gc.setBackground(picked ? CHOSEN : INK);
            gc.fillRectangle(x - half, y - half, 2 * half + 1, 2 * half + 1);
            gc.drawRectangle(x - half, y - half, 2 * half, 2 * half);
        }
    }

    private void legend(GC gc, Rectangle sky) {
        gc.setForeground(INK);
        gc.drawText(told(), sky.x + 2, 2, true);
        if (ghost().isPresent()) {
            Point size = gc.textExtent(otherName);
            int right = sky.x + sky.width;
            gc.setForeground(OTHER);
            gc.setLineStyle(SWT.LINE_DASH);
            gc.drawLine(right - size.x - 36, 2 + size.y / 2, right - size.x - 8, 2 + size.y / 2);
            gc.setLineStyle(SWT.LINE_SOLID);
            gc.drawText(otherName, right - size.x, 2, true);
        }
    }
}
