package org.straddle.ui.sky;

import java.time.Duration;
import java.time.Instant;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.straddle.ui.sky.pass.PassSheet;
import org.straddle.ui.sky.pass.SheetWords;
import org.straddle.ui.drawing.GcPen;
import org.straddle.ui.drawing.ScreenLetters;
import org.straddle.ui.sky.picture.Box;
import org.straddle.ui.sky.picture.PassPicture;
import org.straddle.words.Catalogue;

/**
 * The picture of the pass, with a pointer on the arc: by mouse, or by the arrow keys, Home for AOS, End for LOS, and
 * Escape to take it away.
 */
final class PassCanvas {

    private static final Catalogue TEXTS = Catalogue.of(PassCanvas.class);

    private static final Duration STEP = Duration.ofSeconds(10);

    private final Canvas canvas;
    private final ScreenLetters letters;
    private final Consumer<String> reading;
    private PassSheet sheet;
    private SheetWords words;
    private Instant pointer;
    private Box horizon = new Box(0, 0, 0, 0);

    /** @param reading told what the pointer reads; empty when it points nowhere */
    PassCanvas(Composite parent, Consumer<String> reading) {
        this.reading = reading;
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
        letters = new ScreenLetters(canvas, 1);
        canvas.addListener(SWT.Paint, event -> paint(event));
        canvas.addListener(SWT.Resize, event -> canvas.redraw());
        canvas.addListener(SWT.FocusIn, event -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, event -> canvas.redraw());
        canvas.addListener(SWT.Traverse, event -> event.doit = event.detail != SWT.TRAVERSE_ESCAPE);
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.MouseDown, event -> canvas.setFocus());
        canvas.addListener(SWT.MouseMove, event -> mouse(event));
        Accessibility.picture(canvas, TEXTS.text("passCanvas.passOverHorizon"), () -> words == null ? TEXTS.text("passCanvas.empty") : words.spoken(),
                () -> pointer == null ? "" : words.look(pointer));
    }

    Canvas control() {
        return canvas;
    }

    ScreenLetters letters() {
        return letters;
    }

    void show(PassSheet shown) {
        boolean other = sheet == null || !sheet.found().equals(shown.found());
        sheet = shown;
        words = new SheetWords(shown);
        point(other ? null : pointer);
    }

    private void paint(Event event) {
        if (sheet == null) {
            event.gc.fillRectangle(canvas.getClientArea());
            return;
        }
        horizon = PassPicture.paint(new GcPen(event.gc, letters), letters, sheet, SkyExport.box(canvas.getClientArea()), pointer);
        if (canvas.isFocusControl()) {
            event.gc.setForeground(canvas.getDisplay().getSystemColor(SWT.COLOR_LIST_SELECTION));
            event.gc.setLineStyle(SWT.LINE_SOLID);
            event.gc.setLineWidth(2);
            event.gc.drawRectangle(horizon.x() - 2, horizon.y() - 2, horizon.width() + 4, horizon.height() + 4);
        }
    }

    private void mouse(Event event) {
        if (sheet != null && horizon.contains(event.x, event.y)) {
            point(PassPicture.nearest(sheet, horizon, event.x, event.y));
        }
    }

    private void key(Event event) {
        if (sheet == null || event.stateMask != 0) {
            return;
        }
        switch (event.keyCode) {
            case SWT.ARROW_RIGHT -> step(1);
            case SWT.ARROW_LEFT -> step(-1);
            case SWT.HOME -> point(sheet.aos().at());
            case SWT.END -> point(sheet.los().at());
            case SWT.ESC -> point(null);
            default -> { }
        }
    }

    private void step(int steps) {
        Duration step = STEP.compareTo(sheet.grain().step()) < 0 ? sheet.grain().step() : STEP;
        Instant next = pointer == null ? sheet.aos().at() : sheet.grain().rounded(pointer.plus(step.multipliedBy(steps)));
        point(next.isBefore(sheet.arc().start()) ? sheet.arc().start()
                : next.isAfter(sheet.arc().end()) ? sheet.arc().end() : next);
    }

    private void point(Instant at) {
        pointer = at;
        reading.accept(at == null ? "" : words.look(at));
        canvas.redraw();
        if (at != null) {
            canvas.getAccessible().selectionChanged();
        }
    }
}
