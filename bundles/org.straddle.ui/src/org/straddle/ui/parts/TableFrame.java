package org.straddle.ui.parts;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;

/**
 * Holds a table, which is cut off below rather than made too low for its own scroll bar: GTK speaks up on the error output
 * about such a bar.
 */
public final class TableFrame extends Composite {

    /** Titles of columns, a row and the scroll bars, pixels. */
    private static final int LEAST_HEIGHT = 100;

    public TableFrame(Composite parent) {
        super(parent, SWT.NONE);
    }

    @Override
    public Rectangle getClientArea() {
        Rectangle area = super.getClientArea();
        area.height = area.height == 0 ? 0 : Math.max(area.height, LEAST_HEIGHT);
        return area;
    }
}
