package org.straddle.ui.daysheet;

import java.time.Duration;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.ScrollBar;
import org.straddle.daysheet.layout.Box;
import org.straddle.daysheet.layout.DaySheetLayout;
import org.straddle.daysheet.layout.Sight;
import org.straddle.daysheet.sheet.DaySheet;

/** The scroll bars: sideways in steps of a minute through the range of the sheet, upright in pixels. */
final class SheetScroll {

    private final Canvas canvas;
    private final Sight sight;
    private final Runnable scrolled;
    private int top;
    private int most;

    SheetScroll(Canvas canvas, Sight sight, Runnable scrolled) {
        this.canvas = canvas;
        this.sight = sight;
        this.scrolled = scrolled;
        canvas.getHorizontalBar().addListener(SWT.Selection, event -> sideways());
        canvas.getVerticalBar().addListener(SWT.Selection, event -> {
            top = canvas.getVerticalBar().getSelection();
            scrolled.run();
        });
    }

    /** Pixels of the lanes that are out of sight at the top. */
    int top() {
        return top;
    }

    /** Whether the lanes are higher than their sight. */
    boolean isHigh() {
        return most > 0;
    }

    void to(int pixels) {
        top = Math.max(0, Math.min(most, pixels));
        scrolled.run();
    }

    void by(int pixels) {
        to(top + pixels);
    }

    /** Scrolls no farther than needed. */
    void bring(Box box, Box body) {
        if (box.y() < body.y()) {
            by(box.y() - body.y() - 4);
        } else if (box.bottom() > body.bottom()) {
            by(box.bottom() - body.bottom() + 4);
        }
    }

    /** Fits the bars to the sight; called when the layout has been dropped. */
    void update() {
        sight.sheet().ifPresent(this::updateSideways);
    }

    /** Fits the upright bar to the lanes as laid out; true if the lanes have to be laid out again. */
    boolean update(DaySheetLayout layout) {
        most = Math.max(0, layout.lanesHeight() - layout.body().height());
        ScrollBar bar = canvas.getVerticalBar();
        boolean outside = top > most;
        top = Math.min(top, most);
        int sightHeight = Math.max(1, layout.body().height());
        bar.setValues(top, 0, Math.max(sightHeight, layout.lanesHeight()), sightHeight, 24, sightHeight);
        bar.setEnabled(most > 0);
        return outside;
    }

    private void updateSideways(DaySheet sheet) {
        int whole = Math.max(2, minutes(sheet.range().duration()));
        int shown = Math.max(1, Math.min(whole, minutes(sight.shown().duration())));
        int left = minutes(Duration.between(sheet.range().start(), sight.scale().left()));
        ScrollBar bar = canvas.getHorizontalBar();
        bar.setValues(left, 0, whole, shown, Math.max(1, shown / 20), Math.max(1, shown * 9 / 10));
        bar.setEnabled(shown < whole);
    }

    private void sideways() {
        sight.sheet().ifPresent(sheet -> {
            sight.moveTo(sheet.range().start().plus(Duration.ofMinutes(canvas.getHorizontalBar().getSelection())));
            scrolled.run();
        });
    }

    private static int minutes(Duration duration) {
        return (int) duration.toMinutes();
    }
}
