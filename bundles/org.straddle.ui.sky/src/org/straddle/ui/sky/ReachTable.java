package org.straddle.ui.sky;

import java.util.List;
import java.util.function.IntConsumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.straddle.ui.parts.OnceSized;
import org.straddle.ui.sky.reach.ReachWords;
import org.straddle.words.Catalogue;

/** Whom the pass reaches, as a list. */
final class ReachTable {

    private static final Catalogue TEXTS = Catalogue.of(ReachTable.class);

    private final Table table;

    /** @param chosen told of the row that the user goes to */
    ReachTable(Composite parent, IntConsumer chosen) {
        table = new Table(parent, SWT.FULL_SELECTION | SWT.SINGLE);
        table.setHeaderVisible(true);
        OnceSized.show(table);
        table.setLinesVisible(true);
        for (int i = 0; i < ReachWords.COLUMNS.size(); i++) {
            new TableColumn(table, i == 0 ? SWT.LEFT : SWT.RIGHT).setText(ReachWords.COLUMNS.get(i));
        }
        table.addListener(SWT.Selection, event -> chosen.accept(table.getSelectionIndex()));
        Accessibility.name(table, TEXTS.text("reachTable.placesPassReaches"));
    }

    void show(List<List<String>> rows) {
        table.setRedraw(false);
        table.setItemCount(rows.size());
        for (int i = 0; i < rows.size(); i++) {
            TableItem item = table.getItem(i);
            item.setText(rows.get(i).toArray(String[]::new));
        }
        for (TableColumn column : table.getColumns()) {
            column.pack();
        }
        table.deselectAll();
        table.setRedraw(true);
    }

    void choose(int row) {
        table.setSelection(row);
    }
}
