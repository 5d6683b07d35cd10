package org.straddle.ui.parts;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ScrollBar;
import org.eclipse.swt.widgets.Scrollable;
import org.eclipse.ui.forms.widgets.ScrolledForm;

/**
 * The wheel scrolls the form also where it turns over a box of several lines, a list or a table that cannot scroll any
 * farther, and never changes a value that happens to lie under the mouse.
 */
public final class WheelPasses {

    /** One notch of the wheel, in lines of SWT's count. */
    private static final int LINE_PX = 20;

    private WheelPasses() {
    }

    public static void on(Control control, ScrolledForm form) {
        control.addListener(SWT.MouseVerticalWheel, wheel -> turned(control, form, wheel));
    }

    private static void turned(Control control, ScrolledForm form, Event wheel) {
        if (control instanceof Combo ? control.isFocusControl() : canScroll(control, wheel.count)) {
            return;
        }
        wheel.doit = false;
        Point origin = form.getOrigin();
        form.setOrigin(origin.x, Math.max(0, origin.y - wheel.count * LINE_PX));
    }

    /** @param lines up when positive */
    private static boolean canScroll(Control control, int lines) {
        ScrollBar bar = control instanceof Scrollable scrollable ? scrollable.getVerticalBar() : null;
        if (bar == null || !bar.isEnabled()) {
            return false;
        }
        return lines > 0 ? bar.getSelection() > bar.getMinimum()
                : bar.getSelection() + bar.getThumb() < bar.getMaximum();
    }
}
