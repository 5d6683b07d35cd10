package org.straddle.ui.daysheet;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;
import org.straddle.ui.daysheet.layout.DayTab;
import org.straddle.ui.daysheet.layout.LaneBox;
import org.straddle.ui.daysheet.layout.SheetPart;
import org.straddle.ui.daysheet.layout.StopBox;
import org.straddle.ui.daysheet.layout.TurnBox;

/** The mouse on the sheet: click, double click, drag to pan, wheel to scroll, Ctrl and wheel to zoom, tooltips. */
final class SheetMouse {

    /** A hand that clicks moves a little. */
    private static final int STILL_PX = 4;
    private static final int WHEEL_PX = 16;

    private final SheetCanvas sheet;
    private final Canvas canvas;
    private SheetPart hovered;
    private int downX;
    private int downTop;
    private int downY;
    private int draggedX;
    private boolean down;
    private boolean dragging;

    SheetMouse(SheetCanvas sheet) {
        this.sheet = sheet;
        this.canvas = sheet.control();
        canvas.addListener(SWT.MouseDown, this::press);
        canvas.addListener(SWT.MouseUp, event -> release());
        canvas.addListener(SWT.MouseMove, this::move);
        canvas.addListener(SWT.MouseExit, event -> hover(null));
        canvas.addListener(SWT.MouseDoubleClick, this::open);
        canvas.addListener(SWT.MouseVerticalWheel, this::wheel);
        canvas.addListener(SWT.MouseHorizontalWheel, event -> pan(event, -event.count * WHEEL_PX));
    }

    private void press(Event event) {
        canvas.setFocus();
        if (event.button != 1) {
            return;
        }
        down = true;
        downX = event.x;
        downY = event.y;
        draggedX = event.x;
        downTop = sheet.scroll().top();
        Optional<SheetPart> part = sheet.at(event.x, event.y);
        part.ifPresentOrElse(this::choose, sheet::chooseNothing);
    }

    private void choose(SheetPart part) {
        if (part instanceof StopBox stop) {
            sheet.choose(stop.stop());
        } else if (part instanceof TurnBox turn) {
            sheet.choose(turn.turn());
        } else if (part instanceof LaneBox lane) {
            lane.lane().team().ifPresent(sheet::choose);
        } else if (part instanceof DayTab day) {
            sheet.show(day.day());
        } else {
            sheet.chooseNothing();
        }
    }

    private void release() {
        down = false;
        dragging = false;
        canvas.setCursor(null);
    }

    private void move(Event event) {
        if (!down) {
            hover(sheet.at(event.x, event.y).orElse(null));
            return;
        }
        dragging |= Math.abs(event.x - downX) > STILL_PX || Math.abs(event.y - downY) > STILL_PX;
        if (dragging && downX > sheet.gutter() && sheet.sheet().isPresent()) {
            canvas.setCursor(canvas.getDisplay().getSystemCursor(SWT.CURSOR_HAND));
            sheet.sight().pan(draggedX - event.x);
            draggedX = event.x;
            sheet.scroll().to(downTop + downY - event.y);
        }
    }

    private void hover(SheetPart part) {
        if (part == null ? hovered != null : !part.equals(hovered)) {
            hovered = part;
            // An ampersand would be taken for a mnemonic.
            canvas.setToolTipText(part == null ? null
                    : sheet.wording().map(wording -> wording.of(part).replace("&", "&&")).orElse(null));
        }
    }

    private void open(Event event) {
        sheet.at(event.x, event.y).ifPresent(part -> {
            if (part instanceof StopBox stop) {
                sheet.open(stop.stop().thing());
            } else if (part instanceof TurnBox turn) {
                sheet.open(turn.turn().thing());
            } else if (part instanceof LaneBox lane) {
                lane.lane().team().ifPresent(sheet::open);
            }
        });
    }

    /** The wheel scrolls the lanes if they need it, else the time. */
    private void wheel(Event event) {
        if (sheet.sheet().isEmpty()) {
            return;
        }
        if ((event.stateMask & SWT.MOD1) != 0) {
            event.doit = false;
            sheet.sight().zoom(event.count > 0, Math.max(0, event.x - sheet.gutter()));
            sheet.changed();
        } else if ((event.stateMask & SWT.MOD2) != 0 || !sheet.scroll().isHigh()) {
            pan(event, -event.count * WHEEL_PX);
        }
    }

    private void pan(Event event, int pixels) {
        event.doit = false;
        if (sheet.sheet().isPresent()) {
            sheet.sight().pan(pixels);
            sheet.changed();
        }
    }
}
