package org.straddle.ui.parts;

import java.util.List;

import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/**
 * Rows of a table that stay as they are, with selection and ticks, while they are the same things and say the same. A
 * row that is written anew under the mouse would lose the click: leaving a field changes the event before the click
 * arrives.
 */
public final class KeptRows {

    private KeptRows() {
    }

    /**
     * @param viewer its columns have a {@link ColumnLabelProvider}
     * @return whether there are other rows now than before
     */
    public static boolean show(TableViewer viewer, List<?> rows) {
        Object[] now = rows.toArray();
        Table table = viewer.getTable();
        if (!(viewer.getInput() instanceof Object[] before) || !same(before, now) || table.getItemCount() != now.length) {
            viewer.setInput(now);
            return true;
        }
        for (int i = 0; i < now.length; i++) {
            if (!saysTheSame(viewer, table.getItem(i), now[i])) {
                viewer.update(now[i], null);
            }
        }
        return false;
    }

    private static boolean saysTheSame(TableViewer viewer, TableItem item, Object row) {
        for (int column = 0; column < Math.max(1, viewer.getTable().getColumnCount()); column++) {
            ColumnLabelProvider labels = (ColumnLabelProvider) viewer.getLabelProvider(column);
            String text = labels.getText(row);
            if (!item.getText(column).equals(text == null ? "" : text) || item.getImage(column) != labels.getImage(row)) {
                return false;
            }
        }
        return true;
    }

    private static boolean same(Object[] before, Object[] now) {
        if (before.length != now.length) {
            return false;
        }
        for (int i = 0; i < now.length; i++) {
            if (before[i] != now[i]) {
                return false;
            }
        }
        return true;
    }
}
