package org.straddle.ui.parts;

import java.util.Arrays;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/**
 * A sentence beside buttons or choices goes into a row of its own where it would get too little room: wrapped into a few
 * letters a line it would push everything below it out of sight.
 */
public final class OwnRow {

    private OwnRow() {
    }

    /**
     * @param sentence with a {@link GridData}, among other controls in one row of a {@link GridLayout}
     * @param least    the least width that will do, pixels
     */
    public static void whereNarrow(Control sentence, int least) {
        Composite grid = sentence.getParent();
        GridLayout layout = (GridLayout) grid.getLayout();
        grid.addListener(SWT.Resize, sized -> {
            int beside = 2 * layout.marginWidth + Arrays.stream(grid.getChildren())
                    .filter(control -> control != sentence && !fillsRow(control, layout))
                    .mapToInt(control -> control.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + layout.horizontalSpacing).sum();
            int span = grid.getSize().x - beside < least ? layout.numColumns : 1;
            GridData place = (GridData) sentence.getLayoutData();
            if (place.horizontalSpan != span) {
                place.horizontalSpan = span;
                sentence.requestLayout();
            }
        });
    }

    private static boolean fillsRow(Control control, GridLayout layout) {
        return control.getLayoutData() instanceof GridData place && place.horizontalSpan == layout.numColumns;
    }
}
