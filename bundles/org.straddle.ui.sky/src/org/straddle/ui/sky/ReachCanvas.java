package org.straddle.ui.sky;

import java.util.function.IntConsumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.ScrollBar;
import org.straddle.ui.drawing.GcPen;
import org.straddle.ui.drawing.ScreenLetters;
import org.straddle.ui.sky.picture.ReachPicture;
import org.straddle.ui.sky.reach.ReachSheet;
import org.straddle.ui.sky.reach.ReachWords;
import org.straddle.words.Catalogue;

/** The picture of the reach; the list beside it has the keyboard, and a row chosen there is marked here. */
final class ReachCanvas {

    private static final Catalogue TEXTS = Catalogue.of(ReachCanvas.class);

    private final Canvas canvas;
    private final ScreenLetters letters;
    private ReachSheet sheet;
    private int chosen = -1;

    /** @param clicked told of the row that was clicked */
    ReachCanvas(Composite parent, IntConsumer clicked) {
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND | SWT.V_SCROLL | SWT.NO_FOCUS);
        letters = new ScreenLetters(canvas, 1);
        canvas.addListener(SWT.Paint, event -> {
            if (sheet == null) {
                event.gc.fillRectangle(canvas.getClientArea());
            } else {
                ReachPicture.paint(new GcPen(event.gc, letters), letters, sheet, SkyExport.box(canvas.getClientArea()), scrolled(), chosen);
            }
        });
        canvas.addListener(SWT.Resize, event -> {
            range();
            canvas.redraw();
        });
        canvas.getVerticalBar().addListener(SWT.Selection, event -> canvas.redraw());
        canvas.addListener(SWT.MouseDown, event -> {
            int row = ReachPicture.rowAt(letters, event.y, scrolled());
            if (sheet != null && row >= 0 && row < sheet.rows().size()) {
                clicked.accept(row);
            }
        });
        Accessibility.picture(canvas, TEXTS.text("reachCanvas.reachOverTime"),
                () -> sheet == null ? TEXTS.text("reachCanvas.empty") : new ReachWords(sheet).summary(), () -> "");
    }

    Canvas control() {
        return canvas;
    }

    ScreenLetters letters() {
        return letters;
    }

    void show(ReachSheet shown) {
        sheet = shown;
        chosen = -1;
        range();
        canvas.redraw();
    }

    /** Marks a row and brings it into sight. */
    void choose(int row) {
        chosen = row;
        if (row >= 0) {
            int[] extent = ReachPicture.extent(letters, row);
            int seen = canvas.getClientArea().height - extent[2];
            ScrollBar bar = canvas.getVerticalBar();
            if (extent[0] < bar.getSelection()) {
                bar.setSelection(extent[0]);
            } else if (extent[1] > bar.getSelection() + seen) {
                bar.setSelection(extent[1] - seen);
            }
        }
        canvas.redraw();
    }

    private int scrolled() {
        return canvas.getVerticalBar().getSelection();
    }

    private void range() {
        Rectangle area = canvas.getClientArea();
        int height = sheet == null ? 0 : ReachPicture.height(letters, sheet);
        ScrollBar bar = canvas.getVerticalBar();
        boolean needed = height > area.height && area.height > 0;
        bar.setVisible(needed);
        bar.setValues(needed ? Math.min(bar.getSelection(), height - area.height) : 0, 0, Math.max(1, height),
                Math.max(1, Math.min(height, area.height)), 24, Math.max(1, area.height - 72));
    }
}
