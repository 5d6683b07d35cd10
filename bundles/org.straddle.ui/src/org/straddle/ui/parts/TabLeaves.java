package org.straddle.ui.parts;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.TraverseListener;
import org.eclipse.swt.widgets.Text;

/** Lets Tab leave a box of several lines, so that a form can be filled in by keys alone. */
public final class TabLeaves {

    private static final TraverseListener LEAVE = step -> step.doit |=
            step.detail == SWT.TRAVERSE_TAB_NEXT || step.detail == SWT.TRAVERSE_TAB_PREVIOUS;

    private TabLeaves() {
    }

    public static void on(Text box) {
        box.addTraverseListener(LEAVE);
    }
}
