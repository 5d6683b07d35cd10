package org.straddle.ui.daysheet;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.TraverseEvent;
import org.straddle.daysheet.sheet.DaySheet;
import org.straddle.daysheet.sheet.SheetItem;
import org.straddle.daysheet.sheet.Walk;
import org.straddle.words.Catalogue;

/**
 * Keys on the sheet. Tab and the arrows walk over stops and turns; with Ctrl, or when nothing is selected, the arrows
 * move the sight.
 */
final class SheetKeys {

    private static final Catalogue TEXTS = Catalogue.of(SheetKeys.class);

    private static final double NUDGE = 0.1;
    private static final double PAGE = 0.9;
    private static final int UPRIGHT_PX = 40;

    private final SheetCanvas sheet;

    SheetKeys(SheetCanvas sheet) {
        this.sheet = sheet;
        sheet.control().addTraverseListener(this::traverse);
        sheet.control().addKeyListener(KeyListener.keyPressedAdapter(this::press));
    }

    /** Tab leaves the sheet behind the last thing. */
    private void traverse(TraverseEvent event) {
        boolean next = event.detail == SWT.TRAVERSE_TAB_NEXT;
        if (!next && event.detail != SWT.TRAVERSE_TAB_PREVIOUS) {
            event.doit = event.detail == SWT.TRAVERSE_PAGE_NEXT || event.detail == SWT.TRAVERSE_PAGE_PREVIOUS;
            return;
        }
        Optional<SheetItem> to = sheet.sheet().map(Walk::new).flatMap(walk -> next ? walk.next(sheet.selected())
                : walk.previous(sheet.selected()));
        event.doit = to.isEmpty();
        to.ifPresent(sheet::choose);
    }

    private void press(KeyEvent event) {
        sheet.sheet().ifPresent(shown -> press(event, shown));
    }

    private void press(KeyEvent event, DaySheet shown) {
        boolean pans = (event.stateMask & SWT.MOD1) != 0 || sheet.selected().isEmpty();
        switch (event.keyCode) {
            case SWT.ARROW_LEFT, SWT.ARROW_RIGHT, SWT.ARROW_UP, SWT.ARROW_DOWN -> {
                if (pans) {
                    pan(event.keyCode);
                } else {
                    walk(event.keyCode, new Walk(shown), sheet.selected().get()).ifPresent(sheet::choose);
                }
            }
            case SWT.PAGE_UP -> move(() -> sheet.sight().page(-PAGE));
            case SWT.PAGE_DOWN -> move(() -> sheet.sight().page(PAGE));
            case SWT.HOME -> move(sheet.sight()::toStart);
            case SWT.END -> move(sheet.sight()::toEnd);
            case SWT.CR, SWT.KEYPAD_CR -> sheet.selected().ifPresent(item -> sheet.open(item.thing()));
            case SWT.ESC -> escape();
            default -> type(event.character, shown);
        }
    }

    private void escape() {
        if (sheet.isDragging()) {
            sheet.letFall();
            sheet.say(TEXTS.text("sheetKeys.putBackWhere"), false);
        } else {
            sheet.say("", false);
            sheet.chooseNothing();
        }
    }

    private void type(char character, DaySheet shown) {
        switch (character) {
            case '+', '=' -> move(() -> sheet.sight().zoom(true));
            case '-' -> move(() -> sheet.sight().zoom(false));
            case '0' -> move(sheet.sight()::fitAll);
            default -> shown.days().stream().filter(day -> character - '0' == day.number()).findFirst()
                    .ifPresent(sheet::show);
        }
    }

    private void pan(int key) {
        switch (key) {
            case SWT.ARROW_LEFT -> move(() -> sheet.sight().page(-NUDGE));
            case SWT.ARROW_RIGHT -> move(() -> sheet.sight().page(NUDGE));
            case SWT.ARROW_UP -> sheet.scroll().by(-UPRIGHT_PX);
            default -> sheet.scroll().by(UPRIGHT_PX);
        }
    }

    private static Optional<SheetItem> walk(int key, Walk walk, SheetItem from) {
        return switch (key) {
            case SWT.ARROW_LEFT -> walk.earlier(from);
            case SWT.ARROW_RIGHT -> walk.later(from);
            case SWT.ARROW_UP -> walk.above(from);
            default -> walk.below(from);
        };
    }

    private void move(Runnable motion) {
        motion.run();
        sheet.changed();
    }
}
