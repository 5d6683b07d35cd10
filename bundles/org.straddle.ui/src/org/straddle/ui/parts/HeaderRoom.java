package org.straddle.ui.parts;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Control;

/** How wide a column must be for its title, in whatever language that is. */
public final class HeaderRoom {

    /** Themes set titles in bold, which is wider than the font of the rows by up to this. */
    private static final double BOLD = 1.15;
    /** Around the title, pixels. */
    private static final int MARGIN = 18;

    private HeaderRoom() {
    }

    /** The wanted width in pixels, or what the title needs if that is more. */
    public static int least(Control table, String title, int wanted) {
        GC gc = new GC(table);
        try {
            return Math.max(wanted, (int) Math.ceil(BOLD * gc.textExtent(title).x) + MARGIN);
        } finally {
            gc.dispose();
        }
    }
}
