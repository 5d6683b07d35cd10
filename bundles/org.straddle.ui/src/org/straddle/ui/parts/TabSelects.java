package org.straddle.ui.parts;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.straddle.ui.session.UiThread;

/**
 * Tab into a box of one line selects what is in it, in every window, so that typing replaces the old value and does not
 * run into it. A click, and a window that comes back to the front, leave the cursor where it was.
 */
public final class TabSelects {

    private TabSelects() {
    }

    public static void in(Display display) {
        display.addFilter(SWT.Traverse, TabSelects::traversed);
    }

    private static void traversed(Event step) {
        if (step.detail == SWT.TRAVERSE_TAB_NEXT || step.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
            Display display = step.display;
            Control from = display.getFocusControl();
            // The focus moves after the event.
            UiThread.later(display, () -> select(display.getFocusControl(), from));
        }
    }

    private static void select(Control reached, Control from) {
        if (reached instanceof Text box && box != from && (box.getStyle() & SWT.MULTI) == 0) {
            box.selectAll();
        }
    }
}
