package org.straddle.ui.parts;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/** What waits until a control has a size. */
public final class OnceSized {

    private OnceSized() {
    }

    /**
     * Shows a table with columns, or a tree. GTK gives whatever it shows its smallest size first; the scroll bar of columns does
     * not fit into that, and GTK says so on the error output.
     */
    public static void show(Control table) {
        table.setVisible(false);
        run(table, () -> table.setVisible(true));
    }

    public static void run(Control control, Runnable step) {
        control.addListener(SWT.Resize, new Listener() {
            @Override
            public void handleEvent(Event sized) {
                if (control.getSize().x > 0 && control.getSize().y > 0) {
                    control.removeListener(SWT.Resize, this);
                    step.run();
                }
            }
        });
    }
}
