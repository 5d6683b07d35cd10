package org.straddle.ui.daysheet;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;
import org.straddle.daysheet.fits.Grip;
import org.straddle.daysheet.layout.Box;
import org.straddle.daysheet.layout.DayTab;
import org.straddle.daysheet.layout.LaneBox;
import org.straddle.daysheet.layout.LegendSize;
import org.straddle.daysheet.layout.SheetPart;
import org.straddle.daysheet.layout.StopBox;
import org.straddle.daysheet.layout.TurnBox;
import org.straddle.daysheet.sheet.SheetItem;

/** The mouse on the sheet: click, double click, drag stops, turns and their ends, drag the ground to pan, wheel to scroll, Ctrl and wheel to zoom, tooltips. */
final class SheetMouse {

    /** A hand that clicks moves a little. */
    private static final int STILL_PX = 4;
    private static final int WHEEL_PX = 16;
    private static final int EDGE_PX = 6;
    private static final int MARGIN_PX = 24;

    private final SheetCanvas sheet;
    private final Canvas canvas;
    private SheetPart hovered;
    private int downX;
    private int downTop;
    private int downY;
    private int draggedX;
    private boolean down;
    private boolean dragging;
    /** What a drag would lift; null to pan. */
    private SheetPart held;
    private Grip grip;

    SheetMouse(SheetCanvas sheet) {
        this.sheet = sheet;
        this.canvas = sheet.control();
        canvas.addListener(SWT.MouseDown, this::press);
        canvas.addListener(SWT.MouseUp, this::release);
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
        if (sheet.layout().filter(laid -> laid.legend().box().contains(event.x, event.y)).isPresent()) {
            sheet.legend(sheet.legend() == LegendSize.FULL ? LegendSize.FITTING : LegendSize.FULL);
            return;
        }
        down = true;
        downX = event.x;
        downY = event.y;
        draggedX = event.x;
        downTop = sheet.scroll().top();
        Optional<SheetPart> part = sheet.at(event.x, event.y);
        held = part.filter(found -> item(found).isPresent()).orElse(null);
        grip = held == null ? null : grip(held, event.x);
        part.ifPresentOrElse(this::choose, sheet::chooseNothing);
    }

    static Optional<SheetItem> item(SheetPart part) {
        return part instanceof StopBox stop ? Optional.of(stop.stop())
                : part instanceof TurnBox turn ? Optional.of(turn.turn()) : Optional.empty();
    }

    /** The ends of a bar are held by its edges, if it is wide enough to have a middle. */
    private static Grip grip(SheetPart part, int x) {
        Box box = part.box();
        int edge = Math.min(EDGE_PX, box.width() / 5);
        return x < box.x() + edge ? Grip.START : x >= box.right() - edge ? Grip.END : Grip.WHOLE;
    }

    private void choose(SheetPart part) {
        if (part instanceof StopBox stop) {
            sheet.point(stop.stop());
        } else if (part instanceof TurnBox turn) {
            sheet.point(turn.turn());
        } else if (part instanceof LaneBox lane) {
            lane.lane().team().ifPresent(sheet::choose);
        } else if (part instanceof DayTab day) {
            sheet.show(day.day());
        } else {
            sheet.chooseNothing();
        }
    }

    private void release(Event event) {
        if (event.button != 1) {
            return;
        }
        down = false;
        dragging = false;
        canvas.setCursor(null);
        if (sheet.isDragging()) {
            sheet.drop();
        }
    }

    private void move(Event event) {
        if (!down) {
            hover(sheet.at(event.x, event.y).orElse(null));
            showGrip(event);
            return;
        }
        boolean begins = !dragging && (Math.abs(event.x - downX) > STILL_PX || Math.abs(event.y - downY) > STILL_PX);
        dragging |= begins;
        if (begins && held != null) {
            hover(null);
            sheet.lift(item(held).orElseThrow(), grip, downX);
        }
        if (sheet.isDragging()) {
            carry(event);
        } else if (dragging && held == null && downX > sheet.gutter() && sheet.sheet().isPresent()) {
            canvas.setCursor(canvas.getDisplay().getSystemCursor(SWT.CURSOR_HAND));
            sheet.sight().pan(draggedX - event.x);
            draggedX = event.x;
            sheet.scroll().to(downTop + downY - event.y);
        }
    }

    /** Near the edges of the lanes the time goes by. */
    private void carry(Event event) {
        int width = canvas.getClientArea().width;
        int past = event.x < sheet.gutter() + MARGIN_PX ? event.x - sheet.gutter() - MARGIN_PX
                : Math.max(0, event.x - width + MARGIN_PX);
        if (past != 0) {
            sheet.sight().pan(Math.max(-MARGIN_PX, Math.min(MARGIN_PX, past)));
            sheet.changed();
        }
        sheet.drag(event.x, event.y, (event.stateMask & SWT.MOD1) != 0);
    }

    private void showGrip(Event event) {
        boolean end = hovered != null && item(hovered).isPresent() && grip(hovered, event.x) != Grip.WHOLE;
        canvas.setCursor(end ? canvas.getDisplay().getSystemCursor(SWT.CURSOR_SIZEWE) : null);
    }

    /** What is under the mouse may be another thing now, or have other words. */
    void forget() {
        hover(null);
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
